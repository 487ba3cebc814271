import type { LoadReport } from './evaluation.ts';
import type { LineParts } from './assemble-lines.ts';
import { earthquakeOf, highestFt, whyNoEarthquake } from './loads/earthquake.ts';
import { LEAST_DRAINING_RISE, mayPond } from './loads/site/ponding.ts';
import type { SitePressures } from './loads/site/site-pressures.ts';
import type { Shelter } from './geometry/shelter.ts';
import { message } from './message.ts';
import { stepsOf } from './note.ts';
import type { Project } from './project/model.ts';

/** What the site puts on the roof, every case that reaches a line and every combination, each once. */
export function loadReport(
  project: Project,
  shelter: Shelter,
  site: SitePressures,
  lines: readonly LineParts[],
): LoadReport {
  const earthquake = stepsOf((note) =>
    earthquakeOf(project.site, highestFt(shelter), site.figures.balancedSnow.value, note),
  );
  const noEarthquake = whyNoEarthquake(project.site, earthquake.value);
  const cases = new Map(lines.flatMap((l) => l.cases.map((c) => [c.id, c] as const)));
  const combinations = new Map(lines.flatMap((l) => l.combinations.map((c) => [c.id, c] as const)));
  return {
    pressures: [
      ...Object.entries(site.figures).map(([name, f]) => ({ name, value: f.value, unit: f.unit, steps: f.steps })),
      ...(earthquake.value
        ? [
            {
              name: 'earthquakePush',
              value: earthquake.value.pushShare,
              unit: '1' as const,
              steps: earthquake.steps,
            },
          ]
        : []),
    ],
    gustFactor: site.gustFactor,
    flows: site.flows,
    cases: [...cases.values()].map((c) => ({ id: c.id, kind: c.kind, words: c.words })),
    combinations: [...combinations.values()].map((c) => ({
      id: c.id,
      words: c.words,
      duration: c.durationFactor,
      factors: { dead: c.dead.factor, ...Object.fromEntries(c.factors.map((f) => [f.caseId, f.factor])) },
    })),
    leftOut: [
      ...(noEarthquake ? [noEarthquake] : [message('notionalLeftOut')]),
      ...(mayPond(shelter) ? [] : [message('pondingLeftOut', { least: LEAST_DRAINING_RISE })]),
      ...(site.figures.rainOnSnow.value === 0 ? [message('rainLeftOut')] : []),
    ],
  };
}
