import * as fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { placeShelter } from '../../../src/engine/geometry/place-shelter.ts';
import type { Project } from '../../../src/engine/project/model.ts';
import { randomProject } from '../../support/random-project.ts';
import { lineId, PLAIN, plainShed, postId } from '../../support/plain-shed.ts';
import { placed } from '../frame/line-bench.ts';

const sum = (values: readonly number[]): number => values.reduce((a, b) => a + b, 0);

describe('rafters and purlins share the covering', () => {
  it('every inch of the covering is carried by one rafter and by one purlin, in random shelters', () => {
    fc.assert(
      fc.property(randomProject(), (project) => {
        const { shelter } = placeShelter(project);
        for (const plane of shelter.planes) {
          const rafters = shelter.rafters.filter((r) => r.plane === plane.id);
          const purlins = shelter.purlins.filter((p) => p.plane === plane.id);
          expect(sum(rafters.map((r) => r.tributaryWidthIn))).toBeCloseTo(plane.toXIn - plane.fromXIn, 6);
          const slope = plane.runIn * Math.hypot(1, plane.risePer12 / 12);
          expect(sum(purlins.map((p) => p.tributaryWidthIn))).toBeCloseTo(purlins.length > 0 ? slope : 0, 6);
        }
      }),
      { seed: 83, numRuns: 60 },
    );
  });

  it('a rafter carries to half way between its neighbours, an end one out to the edge', () => {
    const { rafters } = placed(plainShed());
    expect(rafters[0]).toMatchObject({ tributaryFromXIn: -30, tributaryToXIn: -8, spacingIn: 24 });
    expect(rafters[7]).toMatchObject({ tributaryFromXIn: 136, tributaryToXIn: 156, spacingIn: 24 });
    expect(rafters[8]).toMatchObject({ tributaryFromXIn: 156, tributaryToXIn: 174, spacingIn: 16 });
  });

  it('supports of a rafter are level distances from the eave, low to high, and stand on the slope', () => {
    const [rafter] = placed(plainShed()).rafters;
    expect(rafter!.supports.map(({ line, atIn }) => [line, atIn])).toEqual([
      [lineId(1), 24],
      [lineId(0), 144],
    ]);
    expect(rafter!.runIn).toBe(162);
    const [low, high] = rafter!.supports;
    expect((high!.zIn - low!.zIn) / (high!.atIn - low!.atIn)).toBeCloseTo(4 / 12, 12);
  });

  it('the covering stands on rafter and purlin, square to the slope, and ends where it is said to', () => {
    const plane = placed(plainShed()).planes[0]!;
    const theta = Math.atan(4 / 12);
    // rafter 8 less its plumb seat cut 0.5, purlin lying flat 2
    const above = (8 - 0.5 * Math.cos(theta) + 2) / Math.cos(theta);
    expect(plane.highZIn).toBeCloseTo(126 + above + (18 * 4) / 12, 9);
    expect(plane.lowZIn).toBeCloseTo(126 + above - ((120 + 24) * 4) / 12, 9);
    expect(plane.slopeDeg).toBeCloseTo(18.435, 3); // tangent a third
  });

  it('mean roof height is from the lowest ground to the middle of the covering, or as typed', () => {
    const shelter = placed(plainShed());
    const plane = shelter.planes[0]!;
    expect(shelter.meanRoofHeightIn).toBeCloseTo((plane.highZIn + plane.lowZIn) / 2, 9);
    const typed = {
      ...plainShed(),
      instead: [{ what: 'meanRoofHeightFt', of: null, value: 11, why: 'surveyed' }],
    } as const;
    expect(placed(typed).meanRoofHeightIn).toBe(132);
  });
});

/** The same project with every list in another order. */
const shuffled = (project: Project): Project => ({
  ...project,
  supportLines: [...project.supportLines].reverse(),
  members: [...project.members].reverse(),
  logs: [...project.logs].reverse(),
  groups: [...project.groups].reverse(),
});

const byId = <T extends { readonly id: string }>(list: readonly T[]): readonly T[] =>
  [...list].sort((a, b) => a.id.localeCompare(b.id));

describe('labels and places', () => {
  it('do not depend on the order in the file', () => {
    fc.assert(
      fc.property(randomProject(), (project) => {
        const [one, two] = [placeShelter(project).shelter, placeShelter(shuffled(project)).shelter];
        const beams = (of: typeof one) => byId(of.beams).map((b) => ({ ...b, cuts: byId(b.cuts) }));
        expect(beams(two)).toEqual(beams(one));
        for (const kind of ['posts', 'braces', 'rafters', 'purlins', 'lines'] as const) {
          expect(byId<{ id: string }>(two[kind])).toEqual(byId<{ id: string }>(one[kind]));
        }
      }),
      { seed: 84, numRuns: 25 },
    );
  });

  it('count lines from the highest down and posts from low x', () => {
    const shelter = placed(plainShed({ postXsIn: [0, 70, 144], pierTopsIn: [6, 6, 6], bracesAt: [] }));
    expect(shelter.lines.map(({ id, label }) => [id, label])).toEqual([
      [lineId(0), 'A'],
      [lineId(1), 'B'],
    ]);
    expect(shelter.posts.map(({ label }) => label)).toEqual(['A1', 'A2', 'A3', 'B1', 'B2', 'B3']);
  });
});

describe('a shelter that cannot be placed as typed', () => {
  const faultsOf = (project: Project): (readonly [string, string])[] =>
    placeShelter(project).faults.map(({ path, code }) => [path, code] as const);

  it('a line that no roof ties to a height', () => {
    const shed = plainShed();
    const alone: Project = {
      ...shed,
      supportLines: [...shed.supportLines, { ...shed.supportLines[1]!, id: 'alone', yIn: 400 }],
    };
    expect(faultsOf(alone)).toEqual([['supportLines[alone].height', 'lineWithoutHeight']]);
  });

  it('a post past the end of its beam', () => {
    const off = plainShed({ postXsIn: [0, 200], bracesAt: [] });
    expect(faultsOf(off)).toContainEqual([`members[${postId(0, 1)}].xIn`, 'postWithoutBeam']);
  });

  it('a pier higher than the seat', () => {
    const high = plainShed({ pierTopsIn: [6, 130], bracesAt: [] });
    expect(faultsOf(high)).toContainEqual([`members[${postId(0, 1)}].pierTopZIn`, 'postHasNoLength']);
  });

  it('a log measured over less than the post needs', () => {
    const shed = plainShed({ bracesAt: [] });
    const short: Project = {
      ...shed,
      logs: shed.logs.map((log) =>
        log.id === 'post-log'
          ? { ...log, stations: log.stations.map((s) => ({ ...s, fromButtIn: s.fromButtIn / 2 })) }
          : log,
      ),
    };
    const faults = placeShelter(short).faults.filter(({ code }) => code === 'postLogTooShort');
    expect(faults.map(({ path }) => path)).toContain(`members[${postId(0, 0)}]`);
    expect(faults[0]!.values['haveIn']).toBe(80);
  });

  it('the plain shed itself has none', () => {
    expect(faultsOf(plainShed(PLAIN))).toEqual([]);
  });
});
