import {
  INTERNAL_PRESSURE_CLAUSE,
  WALLED_BANDS,
  WALLED_LEEWARD,
  WALLED_ROOF,
  WALLED_WINDWARD,
  type WalledSlopeRow,
} from '../../../data/loads/wind-walled.ts';
import { DataError, positive } from '../../errors.ts';
import { put, type Note } from '../../note.ts';
import type { Psf } from '../../units.ts';
import { straight } from './between-slopes.ts';
import { finite, notNegative } from './givens.ts';

/** External coefficients of a place on a walled roof, both to be run; plus presses. */
export interface WalledCoefficients {
  readonly lift: number;
  readonly press: number;
}

/**
 * External coefficients of the roof of a walled building, wind square to the ridge, slope of 10 degrees or more. A
 * single slope is windward or leeward as a whole.
 * @param heightOverLength  mean roof height over depth along the wind, above zero; straight from 0.25 to 1, held beyond
 * @returns where the figure prints one value it is both
 * @throws MisuseError  if a given is not finite or not above zero
 * @throws DataError  for slopes outside 10 to 45 degrees
 * @source ASCE7 Fig. 27.3-1 (7-16), values read in ASCE7_10 Fig. 27.4-1
 */
export function walledRoofCoefficients(
  half: 'windward' | 'leeward',
  slopeDeg: number,
  heightOverLength: number,
): WalledCoefficients {
  const rows = half === 'windward' ? WALLED_WINDWARD : WALLED_LEEWARD;
  const lift = atHeight(rows, slopeDeg, heightOverLength, (row) => row.lift ?? NONE_PRINTED);
  if (half === 'leeward') return { lift, press: lift };
  return { lift, press: atHeight(rows, slopeDeg, heightOverLength, (row) => row.press ?? NONE_PRINTED) };
}

/** On the steepest windward slope of a low building no lift is printed: none. */
const NONE_PRINTED = 0;

function atHeight(
  rows: readonly WalledSlopeRow[],
  slopeDeg: number,
  heightOverLength: number,
  of: (row: WalledSlopeRow) => number,
): number {
  const heights = [...new Set(rows.map((row) => row.heightOverLength))];
  const atSlope = heights.map((height) =>
    alongSlope(
      rows.filter((row) => row.heightOverLength === height),
      slopeDeg,
      of,
    ),
  );
  return between(heights, atSlope, positive('heightOverLength', heightOverLength));
}

function alongSlope(rows: readonly WalledSlopeRow[], slopeDeg: number, of: (row: WalledSlopeRow) => number): number {
  const slopes = rows.map((row) => row.slopeDeg);
  const { slopeFigureFromDeg } = WALLED_ROOF;
  if (!(slopeDeg >= slopeFigureFromDeg && slopeDeg <= 45)) {
    throw new DataError('walledRoofSlope', slopeDeg, `${slopeFigureFromDeg} to 45 degrees`);
  }
  return between(slopes, rows.map(of), slopeDeg);
}

/** Straight between ascending places, the end values held beyond them. */
function between(places: readonly number[], values: readonly number[], at: number): number {
  const upper = places.findIndex((place) => at <= place);
  if (upper < 0) return values[values.length - 1]!;
  if (upper === 0) return values[0]!;
  const from = places[upper - 1]!;
  return straight(values[upper - 1]!, values[upper]!, (at - from) / (places[upper]! - from));
}

/**
 * External coefficients of the roof of a walled building at one distance from the windward edge: slopes under 10 degrees,
 * or wind along the ridge. The lift of the first band is not reduced for area (safe side).
 * @param heights  distance from the windward edge over mean roof height, zero or above
 * @param heightOverLength  above zero; straight from 0.5 to 1, held beyond
 * @throws MisuseError  if a given is negative or not finite
 * @source ASCE7 Fig. 27.3-1 (7-16), values read in ASCE7_10 Fig. 27.4-1
 */
export function walledBandCoefficients(heights: number, heightOverLength: number): WalledCoefficients {
  const band = WALLED_BANDS.find((candidate) => notNegative('heights', heights) <= candidate.toHeights);
  if (!band) throw new DataError('walledBands', heights, 'a last band without end');
  return { lift: between([0.5, 1], band.lift, positive('heightOverLength', heightOverLength)), press: band.press };
}

/**
 * Pressure on a walled roof, main frame, strength level, square to the roof, plus is down.
 * @param external  G Cp without G, plus presses
 * @param inside  coefficient of what acts from below: internal pressure, plus lifts; or of the underside of an overhang
 * @param isGust  true where `inside` is external pressure on an overhang's underside, which the gust factor multiplies
 * @returns p [psf]
 * @throws MisuseError  if q or G is not above zero or a coefficient is not finite
 * @source ASCE7 Eq. 27.3-1, 27.3.3 (7-16; overhangs from memory)
 */
export function walledPressure(
  { velocityPressurePsf, gustFactor }: { readonly velocityPressurePsf: number; readonly gustFactor: number },
  external: number,
  inside: number,
  isGust: boolean,
  note?: Note,
): Psf {
  const q = positive('velocityPressurePsf', velocityPressurePsf);
  const G = positive('gustFactor', gustFactor);
  const p = q * G * finite('external', external) - q * (isGust ? G : 1) * finite('inside', inside);
  note?.({
    symbol: 'p',
    words: 'Wind on a walled roof, main frame, strength level, plus is down',
    formula: isGust ? 'q G Cp - q G Cpu' : 'q G Cp - q GCpi',
    put: [
      put('q', q, 'psf', 'velocity pressure'),
      put('G', G, '1', 'gust-effect factor'),
      put('Cp', external, '1', 'outside, from above'),
      isGust ? put('Cpu', inside, '1', 'underside of the overhang') : put('GCpi', inside, '1', 'inside'),
    ],
    result: { value: p, unit: 'psf' },
    clause: isGust ? WALLED_ROOF.overhangClause : INTERNAL_PRESSURE_CLAUSE,
  });
  return p as Psf;
}
