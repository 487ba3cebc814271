import { describe, expect, it } from 'vitest';
import { COMPONENT_ROWS } from '../../../src/data/loads/free-roof-components.ts';
import { rafterLoading } from '../../../src/engine/checks/roof/rafter-loading.ts';
import { purlinZone } from '../../../src/engine/checks/roof/purlin-loading.ts';
import { givensOf, type Prepared } from '../../../src/engine/givens.ts';
import { reachesEave, reachesGableEnd, zoneAt, zoneCuts } from '../../../src/engine/loads/zones.ts';
import type { Project } from '../../../src/engine/project/model.ts';
import { exampleText, soundProject } from '../../support/files.ts';
import { plainShed } from '../../support/plain-shed.ts';

function prepared(project: Project): Prepared {
  const givens = givensOf(project);
  if ('faults' in givens) throw new Error(JSON.stringify(givens.faults));
  return givens;
}
const contextOf = (givens: Prepared) => ({ ...givens, valuesOf: givens.materials.of });

/** The plain shed: 204 in. along, 162 in. across, 4 in 12, about 10 ft high: a is the least, 36 in. */
const shed = prepared(plainShed());
const EDGE = 36;

describe('zones of a roof', () => {
  const [plane] = shed.shelter.planes;

  it('where two edges meet is a corner, one edge is an edge, none is the field', () => {
    expect([zoneAt(true, true), zoneAt(true, false), zoneAt(false, true), zoneAt(false, false)]).toEqual([3, 2, 2, 1]);
  });

  // By the layout assumed: a strip that touches the limit of an edge zone lies inside, one that passes it does not.
  it('what touches the limit of a zone lies beyond it, what reaches over it lies in it', () => {
    const { fromXIn, toXIn, runIn } = plane!;
    expect(reachesGableEnd(plane!, fromXIn + EDGE, toXIn - EDGE, EDGE)).toBe(false);
    expect(reachesGableEnd(plane!, fromXIn + EDGE - 0.01, toXIn - EDGE, EDGE)).toBe(true);
    expect(reachesGableEnd(plane!, fromXIn + EDGE, toXIn - EDGE + 0.01, EDGE)).toBe(true);
    expect(reachesEave(plane!, EDGE, runIn - EDGE, EDGE)).toBe(false);
    expect(reachesEave(plane!, EDGE - 0.01, runIn - EDGE, EDGE)).toBe(true);
    expect(reachesEave(plane!, EDGE, runIn - EDGE + 0.01, EDGE)).toBe(true);
  });

  // cos of 4 in 12 is 12 / sqrt(160); lengths on plan of 36 in. from both edges of 162 in.
  it('cuts a rafter where the strips along eave and top end', () => {
    const cos = 12 / Math.hypot(12, 4);
    const [rafter] = shed.shelter.rafters;
    const cuts = zoneCuts(plane!, rafter!, EDGE);
    expect(cuts[0]! * cos).toBeCloseTo(36, 9);
    expect(cuts[1]! * cos).toBeCloseTo(162 - 36, 9);
    const ends = shed.runOf(rafter!).parts.map((p) => p.toIn);
    for (const cut of cuts) expect(ends.some((end) => Math.abs(end - cut) < 1e-6)).toBe(true);
  });

  // Rafters at 24 in. from -20 in.: strips of the covering, -30 to 174 in., that begin within 36 in. of an end.
  it('a rafter whose strip reaches into the end strip is corner and edge, one further in edge and field', () => {
    const zones = shed.shelter.rafters.map((rafter) => {
      const { cases, run } = rafterLoading(contextOf(shed), rafter);
      const wind = cases.find((c) => c.loadCase.id === 'wind-up-clear')!;
      return run.parts.map((_, i) => wind.zones![i]!);
    });
    expect(zones.map((parts) => [Math.max(...parts), Math.min(...parts)])).toEqual(
      shed.shelter.rafters.map(({ tributaryFromXIn, tributaryToXIn }) =>
        tributaryFromXIn < plane!.fromXIn + 36 || tributaryToXIn > plane!.toXIn - 36 ? [3, 2] : [2, 1],
      ),
    );
    expect(zones.filter((parts) => Math.min(...parts) === 1).length).toBeGreaterThan(2);
  });

  // Lines 100 in. apart: 26 ft2, in the class from a2 to 4 a2, whose edges lift harder than the field. 142 in. on plan.
  it('the lift of a rafter is that of its zones, each over its own length', () => {
    const short = prepared(plainShed({ lineYsIn: [0, 100] }));
    const rafter = short.shelter.rafters[4]!;
    const { cases, run } = rafterLoading(contextOf(short), rafter);
    const wind = cases.find((c) => c.loadCase.id === 'wind-up-clear')!;
    const lift = run.parts.reduce(
      (sum, { fromIn, toIn }, i) => sum + ((wind.loads[i]!.low + wind.loads[i]!.high) / 2) * (toIn - fromIn),
      0,
    );
    // BNBC Fig. 6.2.19a, clear flow, rows of 15 and 30 degrees from a2 to 4 a2, least coefficients of edge and field
    const share = ((Math.atan(4 / 12) * 180) / Math.PI - 15) / 15;
    const edge = -2.9 + share * (-3.8 + 2.9);
    const field = -1.9 + share * (-2.5 + 1.9);
    const qG = short.site.figures.velocityPressure.value! * 0.85;
    const onSlope = Math.hypot(12, 4) / 12;
    expect(edge).toBeLessThan(field);
    expect(lift).toBeCloseTo((qG * (edge * 72 + field * 70) * onSlope * rafter.tributaryWidthIn) / 144, 6);
  });

  it('a purlin along eave or top is judged as corner, one between them as edge', () => {
    const demo = prepared(soundProject(exampleText('firewood-shed')));
    const [slope] = demo.shelter.planes;
    const a = 12 * Math.max(3, demo.site.figures.edgeWidth.value!);
    const cos = Math.cos((slope!.slopeDeg * Math.PI) / 180);
    for (const purlin of demo.shelter.purlins) {
      const half = (purlin.tributaryWidthIn / 2) * cos;
      const at = purlin.upSlopeIn * cos;
      const isNear = at - half < a - 1e-6 || at + half > slope!.runIn - a + 1e-6;
      expect(purlinZone(contextOf(demo), purlin)).toBe(isNear ? 3 : 2);
    }
    expect(new Set(demo.shelter.purlins.map((p) => purlinZone(contextOf(demo), p)))).toEqual(new Set([2, 3]));
  });

  // The rule that the harder zone counts over the whole width is safe only while the order of zones holds in every cell.
  it('[ASCE 7 Fig. 30.7-1, 30.7-2] in every cell a corner is no softer than an edge, an edge no softer than the field', () => {
    for (const { coefficients } of [...COMPONENT_ROWS.monoslope, ...COMPONENT_ROWS.pitched])
      for (const [corner, edge, field] of [coefficients.clear, coefficients.obstructed]) {
        expect([corner[0] >= edge[0], edge[0] >= field[0]]).toEqual([true, true]);
        expect([corner[1] <= edge[1], edge[1] <= field[1]]).toEqual([true, true]);
      }
  });

  it('both slopes of a gable have corners at the ends of the ridge', () => {
    const gable = prepared(soundProject(exampleText('gable')));
    const first = gable.shelter.planes.map((p) => gable.shelter.rafters.find((r) => r.plane === p.id)!);
    for (const rafter of first) {
      const { cases, run } = rafterLoading(contextOf(gable), rafter);
      const { zones } = cases.find((c) => c.loadCase.id === 'wind-up-clear')!;
      expect([zones![0], zones![run.parts.length - 1]]).toEqual([3, 3]);
    }
  });
});
