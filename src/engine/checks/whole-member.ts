import type { RuleId } from '../../data/rules.ts';
import type { CheckRow } from '../evaluation.ts';

/** Rules that ask a member as a whole: stiffness and stability of all of it, not the wood at one place. */
const OF_THE_WHOLE: ReadonlySet<RuleId> = new Set<RuleId>([
  'beam.sag',
  'beam.sagLongTerm',
  'rafter.sag',
  'rafter.sagLongTerm',
  'purlin.sag',
  'tie.sagLongTerm',
  'post.push',
  'brace.push',
]);
/** Length over thickness falls as the thickness itself grows. */
const SLENDERNESS: ReadonlySet<RuleId> = new Set<RuleId>(['post.slender', 'brace.slender', 'tie.slender']);

export interface WholeMember<Row> {
  /** every diameter times this would just pass, forces held; above 1 where wood is missing */
  readonly share: number;
  /** the check that asks for it */
  readonly row: Row;
}

type Asking = Pick<CheckRow, 'ruleId' | 'ratio' | 'spareIn' | 'thins'>;

/**
 * How thick, as a share of what is there, a log of the same taper would have to be for sag, buckling and slenderness.
 * @param rows checks of one member
 * @returns null where no such check was judged
 * @source own rule: forces held; each capacity by the power of the diameter of its check
 */
export function wholeMemberShare<Row extends Asking>(rows: readonly Row[]): WholeMember<Row> | null {
  const asked = rows.flatMap((row): WholeMember<Row>[] => {
    const share = shareOf(row);
    return share === null ? [] : [{ share, row }];
  });
  return asked.length === 0 ? null : asked.reduce((a, b) => (b.share > a.share ? b : a));
}

function shareOf({ ruleId, ratio, spareIn, thins }: Asking): number | null {
  if (SLENDERNESS.has(ruleId)) return ratio;
  if (!OF_THE_WHOLE.has(ruleId) || spareIn === null || thins === null) return null;
  return 1 - spareIn / thins.diameterIn;
}
