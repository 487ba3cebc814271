import { clause } from '../../data/sources.ts';
import type { PurlinGeometry, RafterGeometry } from '../geometry/shelter.ts';
import { message } from '../message.ts';
import { put, type Step } from '../note.ts';
import { quantity } from '../units.ts';
import type { LoadCase } from './cases.ts';
import type { PartPressure } from './rafter-reactions.ts';
import { even, type AtEnds, type RafterPart } from './rafter-run.ts';
import type { RoofCase } from './roof-cases.ts';
import { partialPatterns } from './site/patterns.ts';
import type { SitePressures } from './site/site-pressures.ts';
import { surplusCuts, surplusOnPart, surplusOnPurlin, surplusOnStrip } from './snow-surplus.ts';
import type { UnevenSnow } from './uneven-snow.ts';

/** Snow on the whole roof in one case, also as a purlin has it, with the steps that made it. */
export interface SnowCase extends RoofCase {
  readonly onPurlin: (purlin: PurlinGeometry, rafter: RafterGeometry) => number;
  /** how the pressure at an end of a part came about */
  readonly stepsAt: (rafter: RafterGeometry, part: RafterPart, end: keyof AtEnds) => readonly Step[];
  readonly stepsOnPurlin: (purlin: PurlinGeometry, rafter: RafterGeometry) => readonly Step[];
}

/**
 * Snow on the roof, each case by itself: balanced, least on low slopes, rain on snow, drifted, slid, carried over a ridge,
 * and partial over spans of a rafter.
 * @source ASCE7 chapter 7 (7-16)
 */
export function snowCases(site: SitePressures, segmentsOfRafter: number): readonly SnowCase[] {
  const { balancedSnow, leastLowSlopeSnow, rainOnSnow } = site.figures;
  const balanced = balancedSnow.value;
  const least = leastLowSlopeSnow.value ?? 0;
  const rain = rainOnSnow.value ?? 0;
  if (balanced === null) return [];
  const cases = [
    { ...evenCase('snow', message('caseSnowBalanced'), balanced, balancedSnow.steps), spansPattern: 'snow' as const },
  ];
  const others: SnowCase[] = site.uneven.cases.map((uneven) => unevenCase(uneven, balancedSnow.steps));
  if (least > 0) others.push(evenCase('snow-least', message('caseSnowLeast'), least, leastLowSlopeSnow.steps));
  if (rain > 0) {
    const steps = () => [...balancedSnow.steps(), ...rainOnSnow.steps()];
    others.push(evenCase('snow-rain', message('caseSnowRain'), balanced + rain, steps));
  }
  if (site.uneven.isPartialAcross) {
    for (const { id, factors } of partialPatterns(segmentsOfRafter)) {
      others.push({
        ...evenCase(`snow-across-${id}`, message('caseSnowAcross', { pattern: id }), balanced, balancedSnow.steps),
        pressure: (_, part) => plumb(even(balanced * (factors[part.segment] ?? 1))),
      });
    }
  }
  return [...cases, ...others];
}

/** Places along a rafter, from its eave up the slope, where some snow on it jumps or bends [in]. */
export const snowCuts = (site: SitePressures, rafter: RafterGeometry): readonly number[] =>
  site.uneven.cases.flatMap(({ surplus }) => (surplus ? surplusCuts(surplus, rafter) : []));

/** What sets rafters apart that are alike but for their place along the lines: uneven snow that runs along them [psf]. */
export const snowAlong = (site: SitePressures, rafter: RafterGeometry): readonly number[] =>
  site.uneven.cases.map(({ surplus }) => (surplus?.axis === 'x' ? surplusOnStrip(surplus, rafter) : 0));

const plumb = (plumbPsf: AtEnds): PartPressure => ({ plumbPsf, squarePsf: 0 });

const snow = (id: string, words: LoadCase['words']): Omit<RoofCase, 'pressure'> => ({
  id,
  kind: 'snow',
  words,
  swaysAlong: false,
  windAlong: 0,
  spansPattern: null,
});

const evenCase = (id: string, words: LoadCase['words'], psf: number, steps: () => readonly Step[]): SnowCase => ({
  ...snow(id, words),
  pressure: () => plumb(even(psf)),
  onPurlin: () => psf,
  stepsAt: steps,
  stepsOnPurlin: steps,
});

function unevenCase(uneven: UnevenSnow, evenSteps: () => readonly Step[]): SnowCase {
  const { id, words, evenPsf, surplus, steps } = uneven;
  const onPart = (rafter: RafterGeometry, part: RafterPart): AtEnds =>
    surplus ? surplusOnPart(surplus, rafter, part) : even(0);
  const onPurlin = (purlin: PurlinGeometry, rafter: RafterGeometry): number =>
    surplus ? surplusOnPurlin(surplus, purlin, rafter) : 0;
  const stepsOf = (planeId: string, surplusPsf: number): readonly Step[] => [
    ...evenSteps(),
    ...steps(),
    snowHere(evenPsf(planeId), surplusPsf),
  ];
  return {
    ...snow(id, words),
    pressure: (rafter, part) => {
      const { low, high } = onPart(rafter, part);
      const base = evenPsf(rafter.plane);
      return plumb({ low: base + low, high: base + high });
    },
    onPurlin: (purlin, rafter) => evenPsf(purlin.plane) + onPurlin(purlin, rafter),
    stepsAt: (rafter, part, end) => stepsOf(rafter.plane, onPart(rafter, part)[end]),
    stepsOnPurlin: (purlin, rafter) => stepsOf(purlin.plane, onPurlin(purlin, rafter)),
  };
}

const snowHere = (evenPsf: number, surplusPsf: number): Step => ({
  symbol: 'p',
  words: 'Snow at this place',
  formula: 'S + pS',
  put: [
    put('S', evenPsf, 'psf', 'even part here'),
    put('pS', surplusPsf, 'psf', 'what lies on it here, by its straight line'),
  ],
  result: quantity(evenPsf + surplusPsf, 'psf'),
  clause: clause('OWN', 'snow by its distance from the step or the ridge'),
});
