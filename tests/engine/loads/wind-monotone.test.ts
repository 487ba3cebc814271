import { describe, expect, it } from 'vitest';
import { COMPONENT_ROWS, type ComponentRow } from '../../../src/data/loads/free-roof-components.ts';
import { WIND_THRESHOLDS } from '../../../src/data/loads/wind-thresholds.ts';
import { givensOf, type Prepared } from '../../../src/engine/givens.ts';
import { componentWind } from '../../../src/engine/loads/component-cases.ts';
import { atEnds } from '../../../src/engine/loads/rafter-reactions.ts';
import { areaClass } from '../../../src/engine/loads/site/components.ts';
import { topographicFactor } from '../../../src/engine/loads/site/topography.ts';
import { windOnSolid } from '../../../src/engine/loads/solid-wind.ts';
import type { Project } from '../../../src/engine/project/model.ts';
import { EXAMPLES, exampleText, soundProject } from '../../support/files.ts';

const T = WIND_THRESHOLDS;
const SPEEDS = Array.from({ length: 21 }, (_, i) => 80 + 5 * i);

function inWind(project: Project, mph: number): Prepared {
  const { site } = project;
  const givens = givensOf({ ...project, site: { ...site, windMph: { ...site.windMph, value: mph } } });
  if ('faults' in givens) throw new Error(JSON.stringify(givens.faults));
  return givens;
}

/** Every wind of a shelter on every part of its first rafter, and on components in every zone. */
function pressures({ roof, shelter, runOf, site, form }: Prepared): readonly number[] {
  const rafter = shelter.rafters[0]!;
  const onFrame = roof
    .filter((c) => c.kind === 'wind')
    .flatMap((c) => runOf(rafter).parts.map((part) => atEnds(c.pressure(rafter, part).squarePsf).low));
  const wind = componentWind(site, form, rafter.slopeDeg, 'upToA2');
  return [...onFrame, ...(wind.ok ? wind.cases.flatMap(({ psf }) => [psf[1], psf[2], psf[3]]) : [])];
}

describe('more wind', () => {
  it.each(EXAMPLES)('never presses or lifts any part of %s less', (name) => {
    const project = soundProject(exampleText(name));
    const bySpeed = SPEEDS.map((mph) => pressures(inWind(project, mph)));
    bySpeed.slice(1).forEach((harder, i) => {
      const softer = bySpeed[i]!;
      expect(harder).toHaveLength(softer.length);
      expect(harder.filter((psf, k) => Math.abs(psf) < Math.abs(softer[k]!) - 1e-9)).toEqual([]);
    });
  });

  it('never drags a flat part less, and a round one only where its D sqrt(q) passes the limit', () => {
    const project = soundProject(exampleText('firewood-shed'));
    const solid = (diameterIn: number | null) =>
      SPEEDS.map((mph) => {
        const { site } = inWind(project, mph);
        return { psf: windOnSolid(site, 0.2, diameterIn), rootQ: Math.sqrt(site.figures.velocityPressure.value!) };
      });
    for (const diameterIn of [null, 4, 8, 12]) {
      const all = solid(diameterIn);
      all.slice(1).forEach((harder, i) => {
        const softer = all[i]!;
        const flow = (rootQ: number): boolean => ((diameterIn ?? 0) / 12) * rootQ <= T.roundFlow.at;
        const passes = flow(softer.rootQ) && !flow(harder.rootQ);
        expect(harder.psf >= softer.psf || passes).toBe(true);
      });
    }
  });
});

describe('thresholds of the wind', () => {
  it('areas at a limit belong to the smaller class', () => {
    const a = 3;
    expect(areaClass(T.smallArea.at * a * a, a)).toBe('upToA2');
    expect(areaClass(T.smallArea.at * a * a + 0.001, a)).toBe('upTo4A2');
    expect(areaClass(T.middleArea.at * a * a, a)).toBe('upTo4A2');
    expect(areaClass(T.middleArea.at * a * a + 0.001, a)).toBe('over4A2');
  });

  it('[ASCE 7 Fig. 30.7-1, 30.7-2] a smaller area is never softer, in any zone and flow', () => {
    for (const form of ['monoslope', 'pitched'] as const) {
      const rows = COMPONENT_ROWS[form];
      const cells = (row: ComponentRow) => [...row.coefficients.clear, ...row.coefficients.obstructed];
      for (const { slopeDeg } of rows) {
        const of = (area: ComponentRow['areaClass']) =>
          cells(rows.find((row) => row.slopeDeg === slopeDeg && row.areaClass === area)!);
        const [small, middle, large] = [of('upToA2'), of('upTo4A2'), of('over4A2')];
        small.forEach(([press, lift], i) => {
          expect([press >= middle[i]![0], lift <= middle[i]![1]]).toEqual([true, true]);
          expect([middle[i]![0] >= large[i]![0], middle[i]![1] <= large[i]![1]]).toEqual([true, true]);
        });
      }
    }
  });

  it('flow is clear up to half the opening blocked, obstructed too above it', () => {
    const project = soundProject(exampleText('firewood-shed'));
    const flows = (blockedShare: number) => {
      const goods = { blockedShare, heightIn: 40, leansOnLines: [] };
      return inWind({ ...project, surroundings: { ...project.surroundings, goods } }, 100).site.flows;
    };
    expect(flows(T.clearFlow.at)).toEqual(['clear']);
    expect(flows(T.clearFlow.at + 0.01)).toEqual(['clear', 'obstructed']);
  });

  it('a hill counts from its steepness on', () => {
    const hill = {
      shape: 'hill',
      exposure: 'D',
      distanceFt: 0,
      side: 'upwind',
      roofHeightFt: 10,
      heightFt: 40,
    } as const;
    expect(topographicFactor({ ...hill, halfLengthFt: 40 / T.hill.at })).toBeGreaterThan(1);
    expect(topographicFactor({ ...hill, halfLengthFt: 40 / T.hill.at + 0.1 })).toBe(1);
  });

  it('each stands in the table once, with its clause', () => {
    const all = Object.values(T).map(({ of }) => of);
    expect(new Set(all).size).toBe(all.length);
    expect([T.flatRow.at, T.figureEnds.at, T.bandsSlope.at, T.bandsHeight.at, T.walledSlope.at]).toEqual([
      7.5, 45, 5, 0.25, 10,
    ]);
  });
});
