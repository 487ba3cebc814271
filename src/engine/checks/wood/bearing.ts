import { clause, remembered } from '../../../data/sources.ts';
import { MisuseError, notNegative, positive } from '../../errors.ts';
import { put, type Note } from '../../note.ts';
import { quantity, radiansFromDegrees } from '../../units.ts';

const ACROSS = clause('NDS', '3.10.2');
const AREA_FACTOR = remembered('NDS', '3.10.4');
const END_GRAIN = clause('NDS', '3.10.1');
const ANGLE = clause('NDS', '3.10.3');

/** Bearings shorter than this, and this far from the end, are helped by the wood beside them. @source NDS 3.10.4 */
const SHORT_BEARING_IN = 6;
const CLEAR_OF_END_IN = 3;
const HELP_IN = 0.375;
/** Share of Fc* above which a metal plate must lie between end grain and end grain. @source NDS 3.10.1.3 */
const PLATE_SHARE = 0.75;

/**
 * Bearing stress on a contact area.
 * @param forceLb force square to the area [lb]
 * @param areaIn2 contact [in2]
 * @returns stress [psi]
 * @throws MisuseError if the force is below zero or the area not above zero
 * @source NDS 3.10
 */
export function bearingStress(forceLb: number, areaIn2: number, note?: Note): number {
  const P = notNegative('forceLb', forceLb);
  const fc = P / positive('areaIn2', areaIn2);
  note?.({
    symbol: 'fc',
    words: 'bearing stress',
    formula: 'P / A',
    put: [put('P', P, 'lb', 'force square to the contact'), put('A', areaIn2, 'in2', 'contact')],
    result: quantity(fc, 'psi'),
    clause: ACROSS,
  });
  return fc;
}

/**
 * Bearing area factor Cb of a bearing across the grain.
 * @param lengthIn length of the bearing along the grain [in]
 * @param toEndIn from the edge of the bearing to the end of the member [in]; 0 at the end
 * @returns Cb, at least 1
 * @throws MisuseError if the length is not above zero or the distance below zero
 * @source NDS 3.10.4, equation 3.10-2; the 3 in. from the end from memory
 */
export function bearingAreaFactor(lengthIn: number, toEndIn: number, note?: Note): number {
  const lb = positive('lengthIn', lengthIn);
  const helped = lb < SHORT_BEARING_IN && notNegative('toEndIn', toEndIn) >= CLEAR_OF_END_IN;
  const Cb = helped ? (lb + HELP_IN) / lb : 1;
  note?.({
    symbol: 'Cb',
    words: helped ? 'bearing area factor' : 'bearing area factor: 6 in. or longer, or within 3 in. of the end',
    formula: helped ? '(lb + 0.375) / lb' : '1',
    put: [put('lb', lb, 'in', 'bearing length along the log'), put('s', toEndIn, 'in', 'from the bearing to the end')],
    result: quantity(Cb, '1'),
    clause: AREA_FACTOR,
  });
  return Cb;
}

/**
 * Allowable bearing stress across the grain. No load duration factor: it limits how far the fibres are pressed in.
 * @param FcPerpPsi reference value, wet service in [psi]
 * @param Cb bearing area factor
 * @returns Fc-perp' [psi]
 * @throws MisuseError if a value is not above zero
 * @source NDS 3.10.2
 */
export function adjustedAcrossGrain(FcPerpPsi: number, Cb: number, note?: Note): number {
  const allowable = positive('FcPerpPsi', FcPerpPsi) * positive('Cb', Cb);
  note?.({
    symbol: "Fcp'",
    words: 'allowable bearing across the grain',
    formula: 'Fcp × Cb',
    put: [put('Fcp', FcPerpPsi, 'psi', 'reference value across the grain'), put('Cb', Cb, '1', 'bearing area factor')],
    result: quantity(allowable, 'psi'),
    clause: ACROSS,
  });
  return allowable;
}

/**
 * True when end grain is pressed so hard that a metal plate must lie between.
 * @param fcPsi bearing stress on the end grain [psi]
 * @param FcStarPsi Fc with every factor but the column stability factor [psi]
 * @throws MisuseError if Fc* is not above zero
 * @source NDS 3.10.1.3: above 0.75 Fc*
 */
export function needsEndPlate(fcPsi: number, FcStarPsi: number, note?: Note): boolean {
  const limit = PLATE_SHARE * positive('FcStarPsi', FcStarPsi);
  note?.({
    symbol: 'limit',
    words: 'end-grain stress above which a metal plate must lie between',
    formula: '0.75 × Fc*',
    put: [
      put('Fc*', FcStarPsi, 'psi', 'value along the grain with every factor but column stability'),
      put('fc', fcPsi, 'psi', 'bearing stress on the end grain'),
    ],
    result: quantity(limit, 'psi'),
    clause: END_GRAIN,
  });
  return fcPsi > limit;
}

/**
 * Allowable bearing stress at an angle to the grain.
 * @param FcStarPsi Fc* along the grain [psi]
 * @param FcPerpAllowablePsi Fc-perp' across it [psi]
 * @param angleDeg between load and grain, 0 to 90 [deg]
 * @returns allowable stress [psi]: Fc* at 0, Fc-perp' at 90
 * @throws MisuseError if a value is not above zero or the angle not from 0 to 90
 * @source NDS 3.10.3, equation 3.10-1
 */
export function bearingAtAngle(FcStarPsi: number, FcPerpAllowablePsi: number, angleDeg: number, note?: Note): number {
  const Fc = positive('FcStarPsi', FcStarPsi);
  const Fcp = positive('FcPerpAllowablePsi', FcPerpAllowablePsi);
  if (notNegative('angleDeg', angleDeg) > 90) throw new MisuseError('angleDeg', angleDeg, 'an angle from 0 to 90');
  const sin = Math.sin(radiansFromDegrees(angleDeg));
  const allowable = (Fc * Fcp) / (Fc * sin * sin + Fcp * (1 - sin * sin));
  note?.({
    symbol: "Fθ'",
    words: 'allowable bearing at an angle to the grain',
    formula: "Fc* × Fcp' / (Fc* × sin(θ)^2 + Fcp' × cos(θ)^2)",
    put: [
      put('Fc*', Fc, 'psi', 'value along the grain'),
      put("Fcp'", Fcp, 'psi', 'allowable across the grain'),
      put('θ', angleDeg, 'deg', 'between load and grain'),
    ],
    result: quantity(allowable, 'psi'),
    clause: ANGLE,
  });
  return allowable;
}
