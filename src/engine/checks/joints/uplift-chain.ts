import type { RuleId } from '../../../data/rules.ts';
import { isWorse } from '../../check.ts';
import type { CheckRow } from '../../evaluation.ts';
import type { LineGeometry, PostGeometry } from '../../geometry/shelter.ts';
import { message, type Message } from '../../message.ts';
import type { Id } from '../../project/model.ts';
import { DEAD_AGAINST_UPLIFT } from '../ground/pier.ts';
import { isWithinReach, reachOf, weightsAt, type PieceWeights, type Weighed } from './chain-weights.ts';

export type ChainLinkName = 'sheet' | 'purlin' | 'rafter' | 'strip' | 'beam' | 'post' | 'foot' | 'pier';

/** One link between roof and soil: what pulls it, what it holds, and what weight is added under it on the way down. */
export interface ChainLink {
  readonly name: ChainLinkName;
  /** the worst row of the link at this post, in the combination that governs it; null where no row asks it */
  readonly row: CheckRow | null;
  /** light weight x 0.6 that holds this link down and not the one above it, each piece once [lb] */
  readonly addedLb: number;
}

export interface UpliftChain {
  readonly postId: Id;
  readonly label: string;
  /** from the sheet down to the soil */
  readonly links: readonly ChainLink[];
  /** place of the weakest among the links */
  readonly weakest: number;
  /** the one change that raises it */
  readonly raise: Message;
}

/** Rules that ask a link for its pull. */
const PULLED_BY: Readonly<Record<ChainLinkName, RuleId>> = {
  sheet: 'sheet.uplift',
  purlin: 'purlin.tie',
  rafter: 'rafter.tie',
  strip: 'strip.tie',
  beam: 'beam.tie',
  post: 'post.tension',
  foot: 'post.foot',
  pier: 'pier.uplift',
};

/** The rule that asks the links between a rafter and its post where braces of the post run to that rafter. */
const LIFTED_BY: RuleId = 'rafter.frameLift';

const NAMES = Object.keys(PULLED_BY) as readonly ChainLinkName[];

/**
 * The uplift chain of every post: sheet screws, purlin ties, rafter ties, strip, beam to post, post, foot, pier. Links of
 * the roof are asked by component wind, those of the frame by its analysis; each in the combination that governs it, so
 * that the force of one link is not the force of the one before it less what is added between.
 * @source ASCE7 2.4.1 (0.6 D); OWN: each piece of dead load counted once on the way down
 */
export function upliftChains(weighed: Weighed, checks: readonly CheckRow[]): readonly UpliftChain[] {
  const { shelter } = weighed;
  return shelter.lines
    .filter((line) => line.kind === 'frame')
    .flatMap((line) =>
      shelter.posts.filter((p) => p.line === line.id).map((post) => chainOf(weighed, checks, line, post)),
    );
}

function chainOf(weighed: Weighed, checks: readonly CheckRow[], line: LineGeometry, post: PostGeometry): UpliftChain {
  const pieces = weightsAt(weighed, line, post);
  const members = membersAt(weighed, line, post);
  const links = NAMES.filter((name) => isThere(name, line, post)).map((name): ChainLink => ({
    name,
    row: worstOf(
      checks.filter(
        (c) =>
          (c.ruleId === PULLED_BY[name] && members[name](c)) || (c.ruleId === LIFTED_BY && lifts(name, c, line, post)),
      ),
    ),
    addedLb: DEAD_AGAINST_UPLIFT * ADDED_UNDER[name](pieces),
  }));
  const weakest = links.reduce((low, link, i) => (isWeaker(link, links[low]!) ? i : low), 0);
  return { postId: post.id, label: post.label, links, weakest, raise: raiseOf(links[weakest]!, post) };
}

/** The piece that lies between a link and the one above it. */
const ADDED_UNDER: Readonly<Record<ChainLinkName, (pieces: PieceWeights) => number>> = {
  sheet: ({ covering }) => covering,
  purlin: ({ purlins }) => purlins,
  rafter: ({ rafters }) => rafters,
  strip: ({ strip }) => strip,
  beam: ({ beam }) => beam,
  post: () => 0,
  foot: ({ post }) => post,
  pier: () => 0,
};

/** A line without a strip has no such link; a post in the ground has no foot hardware. */
const isThere = (name: ChainLinkName, line: LineGeometry, { foot }: PostGeometry): boolean =>
  name === 'strip' ? line.stripThicknessIn > 0 : name !== 'foot' || foot.kind === 'pier';

/** Which rows of a rule belong to a post. */
function membersAt(
  { shelter }: Weighed,
  line: LineGeometry,
  post: PostGeometry,
): Readonly<Record<ChainLinkName, (row: CheckRow) => boolean>> {
  const reach = reachOf(shelter, line, post);
  const planes = new Set(shelter.planes.filter((p) => p.onLines.includes(line.id)).map((p) => p.id));
  const purlins = new Set(shelter.purlins.filter((p) => planes.has(p.plane)).map((p) => p.id));
  const rafters = new Set(
    shelter.rafters
      .filter((r) => isWithinReach(reach, r.xIn) && r.supports.some((s) => s.line === line.id))
      .map((r) => r.id),
  );
  const isPost = ({ memberId }: CheckRow): boolean => memberId === post.id;
  return {
    sheet: ({ memberId }) => planes.has(memberId),
    purlin: ({ memberId }) => purlins.has(memberId),
    rafter: ({ memberId, place }) => rafters.has(memberId) && place.name === line.id,
    strip: ({ memberId }) => memberId === line.id,
    beam: ({ place }) => place.name === post.id,
    post: isPost,
    foot: isPost,
    pier: isPost,
  };
}

/** Whether a row of what a frame across lifts is of this link at this post: of its rafter, its strip or its beam. */
function lifts(name: ChainLinkName, { memberId, place }: CheckRow, line: LineGeometry, post: PostGeometry): boolean {
  if (place.name !== post.id) return false;
  if (name === 'strip') return memberId === line.id;
  if (name === 'beam') return line.beamIds.includes(memberId);
  return name === 'rafter' && memberId !== line.id && !line.beamIds.includes(memberId);
}

const worstOf = (rows: readonly CheckRow[]): CheckRow | null =>
  rows.reduce<CheckRow | null>((worst, row) => (worst === null || isWorse(row, worst) ? row : worst), null);

const isWeaker = (one: ChainLink, other: ChainLink): boolean =>
  one.row !== null && (other.row === null || isWorse(one.row, other.row));

/** What one change would raise the weakest link; where no number tells what it is asked or holds, that is said. */
function raiseOf({ name, row }: ChainLink, post: PostGeometry): Message {
  const link = LINK_WORDS[name];
  if (!row) return message('chainNotAsked', { post: post.label });
  const { demand, capacity, status } = row;
  if (status === 'pass' && demand?.value === 0) return message('chainNotLifted', { post: post.label });
  if (demand && status === 'notGiven' && CAPACITY_NOT_SAID.has(row.reason?.code))
    return message('chainNotGiven', { link, post: post.label, demand: demand.value, unit: demand.unit });
  if (!demand || !capacity) return message('chainNotTold', { link, post: post.label });
  if (name === 'post') return message('chainPostThicker', { post: post.label });
  const asked = { post: post.label, demand: demand.value, holds: capacity.value };
  if (name !== 'pier') return message('chainHoldMore', { ...asked, link, unit: demand.unit });
  const moreLb = Math.max(0, demand.value - capacity.value) / DEAD_AGAINST_UPLIFT;
  return message('chainPierHeavier', { ...asked, moreLb });
}

/** Somebody must say what the link can carry; a row that is not given for another reason has that reason to show. */
const CAPACITY_NOT_SAID: ReadonlySet<string | undefined> = new Set([
  'capacityNotGiven',
  'partNotGiven',
  'anchorNotRated',
  'fastenersNone',
]);

const LINK_WORDS: Readonly<Record<ChainLinkName, string>> = {
  sheet: 'sheet screws',
  purlin: 'purlin ties',
  rafter: 'rafter ties',
  strip: 'strip on its beam',
  beam: 'beam on its post',
  post: 'post',
  foot: 'post base',
  pier: 'pier',
};
