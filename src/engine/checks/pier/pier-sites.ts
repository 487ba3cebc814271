import { clause } from '../../../data/sources.ts';
import { notGiven, outside } from '../../check.ts';
import type { LineResponse } from '../../frame/line-frame.ts';
import { footIndex, type PostChain } from '../../frame/read-response.ts';
import type { PostGeometry } from '../../geometry/shelter.ts';
import { message } from '../../message.ts';
import { put, type Note } from '../../note.ts';
import { insteadOf } from '../../project/instead.ts';
import type { PierFoot } from '../../project/model.ts';
import { feetFromInches, quantity } from '../../units.ts';
import { requiredEmbedment } from '../ground/embedded-post.ts';
import {
  baseOfPier,
  deadThatRubs,
  pierWeight,
  shaftAreaIn2,
  soilAbovePad,
  soilReplaced,
  upliftResistance,
} from '../ground/pier.ts';
import { baseFriction, sideBearing, slidingResistance } from '../ground/sliding.ts';
import { soilPressure } from '../ground/soil-pressure.ts';
import { isStrength, type LineCheckContext } from '../line-context.ts';
import type { CheckSite } from '../site-of-check.ts';
import { footForces, turnsAlong, type FootForces } from './foot-forces.ts';
import { allowableBearing, gripOf, whyNoBearing, whyNoLateral } from './soil.ts';

/** One pier with what its post brings to it. */
interface Standing {
  readonly context: LineCheckContext;
  readonly chain: PostChain;
  readonly foot: PierFoot;
  readonly forces: FootForces;
  /** length of the shaft in the ground [in] */
  readonly buriedIn: number;
  /** weight of concrete, by what of it counts; a typed weight counts for either [lb] */
  readonly weigh: (whichPad: 'any' | 'tied', note?: Note) => number;
  readonly at: Pick<CheckSite<LineResponse>, 'memberId' | 'place' | 'purpose'>;
}

/** Pier under one post of an analysed line: pressed down, lifted, pushed over and along. */
export function sitesOfPier(
  context: LineCheckContext,
  chain: PostChain,
  foot: PierFoot,
): readonly CheckSite<LineResponse>[] {
  const typed = insteadOf(context.project, 'pierWeightLb', chain.memberId);
  const standing: Standing = {
    context,
    chain,
    foot,
    forces: footForces(context, chain),
    buriedIn: shaftInGround(chain.post, foot),
    weigh: (whichPad, note) => (typed ? typed.value : pierWeight(foot, whichPad, note)),
    at: { memberId: chain.memberId, place: { kind: 'whole', name: '' }, purpose: 'strength' },
  };
  return [
    bearingSite(standing),
    upliftSite(standing),
    sidewaysSite(standing),
    slidingSite(standing),
    ...(turnsAlong(chain) || chain.post.foot.fixity.across !== 'pinned' ? [turningSite(standing)] : []),
  ];
}

/** Length of the shaft that stands in the ground [in]. */
export const shaftInGround = (post: PostGeometry, foot: PierFoot): number =>
  Math.min(
    foot.shaft.lengthIn,
    Math.max(0, foot.shaft.lengthIn - ((post.pierTopZIn ?? post.gradeZIn) - post.gradeZIn)),
  );

const FOOT_WORDS = 'moment of a foot that is not free to turn, which the base may have to bear';

function bearingSite({ context, foot, forces, buriedIn, weigh, at }: Standing): CheckSite<LineResponse> {
  const { site } = context.project;
  const base = baseOfPier(foot);
  const pressing = (r: LineResponse, note?: Note): number =>
    Math.max(0, forces.down(r, note) + weigh('any', note) - soilReplaced(foot, buriedIn, site.soil.soilPcf, note));
  /** Of the foot alone: the pole equation takes what its push makes on the way down (own rule). */
  const turning = (r: LineResponse, note?: Note): number => {
    const [along, across] = forces.turning(r, FOOT_WORDS, note);
    return base.shape === 'square' ? along + across : Math.hypot(along, across);
  };
  return {
    ...at,
    ruleId: 'pier.bearing',
    unit: 'psf',
    stops: (r) => {
      const noValue = whyNoBearing(site);
      if (noValue) return noValue;
      const moment = turning(r);
      if (moment === 0) return null;
      return Number.isFinite(soilPressure(base, pressing(r), moment)) ? null : outside(message('footTips'));
    },
    demand: (r, note) => soilPressure(base, pressing(r, note), turning(r, note), note),
    capacity: (_, note) => allowableBearing(site, note),
  };
}

function upliftSite({ context, foot, forces, buriedIn, weigh, at }: Standing): CheckSite<LineResponse> {
  const { calculation, site } = context.project;
  const above = (note?: Note): number =>
    calculation.soilAboveCountsInUplift ? soilAbovePad(foot, buriedIn, site.soil.soilPcf, note) : 0;
  return {
    ...at,
    ruleId: 'pier.uplift',
    isByDuration: true,
    unit: 'lb',
    demand: (r, note) => forces.lift(r, note),
    capacity: (_, note) => upliftResistance(weigh('tied', note), above(note), note),
  };
}

function sidewaysSite({ context, foot, forces, buriedIn, at }: Standing): CheckSite<LineResponse> {
  const { site } = context.project;
  return {
    ...at,
    ruleId: 'pier.sideways',
    isByDuration: true,
    unit: 'ft',
    stops: () => whyNoLateral(site),
    demand: (r, note) =>
      requiredEmbedment(
        {
          ...forces.sideways(r, note),
          lateralPsfPerFt: site.soil.lateralPsfPerFt.value!,
          widthIn: foot.shaft.shape === 'round' ? foot.shaft.acrossIn : foot.shaft.acrossIn * Math.SQRT2,
          doubled: false,
        },
        note,
      ),
    capacity: (_, note) => {
      const depth = depthFt(foot, buriedIn, note);
      return depth > 0 ? depth : NaN;
    },
  };
}

/** Depth of what hangs together: the shaft in the ground, and a tied pad. */
function depthFt(foot: PierFoot, buriedIn: number, note?: Note): number {
  const depth = feetFromInches(buriedIn + (foot.pad?.tied ? foot.pad.thickIn : 0));
  note?.({
    symbol: 'd',
    words: 'depth of the pier in the ground',
    formula: 'as drawn',
    put: [put('d', depth, 'ft', 'shaft below finished ground, and a tied pad')],
    result: quantity(depth, 'ft'),
    clause: clause('IBC', '1807.3.2.1'),
  });
  return depth;
}

/** The dead load that rubs: six tenths, of the least that stands on the foot by itself; a lift takes from it. */
function slidingSite({ context, chain, foot, forces, buriedIn, weigh, at }: Standing): CheckSite<LineResponse> {
  const { site } = context.project;
  const grip = gripOf(site);
  const tied = { ...foot, pad: foot.pad?.tied ? foot.pad : null };
  const areaIn2 = tied.pad ? tied.pad.acrossIn ** 2 : shaftAreaIn2(foot.shaft);
  const deadOfPost = leastDead(context, chain);
  return {
    ...at,
    ruleId: 'pier.sliding',
    unit: 'lb',
    stops: () => whyNoLateral(site),
    demand: (r, note) => forces.push(r, note),
    capacity: (r, note) => {
      const dead = deadThatRubs(deadOfPost, forces.down(r), weigh('tied', note), note);
      const under = baseFriction(grip, dead, areaIn2, note);
      const beside = sideBearing(
        site.soil.lateralPsfPerFt.value!,
        depthFt(foot, buriedIn, note),
        foot.shaft.acrossIn,
        note,
      );
      return slidingResistance(under, beside, note);
    },
  };
}

/** Push of a post on its foot under dead load alone, the least of all brace models; zero where it lifts [lb]. */
function leastDead(context: LineCheckContext, chain: PostChain): number {
  const down = footIndex(context.frame.layout, chain) + 1;
  const alone = context.frame.responses.filter((r) => isStrength(r) && r.combination.factors.length === 0);
  return alone.length === 0 ? 0 : Math.max(0, Math.min(...alone.map((r) => r.values[down]!)));
}

/** A rating in pounds says nothing of a moment: what the foot's hardware and anchors hold against turning is not given. */
function turningSite({ chain, forces }: Standing): CheckSite<LineResponse> {
  const moment = (r: LineResponse): number => Math.hypot(...forces.turning(r, FOOT_WORDS));
  return {
    ruleId: 'post.footTurning',
    memberId: chain.memberId,
    place: { kind: 'joint', name: 'foot' },
    unit: 'lb·in',
    purpose: 'strength',
    stops: (r) => notGiven(message('footTurningNotRated'), quantity(moment(r), 'lb·in')),
    demand: moment,
    capacity: () => NaN,
  };
}
