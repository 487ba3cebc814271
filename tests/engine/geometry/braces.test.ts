import { describe, expect, it } from 'vitest';
import { placeShelter } from '../../../src/engine/geometry/place-shelter.ts';
import type { BraceGeometry } from '../../../src/engine/geometry/shelter.ts';
import type { Member, Project } from '../../../src/engine/project/model.ts';
import { BEAM_LOG_IN, braceId, lineId, plainShed, postId, type Measures } from '../../support/plain-shed.ts';
import { placed } from '../frame/line-bench.ts';

const braceOf = (project: Project, id: string): BraceGeometry => placed(project).braces.find((b) => b.id === id)!;

/** Level axis, so that angles are those of run and drop; the beam tapers about it. */
const level: Partial<Measures> = { set: 'axis' };

describe('a knee brace between its working points', () => {
  // A right angle at 45 degrees cannot tell run from drop: 20 along the beam and 34.64 down the post is 30 degrees.
  it('[brace.fit] a run of 20 and a drop of 34.64 lean 30 degrees from the post, the other way round 60', () => {
    const long = 20 * Math.sqrt(3);
    const steep = braceOf(plainShed({ ...level, runIn: 20, dropIn: long }), braceId(0, 0, 'plus'));
    expect(steep.phiDeg).toBeCloseTo(30, 9);
    expect(steep.lengthIn).toBeCloseTo(40, 9);
    const flat = braceOf(plainShed({ ...level, runIn: long, dropIn: 20 }), braceId(0, 0, 'plus'));
    expect(flat.phiDeg).toBeCloseTo(60, 9);
    expect(flat.lengthIn).toBeCloseTo(40, 9);
  });

  it('[brace.fit] starts on the post axis below where the axes meet and ends on the beam axis, to its own side', () => {
    const shelter = placed(plainShed({ ...level, runIn: 24, dropIn: 32 }));
    const post = shelter.posts.find(({ id }) => id === postId(0, 1))!;
    const brace = shelter.braces.find(({ id }) => id === braceId(0, 1, 'minus'))!;
    expect(brace.postPoint).toEqual({ xIn: 144, yIn: 0, zIn: post.axisZIn - 32 });
    expect(brace.topPoint.xIn).toBe(120);
    expect(brace.topPoint.zIn).toBeCloseTo(post.axisZIn, 9);
    expect(brace.lengthIn).toBeCloseTo(40, 9);
  });

  it('[brace.fit] on a beam whose axis climbs the angle and the length are those of the true points', () => {
    // set by its top, a tapering beam's axis climbs toward the tip by half the taper
    const climb = (12 - 10) / BEAM_LOG_IN / 2;
    const brace = braceOf(plainShed({ runIn: 30, dropIn: 30 }), braceId(0, 0, 'plus'));
    const rise = 30 + 30 * climb;
    expect(brace.lengthIn).toBeCloseTo(Math.hypot(30, rise), 9);
    expect(brace.phiDeg).toBeCloseTo((Math.atan(30 / rise) * 180) / Math.PI, 9);
    const down = braceOf(plainShed({ runIn: 30, dropIn: 30 }), braceId(0, 1, 'minus'));
    expect(down.lengthIn).toBeCloseTo(Math.hypot(30, 30 - 30 * climb), 9);
  });

  // proof [brace.fit]: closed-form - plane geometry: length between axes less the radii over sine and cosine
  it('[brace.fit] what is seen is its length less the radii of post and beam along it', () => {
    const shelter = placed(plainShed({ ...level, runIn: 20, dropIn: 20 * Math.sqrt(3) }));
    const post = shelter.posts.find(({ id }) => id === postId(0, 0))!;
    const brace = shelter.braces.find(({ id }) => id === braceId(0, 0, 'plus'))!;
    const postDiameter = 9 - (brace.postPoint.zIn - post.woodFromZIn) / 160;
    const beamDiameter = 12 - (2 * (20 + 24)) / BEAM_LOG_IN;
    expect(brace.postDiameterIn).toBeCloseTo(postDiameter, 9);
    expect(brace.topDiameterIn).toBeCloseTo(beamDiameter, 9);
    // sine of 30 degrees is a half, cosine half the root of 3
    expect(brace.visibleLengthIn).toBeCloseTo(40 - postDiameter / 2 / 0.5 - beamDiameter / 2 / (Math.sqrt(3) / 2), 9);
  });

  it('[brace.fit] a brace past the end of the beam, below the foot or without length is a fault of its own field', () => {
    const faultOf = (measures: Partial<Measures>): (readonly [string, string])[] =>
      placeShelter(plainShed({ ...measures, bracesAt: [[0, 'minus']] }))
        .faults.filter(({ path }) => path.includes(braceId(0, 0, 'minus')))
        .map(({ path, code }) => [path.split('.')[1]!, code] as const);
    expect(faultOf({ runIn: 25 })).toEqual([['runIn', 'braceMissesItsLog']]);
    expect(faultOf({ runIn: 20, dropIn: 130 })).toEqual([['dropIn', 'braceBelowFoot']]);
    expect(faultOf({ runIn: 7, dropIn: 7 })).toEqual([['runIn', 'braceHasNoLength']]);
    expect(faultOf({ runIn: 20, dropIn: 20 })).toEqual([]);
  });

  it('[brace.fit] an end let in past the middle of its log is a fault of its depth, a shallower one is placed', () => {
    const faultsOf = (depthIn: number): readonly (readonly [string, string])[] =>
      placeShelter(plainShed({ braceEnd: { kind: 'housed', depthIn }, bracesAt: [[0, 'plus']] }))
        .faults.filter(({ path }) => path.includes(braceId(0, 0, 'plus')))
        .map(({ path, code }) => [path.split('.').slice(1).join('.'), code] as const);
    expect(faultsOf(4)).toEqual([]);
    expect(faultsOf(4.6)).toEqual([['ends.post.depthIn', 'braceLetInPastAxis']]);
    expect(faultsOf(9)).toEqual([
      ['ends.post.depthIn', 'braceLetInPastAxis'],
      ['ends.top.depthIn', 'braceLetInPastAxis'],
    ]);
  });

  it('at a splice goes to the beam that lies on its side', () => {
    const shelter = placed(
      plainShed({
        postXsIn: [0, 72, 144],
        beamEndsIn: [-24, 72, 168],
        bracesAt: [
          [1, 'plus'],
          [1, 'minus'],
        ],
      }),
    );
    expect(shelter.braces.filter(({ id }) => id.startsWith('brace-0')).map(({ side, toId }) => [side, toId])).toEqual([
      ['plus', 'beam-0-1'],
      ['minus', 'beam-0-0'],
    ]);
  });
});

describe('a tie log across the lines', () => {
  const tied = (): Project => {
    const shed = plainShed();
    const more: Member[] = [
      {
        id: 'tie',
        role: 'tie',
        group: 'ties',
        fromPost: postId(1, 0),
        toPost: postId(0, 0),
        pastFromIn: 5,
        pastToIn: 3,
      },
      { id: 'across', role: 'brace', group: 'braces', post: postId(0, 0), to: 'tie', side: 'plus' },
    ];
    return {
      ...shed,
      groups: [
        ...shed.groups,
        {
          id: 'ties',
          role: 'tie',
          stock: { kind: 'log', logId: 'post-log', fromButtIn: 0, buttAt: 'start' },
          downIn: 14,
          ends: 'between',
        },
      ],
      members: [...shed.members, ...more],
    };
  };

  it('lies below the lower of its two beam axes, starts at low y and reaches past each post as far as is said of that post', () => {
    const shelter = placed(tied());
    const tie = shelter.ties[0]!;
    const [high, low] = [postId(0, 0), postId(1, 0)].map((id) => shelter.posts.find((p) => p.id === id)!.axisZIn);
    expect([tie.fromPostId, tie.toPostId, tie.fromYIn, tie.toYIn]).toEqual([postId(0, 0), postId(1, 0), -3, 125]);
    expect(low!).toBeLessThan(high!);
    expect(tie.axisZIn).toBeCloseTo(low! - 14, 9);
  });

  it('carries a brace in its own plane, run along the tie and drop from where the axes meet', () => {
    const shelter = placed(tied());
    const brace = shelter.braces.find(({ id }) => id === 'across')!;
    expect(brace.plane).toBe('across');
    expect(brace.topPoint).toEqual({ xIn: 0, yIn: 30, zIn: shelter.ties[0]!.axisZIn });
    expect(brace.postPoint.zIn).toBeCloseTo(shelter.ties[0]!.axisZIn - 30, 9);
    expect(brace.phiDeg).toBeCloseTo(45, 9);
  });

  it('does not stand on a frame line that it does not touch', () => {
    expect(placed(tied()).lines.find(({ id }) => id === lineId(0))!.postIds).toHaveLength(2);
  });
});
