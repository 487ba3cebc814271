import { POWER_LAW, PRINTED_EXPOSURE, type Exposure } from '../../../data/loads/wind-exposure.ts';
import { clause, remembered } from '../../../data/sources.ts';
import { MisuseError, positive } from '../../errors.ts';
import { put, type Note } from '../../note.ts';
import type { Psf } from '../../units.ts';
import { finite, notNegative } from './givens.ts';

/**
 * Velocity pressure exposure coefficient Kz (Kh at mean roof height) by the power law.
 * @param exposure  B, C or D
 * @param heightFt  height above ground [ft], zero or above; under 15 ft taken as 15 ft
 * @returns Kz, a pure number
 * @throws MisuseError  if the height is negative, not finite or above the gradient height
 * @source ASCE7 Table 26.10-1 note 1, constants of Table 26.11-1 (7-16)
 * @departs nothing
 */
export function velocityPressureExposure(exposure: Exposure, heightFt: number, note?: Note): number {
  const { alpha, gradientHeightFt } = POWER_LAW[exposure];
  if (notNegative('heightFt', heightFt) > gradientHeightFt) {
    throw new MisuseError('heightFt', heightFt, `at most ${gradientHeightFt} ft`);
  }
  const z = Math.max(heightFt, POWER_LAW.leastHeightFt);
  const kz = POWER_LAW.factor * (z / gradientHeightFt) ** (2 / alpha);
  note?.({
    symbol: 'Kz',
    words: 'How much wind reaches this height',
    formula: '2.01 (max(z, 15 ft) / zg)^(2/α)',
    put: [
      put('z', heightFt, 'ft', 'mean roof height'),
      put('zg', gradientHeightFt, 'ft', `gradient height, exposure ${exposure}`),
      put('α', alpha, '1', `exponent, exposure ${exposure}`),
    ],
    result: { value: kz, unit: '1' },
    clause: clause('ASCE7', 'Table 26.10-1, note 1'),
  });
  return kz;
}

/**
 * Kz as printed, straight between the printed heights; for people whose department wants the table.
 * @param exposure  B, C or D
 * @param heightFt  height above ground [ft], zero or above
 * @returns Kz, or null above the printed heights that are held here (30 ft): use the power law there
 * @throws MisuseError  if the height is negative or not finite
 * @source ASCE7 Table 26.10-1 (7-16), values from memory
 */
export function printedExposure(exposure: Exposure, heightFt: number, note?: Note): number | null {
  const heights = PRINTED_EXPOSURE.heightsFt;
  const printed = PRINTED_EXPOSURE[exposure];
  const z = Math.max(notNegative('heightFt', heightFt), heights[0]);
  const upper = heights.findIndex((height) => z <= height);
  if (upper < 0) return null;
  const lower = Math.max(upper - 1, 0);
  const share = upper === lower ? 0 : (z - heights[lower]!) / (heights[upper]! - heights[lower]!);
  const kz = printed[lower]! + share * (printed[upper]! - printed[lower]!);
  note?.({
    symbol: 'Kz',
    words: `How much wind reaches this height, exposure ${exposure}, from the printed table`,
    formula: 'K1 + (K2 - K1) (max(z, 15 ft) - z1) / (z2 - z1)',
    put: [
      put('z', heightFt, 'ft', 'mean roof height'),
      put('z1', heights[lower]!, 'ft', 'printed height below'),
      put('z2', heights[upper]!, 'ft', 'printed height above'),
      put('K1', printed[lower]!, '1', 'printed below'),
      put('K2', printed[upper]!, '1', 'printed above'),
    ],
    result: { value: kz, unit: '1' },
    clause: remembered('ASCE7', 'Table 26.10-1'),
  });
  return kz;
}

/**
 * Ground elevation factor Ke: thinner air at altitude pushes less. 1.00 may always be used instead.
 * @param altitudeFt  ground above sea level [ft]; below sea level the factor exceeds 1
 * @returns Ke, a pure number
 * @throws MisuseError  if the altitude is not finite
 * @source ASCE7 26.9, Table 26.9-1 note 2 (7-16)
 */
export function groundElevationFactor(altitudeFt: number, note?: Note): number {
  const ke = Math.exp(-0.0000362 * finite('altitudeFt', altitudeFt));
  note?.({
    symbol: 'Ke',
    words: 'Thinner air at altitude',
    formula: 'exp(-0.0000362 zg)',
    put: [put('zg', altitudeFt, 'ft', 'altitude of the site')],
    result: { value: ke, unit: '1' },
    clause: clause('ASCE7', '26.9'),
  });
  return ke;
}

export interface VelocityPressureGivens {
  readonly kz: number;
  readonly kzt: number;
  readonly kd: number;
  readonly ke: number;
  /** strength-level three-second gust of the site's risk category [mph] */
  readonly mph: number;
}

/**
 * Velocity pressure of the wind at strength level: the factor 0.6 comes with the combinations.
 * @returns q [psf]
 * @throws MisuseError  if any given is not finite and above zero
 * @source ASCE7 Eq. 26.10-1 (7-16)
 */
export function velocityPressure({ kz, kzt, kd, ke, mph }: VelocityPressureGivens, note?: Note): Psf {
  const q =
    0.00256 *
    positive('kz', kz) *
    positive('kzt', kzt) *
    positive('kd', kd) *
    positive('ke', ke) *
    positive('mph', mph) ** 2;
  note?.({
    symbol: 'q',
    words: 'Velocity pressure at mean roof height, strength level',
    formula: '0.00256 Kz Kzt Kd Ke V²',
    put: [
      put('Kz', kz, '1', 'height and exposure'),
      put('Kzt', kzt, '1', 'hills and ridges'),
      put('Kd', kd, '1', 'directionality'),
      put('Ke', ke, '1', 'altitude'),
      put('V', mph, 'mph', 'design wind speed'),
    ],
    result: { value: q, unit: 'psf' },
    clause: clause('ASCE7', 'Eq. 26.10-1'),
  });
  return q as Psf;
}

/**
 * The wind speed that older papers call Vasd. For reading them only: never put it into `velocityPressure`, the
 * combinations already carry 0.6.
 * @param strengthMph  design wind speed at strength level [mph]
 * @returns speed [mph]
 * @throws MisuseError  if the speed is not finite and above zero
 * @source IBC 1609.3.1 (2018): V sqrt(0.6)
 */
export function allowableStressWindSpeed(strengthMph: number, note?: Note): number {
  const mph = positive('strengthMph', strengthMph) * Math.sqrt(0.6);
  note?.({
    symbol: 'Vasd',
    words: 'The same wind as older papers name it; not used here',
    formula: 'V sqrt(0.6)',
    put: [put('V', strengthMph, 'mph', 'design wind speed')],
    result: { value: mph, unit: 'mph' },
    clause: clause('IBC', '1609.3.1'),
  });
  return mph;
}
