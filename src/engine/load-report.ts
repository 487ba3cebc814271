import type { LoadReport } from './evaluation.ts';
import type { LineParts } from './assemble-lines.ts';
import { earthquakeOf, highestFt, whyNoEarthquake } from './loads/earthquake.ts';
import { LEAST_DRAINING_RISE, mayPond } from './loads/site/ponding.ts';
import type { SitePressures } from './loads/site/site-pressures.ts';
import type { UnevenSnow } from './loads/uneven-snow.ts';
import type { Shelter } from './geometry/shelter.ts';
import { message } from './message.ts';
import { stepsOf, type Step } from './note.ts';
import type { Project } from './project/model.ts';

const EARTHQUAKE_PUSH = 'earthquakePush';

/** One uneven snow for each figure: what wind carries over a ridge from either side is one number. */
const unevenFigures = ({ uneven }: SitePressures): readonly UnevenSnow[] => [
  ...new Map(uneven.cases.map((c) => [c.figure.name, c])).values(),
];

/** What the site puts on the roof, every case that reaches a line and every combination, each once. */
export function loadReport(
  project: Project,
  shelter: Shelter,
  site: SitePressures,
  lines: readonly LineParts[],
): LoadReport {
  const earthquake = earthquakeOf(project.site, highestFt(shelter), site.figures.balancedSnow.value);
  const noEarthquake = whyNoEarthquake(project.site, earthquake);
  const cases = new Map(lines.flatMap((l) => l.cases.map((c) => [c.id, c] as const)));
  const combinations = new Map(lines.flatMap((l) => l.combinations.map((c) => [c.id, c] as const)));
  return {
    pressures: [
      ...Object.entries(site.figures).map(([name, { value, unit }]) => ({ name, value, unit })),
      ...unevenFigures(site).map(({ figure }) => ({ name: figure.name, value: figure.psf, unit: 'psf' as const })),
      ...(earthquake ? [{ name: EARTHQUAKE_PUSH, value: earthquake.pushShare, unit: '1' as const }] : []),
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
      ...site.uneven.leftOut,
    ],
  };
}

/** How each number of the report came about, by its name; empty where it stands as it was given. */
export const pressureSteps = (
  project: Project,
  shelter: Shelter,
  site: SitePressures,
): Readonly<Record<string, readonly Step[]>> => ({
  ...Object.fromEntries(Object.entries(site.figures).map(([name, figure]) => [name, figure.steps()])),
  ...Object.fromEntries(unevenFigures(site).map(({ figure, steps }) => [figure.name, steps()])),
  [EARTHQUAKE_PUSH]: stepsOf((note) =>
    earthquakeOf(project.site, highestFt(shelter), site.figures.balancedSnow.value, note),
  ).steps,
});
