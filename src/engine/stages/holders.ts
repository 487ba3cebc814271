import { RULES, type Link, type RuleId } from '../../data/rules.ts';
import { analysedLine } from '../analysed-line.ts';
import { assembleLine } from '../assemble-lines.ts';
import { alongSystem } from '../checks/sway/sway-checks.ts';
import type { CheckRow } from '../evaluation.ts';
import type { LineGeometry, Shelter } from '../geometry/shelter.ts';
import type { Givens } from '../givens.ts';
import { message, type Message } from '../message.ts';
import type { Lateral } from '../project/model.ts';
import type { Standing } from './standing.ts';
import type { Way } from './wind-on-post.ts';

/** What could hold a line without temporary braces at a stage, and whether that counts. */
export interface Holder {
  readonly lineId: string;
  readonly by: NonNullable<Lateral['by']>;
  /** null where it counts: every check of it passes at this stage */
  readonly whyNot: Message | null;
}

/** Frost and decay work over the years: no other check of a line is left out. */
const OVER_THE_YEARS: ReadonlySet<RuleId> = new Set<RuleId>([
  'pier.frost',
  'pier.treatment',
  'post.clearance',
  'post.standOff',
]);
/** Links that take part in holding the shelter sideways. */
const HOLDING: Readonly<Record<Way, ReadonlySet<Link>>> = {
  along: new Set<Link>(['brace', 'post', 'pier', 'swayAlong']),
  across: new Set<Link>(['brace', 'post', 'pier', 'swayAcross']),
};
/** What of other links takes part in holding, and what of a link is asked across the lines only. */
const TIES: Readonly<Record<Way, RegExp>> = { along: /^beam\.(tie|splice)/, across: /^(beam|rafter)\.tieAcross/ };
const ACROSS_ONLY = /Across/;
/** Hold the line by what stands on it; the others are not there before the roof is. */
const STANDS_ON_IT: ReadonlySet<Lateral['by']> = new Set<Lateral['by']>(['kneeBraces', 'embeddedPosts']);

/**
 * What holds a line at a stage by what is computed. Along: knee braces and fixed feet by the checks of the line as it
 * stands then, with the wind of that stage; across, and whatever is beside the frame, by the checks of the finished
 * shelter, once the roof is on. Fixed feet of posts that stand alone are not computed and do not count (safe side).
 * @param rows  of the finished shelter
 * @returns null where nothing was said to hold it, or what was said is not there yet
 */
export function holderOf(
  standing: Standing,
  full: Givens,
  line: LineGeometry,
  way: Way,
  rows: readonly CheckRow[],
): Holder | null {
  const { lateral } = full.project;
  const named = way === 'along' ? alongSystem(lateral.along, line) : lateral.across.find((l) => l.by !== null);
  const by = named?.by ?? null;
  if (by === null || by === 'none') return null;
  const holder = (whyNot: Message | null): Holder => ({ lineId: line.id, by, whyNot });
  if (standing.id === 'roof') return holder(firstNotPassed(ofHolder(rows, full.shelter, line, way)));
  if (by === 'embeddedPosts' && !hasFixedFeet(full.shelter, line, way)) return null;
  if (by === 'embeddedPosts' && (way === 'across' || standing.id === 'posts')) return holder(message('raisingFeet'));
  if (way === 'across' || !STANDS_ON_IT.has(by)) return null;
  if (by === 'kneeBraces' && !hasBraces(standing.givens.shelter, line)) return null;
  const now = assembleLine(standing.givens, analysedLine(standing.givens, line), new Map()).source.flatMap((s) =>
    s.rows(),
  );
  return holder(firstNotPassed(ofHolder(now, standing.givens.shelter, line, way)));
}

const hasFixedFeet = (shelter: Shelter, line: LineGeometry, way: Way): boolean =>
  shelter.posts.some((p) => p.line === line.id && p.foot.fixity[way] !== 'pinned');

const hasBraces = (shelter: Shelter, line: LineGeometry): boolean =>
  shelter.braces.some((b) => b.plane === 'along' && line.postIds.includes(b.postId));

function ofHolder(rows: readonly CheckRow[], shelter: Shelter, line: LineGeometry, way: Way): readonly CheckRow[] {
  const asked = rows.filter(
    ({ ruleId }) => !OVER_THE_YEARS.has(ruleId) && (HOLDING[way].has(RULES[ruleId].link) || TIES[way].test(ruleId)),
  );
  if (way === 'across') return asked;
  const onLine = new Set([
    line.id,
    ...line.beamIds,
    ...line.postIds,
    ...shelter.braces.filter((b) => line.postIds.includes(b.postId)).map((b) => b.id),
  ]);
  return asked.filter((row) => onLine.has(row.memberId) && !ACROSS_ONLY.test(row.ruleId));
}

/** A check that is not asked proves nothing: no row at all does not count either. */
function firstNotPassed(rows: readonly CheckRow[]): Message | null {
  const first = rows.find((row) => row.status !== 'pass');
  if (first) return message('raisingNotPassed', { check: RULES[first.ruleId].words });
  return rows.length > 0 ? null : message('raisingNotAsked');
}
