import {
  AREA_LIMITS,
  COMPONENT_ROWS,
  type AreaClass,
  type BothWays,
  type ComponentRow,
  type RoofZone,
} from '../../../data/loads/free-roof-components.ts';
import type { Flow, RoofForm } from '../../../data/loads/free-roof-main.ts';
import { LEAST_WIND } from '../../../data/loads/wind-exposure.ts';
import { remembered } from '../../../data/sources.ts';
import { positive } from '../../errors.ts';
import type { Message } from '../../message.ts';
import { put, type Note } from '../../note.ts';
import type { Feet, Psf } from '../../units.ts';
import { betweenSlopes, straight } from './between-slopes.ts';
import { slopeBeyondFigure } from './free-roof.ts';
import { finite } from './givens.ts';

/** The edge zones of a roof are never narrower [ft]. */
export const LEAST_EDGE_FT = 3;

/**
 * Width of the edge zones of a roof, a: the lesser of a tenth of the least plan width and 0.4 h, but at least 0.04 of
 * the width and 3 ft.
 * @returns a [ft]
 * @throws MisuseError  if a length is not finite and above zero
 * @source ASCE7 Fig. 30.7-1 notes (7-16, figure number from memory), read in BNBC Fig. 6.2.19
 */
export function edgeWidth(
  { leastWidthFt, meanHeightFt }: { readonly leastWidthFt: number; readonly meanHeightFt: number },
  note?: Note,
): Feet {
  const B = positive('leastWidthFt', leastWidthFt);
  const h = positive('meanHeightFt', meanHeightFt);
  const a = Math.max(Math.min(0.1 * B, 0.4 * h), 0.04 * B, LEAST_EDGE_FT);
  note?.({
    symbol: 'a',
    words: 'Width of the edge zones of the roof',
    formula: `max(min(0.1 B, 0.4 h), 0.04 B, ${LEAST_EDGE_FT} ft)`,
    put: [
      put('B', leastWidthFt, 'ft', 'least plan width of the roof'),
      put('h', meanHeightFt, 'ft', 'mean roof height'),
    ],
    result: { value: a, unit: 'ft' },
    clause: remembered('ASCE7', 'Fig. 30.7-1, notes'),
  });
  return a as Feet;
}

/**
 * Class of an effective wind area (span times the larger of the width carried and a third of the span).
 * @param effectiveAreaFt2  [ft2], above zero
 * @param edgeWidthFt  a [ft]
 * @throws MisuseError  if either is not finite and above zero
 * @source ASCE7 Fig. 30.7-1 (7-16); area at a limit belongs to the smaller class
 */
export function areaClass(effectiveAreaFt2: number, edgeWidthFt: number): AreaClass {
  const squares = positive('effectiveAreaFt2', effectiveAreaFt2) / positive('edgeWidthFt', edgeWidthFt) ** 2;
  if (squares <= AREA_LIMITS.small) return 'upToA2';
  return squares <= AREA_LIMITS.middle ? 'upTo4A2' : 'over4A2';
}

export interface BothCoefficients {
  readonly positive: number;
  readonly negative: number;
}
export type ComponentAnswer =
  ({ readonly ok: true } & BothCoefficients) | { readonly ok: false; readonly reason: Message };

/**
 * Net coefficients of a free roof for sheet, purlins, rafters and their ties; both ways must be run.
 * @param slopeDeg  roof slope [deg], zero or above
 * @param zone  3 corners, 2 edges, 1 elsewhere; 3 is the worst everywhere
 * @returns greatest and least CN, plus is down; above 45 degrees why there are none
 * @throws MisuseError  if the slope is negative or not finite
 * @limits  slope to 45 degrees, straight between rows
 * @source ASCE7 Fig. 30.7-1 and 30.7-2 (7-16, figure numbers from memory), values read in BNBC Fig. 6.2.19a and b
 * @departs nothing; two disputed cells are recorded in the table
 */
export function componentCoefficients(
  form: RoofForm,
  slopeDeg: number,
  area: AreaClass,
  zone: RoofZone,
  flow: Flow,
  note?: Note,
): ComponentAnswer {
  const beyond = slopeBeyondFigure(slopeDeg);
  if (beyond) return { ok: false, reason: beyond };
  const rows = COMPONENT_ROWS[form].filter((row) => row.areaClass === area);
  const { low, high, share } = betweenSlopes(rows, slopeDeg);
  const [positiveLow, negativeLow] = inZone(low, flow, zone);
  const [positiveHigh, negativeHigh] = inZone(high, flow, zone);
  const positiveCN = straight(positiveLow, positiveHigh, share);
  const negativeCN = straight(negativeLow, negativeHigh, share);
  const tell = (symbol: string, words: string, c1: number, c2: number, value: number) =>
    note?.({
      symbol,
      words: `${words}, zone ${zone}, ${flow} flow`,
      formula: low === high ? 'as printed' : 'C1 + (C2 - C1) (θ - θ1) / (θ2 - θ1)',
      put: [
        put('θ', slopeDeg, 'deg', 'roof slope'),
        put('θ1', low.slopeDeg, 'deg', 'printed slope below'),
        put('θ2', high.slopeDeg, 'deg', 'printed slope above'),
        put('C1', c1, '1', 'printed below'),
        put('C2', c2, '1', 'printed above'),
      ],
      result: { value, unit: '1' },
      clause: remembered('ASCE7', form === 'monoslope' ? 'Fig. 30.7-1' : 'Fig. 30.7-2'),
    });
  tell('CN+', 'Greatest push down', positiveLow, positiveHigh, positiveCN);
  tell('CN-', 'Greatest lift', negativeLow, negativeHigh, negativeCN);
  return { ok: true, positive: positiveCN, negative: negativeCN };
}

/** The figure lists zone 3 first. */
const inZone = (row: ComponentRow, flow: Flow, zone: RoofZone): BothWays => {
  const [corner, edge, field] = row.coefficients[flow];
  return zone === 3 ? corner : zone === 2 ? edge : field;
};

/**
 * Design pressures on a component of a free roof, strength level, normal to the roof, never under 16 psf either way.
 * @param coefficients  greatest and least CN, plus is down
 * @returns down (at least 16) and up (at most -16) [psf]
 * @throws MisuseError  if q or G is not above zero or a coefficient is not finite
 * @source ASCE7 Eq. 30.7-1 and 30.2.2 (7-16, numbers and the 16 psf from memory)
 */
export function componentPressure(
  { velocityPressurePsf, gustFactor }: { readonly velocityPressurePsf: number; readonly gustFactor: number },
  coefficients: BothCoefficients,
  note?: Note,
): { readonly downPsf: Psf; readonly upPsf: Psf } {
  const qG = positive('velocityPressurePsf', velocityPressurePsf) * positive('gustFactor', gustFactor);
  const downPsf = Math.max(qG * finite('positive', coefficients.positive), LEAST_WIND.componentsPsf);
  const upPsf = Math.min(qG * finite('negative', coefficients.negative), -LEAST_WIND.componentsPsf);
  const tell = (symbol: string, words: string, formula: string, coefficient: number, value: number) =>
    note?.({
      symbol,
      words,
      formula,
      put: [
        put('q', velocityPressurePsf, 'psf', 'velocity pressure, Kz as for the frame'),
        put('G', gustFactor, '1', 'gust-effect factor'),
        put('CN', coefficient, '1', 'net coefficient'),
        put('p0', LEAST_WIND.componentsPsf, 'psf', 'least wind on components'),
      ],
      result: { value, unit: 'psf' },
      clause: remembered('ASCE7', '30.2.2, 30.7.2'),
    });
  tell('p+', 'Wind down on the part, strength level', 'max(q G CN, p0)', coefficients.positive, downPsf);
  tell('p-', 'Wind lifting the part, strength level', 'min(q G CN, -p0)', coefficients.negative, upPsf);
  return { downPsf: downPsf as Psf, upPsf: upPsf as Psf };
}
