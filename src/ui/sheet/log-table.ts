import { PER } from '../../data/metric.ts';
import { BASIS_PHRASES, SHEET_WORDS } from '../../data/words/sheet.ts';
import { SIGN_WORDS } from '../../data/words/species-signs.ts';
import type { Evaluation, LogReport } from '../../engine/evaluation.ts';
import type { Log, Project, Wood } from '../../engine/project/model.ts';
import { isNamed } from '../../engine/project/is-named.ts';
import { quantity } from '../../engine/units.ts';
import { showLength } from '../units/show-length.ts';
import { showAmount, showNumber, showUnit } from '../units/show-quantity.ts';
import type { UnitSystem } from '../units/system.ts';
import { groupBy } from './group-by.ts';
import type { PieceNames } from './piece-names.ts';
import { leftOut, type PlainRow, type PlainTable } from './sheet-table.ts';

/** Column letters of the three phrases, in the order in which they are explained under the table. */
const BASIS_LETTERS = { derived: 'a', poles: 'b', typed: 'c' } as const;

const UNSEEN = '–';
/** To be written on by hand. */
const BLANK = '________________';

/** Every log in use: what it is, who looked, what was seen and the reference values that follow. */
export function logTable(project: Project, evaluation: Evaluation, names: PieceNames, system: UnitSystem): PlainTable {
  const rows = evaluation.logs.flatMap((report): PlainRow[] => {
    const log = project.logs.find((l) => l.id === report.logId);
    const wood = project.woods.find((w) => w.id === log?.woodId);
    return log && wood ? [{ cells: logCells(report, log, wood, names, system) }] : [];
  });
  const stress = showUnit('psi', system);
  return {
    caption: `Logs; reference values in ${stress} before duration, stability and section factors`,
    columns: [
      { head: 'log', share: 74, lines: 3 },
      { head: 'species', share: 56, lines: 3 },
      { head: 'butt; tip', align: 'right' },
      { head: 'length', align: 'right' },
      { head: 'sizes', share: 38, lines: 2 },
      { head: 'knot', align: 'right' },
      { head: 'grain', align: 'right' },
      { head: 'checks', share: 36, lines: 3 },
      { head: 'ratio', align: 'right' },
      { head: 'Fb', align: 'right' },
      { head: 'Fv', align: 'right' },
      { head: 'Fc perp', align: 'right' },
      { head: 'Fc', align: 'right' },
      { head: system === 'metric' ? 'E, MPa' : 'E, ksi', align: 'right' },
      { head: 'basis' },
    ],
    rows: alikeShare(rows),
    further: (left) => leftOut(left, 'log'),
  };
}

/** Under the table: the phrases in use, that no log is stamped, room for a certificate, who inspected poles or gave values. */
export function logNotes(project: Project, evaluation: Evaluation, names: PieceNames): readonly string[] {
  const woodIds = new Set(
    evaluation.logs.map((report) => project.logs.find((log) => log.id === report.logId)?.woodId ?? ''),
  );
  const woods = project.woods.filter((w) => woodIds.has(w.id));
  const kinds = new Set(woods.map((w) => w.basis.kind));
  const phrases = (['derived', 'poles', 'typed'] as const)
    .filter((kind) => kinds.has(kind))
    .map((kind) => `${BASIS_LETTERS[kind]}: ${BASIS_PHRASES[kind]}`);
  const stamped = kinds.has('typed') ? SHEET_WORDS.stampedAsTyped : SHEET_WORDS.notStamped;
  return [
    `Basis ${phrases.join('; ')}. ${stamped} ${SHEET_WORDS.certificate} ${BLANK}`,
    `${SHEET_WORDS.lookedAt} ${byLog(project, evaluation, names, lookInWords)}. ${speciesTold(project, evaluation, names)}`,
    ...new Set(woods.flatMap(whoStandsBehind)),
  ];
}

/** `the owner, 2026-02-20: beam A, beam B; nobody yet: posts A1 A2`; what is said of all logs names none. */
function byLog(
  project: Project,
  evaluation: Evaluation,
  names: PieceNames,
  inWords: (seen: Log['seen']) => string,
): string {
  const said = evaluation.logs.flatMap(({ logId, memberIds }) => {
    const log = project.logs.find(({ id }) => id === logId);
    return log ? [{ words: inWords(log.seen), memberIds }] : [];
  });
  const groups = groupBy(said, ({ words }) => words);
  if (groups.length === 1) return said[0]!.words;
  return groups
    .map((alike) => `${alike[0]!.words}: ${names.inShort(alike.flatMap(({ memberIds }) => memberIds))}`)
    .join('; ');
}

function lookInWords(seen: Log['seen']): string {
  if (seen === null) return 'nobody yet';
  return [isNamed(seen.by) ? seen.by.trim() : SHEET_WORDS.nobodyNamed, seen.date ?? 'no date'].join(', ');
}

/** By what each log's species was told; of what is not given, room to write it on. */
function speciesTold(project: Project, evaluation: Evaluation, names: PieceNames): string {
  const told = byLog(project, evaluation, names, toldInWords);
  return told === BLANK ? `${SHEET_WORDS.toIdentify} ${BLANK}` : `${SHEET_WORDS.identified} ${told}.`;
}

function toldInWords(seen: Log['seen']): string {
  const told = seen?.speciesToldBy;
  if (told === undefined) return BLANK;
  const own = told.inWords?.trim() ?? '';
  return own === '' ? SIGN_WORDS[told.sign] : `${SIGN_WORDS[told.sign]} (${own})`;
}

/** Who inspected the poles of a wood, or whose letter or stamp its values come from, and when. */
function whoStandsBehind({ species, basis }: Wood): readonly string[] {
  if (basis.kind === 'derived') return [];
  const did = basis.kind === 'poles' ? SHEET_WORDS.polesInspected : SHEET_WORDS.valuesGiven;
  const who = isNamed(basis.by) ? basis.by.trim() : SHEET_WORDS.nobodyNamed;
  return [`${species}: ${[`${did} ${who}`, ...(basis.date === null ? [] : [basis.date])].join(', ')}.`];
}

function logCells(
  { memberIds, values }: LogReport,
  log: Log,
  wood: Wood,
  names: PieceNames,
  system: UnitSystem,
): readonly string[] {
  const { seen } = log;
  const first = log.stations[0]!;
  const last = log.stations.at(-1)!;
  const diameter = (inches: number): string => showLength(inches, system, { style: 'marks', feetFrom: 'never' });
  const psi = (value: number | undefined): string =>
    value === undefined ? '' : showAmount(quantity(value, 'psi'), system);
  return [
    names.inShort(memberIds),
    wood.species,
    `${diameter(first.diameterIn)}; ${diameter(last.diameterIn)}`,
    showLength(last.fromButtIn - first.fromButtIn, system, { style: 'marks' }),
    log.how,
    seen && seen.worstKnotIn !== null ? diameter(seen.worstKnotIn) : UNSEEN,
    seen && seen.grainSlope1In !== null ? `1:${seen.grainSlope1In}` : UNSEEN,
    seen?.checks ?? '',
    values?.strengthRatioBending?.toFixed(2) ?? '',
    psi(values?.FbPsi),
    psi(values?.FvPsi),
    psi(values?.FcPerpPsi),
    psi(values?.FcPsi),
    values ? showNumber(system === 'metric' ? values.EPsi * PER.MPaPerPsi : values.EPsi / 1000, 0) : 'none',
    BASIS_LETTERS[wood.basis.kind],
  ];
}

/** Logs that differ in nothing that is printed share a row. */
const alikeShare = (rows: readonly PlainRow[]): readonly PlainRow[] =>
  groupBy(rows, ({ cells }) => JSON.stringify(cells.slice(1))).map((alike) => ({
    cells: [[...new Set(alike.map(({ cells }) => cells[0]!))].join(', '), ...alike[0]!.cells.slice(1)],
  }));
