import { describe, expect, it } from 'vitest';
import type { RafterGeometry } from '../../../src/engine/geometry/shelter.ts';
import type { Prepared } from '../../../src/engine/givens.ts';
import { atEnds } from '../../../src/engine/loads/rafter-reactions.ts';
import type { RoofCase } from '../../../src/engine/loads/roof-cases.ts';
import type { Project } from '../../../src/engine/project/model.ts';
import { EXAMPLES } from '../../support/files.ts';
import { beside, onLines, prepared, project, total } from './snow-support.ts';

/** Snow of a case on the plan of one rafter's strip, part by part as trapezoids [lb]. */
function onPlan({ runOf }: Prepared, rafter: RafterGeometry, c: RoofCase): number {
  const run = runOf(rafter);
  return run.parts.reduce((sum, part) => {
    const { low, high } = atEnds(c.pressure(rafter, part).plumbPsf);
    const levelIn = (part.toIn - part.fromIn) * run.cos;
    return sum + (((low + high) / 2) * levelIn * rafter.tributaryWidthIn) / 144;
  }, 0);
}

const neighbours = (name: string, of: Project): readonly (readonly [string, Project])[] => [
  [name, of],
  [`${name} below a step on its high side`, beside(of, { side: 'yMinus', slidesThisWay: true }, 90)],
  [`${name} below a step on its low side`, beside(of, { side: 'yPlus', slidesThisWay: true }, 90)],
  [`${name} below a step at its end`, beside(of, { side: 'xPlus', slidesThisWay: true }, 90)],
  [`${name} across a gap`, beside(of, { side: 'xMinus', gapFt: 3, slidesThisWay: true }, 90)],
];
const ALL = EXAMPLES.flatMap((name) => neighbours(name, project(name)));

describe('snow on the roof comes down on the lines', () => {
  it.each(ALL)('whole, in every case of %s', (_, of) => {
    const givens = prepared(of);
    const cases = givens.roof.filter((c) => c.kind === 'snow');
    expect(cases.length).toBeGreaterThan(0);
    for (const c of cases) {
      const there = givens.shelter.rafters.reduce((sum, r) => sum + onPlan(givens, r, c), 0);
      expect(total(onLines(givens, c)) / there).toBeCloseTo(1, 9);
    }
  });

  // the distance from the step alone decides: a drift seen on a fine grid of the plan weighs what its trapezoids weigh
  it.each(ALL.filter(([words]) => words.includes('step')))('as much as a fine grid of the plan holds, %s', (_, of) => {
    const givens = prepared(of);
    for (const uneven of givens.site.uneven.cases.filter((c) => c.surplus?.axis === 'y')) {
      const { bands, toward, zeroIn } = uneven.surplus!;
      const c = givens.roof.find(({ id }) => id === uneven.id)!;
      for (const rafter of givens.shelter.rafters.slice(0, 1)) {
        const n = 20_000;
        const step = rafter.runIn / n;
        let sum = 0;
        for (let i = 0; i < n; i++) {
          const d = toward * (rafter.eaveYIn - rafter.downY * (i + 0.5) * step - zeroIn);
          const band = bands.find((b) => d > b.fromIn && d < b.toIn);
          const more = band
            ? band.fromPsf + ((band.toPsf - band.fromPsf) * (d - band.fromIn)) / (band.toIn - band.fromIn)
            : 0;
          sum += ((uneven.evenPsf(rafter.plane) + more) * step * rafter.tributaryWidthIn) / 144;
        }
        expect(onPlan(givens, rafter, c) / sum).toBeCloseTo(1, 3);
      }
    }
  });
});
