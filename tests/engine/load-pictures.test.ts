import { describe, expect, it } from 'vitest';
import type { LoadPicture, LoadStrip } from '../../src/engine/load-pictures/picture.ts';
import { combinationOf, roofPictures, type RoofPictures } from '../../src/engine/load-pictures.ts';
import { evaluate } from '../../src/engine/evaluate.ts';
import { placeShelter } from '../../src/engine/geometry/place-shelter.ts';
import { givensOf } from '../../src/engine/givens.ts';
import { lineLoads } from '../../src/engine/loads/line-loads.ts';
import type { Project } from '../../src/engine/project/model.ts';
import { EXAMPLES, everythingGivenText, exampleText, soundProject } from '../support/files.ts';
import { lineId, plainShed } from '../support/plain-shed.ts';

function drawn(project: Project): RoofPictures {
  const answer = roofPictures(project);
  if (!answer.ok) throw new Error(JSON.stringify(answer.faults));
  return answer;
}

/** What reaches every line of a shelter, the ledger too, straight from the loads. */
function loadingsOf(project: Project) {
  const g = givensOf(project);
  if ('faults' in g) throw new Error(JSON.stringify(g.faults));
  return g.shelter.lines.map((line) =>
    lineLoads(project, g.shelter, line, g.site, g.roof, g.runOf, g.weights, g.earthquake),
  );
}

/** Plumb force of a strip by hand: mean pressure times its area, of the level projection where it acts on that [lb]. */
function plumbLb(strip: LoadStrip, slopeDeg: number): number {
  const cos = Math.cos((slopeDeg * Math.PI) / 180);
  const area = ((strip.toXIn - strip.fromXIn) * (strip.toIn - strip.fromIn)) / 144;
  const mean = (strip.lowPsf + strip.highPsf) / 2;
  // level: psf x (area x cos); square to the slope: (psf x area) x cos; own weight: psf x area
  return strip.acts === 'slope' ? mean * area : mean * area * cos;
}

function drawnLb(project: Project, picture: LoadPicture): number {
  const { planes } = placeShelter(project).shelter;
  return picture.strips.reduce((sum, s) => sum + plumbLb(s, planes.find((p) => p.id === s.planeId)!.slopeDeg), 0);
}

const reachingLb = (project: Project, caseId: string): number =>
  loadingsOf(project)
    .flatMap(({ loads }) => loads.cases.filter((c) => c.caseId === caseId))
    .flatMap((c) => c.points)
    .reduce((sum, p) => sum + p.downLb, 0);

/** How far two sums are apart, as a share of the greater. */
const apart = (a: number, b: number): number => Math.abs(a - b) / Math.max(1, Math.abs(a), Math.abs(b));

const held = (project: Project): Project => ({
  ...project,
  roofPlanes: project.roofPlanes.map((p) => ({ ...p, horizontalHeldBy: p.onLines[0]! })),
});

const PROJECTS: readonly (readonly [name: string, project: Project])[] = [
  ...EXAMPLES.map((name) => [name, held(soundProject(exampleText(name)))] as const),
  ['the file with every field given', held(soundProject(everythingGivenText()))],
  ['a plain shed', plainShed({ horizontalHeldBy: lineId(0) })],
];

describe('loads as they are drawn', () => {
  it.each(PROJECTS)('%s: what a case puts on the strips of the roof is what reaches the lines', (_, project) => {
    const onWholeRoof = drawn(project).pictures.filter(
      (p) => p.actsOn === 'frame' && p.forLine === null && p.kind !== 'dead' && p.strips.length > 0,
    );
    expect(onWholeRoof.map((p) => p.kind)).toEqual(expect.arrayContaining(['snow', 'wind']));
    // live load and partial snow along a beam are each frame line's own: a ledger has none of them
    const hasLedger = project.supportLines.some((l) => l.kind === 'ledger');
    const ofLines = /^(roof-live|snow-along)/;
    for (const picture of onWholeRoof.filter((p) => !hasLedger || !ofLines.test(p.id)))
      expect(apart(drawnLb(project, picture), reachingLb(project, picture.id))).toBeLessThanOrEqual(1e-9);
  });

  it.each(PROJECTS)(
    '%s: every case that the analysis is given has a picture, and no picture is of nothing',
    (_, project) => {
      const { pictures } = drawn(project);
      const shown = new Set(pictures.filter((p) => p.actsOn === 'frame').flatMap((p) => [p.id, ...p.alsoFor]));
      const answer = evaluate(project);
      const cases = answer.ok ? answer.evaluation.loads.cases : [];
      expect(cases.length).toBeGreaterThan(10);
      expect(cases.filter((c) => !shown.has(c.id))).toEqual([]);
      const isBare = ({ strips, points, pushes, across }: LoadPicture): boolean =>
        strips.length + points.length + pushes.length === 0 && across === null;
      expect(pictures.filter(isBare)).toEqual([]);
    },
  );

  it('a line that carries its own roof live shows it by itself', () => {
    const wide = plainShed({
      overhangsIn: [30, 24],
      lineYsIn: [0, 260],
      bearing: { line: 0, of: 'bearing', zIn: 160 },
    });
    const live = drawn(wide).pictures.filter((p) => p.id === 'roof-live');
    expect(live.map((p) => p.forLine)).toEqual([lineId(0), lineId(1)]);
    const [a, b] = live.map((p) => p.strips[0]!.lowPsf);
    const loadings = loadingsOf(wide);
    expect([a, b]).toEqual(loadings.map((l) => l.roofLivePsf));
    expect(a).not.toBe(b);
  });

  // balanced snow over the whole plane is one strip: 204 in. along, 162 in. of level run at 4 in 12
  it('strips that go on are drawn as one', () => {
    const snow = drawn(plainShed()).pictures.find((p) => p.id === 'snow')!;
    expect(snow.strips).toHaveLength(1);
    const [strip] = snow.strips;
    expect(strip!.toXIn - strip!.fromXIn).toBeCloseTo(204, 9);
    expect(strip!.toIn - strip!.fromIn).toBeCloseTo((162 * Math.hypot(4, 12)) / 12, 9);
  });

  it('weights that are drawn are the dead load of the lines, less posts and braces', () => {
    const project = plainShed();
    const { pictures } = drawn(project);
    const dead = pictures[0]!;
    const { rafters } = placeShelter(project).shelter;
    const slopeFt = (rafters[0]!.runIn * Math.hypot(4, 12)) / 12 / 12;
    const ofRafters = dead.rafters.reduce((sum, r) => sum + r.downLbPerFt * slopeFt, 0);
    const ofBeams = dead.along.reduce(
      (sum, { stations }) =>
        sum +
        stations
          .slice(1)
          .reduce(
            (s, b, i) => s + (((b.downLbPerFt + stations[i]!.downLbPerFt) / 2) * (b.xIn - stations[i]!.xIn)) / 12,
            0,
          ),
      0,
    );
    const loadings = loadingsOf(project);
    const roofAndBeams = loadings
      .flatMap(({ loads }) => loads.dead.filter((d) => d.piece !== 'posts'))
      .reduce((sum, { heavy }) => {
        const beam = heavy.onBeam
          .slice(1)
          .reduce(
            (s, b, i) => s + ((b.downLbPerIn + heavy.onBeam[i]!.downLbPerIn) / 2) * (b.xIn - heavy.onBeam[i]!.xIn),
            0,
          );
        return sum + beam + heavy.points.reduce((s, p) => s + p.downLb, 0);
      }, 0);
    expect(apart(drawnLb(project, dead) + ofRafters + ofBeams, roofAndBeams)).toBeLessThanOrEqual(1e-9);
  });

  it('a push on a line is the sum of what the wind presses on, and all of it reaches the line', () => {
    const project = soundProject(everythingGivenText());
    const winds = drawn(project).pictures.filter((p) => p.kind === 'wind' && p.pushes.length > 0);
    expect(winds.length).toBeGreaterThan(0);
    for (const { id, pushes } of winds) {
      for (const { lineId: line, alongLb, parts } of pushes) {
        const pressed = parts.reduce((sum, p) => sum + p.forceLb, 0);
        expect(apart(Math.abs(alongLb), pressed)).toBeLessThanOrEqual(1e-9);
        const loads = loadingsOf(project).find((l) => l.loads.lineId === line)!.loads;
        expect(alongLb).toBe(loads.alongLb[id]);
      }
    }
  });

  // zone layout as the engine assumes it, by hand: a = 3 ft, plane 204 in. by 162 in. of level run at 4 in 12
  it('wind on the sheet lies in nine cells, hardest in the corners, and covers the slope once', () => {
    const up = drawn(plainShed()).pictures.filter((p) => p.actsOn === 'sheet' && p.id.startsWith('wind-up'));
    expect(up.length).toBeGreaterThan(0);
    const stretch = Math.hypot(4, 12) / 12;
    for (const { strips } of up) {
      const areaIn2 = strips.reduce((sum, s) => sum + (s.toXIn - s.fromXIn) * (s.toIn - s.fromIn), 0);
      expect(areaIn2).toBeCloseTo(204 * 162 * stretch, 6);
      const at = (x: number, levelIn: number): number =>
        strips.find(
          (s) =>
            s.fromXIn - strips[0]!.fromXIn <= x &&
            x <= s.toXIn - strips[0]!.fromXIn &&
            s.fromIn <= levelIn * stretch &&
            levelIn * stretch <= s.toIn,
        )!.lowPsf;
      expect(at(10, 10)).toBeLessThan(at(100, 10));
      expect(at(100, 10)).toBeLessThan(at(100, 81));
      expect(at(10, 81)).toBe(at(100, 10));
      expect(at(190, 150)).toBe(at(10, 10));
    }
  });

  // direction 0 of a single slope meets its high edge; the plain shed falls toward +y (ASCE 7-16 Fig. 27.3-4)
  it('wind is said to blow where its case has it', () => {
    const { pictures } = drawn(plainShed());
    const toward = (start: string) => new Set(pictures.filter((p) => p.id.startsWith(start)).map((p) => p.windToward));
    expect(toward('wind-0-')).toEqual(new Set(['yPlus']));
    expect(toward('wind-180-')).toEqual(new Set(['yMinus']));
    expect(toward('wind-along-plus')).toEqual(new Set(['xPlus']));
    expect(toward('wind-along-minus')).toEqual(new Set(['xMinus']));
    expect(toward('snow')).toEqual(new Set([null]));
  });

  it('the combination that an id names has the factors of the one that judged', () => {
    const project = soundProject(exampleText('firewood-shed'));
    const { cases } = drawn(project);
    const answer = evaluate(project);
    if (!answer.ok) throw new Error('no figures');
    for (const { id, factors } of answer.evaluation.loads.combinations) {
      const found = combinationOf(cases, id, project.calculation.kcr)!;
      expect({
        dead: found.dead.factor,
        ...Object.fromEntries(found.factors.map((f) => [f.caseId, f.factor])),
      }).toEqual(factors);
    }
    const judged = answer.evaluation.checks.filter((row) => row.combinationId !== '' && row.ratio !== null);
    expect(judged.filter((row) => combinationOf(cases, row.combinationId, project.calculation.kcr) === null)).toEqual(
      [],
    );
    expect(combinationOf(cases, 'no such', 1.5)).toBeNull();
  });

  it('a case that does not apply is named with its reason, and only then', () => {
    const codes = (project: Project): readonly string[] => drawn(project).leftOut.map((m) => m.code);
    const demo = soundProject(exampleText('firewood-shed'));
    expect(codes(demo)).not.toContain('ownLoadsNone');
    expect(codes({ ...demo, ownLoads: [] })).toContain('ownLoadsNone');
    expect(codes(demo)).toContain('goodsStandAlone');
    expect(codes({ ...demo, surroundings: { ...demo.surroundings, goods: null } })).toContain('goodsNone');
    // 3 in 12 is 14.04 degrees: least snow of low slopes ends at 15 (ASCE 7-16 7.3.4)
    expect(codes(demo)).not.toContain('leastSnowLeftOut');
    const steep = { ...demo, roofPlanes: demo.roofPlanes.map((p) => ({ ...p, risePer12: 4 })) };
    expect(codes(steep)).toContain('leastSnowLeftOut');
    expect(codes(demo)).toContain('bandsLeftOut');
    const calm = { ...demo, site: { ...demo.site, windMph: { ...demo.site.windMph, value: null } } };
    expect(codes(calm)).toContain('windNotKnown');
    expect(drawn(calm).pictures.filter((p) => p.kind === 'wind')).toEqual([]);
  });

  it('a shelter that cannot be placed answers with its faults', () => {
    const project = plainShed();
    expect(roofPictures({ ...project, supportLines: [] })).toMatchObject({ ok: false });
  });
});
