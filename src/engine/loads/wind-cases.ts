import {
  FREE_ROOF_RANGE,
  type Flow,
  type RoofForm,
  type WindCase,
  type WindDirection,
} from '../../data/loads/free-roof-main.ts';
import { message } from '../message.ts';
import type { PlaneGeometry, Shelter } from '../geometry/shelter.ts';
import { feetFromInches } from '../units.ts';
import type { LoadCase } from './cases.ts';
import type { PartPressure } from './rafter-reactions.ts';
import type { RoofCase } from './roof-cases.ts';
import { alongRidgeCoefficient, alongRidgeMean, mainFrameCoefficients, mainFramePressure } from './site/free-roof.ts';
import type { SitePressures } from './site/site-pressures.ts';
import { blowsToward, fromWindwardEdge, sideMet, stripFromWindward } from './wind-places.ts';

const square = (squarePsf: number): PartPressure => ({ plumbPsf: 0, squarePsf });

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
        const toward = blowsToward(form, shelter.planes, direction);
        const from = sideMet('y', toward);
        const halves = new Map<string, Halves>();
        for (const plane of shelter.planes) {
          const answer = mainFrameCoefficients(form, plane.slopeDeg, direction, windCase, flow);
          if (answer.ok)
            halves.set(plane.id, halvesOf(form, plane, direction, pressure(answer.windward), pressure(answer.leeward)));
        }
        if (halves.size < shelter.planes.length) continue;
        cases.push({
          ...wind(`wind-${direction}-${windCase}-${flow}`, message('caseWindAcross', { from, windCase, flow })),
          windAlong: 0,
          windAcross: toward,
          swaysAlong: false,
          pressure: (rafter, part) =>
            square(part.onHighHalf ? halves.get(rafter.plane)!.high : halves.get(rafter.plane)!.low),
        });
      }
      if (isLongAndFlat(shelter))
        for (const direction of [0, 180] as const)
          cases.push(flatCase(shelter, form, flow, windCase, direction, pressure));
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
  const value = plane.downY === blowsToward(form, [plane], direction) ? leeward : windward;
  return { high: value, low: value };
}

function isLongAndFlat(shelter: Shelter): boolean {
  const { bandsAcrossBelowDeg, leastHeightOverLength } = FREE_ROOF_RANGE;
  const isFlat = shelter.planes.every((p) => p.slopeDeg < bandsAcrossBelowDeg);
  return isFlat && shelter.meanRoofHeightIn / shelter.planAcrossIn < leastHeightOverLength;
}

/**
 * Bands of the along-ridge figure across the lines. Each part of a rafter takes the band at its edge nearer to the wind,
 * the strongest on it (own rule, safe side).
 */
function flatCase(
  shelter: Shelter,
  form: RoofForm,
  flow: Flow,
  windCase: WindCase,
  direction: WindDirection,
  pressure: (cn: number) => number,
): RoofCase {
  const height = feetFromInches(shelter.meanRoofHeightIn);
  const toward = blowsToward(form, shelter.planes, direction);
  return {
    ...wind(
      `wind-flat-${direction}-${windCase}-${flow}`,
      message('caseWindFlat', { from: sideMet('y', toward), windCase, flow }),
    ),
    windAlong: 0,
    windAcross: toward,
    swaysAlong: false,
    pressure: (rafter, part) => {
      const fromEdge = feetFromInches(fromWindwardEdge(shelter, toward, rafter, part));
      return square(pressure(alongRidgeCoefficient(fromEdge, height, windCase, flow)));
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
  const height = feetFromInches(shelter.meanRoofHeightIn);
  const onRafter = new Map(
    shelter.rafters.map((r) => {
      const { nearIn, farIn } = stripFromWindward(shelter, toward, r);
      const strip = alongRidgeMean(feetFromInches(nearIn), feetFromInches(farIn), height, windCase, flow);
      return [r.id, square(pressure(strip))];
    }),
  );
  const direction = toward === 1 ? 'plus' : 'minus';
  return {
    ...wind(
      `wind-along-${direction}-${windCase}-${flow}`,
      message('caseWindAlong', { from: sideMet('x', toward), windCase, flow }),
    ),
    windAlong: toward,
    swaysAlong: true,
    pressure: (rafter) => onRafter.get(rafter.id)!,
  };
}
