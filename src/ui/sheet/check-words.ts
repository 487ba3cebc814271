import { RULES } from '../../data/rules.ts';
import { SOURCES } from '../../data/source-list.ts';
import { SHEET_WORDS } from '../../data/words/sheet.ts';
import { STATUS_WORDS } from '../../data/words/status.ts';
import type { CheckRow } from '../../engine/evaluation.ts';
import { showLength } from '../units/show-length.ts';
import { showAmount, showQuantity, showRatio, showUnit } from '../units/show-quantity.ts';
import type { UnitSystem } from '../units/system.ts';
import { loadWords } from './load-words.ts';
import type { PieceNames } from './piece-names.ts';

/** What is asked, and where: `Bending, at 9' 4"`. */
export function askedAt(row: CheckRow, names: PieceNames, system: UnitSystem): string {
  const { name, atIn } = row.place;
  const member = names.nameOf(name);
  const spots = [
    ...(member === name ? (name === 'along' || name === 'across' ? [name] : []) : [member]),
    ...(atIn === undefined ? [] : [`at ${showLength(atIn, system, { style: 'marks' })}`]),
  ];
  return [RULES[row.ruleId].words, ...spots].join(', ');
}

/** The combination that governs, or why there is no ratio. */
export function governedBy(row: CheckRow, names: PieceNames): string {
  if (row.ratio === null && row.reason) return names.sayOf(row.reason);
  return [loadWords(row.combinationId), row.scenario].filter((words) => words !== '').join('; ');
}

/** Clause, with the mark of a figure that was not compared with the printed edition. */
export function clauseWords({ clause }: Pick<CheckRow, 'clause'>): string {
  const key = clause.source === 'OWN' ? 'own rule' : `${shortName(clause.source)} ${clause.clause}`;
  return clause.memory ? `${key}${SHEET_WORDS.memoryMark}` : key;
}

const shortName = (source: keyof typeof SOURCES): string =>
  source === 'MECHANICS' ? 'mechanics:' : source.startsWith('ASCE7') ? `ASCE ${SOURCES[source].edition}` : source;

/** Demand, capacity, unit, ratio and status, each in its own cell. */
export function figureCells(row: CheckRow, system: UnitSystem): readonly [string, string, string, string, string] {
  const unit = row.demand?.unit ?? row.capacity?.unit;
  return [
    row.demand ? showAmount(row.demand, system) : '',
    row.capacity ? showAmount(row.capacity, system) : '',
    unit ? showUnit(unit, system) || SHEET_WORDS.noUnit : '',
    row.ratio === null ? '' : showRatio(row.ratio),
    STATUS_WORDS[row.status],
  ];
}

/** A check that does not pass, in one sentence for the head of the page; its figures first, where nothing cuts them. */
export function complaint(row: CheckRow, names: PieceNames, system: UnitSystem): string {
  const who = row.memberId === 'site' ? '' : `${names.pieceOf(row.memberId).words}, `;
  if (row.ratio !== null && row.demand && row.capacity) {
    const [asked, there] = [showQuantity(row.demand, system), showQuantity(row.capacity, system)];
    const what = upperFirst(`${who}${lowerFirst(askedAt(row, names, system))}`);
    return `${what}: ratio ${showRatio(row.ratio)}, ${asked} asked, ${there} there`;
  }
  const why = whyOf(row, names);
  if (row.memberId === 'site') return why;
  const needed = row.demand && row.demand.value > 0 ? `, needed ${showQuantity(row.demand, system)}` : '';
  return upperFirst(`${who}${lowerFirst(RULES[row.ruleId].words)}${needed}: ${lowerFirst(why)}`);
}

/** One cause that several checks meet, as a bolt that does not fit: `Beam A and beam B, 8 checks: the bolt is 12 in long ...`. */
export const complaintOfAll = (row: CheckRow, pieces: readonly string[], count: number, names: PieceNames): string =>
  upperFirst(`${pieces.join(' and ')}, ${count} checks: ${lowerFirst(whyOf(row, names))}`);

const whyOf = ({ reason, status }: CheckRow, names: PieceNames): string =>
  reason ? names.sayOf(reason).replace(/\.$/, '') : STATUS_WORDS[status];

const lowerFirst = (text: string): string => text.charAt(0).toLowerCase() + text.slice(1);
const upperFirst = (text: string): string => text.charAt(0).toUpperCase() + text.slice(1);
