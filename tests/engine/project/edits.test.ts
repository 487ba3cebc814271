import * as fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { MisuseError } from '../../../src/engine/errors.ts';
import { addPost, movePost } from '../../../src/engine/project/edits/posts.ts';
import { removeMember } from '../../../src/engine/project/edits/remove-member.ts';
import { respaceRafters } from '../../../src/engine/project/edits/respace-rafters.ts';
import { setAt } from '../../../src/engine/project/edits/set-at.ts';
import { setStation } from '../../../src/engine/project/edits/set-station.ts';
import { fingerprint } from '../../../src/engine/project/fingerprint.ts';
import type { Project } from '../../../src/engine/project/model.ts';
import { parseProject } from '../../../src/engine/project/parse.ts';
import { membersOf } from '../../../src/engine/project/traits.ts';
import { exampleText, soundProject } from '../../support/files.ts';
import { countedIds } from '../../support/ids.ts';
import { randomProject } from '../../support/random-project.ts';

function frozen<T>(value: T): T {
  if (typeof value === 'object' && value !== null) Object.values(Object.freeze(value)).forEach(frozen);
  return value;
}
/** Frozen to the last leaf: an edit that changed it would throw. */
const shed = frozen(soundProject(exampleText('firewood-shed')));
const leanTo = frozen(soundProject(exampleText('lean-to')));
const isSound = (project: Project) => parseProject(project).ok;
const rafterXs = (project: Project) =>
  membersOf(project, 'rafter')
    .map(({ xIn }) => xIn)
    .sort((a, b) => a - b);
function newIds(): (what: string) => string {
  const next = countedIds();
  return (what) => next(`more-${what}`);
}

describe('setAt', () => {
  it('sets one field by its path and shares the rest', () => {
    const edited = setAt(shed, 'members[post-2].pierTopZIn', 7);
    expect(membersOf(edited, 'post').map(({ pierTopZIn }) => pierTopZIn)).toEqual([6, 7, 5, 4.5]);
    expect(edited.logs).toBe(shed.logs);
    expect(isSound(edited)).toBe(true);
  });

  it('makes the own field of a member, and taking it away leaves the project as it was', () => {
    const edited = setAt(shed, 'members[brace-1].own.runIn', 26);
    expect(parseProject(edited)).toMatchObject({ ok: true });
    expect(membersOf(edited, 'brace')[0]).toMatchObject({ own: { runIn: 26 } });
    expect(fingerprint(setAt(edited, 'members[brace-1].own.runIn', undefined))).toBe(fingerprint(shed));
  });

  it('sets a value to null, and an element of a list by its place', () => {
    expect(setAt(shed, 'site.groundSnowPsf.value', null).site.groundSnowPsf.value).toBeNull();
    expect(setAt(shed, 'logs[log-2].stations[1].diameterIn', 12).logs[1]?.stations[1]?.diameterIn).toBe(12);
  });

  it('does not judge the value: the door names its fault at the same path', () => {
    const answer = parseProject(setAt(shed, 'site.groundSnowPsf.value', -5));
    expect(answer).toMatchObject({ ok: false, faults: [{ path: 'site.groundSnowPsf.value', code: 'tooSmall' }] });
  });

  it.each([
    'members[post-9].xIn',
    'members[post-2].yIn',
    'members[post-2].own.colour',
    'surroundings.neighbour.gapFt',
    'colour',
    '__proto__',
    'site.__proto__.x',
    '',
  ])('“%s” is no field of the project: misuse', (path) => {
    expect(() => setAt(shed, path, 1)).toThrow(MisuseError);
  });

  it('setting a field to what it holds changes nothing in any project', () => {
    fc.assert(
      fc.property(randomProject(), (project) => {
        const post = membersOf(project, 'post')[0]!;
        expect(setAt(project, `members[${post.id}].xIn`, post.xIn)).toEqual(project);
      }),
      { seed: 11, numRuns: 30 },
    );
  });
});

describe('posts', () => {
  it('movePost changes the x of that post only', () => {
    const moved = movePost(leanTo, 'post-2', 100);
    const changed = moved.members.filter((member, i) => member !== leanTo.members[i]);
    expect(changed).toEqual([expect.objectContaining({ id: 'post-2', xIn: 100 })]);
  });

  it('movePost takes the posts that tie logs join along, so that the ties stay square', () => {
    const moved = movePost(shed, 'post-2', 140);
    const changed = moved.members.filter((member, i) => member !== shed.members[i]);
    expect(changed).toEqual([
      expect.objectContaining({ id: 'post-2', xIn: 140 }),
      expect.objectContaining({ id: 'post-4', xIn: 140 }),
    ]);
    expect(isSound(moved)).toBe(true);
  });

  it('movePost takes the ends of two beams that meet over the post along', () => {
    const split = addPost(shed, 'post-5', 'line-high', 78);
    const members = split.members.flatMap((member) => {
      if (member.id !== 'beam-high' || member.role !== 'beam') return [member];
      return [
        { ...member, own: { stock: null }, toXIn: 78 },
        { ...member, id: 'beam-more', own: { stock: null }, fromXIn: 78 },
      ];
    });
    const moved = movePost({ ...split, members }, 'post-5', 70);
    const ends = membersOf(moved, 'beam').map(({ fromXIn, toXIn }) => [fromXIn, toXIn]);
    expect(ends).toEqual([
      [-30, 70],
      [70, 186],
      [-30, 186],
    ]);
    expect(isSound(moved)).toBe(true);
  });

  it('addPost makes a post like its nearest neighbour and leaves joints alone', () => {
    const more = addPost(shed, 'post-5', 'line-low', 120);
    expect(more.members.at(-1)).toMatchObject({
      id: 'post-5',
      line: 'line-low',
      xIn: 120,
      pierTopZIn: 4.5,
      gradeZIn: -3,
    });
    expect(more.joints).toBe(shed.joints);
    expect(isSound(more)).toBe(true);
  });

  it('a post that is not there, a line without posts and a place that is no number are misuse', () => {
    expect(() => movePost(shed, 'beam-high', 10)).toThrow(MisuseError);
    expect(() => movePost(shed, 'post-2', NaN)).toThrow(MisuseError);
    expect(() => addPost(leanTo, 'post-9', 'ledger', 10)).toThrow(MisuseError);
  });
});

describe('removeMember', () => {
  it('takes the braces of a post along and keeps the project sound', () => {
    const removed = removeMember(leanTo, 'post-2');
    const gone = leanTo.members.filter(({ id }) => !removed.members.some((member) => member.id === id));
    expect(gone.map(({ id }) => id)).toEqual(['post-2', 'brace-2', 'brace-3']);
    expect(isSound(removed)).toBe(true);
  });

  it('takes the hardware of joints along that are gone with it, and no other', () => {
    const own = ['postFoot/post-2', 'bracePost/brace-2', 'postFoot/post-1'].map((key) => ({ key, capacity: null }));
    const removed = removeMember({ ...leanTo, joints: { ...leanTo.joints, own } }, 'post-2');
    expect(removed.joints.own.map(({ key }) => key)).toEqual(['postFoot/post-1']);
    expect(removed.joints.defaults).toBe(leanTo.joints.defaults);
  });

  it('leaves no broken reference in any project, whichever post or tie goes', () => {
    fc.assert(
      fc.property(randomProject(), fc.nat(), (project, n) => {
        const some = project.members.filter(({ role }) => role === 'post' || role === 'tie');
        const answer = parseProject(removeMember(project, some[n % some.length]!.id));
        const codes = answer.ok ? [] : answer.faults.map(({ code }) => code);
        // Beams that met over the post now meet off it: that is for the person to say, not a reference.
        expect(codes.filter((code) => code !== 'beamsMeetOffPost')).toEqual([]);
      }),
      { seed: 12, numRuns: 60 },
    );
  });

  it('a member that is not there is misuse', () => {
    expect(() => removeMember(shed, 'post-9')).toThrow(MisuseError);
  });
});

describe('respaceRafters', () => {
  it('spreads them evenly, no farther apart than asked, the outermost where they were', () => {
    const closer = respaceRafters(shed, 'plane-1', 16, newIds());
    const xs = rafterXs(closer);
    const gaps = xs.slice(1).map((x, i) => x - xs[i]!);
    expect([xs[0], xs.at(-1)]).toEqual([-25.5, 181.5]);
    expect(gaps).toHaveLength(13);
    for (const gap of gaps) expect(gap).toBeCloseTo(207 / 13, 9);
    expect(isSound(closer)).toBe(true);
  });

  it('keeps each rafter that is nearest to a new place, with its log and its overrides', () => {
    const own = setAt(shed, 'members[rafter-4].own.seatCutIn', 0.5);
    const wider = respaceRafters(own, 'plane-1', 46, newIds());
    expect(membersOf(wider, 'rafter').map(({ id }) => id)).toEqual([
      'rafter-1',
      'rafter-3',
      'rafter-5',
      'rafter-6',
      'rafter-8',
      'rafter-10',
    ]);
    const closer = respaceRafters(own, 'plane-1', 20.7, newIds());
    expect(membersOf(closer, 'rafter').find(({ id }) => id === 'rafter-4')).toMatchObject({ own: { seatCutIn: 0.5 } });
  });

  it('with the spacing that they have changes nothing', () => {
    const same = respaceRafters(shed, 'plane-1', 23, newIds());
    expect(fingerprint(same)).toBe(fingerprint(shed));
  });

  it('an unknown plane and a spacing of nothing are misuse', () => {
    expect(() => respaceRafters(shed, 'plane-9', 24, newIds())).toThrow(MisuseError);
    expect(() => respaceRafters(shed, 'plane-1', 0, newIds())).toThrow(MisuseError);
    expect(() => respaceRafters(shed, 'plane-1', 0.5, newIds())).toThrow(MisuseError);
  });
});

describe('setStation', () => {
  it('puts a station in its order, or in the place of one at the same distance', () => {
    const more = setStation(shed, 'log-2', { fromButtIn: 60, diameterIn: 12.9 });
    expect(more.logs[1]?.stations.map(({ fromButtIn }) => fromButtIn)).toEqual([0, 60, 120, 240]);
    const again = setStation(more, 'log-2', { fromButtIn: 60, diameterIn: 12.8 });
    expect(again.logs[1]?.stations[1]).toEqual({ fromButtIn: 60, diameterIn: 12.8 });
    expect(isSound(again)).toBe(true);
  });

  it('a log that is not there is misuse', () => {
    expect(() => setStation(shed, 'log-9', { fromButtIn: 0, diameterIn: 9 })).toThrow(MisuseError);
  });
});
