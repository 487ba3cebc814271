import { RULES } from '../../data/rules.ts';
import { isWorse, type Status } from '../../engine/check.ts';
import type { CheckRow, Evaluation } from '../../engine/evaluation.ts';
import type { UnitSystem } from '../units/system.ts';
import { complaint, complaintOfAll } from './check-words.ts';
import { groupBy } from './group-by.ts';
import type { PieceNames } from './piece-names.ts';

const checks = (n: number): string => (n === 1 ? '1 check' : `${n} checks`);

/** The verdict on the whole shelter in words: it passes only when nothing fails, nothing is missing, nothing is outside. */
export function headline(counts: Readonly<Record<Status, number>>): string {
  const { pass, fail, notGiven, outside } = counts;
  const open = [
    ...(notGiven > 0 ? [`${notGiven} not given`] : []),
    ...(outside > 0 ? [`${outside} outside the method`] : []),
  ];
  if (fail > 0) return `Does not pass: ${[`${checks(fail)} ${fail === 1 ? 'fails' : 'fail'}`, ...open].join(', ')}.`;
  if (open.length > 0) return `Not complete: ${open.join(', ')}. No check fails.`;
  return pass > 0 ? `All ${checks(pass)} pass.` : 'Not complete: nothing is checked.';
}

/** One thing that does not pass, with all the checks that say the same of alike members. */
export interface Complaint {
  readonly words: string;
  readonly keys: readonly string[];
}

/**
 * What does not pass. That another edition was adopted than the one computed comes first; then fails, the worst ahead; then
 * what is not given and what is outside the method, as the load path runs, from the site down: demands in unlike units cannot
 * be ranked. Alike ones are told once.
 */
export function complaints(evaluation: Evaluation, names: PieceNames, system: UnitSystem): readonly Complaint[] {
  const rest = evaluation.checks.filter((row) => !isOfEdition(row));
  const ranked = (['fail', 'notGiven', 'outside'] as const).flatMap((status) => {
    const rows = rest.filter((row) => row.status === status);
    return status === 'fail' ? rows.toSorted((a, b) => (isWorse(a, b) ? -1 : isWorse(b, a) ? 1 : 0)) : rows;
  });
  const open = [...evaluation.checks.filter((row) => isOfEdition(row) && row.status !== 'pass'), ...ranked];
  return groupBy(open, (row) => sameThing(row, names)).map((rows) => ({
    words: inWords(rows, names, system),
    keys: rows.map((r) => r.key),
  }));
}

function inWords(rows: readonly CheckRow[], names: PieceNames, system: UnitSystem): string {
  const [first] = rows;
  const pieces = [...new Set(rows.map(({ memberId }) => names.pieceOf(memberId).words))];
  const rules = new Set(rows.map(({ ruleId }) => ruleId));
  if (pieces.length > 1 || rules.size > 1) return complaintOfAll(first!, pieces, rows.length, names);
  return `${complaint(first!, names, system)}${rows.length > 1 ? ` (${rows.length} places)` : ''}`;
}

const isOfEdition = ({ ruleId }: CheckRow): boolean => ruleId === 'site.edition';

/**
 * A site value is a thing of its own; what fails without a ratio is one with all that fail for the same cause in its link of
 * the load path; of members the worst of a rule speaks for its piece.
 */
function sameThing({ memberId, key, status, ratio, reason, ruleId }: CheckRow, names: PieceNames): string {
  if (memberId === 'site') return key;
  if (status === 'fail' && ratio === null && reason) return [status, reason.code, RULES[ruleId].link].join('|');
  return [status, ruleId, names.pieceOf(memberId).key].join('|');
}
