import { PLAIN_CONCRETE_PCF } from '../../../data/loads/concrete.ts';
import { clause } from '../../../data/sources.ts';
import { asksNothing, breaks, type Verdict } from '../../check.ts';
import type { LineResponse } from '../../frame/line-frame.ts';
import type { PostChain } from '../../frame/read-response.ts';
import { diameterAt } from '../../geometry/shelter.ts';
import { message } from '../../message.ts';
import { put, type Note } from '../../note.ts';
import type { EmbeddedFoot } from '../../project/model.ts';
import { CUBIC_INCHES_PER_CUBIC_FOOT, feetFromInches, quantity } from '../../units.ts';
import { fillAreaIn2, postAreaInGround } from '../ground/concrete.ts';
import { requiredEmbedment } from '../ground/embedded-post.ts';
import { upliftResistance } from '../ground/pier.ts';
import { soilPressure, type Base } from '../ground/soil-pressure.ts';
import { valuesIn, type LineCheckContext } from '../line-context.ts';
import type { CheckSite } from '../site-of-check.ts';
import { roundArea } from '../wood/round-section.ts';
import { belowGroundSite } from './below-ground-site.ts';
import { depthOf, type Buried } from './buried.ts';
import { footForces } from './foot-forces.ts';
import { pushIsShort } from './short-push.ts';
import { allowableBearing, whyNoBearing, whyNoLateral } from './soil.ts';

/** Post in the ground of an analysed line: pressed down, lifted, held sideways by the soil, bent below the ground. */
export function sitesOfBuried(
  context: LineCheckContext,
  chain: PostChain,
  foot: EmbeddedFoot,
): readonly CheckSite<LineResponse>[] {
  const { stick } = chain.post;
  // a typed section has neither a butt to stand on nor wood values; its row is made elsewhere
  if (!stick || stick.kind === 'typed') return [];
  const buried: Buried = {
    context,
    chain,
    foot,
    stick,
    forces: footForces(context, chain),
    at: { memberId: chain.memberId, place: { kind: 'whole', name: '' }, purpose: 'strength' },
  };
  const values = valuesIn(context, chain.memberId);
  return [
    bearingSite(buried),
    upliftSite(buried),
    depthSite(buried),
    ...(values ? [belowGroundSite(buried, values)] : []),
  ];
}

/** What presses on the soil: a pad of concrete under the butt, else the butt alone; the fill beside it bears nothing. */
function baseOf({ foot, stick }: Buried): Base {
  if (foot.pad) return { shape: 'round', acrossIn: foot.pad.acrossIn };
  return stick.kind === 'round'
    ? { shape: 'round', acrossIn: diameterAt(stick, 0)! }
    : { shape: 'square', acrossIn: Math.sqrt(postAreaInGround(stick)) };
}

/** The wood in the ground weighs less than the soil whose place it took: neither is counted (safe side). */
function bearingSite(buried: Buried): CheckSite<LineResponse> {
  const { context, foot, forces, at } = buried;
  const { site } = context.project;
  const base = baseOf(buried);
  const pressing = (r: LineResponse, note?: Note): number =>
    Math.max(0, forces.down(r, note) + padSurplus(foot, site.soil.soilPcf, note));
  return {
    ...at,
    ruleId: 'pier.bearing',
    unit: 'psf',
    isByDuration: true,
    stops: () => whyNoBearing(site),
    demand: (r, note) => soilPressure(base, pressing(r, note), 0, note),
    capacity: (_, note) => allowableBearing(site, note),
  };
}

/** What a pad of concrete weighs more than the soil whose place it took [lb]. */
function padSurplus({ pad }: EmbeddedFoot, soilPcf: number, note?: Note): number {
  if (!pad) return 0;
  const volume = (roundArea(pad.acrossIn) * pad.thickIn) / CUBIC_INCHES_PER_CUBIC_FOOT;
  const surplus = volume * Math.max(0, PLAIN_CONCRETE_PCF - soilPcf);
  note?.({
    symbol: 'W',
    words: 'weight of the pad less that of the soil it replaces',
    formula: 'V × max(0, γc - γs)',
    put: [
      put('V', volume, 'ft3', 'volume of the pad'),
      put('γc', PLAIN_CONCRETE_PCF, 'pcf', 'unit weight of plain concrete'),
      put('γs', soilPcf, 'pcf', 'unit weight of the soil'),
    ],
    result: quantity(surplus, 'lb'),
    clause: clause('MECHANICS', 'volume and unit weight'),
  });
  return surplus;
}

/** Only concrete that the post is keyed into holds it down, by its weight: soil and bare concrete let go (own rule). */
function upliftSite({ foot, stick, forces, at }: Buried): CheckSite<LineResponse> {
  const weight = (note?: Note): number => keyedWeight(foot, stick, note);
  const holds = weight() > 0;
  return {
    ...at,
    ruleId: 'pier.uplift',
    unit: 'lb',
    isByDuration: holds,
    stops: (r): Verdict | null =>
      holds
        ? null
        : forces.lift(r) > 0
          ? breaks(message('nothingHoldsDown'))
          : asksNothing('lb', message('nothingAsked')),
    demand: (r, note) => forces.lift(r, note),
    capacity: (_, note) => upliftResistance(weight(note), 0, note),
  };
}

/** Weight of the concrete that the post is keyed into [lb]; 0 without. */
function keyedWeight(foot: EmbeddedFoot, stick: Buried['stick'], note?: Note): number {
  if (foot.backfill !== 'concrete' || foot.keyed !== true) return 0;
  const volume = (fillAreaIn2(foot.holeIn, postAreaInGround(stick)) * foot.depthIn) / CUBIC_INCHES_PER_CUBIC_FOOT;
  const weight = volume * PLAIN_CONCRETE_PCF;
  note?.({
    symbol: 'W',
    words: 'weight of the concrete that the post is keyed into',
    formula: 'V × γc',
    put: [
      put('V', volume, 'ft3', 'volume of the hole less the wood in it'),
      put('γc', PLAIN_CONCRETE_PCF, 'pcf', 'unit weight of plain concrete'),
    ],
    result: quantity(weight, 'lb'),
    clause: clause('MECHANICS', 'volume and unit weight'),
  });
  return weight;
}

/** Depth against what the nonconstrained-pole equation asks, moments of both directions together. */
function depthSite({ context, chain, foot, stick, forces, at }: Buried): CheckSite<LineResponse> {
  const { site } = context.project;
  const widthIn = foot.backfill === 'concrete' ? foot.holeIn : widthOf(stick, foot.depthIn);
  const isShort = pushIsShort(context.project, context.shelter, chain.post);
  return {
    ...at,
    ruleId: 'pier.embedded',
    isByDuration: true,
    unit: 'ft',
    stops: () => whyNoLateral(site),
    demand: (r, note) =>
      requiredEmbedment(
        {
          ...forces.sideways(r, note),
          lateralPsfPerFt: site.soil.lateralPsfPerFt.value!,
          widthIn,
          doubled: isShort(r),
        },
        note,
      ),
    reason: (r) => (isShort(r) ? message('doubledSoil') : null),
    capacity: (_, note) => {
      const depth = feetFromInches(depthOf(chain.post));
      note?.({
        symbol: 'd',
        words: 'depth of the post in the ground',
        formula: 'as drawn',
        put: [put('d', depth, 'ft', 'butt below finished ground')],
        result: quantity(depth, 'ft'),
        clause: clause('IBC', '1807.3.2.1'),
      });
      return depth;
    },
  };
}

/** Round: the thinner of butt and ground line; sawn: the diagonal, as the code takes it. */
function widthOf(stick: Buried['stick'], depthIn: number): number {
  if (stick.kind === 'sawn') return Math.hypot(stick.breadthIn, stick.depthIn);
  return Math.min(diameterAt(stick, 0)!, diameterAt(stick, depthIn)!);
}
