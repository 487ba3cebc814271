import type { RuleId } from '../../../data/rules.ts';
import type { LineResponse } from '../../frame/line-frame.ts';
import { SAME_PLACE_IN } from '../../frame/mesh-builder.ts';
import { stretchSites } from '../beam/beam-checks.ts';
import { alongStick, beamStretches, type BeamStretch } from '../beam/beam-sections.ts';
import { beamBendingSite } from '../beam/bending.ts';
import { beamShearSite, endNotchSite, type EndCut } from '../beam/shear.ts';
import { crookSites } from '../beam/crook.ts';
import { braceSites } from '../brace/brace-checks.ts';
import type { LineCheckContext } from '../line-context.ts';
import type { CheckSite } from '../site-of-check.ts';
import { lineBucklingSite } from '../sway/line-buckling-site.ts';
import { swayAlongSites } from '../sway/sway-checks.ts';
import { rafterJointSites } from './rafter-joints.ts';
import type { BracedRow } from './rafter-on-post.ts';
import { tieJointSites } from './tie-joints.ts';
import { tieSidewaysSites } from './tie-sideways.ts';
import { tiePushSites } from './tie-push.ts';

/**
 * Every check of a row across in its own plane; its posts are judged with their line, by both planes together.
 * @param ties    ids of its tie logs: rafters that only join the tops of posts are judged as rafters
 * @param braced  its rafter, where braces run to it
 */
export const rowSites = (
  context: LineCheckContext,
  ties: ReadonlySet<string>,
  braced: BracedRow | null = null,
): readonly CheckSite<LineResponse>[] => [
  ...[
    ...[...stretchSites(context), ...crookSites(context)].flatMap((site) => renamed(site)),
    ...tiePushSites(context),
    ...tieSidewaysSites(context),
    ...tieJointSites(context),
  ].filter((site) => ties.has(site.memberId)),
  ...(braced ? [...bracedRafterSites(context, braced), ...rafterJointSites(context, braced)] : []),
  ...braceSites(context),
  ...swayAlongSites(context, true).flatMap((site) => renamed(site)),
  ...renamed(lineBucklingSite(context)),
];

/**
 * A rafter that braces bend and press is asked as a tie log is, under what comes down on the main frame. How it sags, its seat
 * cuts and what pushes it along the lines are asked by the rows of every rafter.
 */
const bracedRafterSites = (
  context: LineCheckContext,
  { rafter, posts }: BracedRow,
): readonly CheckSite<LineResponse>[] =>
  [
    ...beamStretches(context).flatMap((on) => [
      beamBendingSite(context, on),
      beamShearSite(context, on),
      ...seatCutsOf(on, posts).flatMap((cut) => endNotchSite(context, on, cut) ?? []),
    ]),
    ...tiePushSites(context),
  ]
    .filter((site) => site.memberId === rafter.id)
    .flatMap((site) => renamed(site, OF_RAFTER))
    .map((site) => alongSlope(context, site));

/** The rows of a rafter tell places along its slope from the eave. */
function alongSlope({ frame }: LineCheckContext, site: CheckSite<LineResponse>): CheckSite<LineResponse> {
  const beam = frame.members.beams.find((b) => b.id === site.memberId)!;
  const { worstAt } = site;
  return worstAt ? { ...site, worstAt: (r) => alongStick(beam, worstAt(r)) } : site;
}

/** Seat cuts of a rafter over its posts, each judged as if it lay at an end, as the rows of the rafter itself do (safe side). */
const seatCutsOf = ({ beam, stations }: BeamStretch, posts: BracedRow['posts']): readonly EndCut[] =>
  beam.cuts.flatMap(({ atXIn, depthIn }) => {
    const here = stations.find((s) => Math.abs(s.xIn - atXIn) <= SAME_PLACE_IN);
    const post = posts.find((p) => Math.abs(p.yIn - atXIn) <= SAME_PLACE_IN);
    if (!here || !post) return [];
    return [{ name: post.id, xIn: atXIn, reachIn: SAME_PLACE_IN, depthIn, diameterIn: here.diameterIn }];
  });

/** What a frame line is asked by its own rules, a row across is asked by these. Nothing but its own logs makes it sag. */
const ACROSS: Partial<Record<RuleId, RuleId>> = {
  'beam.bending': 'tie.bending',
  'beam.shear': 'tie.shear',
  'beam.twist': 'tie.twist',
  'beam.crook': 'tie.crook',
  'beam.cuts': 'tie.cuts',
  'beam.endNotch': 'tie.endNotch',
  'beam.sagLongTerm': 'tie.sagLongTerm',
  'sway.along': 'sway.across',
  'frame.buckling': 'sway.acrossBuckling',
};

/** The same for a rafter that braces run to. */
const OF_RAFTER: Partial<Record<RuleId, RuleId>> = {
  'beam.bending': 'rafter.frameBending',
  'beam.shear': 'rafter.frameShear',
  'beam.endNotch': 'rafter.frameNotch',
  'tie.push': 'rafter.framePush',
  'tie.slender': 'rafter.frameSlender',
};

function renamed(site: CheckSite<LineResponse>, names = ACROSS): readonly CheckSite<LineResponse>[] {
  const ruleId = names[site.ruleId];
  return ruleId ? [{ ...site, ruleId }] : [];
}
