import {
  FREE_ROOF_RANGE,
  type Flow,
  type RoofForm,
  type WindCase,
  type WindDirection,
} from '../../data/loads/free-roof-main.ts';
import { message } from '../message.ts';
import type { PlaneGeometry, RafterGeometry, Shelter } from '../geometry/shelter.ts';
import { feetFromInches, radiansFromDegrees } from '../units.ts';
import type { LoadCase } from './cases.ts';
import type { PartPressure } from './rafter-reactions.ts';
import type { RafterPart, RafterRun } from './rafter-run.ts';
import { alongRidgeCoefficient, alongRidgeMean, mainFrameCoefficients, mainFramePressure } from './site/free-roof.ts';
import { partialPatterns } from './site/patterns.ts';
import type { SitePressures } from './site/site-pressures.ts';

/** A load case of the whole roof as it acts on the main frame: pressure on any part of any rafter. */
export interface RoofCase extends LoadCase {
  readonly pressure: (rafter: RafterGeometry, part: RafterPart) => PartPressure;
  /** +1 wind blowing toward +x, -1 toward -x, 0 across the lines or none */
  readonly windAlong: 1 | -1 | 0;
  /** patterns that follow the spans of a beam are added line by line */
  readonly spansPattern: 'snow' | null;
}

const plumb = (plumbPsf: number): PartPressure => ({ plumbPsf, squarePsf: 0 });
const square = (squarePsf: number): PartPressure => ({ plumbPsf: 0, squarePsf });

/** Which figure of the free roofs a shelter is: one plane, or two that fall away from a shared high line. */
export function roofFormOf(planes: readonly PlaneGeometry[]): RoofForm | null {
  if (planes.length === 1) return 'monoslope';
  const [a, b] = planes;
  if (planes.length === 2 && a!.onLines[0] === b!.onLines[0] && a!.downY !== b!.downY) return 'pitched';
  return null;
}

/** Snow on the roof: balanced, least on low slopes, rain on snow, and partial over spans of a rafter. */
export function snowCases(site: SitePressures, form: RoofForm, segmentsOfRafter: number): readonly RoofCase[] {
  const balanced = site.figures.balancedSnow.value;
  const least = site.figures.leastLowSlopeSnow.value;
  const rain = site.figures.rainOnSnow.value;
  if (balanced === null) return [];
  const cases: RoofCase[] = [
    { ...snow('snow', message('caseSnowBalanced')), pressure: () => plumb(balanced), spansPattern: 'snow' },
  ];
  if (least !== null && least > 0)
    cases.push({ ...snow('snow-least', message('caseSnowLeast')), pressure: () => plumb(least) });
  if (rain !== null && rain > 0)
    cases.push({ ...snow('snow-rain', message('caseSnowRain')), pressure: () => plumb(balanced + rain) });
  // ridge to eave on a gable needs no partial snow (7.5.1); a single slope with overhangs does
  if (form === 'monoslope') {
    for (const pattern of partialPatterns(segmentsOfRafter)) {
      cases.push({
        ...snow(`snow-across-${pattern.id}`, message('caseSnowAcross', { pattern: pattern.id })),
        pressure: (_, part) => plumb(balanced * (pattern.factors[part.segment] ?? 1)),
      });
    }
  }
  return cases;
}

const snow = (id: string, words: LoadCase['words']): Omit<RoofCase, 'pressure'> => ({
  id,
  kind: 'snow',
  words,
  swaysAlong: false,
  windAlong: 0,
  spansPattern: null,
});

/**
 * Wind on an open free roof: across the lines from both sides and along them both ways, both load cases, each flow; on a
 * long flat roof across in bands as well.
 */
export function windCases(site: SitePressures, shelter: Shelter, form: RoofForm): readonly RoofCase[] {
  const q = site.figures.velocityPressure.value;
  if (q === null) return [];
  const pressure = (coefficient: number): number =>
    mainFramePressure({ velocityPressurePsf: q, gustFactor: site.gustFactor }, coefficient);
  const cases: RoofCase[] = [];
  for (const flow of site.flows) {
    for (const windCase of ['A', 'B'] as const) {
      for (const direction of [0, 180] as const) {
        const halves = new Map<string, Halves>();
        for (const plane of shelter.planes) {
          const answer = mainFrameCoefficients(form, plane.slopeDeg, direction, windCase, flow);
          if (answer.ok)
            halves.set(plane.id, halvesOf(form, plane, direction, pressure(answer.windward), pressure(answer.leeward)));
        }
        if (halves.size < shelter.planes.length) continue;
        cases.push({
          ...wind(`wind-${direction}-${windCase}-${flow}`, message('caseWindAcross', { direction, windCase, flow })),
          windAlong: 0,
          swaysAlong: false,
          pressure: (rafter, part) =>
            square(part.onHighHalf ? halves.get(rafter.plane)!.high : halves.get(rafter.plane)!.low),
        });
      }
      if (isLongAndFlat(shelter, form))
        for (const direction of [0, 180] as const) cases.push(flatCase(shelter, flow, windCase, direction, pressure));
      for (const toward of [1, -1] as const) cases.push(alongCase(shelter, flow, windCase, toward, pressure));
    }
  }
  return cases;
}

const wind = (id: string, words: LoadCase['words']): Pick<RoofCase, 'id' | 'kind' | 'words' | 'spansPattern'> => ({
  id,
  kind: 'wind',
  words,
  spansPattern: null,
});

interface Halves {
  readonly high: number;
  readonly low: number;
}

/**
 * Monoslope: the windward half of the one slope; direction 0 meets the high eave (the signs of the figure say so).
 * Pitched: direction 0 blows toward +y, so the plane at lower y is windward as a whole.
 */
function halvesOf(form: RoofForm, plane: PlaneGeometry, direction: 0 | 180, windward: number, leeward: number): Halves {
  if (form === 'monoslope')
    return direction === 0 ? { high: windward, low: leeward } : { high: leeward, low: windward };
  const planeIsAtLowY = plane.downY === -1;
  const value = planeIsAtLowY === (direction === 0) ? windward : leeward;
  return { high: value, low: value };
}

function isLongAndFlat(shelter: Shelter, form: RoofForm): boolean {
  const { bandsAcrossBelowDeg, leastHeightOverLength } = FREE_ROOF_RANGE;
  const isFlat = shelter.planes.every((p) => p.slopeDeg < bandsAcrossBelowDeg);
  return form === 'monoslope' && isFlat && shelter.meanRoofHeightIn / shelter.planAcrossIn < leastHeightOverLength;
}

/**
 * Bands of the along-ridge figure across the lines; direction 0 meets the high eave. Each part of a rafter takes the band
 * at its edge nearer to the wind, the strongest on it (own rule, safe side).
 */
function flatCase(
  shelter: Shelter,
  flow: Flow,
  windCase: WindCase,
  direction: WindDirection,
  pressure: (cn: number) => number,
): RoofCase {
  const height = feetFromInches(shelter.meanRoofHeightIn);
  return {
    ...wind(`wind-flat-${direction}-${windCase}-${flow}`, message('caseWindFlat', { direction, windCase, flow })),
    windAlong: 0,
    swaysAlong: false,
    pressure: (rafter, part) => {
      const cos = Math.cos(radiansFromDegrees(rafter.slopeDeg));
      const fromEaveIn = direction === 180 ? part.fromIn * cos : rafter.runIn - part.toIn * cos;
      return square(pressure(alongRidgeCoefficient(feetFromInches(Math.max(0, fromEaveIn)), height, windCase, flow)));
    },
  };
}

function alongCase(
  shelter: Shelter,
  flow: Flow,
  windCase: WindCase,
  toward: 1 | -1,
  pressure: (cn: number) => number,
): RoofCase {
  const fromX = Math.min(...shelter.planes.map((p) => p.fromXIn));
  const toX = Math.max(...shelter.planes.map((p) => p.toXIn));
  const height = feetFromInches(shelter.meanRoofHeightIn);
  const onRafter = new Map(
    shelter.rafters.map((r) => {
      const near = toward === 1 ? r.tributaryFromXIn - fromX : toX - r.tributaryToXIn;
      const far = toward === 1 ? r.tributaryToXIn - fromX : toX - r.tributaryFromXIn;
      const strip = alongRidgeMean(feetFromInches(Math.max(0, near)), feetFromInches(far), height, windCase, flow);
      return [r.id, square(pressure(strip))];
    }),
  );
  const direction = toward === 1 ? 'plus' : 'minus';
  return {
    ...wind(`wind-along-${direction}-${windCase}-${flow}`, message('caseWindAlong', { direction, windCase, flow })),
    windAlong: toward,
    swaysAlong: true,
    pressure: (rafter) => onRafter.get(rafter.id)!,
  };
}

/** Runs by rafter id, computed once for rafters that are alike. */
export type RunOf = (rafter: RafterGeometry) => RafterRun;
