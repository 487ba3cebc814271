import { describe, expect, it } from 'vitest';
import { rafterChecks } from '../../../src/engine/checks/roof/rafter-checks.ts';
import { givensOf, type Givens } from '../../../src/engine/givens.ts';
import type { LineCase } from '../../../src/engine/loads/cases.ts';
import { combine } from '../../../src/engine/loads/combine.ts';
import { lineLoads, type LineLoading } from '../../../src/engine/loads/line-loads.ts';
import { atEnds } from '../../../src/engine/loads/rafter-reactions.ts';
import { roofFormOf, type RoofCase } from '../../../src/engine/loads/roof-cases.ts';
import type { OwnLoad, Project } from '../../../src/engine/project/model.ts';
import { EXAMPLES, everythingGivenText, exampleText, soundProject } from '../../support/files.ts';
import { evaluated, off } from '../whole/whole.ts';

const shed = soundProject(exampleText('firewood-shed'));
const own = (id: string, kind: OwnLoad['kind'], direction: OwnLoad['direction'], where: OwnLoad['where']): OwnLoad => ({
  id,
  name: id,
  kind,
  direction,
  where,
  duration: 'tenYears',
  removable: true,
});
const [{ id: high }, { id: low }] = [shed.supportLines[0]!, shed.supportLines[1]!];
const rafter = shed.members.find((m) => m.role === 'rafter')!.id;
const post = shed.members.find((m) => m.role === 'post')!.id;
const OWN: readonly OwnLoad[] = [
  own('rack', 'live', 'down', { on: 'line', line: high, xIn: 60, lb: 120 }),
  own('line', 'live', 'xPlus', { on: 'member', member: post, atIn: 60, lb: 50 }),
  own('panels', 'dead', 'down', { on: 'line', line: low, xIn: 60, lb: 200 }),
  own('heap', 'snow', 'down', { on: 'member', member: rafter, atIn: 60, lb: 80 }),
  own('sign', 'wind', 'up', { on: 'stretch', line: low, fromXIn: 10, toXIn: 70, plf: 12 }),
];
const shaken: Project = {
  ...shed,
  ownLoads: OWN,
  site: { ...shed.site, seismic: { sds: 0.7, sd1: 0.3, r: 1.5, rGivenBy: '' } },
};

const PROJECTS: readonly (readonly [string, Project])[] = [
  ...EXAMPLES.map((name) => [name, soundProject(exampleText(name))] as const),
  ['everything-given', soundProject(everythingGivenText())],
  ['a shed with own loads of every kind in an earthquake', shaken],
];

function givens(project: Project): Givens {
  const answer = givensOf(project);
  if ('faults' in answer) throw new Error(JSON.stringify(answer.faults));
  return answer;
}

const loadingsOf = (g: Givens): readonly LineLoading[] =>
  g.shelter.lines
    .filter((line) => line.kind === 'frame')
    .map((line) => lineLoads(g.project, g.shelter, line, g.site, g.roof, g.runOf, g.weights, g.earthquake));

const sum = (values: readonly number[]): number => values.reduce((a, b) => a + b, 0);
const downOf = (c: LineCase | undefined): number =>
  sum([...(c?.points ?? []), ...(c?.atPosts ?? [])].map((p) => p.downLb));

describe.each(PROJECTS)('from the site to the ground, %s', (_, project) => {
  it('every case of the roof reaches every frame line', () => {
    const g = givens(project);
    for (const { loads } of loadingsOf(g)) {
      const there = new Set(loads.cases.map((c) => c.caseId));
      expect(g.roof.filter(({ id }) => !there.has(id))).toEqual([]);
    }
  });

  it('every case on a line is asked in a combination, and every combination asks cases that are there', () => {
    for (const { loads, cases } of loadingsOf(givens(project))) {
      const asked = new Set(combine(cases).flatMap((c) => c.factors.map((f) => f.caseId)));
      expect(cases.map(({ id }) => id).filter((id) => !asked.has(id))).toEqual([]);
      const there = new Set(loads.cases.map((c) => c.caseId));
      expect([...asked].filter((id) => !there.has(id))).toEqual([]);
      expect(there.size).toBe(loads.cases.length);
    }
  });

  it('every case on a rafter is asked in a combination', () => {
    const { materials, ...g } = givens(project);
    for (const { loading, responses } of rafterChecks({
      ...g,
      form: roofFormOf(g.shelter.planes),
      valuesOf: materials.of,
    }).analysed) {
      const asked = new Set(responses.flatMap((r) => r.combination.factors.map((f) => f.caseId)));
      expect(loading.cases.map((c) => c.loadCase.id).filter((id) => !asked.has(id))).toEqual([]);
    }
  });

  it('the report lists every case of every line, and what is left out with a reason', () => {
    const { loads } = evaluated(project);
    const listed = new Set(loads.cases.map(({ id }) => id));
    const onLines = loadingsOf(givens(project)).flatMap(({ cases }) => cases.map(({ id }) => id));
    expect(onLines.filter((id) => !listed.has(id))).toEqual([]);
    const inertia = project.site.seismic ? 'notionalLeftOut' : 'seismicLeftOut';
    expect(loads.leftOut.map(({ code }) => code)).toContain(inertia);
  });
});

describe('what comes down on the lines', () => {
  const squarely: Project = {
    ...shaken,
    roofPlanes: shaken.roofPlanes.map((plane) => ({ ...plane, horizontalHeldBy: 'each-square' })),
  };
  const g = givens(squarely);
  const loadings = loadingsOf(g);
  const reaching = (id: string): number =>
    sum(loadings.map(({ loads }) => downOf(loads.cases.find((c) => c.caseId === id))));

  /** Pressures times areas, put together part by part of every rafter. */
  const onRoof = (c: RoofCase): number =>
    sum(
      g.shelter.rafters.flatMap((r) => {
        const run = g.runOf(r);
        return run.parts.map((part) => {
          const { plumbPsf, squarePsf } = c.pressure(r, part);
          const [plumb, square] = [atEnds(plumbPsf), atEnds(squarePsf)].map((p) => (p.low + p.high) / 2);
          const slopeFt2 = ((part.toIn - part.fromIn) * r.tributaryWidthIn) / 144;
          return (plumb! + square!) * slopeFt2 * run.cos;
        });
      }),
    );

  it('of every case of the roof is what lies on it, plumb', () => {
    for (const c of g.roof) expect(off(reaching(c.id), onRoof(c))).toBeLessThan(1e-9);
  });

  it('of own loads is what somebody typed', () => {
    expect(reaching('own-live')).toBeCloseTo(120, 6);
    expect(reaching('own-wind-up')).toBeCloseTo(-12 * 5, 6);
    // each line that it touches lists it on its balanced snow
    const balanced = loadings.filter(({ cases }) => cases.some(({ id }) => id === 'own-snow'));
    const snow = sum(balanced.map(({ loads }) => downOf(loads.cases.find((c) => c.caseId === 'snow'))));
    expect(reaching('own-snow') - snow).toBeCloseTo(80, 6);
  });

  it('sways the lines with what an earthquake makes of their weight', () => {
    for (const { loads } of loadings) expect(loads.alongLb['seismic-plus']).toBeCloseTo(loads.inertiaLb, 9);
  });
});
