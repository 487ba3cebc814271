import { describe, expect, it } from 'vitest';
import { weightsAt } from '../../../../src/engine/checks/joints/chain-weights.ts';
import { isWorse } from '../../../../src/engine/check.ts';
import { memberWeights, wholeWeight } from '../../../../src/engine/loads/weights.ts';
import type { Project } from '../../../../src/engine/project/model.ts';
import { upliftOf } from '../../../../src/engine/uplift.ts';
import { EXAMPLES, everythingGivenText, exampleText, soundProject } from '../../../support/files.ts';
import { COVERING, plainShed, WEIGHT } from '../../../support/plain-shed.ts';
import { evaluated } from '../../whole/whole.ts';

const chainsOf = (project: Project) => upliftOf(project, evaluated(project));

describe('weight on the way down', () => {
  const project = plainShed();
  const { shelter } = evaluated(project);
  const weighed = { project, shelter, weights: memberWeights(project, shelter) };
  const pieces = shelter.lines.flatMap((line) =>
    shelter.posts.filter((p) => p.line === line.id).map((post) => weightsAt(weighed, line, post)),
  );
  const all = (piece: keyof (typeof pieces)[number]): number => pieces.reduce((sum, p) => sum + p[piece], 0);

  // By hand: 3 psf on the whole slope, 204 in. by (120 + 18 + 24) in. of level run at 4 in 12; purlins and rafters are in it.
  it('counts the covering of the whole roof once over all posts', () => {
    const slopeFt2 = (204 * ((162 * Math.sqrt(160)) / 12)) / 144;
    expect(all('covering')).toBeCloseTo(COVERING.light * slopeFt2, 6);
    expect([all('purlins'), all('rafters'), all('strip')]).toEqual([0, 0, 0]);
  });

  // Beam logs of 12 to 10 in. over 240 in., of which a beam takes the first 192 in.; 30 pcf.
  it('counts both beams, all braces and all posts once', () => {
    const cone = (d1: number, d2: number, lengthIn: number): number =>
      (((Math.PI / 12) * lengthIn * (d1 * d1 + d1 * d2 + d2 * d2)) / 1728) * WEIGHT.light;
    const beam = cone(12, 12 - (2 * 192) / 240, 192);
    const braces = shelter.braces.map((b) => ((Math.PI * 25) / 4 / 1728) * b.lengthIn * WEIGHT.light);
    const posts = shelter.posts.map((p) => wholeWeight(weighed.weights.of(p.id), p.lengthIn).light);
    const sum = (values: readonly number[]): number => values.reduce((a, b) => a + b, 0);
    expect(all('beam') + all('post')).toBeCloseTo(2 * beam + sum(braces) + sum(posts), 4);
  });
});

describe('the uplift chain of a post', () => {
  it.each([...EXAMPLES])('of %s runs from the sheet to the pier, with the worst link marked', (name) => {
    const project = soundProject(exampleText(name));
    const chains = chainsOf(project);
    const posts = project.members.filter((m) => m.role === 'post');
    expect(chains.map((c) => c.postId).toSorted()).toEqual(posts.map((p) => p.id).toSorted());
    for (const { links, weakest } of chains) {
      expect(links.map((l) => l.name)).toEqual(['sheet', 'purlin', 'rafter', 'strip', 'beam', 'post', 'foot', 'pier']);
      const rows = links.flatMap((l) => l.row ?? []);
      expect(rows.filter((row) => isWorse(row, links[weakest]!.row!)).map((row) => row.key)).toEqual([]);
      expect(links.every((l) => l.addedLb >= 0)).toBe(true);
    }
  });

  it('says what one change raises it: the rating that is least, then the next', () => {
    const project = soundProject(everythingGivenText());
    const [chain] = chainsOf(project);
    const { links, weakest, raise } = chain!;
    const row = links[weakest]!.row!;
    expect(['chainHoldMore', 'chainPierHeavier', 'chainPostThicker']).toContain(raise.code);
    expect(raise.values['demand']).toBe(row.demand!.value);
    const others = links.filter((_, i) => i !== weakest).map((l) => l.row?.ratio ?? 0);
    expect(row.ratio!).toBeGreaterThanOrEqual(Math.max(...others));
  });

  it('names the joint that nobody rated', () => {
    const project = soundProject(everythingGivenText());
    const joints = { defaults: project.joints.defaults.filter(({ kind }) => kind !== 'stripBeam'), own: [] };
    for (const { raise, label } of chainsOf({ ...project, joints }))
      expect([raise.code, raise.values['link'], raise.values['post']]).toEqual([
        'chainNotGiven',
        'strip on its beam',
        label,
      ]);
  });

  // A base that only touches its pier: nothing is known of how much it lifts beyond that it does, and no pound of capacity.
  it('says that no number tells where nothing but contact holds, or no wind is known', () => {
    const project = soundProject(everythingGivenText());
    const own = { kind: 'beamPost', capacity: { kind: 'none' } } as const;
    const others = project.joints.defaults.filter(({ kind }) => kind !== 'beamPost');
    const loose = chainsOf({ ...project, joints: { defaults: [...others, own], own: [] } });
    for (const { links, weakest, raise } of loose) {
      expect([raise.code, raise.values['link']]).toEqual(['chainNotTold', 'beam on its post']);
      expect(links[weakest]!.row!.capacity).toBeNull();
    }
    const { site } = project;
    const calm = { ...project, site: { ...site, windMph: { ...site.windMph, value: null } } };
    for (const { raise } of chainsOf(calm)) expect(raise.code).toBe('chainNotTold');
  });

  it('names the unit that its link is asked in: the sheet by the foot', () => {
    const project = soundProject(everythingGivenText());
    const joints = {
      defaults: project.joints.defaults.filter(({ kind }) => kind !== 'sheetPurlin' && kind !== 'sheetRafter'),
      own: [],
    };
    for (const { raise } of chainsOf({ ...project, joints }))
      expect([raise.code, raise.values['link'], raise.values['unit']]).toEqual([
        'chainNotGiven',
        'sheet screws',
        'lb/ft',
      ]);
  });
});
