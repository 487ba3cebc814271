import type { LineResponse } from '../../frame/line-frame.ts';
import type { Chain } from '../../frame/mesh-builder.ts';
import { sectionsOf } from '../../frame/read-response.ts';
import type { RoundStick } from '../../geometry/shelter.ts';
import type { DesignValues } from '../../material/values.ts';
import { leastAt } from '../least-at.ts';
import { isStrength, valuesIn, type LineCheckContext } from '../line-context.ts';
import { sectionAt } from '../section.ts';
import { roundEndNotchShear } from '../wood/shear.ts';
import { beamStretches, type BeamStation, type BeamStretch } from './beam-sections.ts';
import { pullShareOf, stressAt } from './bending.ts';
import { endCutsOf, isSeatPressedByGravity, isStretched, placedCuts, type PlacedCut } from './cuts.ts';
import type { EndCut } from './shear.ts';

/**
 * The thinnest round log, station by station, whose bending and shear there would just pass with today's forces, cuts and
 * design values held, and that is as thick as the depth of its cuts asks for. A log that thin draws other forces: only a
 * new evaluation tells whether it passes.
 * @returns [in] in the order of the chain's sections; Infinity where no log in reach passes, NaN where nothing is asked;
 *   null for what is not a round log
 * @source NDS 3.3, 3.4, 3.9.1, 4.4.3 turned round; own rule: forces held
 */
export function leastBeamDiameters(context: LineCheckContext, chain: Chain): readonly number[] | null {
  const values = valuesIn(context, chain.memberId);
  const stretches = beamStretches(context).filter((s) => s.chain.memberId === chain.memberId);
  const stick = stretches[0]?.beam.stick;
  if (!values || stick?.kind !== 'round') return null;
  const strength = context.frame.responses.filter(isStrength);
  const stations = new Map(stretches.flatMap((s) => s.stations.map((st) => [st.axial, st] as const)));
  const byDepth = new Map(stretches.flatMap((on) => leastForCuts(context, on)));
  const endCuts = stretches.flatMap((on) => endCutsOf(context, on));
  return sectionsOf(chain, context.frame.layout).map((s) => {
    const station = stations.get(s.axial);
    if (!station || strength.length === 0) return NaN;
    const notches = endCuts.filter((cut) => Math.abs(station.xIn - cut.xIn) <= cut.reachIn);
    const forDepth = station.cuts.map((cut) => byDepth.get(cut.id) ?? 0);
    return Math.max(...forDepth, leastOf(station, notches, stick, values, strength));
  });
}

function leastOf(
  station: BeamStation,
  notches: readonly EndCut[],
  stick: RoundStick,
  values: DesignValues,
  responses: readonly LineResponse[],
): number {
  const pullShare = pullShareOf(values);
  const cutIn = station.cuts.reduce((sum, c) => sum + c.depthIn, 0);
  return leastAt(stick.flatIn + cutIn, responses, (diameterIn) => {
    const section = sectionAt(stick, diameterIn, cutIn);
    const s = { ...station, section };
    // what an even shear stress of Fv over the section, or a cut near the end, can carry
    const shearLb = Math.min(
      section.shearAreaIn2 * values.FvPsi,
      ...notches.map((cut) => roundEndNotchShear(values.FvPsi, diameterIn, cut.depthIn)),
    );
    return ({ values: v, combination }) => {
      const bending = stressAt(s, v, pullShare) / values.FbPsi;
      return Math.max(bending, Math.abs(v[s.shear]!) / shearLb) / combination.durationFactor;
    };
  });
}

/**
 * How thick the log must be where each cut lies for its depth alone to be allowed, by the cut's id; Infinity where it is
 * refused however thick the log [in].
 */
const leastForCuts = (context: LineCheckContext, on: BeamStretch): readonly (readonly [string, number])[] =>
  placedCuts(context, on).map((placed) => [
    placed.cut.id,
    placed.isAtEnd ? 4 * placed.cut.depthIn : leastForCut(context, placed),
  ]);

function leastForCut(context: LineCheckContext, placed: PlacedCut): number {
  const { cut, isInMiddleThird } = placed;
  if (isInMiddleThird) return Infinity;
  const strength = context.frame.responses.filter(isStrength);
  if (!strength.some((r) => isStretched(placed, r))) return 6 * cut.depthIn;
  return isSeatPressedByGravity(context, placed) ? 8 * cut.depthIn : Infinity;
}
