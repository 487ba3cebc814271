import type { RoofForm } from '../../data/loads/free-roof-main.ts';
import { message } from '../message.ts';
import type { LoadCase } from './cases.ts';
import type { PartPressure } from './rafter-reactions.ts';
import type { RoofCase } from './roof-cases.ts';
import { partialPatterns } from './site/patterns.ts';
import type { SitePressures } from './site/site-pressures.ts';

const plumb = (plumbPsf: number): PartPressure => ({ plumbPsf, squarePsf: 0 });

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
