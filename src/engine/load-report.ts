import type { LoadReport } from './evaluation.ts';
import type { LineParts } from './assemble-lines.ts';
import type { SitePressures } from './loads/site/site-pressures.ts';
import { message } from './message.ts';

/** What the site puts on the roof, every case that reaches a line and every combination, each once. */
export function loadReport(site: SitePressures, lines: readonly LineParts[]): LoadReport {
  const cases = new Map(lines.flatMap((l) => l.cases.map((c) => [c.id, c] as const)));
  const combinations = new Map(lines.flatMap((l) => l.combinations.map((c) => [c.id, c] as const)));
  return {
    pressures: Object.entries(site.figures).map(([name, f]) => ({
      name,
      value: f.value,
      unit: f.unit,
      steps: f.steps,
    })),
    gustFactor: site.gustFactor,
    flows: site.flows,
    cases: [...cases.values()].map((c) => ({ id: c.id, kind: c.kind, words: c.words })),
    combinations: [...combinations.values()].map((c) => ({
      id: c.id,
      words: c.words,
      duration: c.durationFactor,
      factors: { dead: c.dead.factor, ...Object.fromEntries(c.factors.map((f) => [f.caseId, f.factor])) },
    })),
    leftOut: [message('seismicLeftOut'), ...(site.figures.rainOnSnow.value === 0 ? [message('rainLeftOut')] : [])],
  };
}
