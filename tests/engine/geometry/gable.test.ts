import { describe, expect, it } from 'vitest';
import { placeShelter } from '../../../src/engine/geometry/place-shelter.ts';
import { ridgeOf } from '../../../src/engine/geometry/ridge.ts';
import type { Project } from '../../../src/engine/project/model.ts';
import { gableTemplate } from '../../../src/engine/project/templates/gable.ts';
import { countedIds } from '../../support/ids.ts';

/**
 * By hand (geometry of two straight lines): ridge bearing at 114 in. over y = 84, eave lines at y = 0 and 168, 3 in 12,
 * eaves 18 in. past their lines, rafters 2 by 8 with a plumb seat cut of 0.75, purlins lying flat 1.5, covering from
 * x = -30 to 186.
 */
const gable = gableTemplate(countedIds());
const placed = (project: Project) => {
  const { shelter, faults } = placeShelter(project);
  expect(faults).toEqual([]);
  return shelter;
};
const shelter = placed(gable);
const COS = 12 / Math.hypot(3, 12);

describe('a gable', () => {
  it('has its eave bearings a quarter of the half width under the ridge', () => {
    expect(shelter.lines.map(({ label, yIn, bearingZIn }) => [label, yIn, bearingZIn])).toEqual([
      ['B', 0, 114 - 84 / 4],
      ['A', 84, 114],
      ['C', 168, 114 - 84 / 4],
    ]);
  });

  it('has two slopes that meet on the axis of the ridge beam at one height, and fall to the drip lines', () => {
    const above = (8 - 0.75 * COS + 1.5) / COS;
    for (const plane of shelter.planes) {
      expect(plane.highYIn).toBe(84);
      expect(plane.highZIn).toBeCloseTo(114 + above, 9);
      expect(plane.lowZIn).toBeCloseTo(114 + above - (84 + 18) / 4, 9);
      expect(plane.runIn).toBe(84 + 18);
    }
    expect(shelter.planes.map(({ lowYIn, downY }) => [lowYIn, downY])).toEqual([
      [-18, -1],
      [186, 1],
    ]);
    expect(ridgeOf(shelter.planes)?.lineId).toBe(shelter.lines[1]!.id);
  });

  it('is 18 by 17 ft in plan, its mean height half way from eave to ridge', () => {
    const [plane] = shelter.planes;
    expect([shelter.planAlongIn, shelter.planAcrossIn]).toEqual([216, 204]);
    expect(shelter.meanRoofHeightIn).toBeCloseTo((plane!.highZIn + plane!.lowZIn) / 2, 9);
  });

  it('has rafters that end on the ridge: supports 18 in. and 102 in. from the eave, one over each line', () => {
    for (const rafter of shelter.rafters) {
      expect(rafter.supports.map(({ atIn, zIn }) => [atIn, zIn])).toEqual([
        [18, 93],
        [102, 114],
      ]);
      expect(rafter.runIn).toBe(102);
    }
    expect(shelter.rafters.length).toBe(20);
  });

  it('shares each slope among its own rafters and purlins, over the whole covering', () => {
    const sum = (values: readonly number[]): number => values.reduce((a, b) => a + b, 0);
    for (const { id } of shelter.planes) {
      const on = <M extends { readonly plane: string }>(members: readonly M[]) => members.filter((m) => m.plane === id);
      expect(sum(on(shelter.rafters).map((r) => r.tributaryWidthIn))).toBeCloseTo(216, 9);
      expect(sum(on(shelter.purlins).map((p) => p.tributaryWidthIn))).toBeCloseTo(102 / COS, 9);
      expect(on(shelter.rafters)[1]!.tributaryWidthIn).toBeCloseTo(23, 9); // 207 in. in nine bays
    }
  });

  it('names rafters and purlins by the line that they fall to, so that no two are called alike', () => {
    const labels = [...shelter.rafters, ...shelter.purlins].map(({ label }) => label);
    expect(new Set(labels).size).toBe(labels.length);
    expect(labels).toContain('rafter B1');
    expect(labels).toContain('purlin C5');
    expect(shelter.planes.map(({ label }) => label)).toEqual(['roof B', 'roof C']);
  });
});

describe('two slopes are no gable', () => {
  const changed = (change: Partial<Project['roofPlanes'][number]>): Project => ({
    ...gable,
    roofPlanes: gable.roofPlanes.map((plane, i) => (i === 0 ? plane : { ...plane, ...change })),
  });

  it.each([
    ['when they rise unequally', { risePer12: 4 }],
    ['when one ends before the other', { toXIn: 182 }],
    ['when they fall the same way', { onLines: gable.roofPlanes[0]!.onLines }],
    ['when one is cut short of the ridge', { onLines: [...gable.roofPlanes[1]!.onLines].reverse(), risePer12: 0 }],
  ] as const)('%s', (_, change) => {
    expect(ridgeOf(placeShelter(changed(change)).shelter.planes)).toBeNull();
  });
});
