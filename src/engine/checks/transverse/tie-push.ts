import { firstOrderOf, type LineResponse } from '../../frame/line-frame.ts';
import type { Stick } from '../../geometry/shelter.ts';
import type { DesignValues } from '../../material/values.ts';
import type { Note } from '../../note.ts';
import { beamStretches, hasStretchedCut, type BeamStation, type BeamStretch } from '../beam/beam-sections.ts';
import { STRETCHED_CUT } from '../beam/bending.ts';
import { roundStability, sawnStability } from '../beam/sawn-stability.ts';
import { byDuration } from '../by-duration.ts';
import { tellForce, valuesIn, type LineCheckContext } from '../line-context.ts';
import type { CheckSite } from '../site-of-check.ts';
import { bendingStress } from '../wood/bending.ts';
import {
  adjustedCompression,
  allowableColumnStress,
  axialStress,
  columnStabilityFactor,
  eulerStress,
  GREATEST_SLENDERNESS,
  slenderness,
} from '../wood/column.ts';
import { roundPushAndBending } from '../wood/interaction.ts';
import { equalAreaSide, representativeDiameter } from '../wood/tapered-column.ts';
import { worstStation } from '../worst-station.ts';

/** A tie log, or a rafter that braces bend, as a column between two posts, turning freely at both. */
interface TieColumn {
  readonly lengthIn: number;
  readonly areaIn2: number;
  readonly sideIn: number;
  readonly tell: (note: Note) => void;
}

/**
 * Push and bending of tie logs together. Between its posts nothing holds a tie log up, down or sideways, so its length as a
 * column is the whole way; the braces under it, and what lies on a rafter, are not counted on (safe side).
 * @source NDS 3.9.2
 */
export function tiePushSites(context: LineCheckContext): readonly CheckSite<LineResponse>[] {
  return beamStretches(context).flatMap((on) => {
    const values = valuesIn(context, on.beam.id);
    const { stick } = on.beam;
    if (!values || !stick || stick.kind === 'typed' || on.stretch.kind === 'overhang') return [];
    const column = columnOf(stick, on);
    return [pushSite(context, on, stick, column, values), slenderSite(on, column)];
  });
}

function columnOf(stick: Exclude<Stick, { kind: 'typed' }>, on: BeamStretch): TieColumn {
  const lengthIn = (on.stretch.toXIn - on.stretch.fromXIn) / (on.beam.slope?.cos ?? 1);
  if (stick.kind === 'sawn') {
    const { breadthIn, depthIn } = stick;
    return { lengthIn, areaIn2: breadthIn * depthIn, sideIn: Math.min(breadthIn, depthIn), tell: () => undefined };
  }
  const diameters = on.stations.map((s) => s.diameterIn);
  const [least, most] = [Math.min(...diameters), Math.max(...diameters)];
  const d = representativeDiameter(least, most, 'bothPinnedOneTaper');
  return {
    lengthIn,
    areaIn2: (Math.PI * d * d) / 4,
    sideIn: equalAreaSide(d),
    tell: (note) => {
      representativeDiameter(least, most, 'bothPinnedOneTaper', note);
      equalAreaSide(d, note);
    },
  };
}

function pushSite(
  context: LineCheckContext,
  on: BeamStretch,
  stick: Exclude<Stick, { kind: 'typed' }>,
  column: TieColumn,
  values: DesignValues,
): CheckSite<LineResponse> {
  const FcE = eulerStress(values.EminPsi, column.lengthIn, column.sideIn);
  const stability =
    stick.kind === 'sawn' ? sawnStability(stick, values, on.stretch.kind, column.lengthIn) : roundStability;
  const FcPrime = byDuration((CD, note) => {
    const star = adjustedCompression(values.FcPsi, CD, note);
    return allowableColumnStress(star, columnStabilityFactor(star, FcE, values.cForColumns, note), note);
  });
  const FbPrime = byDuration((CD, note) => values.FbPsi * CD * stability(CD, note).CL);
  const pushAt = (s: BeamStation, r: LineResponse): number => Math.max(0, -r.values[s.axial]!);
  const sumAt = (s: BeamStation, asked: LineResponse, note?: Note): number => {
    // 1 - fc / FcE is the second order of bending: the moment is the first-order one
    const r = firstOrderOf(asked);
    const CD = r.combination.durationFactor;
    const Fc = FcPrime(CD, note);
    const twice = hasStretchedCut(s, r.values) ? STRETCHED_CUT : 1;
    const fb = bendingStress(twice * r.values[s.moment]!, s.section.modulusIn3, note);
    const fc = axialStress(pushAt(s, r), column.areaIn2, note);
    return roundPushAndBending(fc, Fc, fb, FbPrime(CD, note), FcE, note);
  };
  const worst = (r: LineResponse): BeamStation => worstStation(on.stations, (s) => sumAt(s, r));
  return {
    ruleId: 'tie.push',
    memberId: on.beam.id,
    place: { kind: on.stretch.kind, name: on.stretch.name },
    unit: '1',
    purpose: 'strength',
    applies: (r) => on.stations.some((s) => pushAt(s, firstOrderOf(r)) > ROUNDING_LB),
    demand: (r, note) => {
      const s = worst(r);
      if (note) {
        tellForce(context, firstOrderOf(r), s.axial, 'N', 'lb', 'axial force in the tie log (pull +)', note);
        tellForce(context, firstOrderOf(r), s.moment, 'M', 'lb·in', 'moment in the tie log', note);
        s.section.tell(note);
        column.tell(note);
        eulerStress(values.EminPsi, column.lengthIn, column.sideIn, note);
      }
      return sumAt(s, r, note);
    },
    capacity: () => 1,
    worstAt: (r) => worst(r).atIn,
  };
}

/** A force below this is the rounding of the analysis [lb]. */
const ROUNDING_LB = 1e-6;

const slenderSite = (on: BeamStretch, column: TieColumn): CheckSite<LineResponse> => ({
  ruleId: 'tie.slender',
  memberId: on.beam.id,
  place: { kind: on.stretch.kind, name: on.stretch.name },
  unit: '1',
  purpose: 'strength',
  isByDuration: true,
  demand: (_, note) => {
    if (note) column.tell(note);
    return slenderness(column.lengthIn, column.sideIn, note);
  },
  capacity: () => GREATEST_SLENDERNESS,
});
