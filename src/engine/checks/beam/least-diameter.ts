import type { LineResponse } from '../../frame/line-frame.ts';
import type { Chain } from '../../frame/line-mesh.ts';
import { sectionsOf } from '../../frame/read-response.ts';
import type { RoundStick } from '../../geometry/shelter.ts';
import type { DesignValues } from '../../material/values.ts';
import { isStrength, valuesIn, type LineCheckContext } from '../line-context.ts';
import { sectionAt } from '../section.ts';
import { beamStretches, type BeamStation } from './beam-sections.ts';
import { pullShareOf, stressAt } from './bending.ts';

/** Halvings of the search: a log of 60 in. comes out to a millionth of an inch. */
const HALVINGS = 26;
/** Left over the flat and the cuts, so that there is a section at all [in]. */
const LEAST_LEFT_IN = 0.1;
/** Thicker than this no log is asked for [in]. */
const THICKEST_IN = 60;

/**
 * The thinnest round log, station by station, whose bending and shear there would just pass with today's forces, cuts and
 * design values held. A log that thin draws other forces: only a new evaluation tells whether it passes.
 * @returns [in] in the order of the chain's sections; Infinity where no log in reach passes, NaN where nothing is asked;
 *   null for what is not a round log
 * @source NDS 3.3, 3.4, 3.9.1 turned round; own rule: forces held
 */
export function leastBeamDiameters(context: LineCheckContext, chain: Chain): readonly number[] | null {
  const values = valuesIn(context, chain.memberId);
  const stretches = beamStretches(context).filter((s) => s.chain.memberId === chain.memberId);
  const stick = stretches[0]?.beam.stick;
  if (!values || stick?.kind !== 'round') return null;
  const strength = context.frame.responses.filter(isStrength);
  const stations = new Map(stretches.flatMap((s) => s.stations.map((st) => [st.axial, st] as const)));
  return sectionsOf(chain, context.frame.layout).map((s) => {
    const station = stations.get(s.axial);
    return station && strength.length > 0 ? leastAt(station, stick, values, strength) : NaN;
  });
}

/** The diameter that the worst response asks for there; another may be worst at that diameter, then it is asked too. */
function leastAt(
  station: BeamStation,
  stick: RoundStick,
  values: DesignValues,
  responses: readonly LineResponse[],
): number {
  const pullShare = pullShareOf(values);
  const cutIn = station.cuts.reduce((sum, c) => sum + c.depthIn, 0);
  const thinned = (diameterIn: number): BeamStation => ({
    ...station,
    section: sectionAt(stick, diameterIn, cutIn),
  });
  const ratio = (s: BeamStation, { values: v, combination }: LineResponse): number => {
    const bending = stressAt(s, v, pullShare) / values.FbPsi;
    const shear = Math.abs(v[s.shear]!) / s.section.shearAreaIn2 / values.FvPsi;
    return Math.max(bending, shear) / combination.durationFactor;
  };
  const asked = new Set<LineResponse>();
  let least = stick.flatIn + cutIn + LEAST_LEFT_IN;
  while (least < THICKEST_IN) {
    const there = thinned(least);
    const worst = responses.reduce((a, b) => (ratio(there, b) > ratio(there, a) ? b : a));
    if (asked.has(worst)) return least;
    asked.add(worst);
    least = justPassing(least, (diameterIn) => ratio(thinned(diameterIn), worst));
  }
  return Infinity;
}

/** The smallest diameter from `low` up at which a ratio that falls with it is at most 1. */
function justPassing(low: number, ratio: (diameterIn: number) => number): number {
  if (ratio(low) <= 1) return low;
  if (!(ratio(THICKEST_IN) <= 1)) return Infinity;
  let [thin, thick] = [low, THICKEST_IN];
  for (let i = 0; i < HALVINGS; i++) {
    const d = (thin + thick) / 2;
    if (ratio(d) <= 1) thick = d;
    else thin = d;
  }
  return thick;
}
