import { describe, expect, it } from 'vitest';
import { footIndex, holdIndex, pushIndex, sectionsOf } from '../../../src/engine/frame/read-response.ts';
import type { LineFrame, LineResponse } from '../../../src/engine/frame/line-frame.ts';
import { emptyLineCase, type LineCase } from '../../../src/engine/loads/cases.ts';
import type { Measures } from '../../support/plain-shed.ts';
import { analysed, combination, lineLoadsOf, membersOf, responseOf } from './hand-line.ts';

/**
 * A symmetric bent of even logs: 120 in. between the posts, braces 24 along and 36 down. Closed forms of a bent on
 * pinned feet: each foot takes half of a sideways force V; moments about the top of a post give the brace
 * F = V H L / (a b) with H to the beam axis, a down the post, b along the beam, L between working points.
 */
const bent: Partial<Measures> = {
  postXsIn: [0, 120],
  beamEndsIn: [0, 120],
  beamDiametersIn: [10, 10],
  postDiametersIn: [8, 8],
  braceDiametersIn: [5, 5],
  set: 'axis',
  runIn: 24,
  dropIn: 36,
};
const P = 1000;
const push: LineCase = {
  ...emptyLineCase('push'),
  points: [0, 120].map((xIn) => ({ xIn, downLb: 0, alongLb: P / 2 })),
};
const sway = combination({ push: 1 }, { swaysAlong: true });

const setUp = (setting = { pullGiven: true, holdsItself: true }) => {
  const members = membersOf(bent);
  const frame = analysed(members, lineLoadsOf([push]), [sway], setting);
  const H = members.posts[0]!.axisZIn - members.posts[0]!.footZIn;
  return { frame, H, braceLength: Math.hypot(24, 36) };
};

const braces = (frame: LineFrame, r: LineResponse): number[] =>
  frame.mesh.braces.map((_, j) => r.values[pushIndex(frame.layout, j)]!);
const feet = (frame: LineFrame, r: LineResponse): number[] =>
  frame.mesh.posts.map((p) => r.values[footIndex(frame.layout, p)]!);

describe('a knee-braced bent pushed along its line', () => {
  it('with braces working both ways shares the push evenly, one brace pressed, one pulled by V H L / (a b)', () => {
    const { frame, H, braceLength } = setUp();
    const r = responseOf(frame, 'push', 'bothWays')!;
    const F = ((P / 2) * H * braceLength) / (36 * 24);
    feet(frame, r).forEach((shear) => expect(shear).toBeCloseTo(-P / 2, 6));
    // pushed toward +x the first post leans away from its brace, the last one presses on it
    expect(braces(frame, r)[0]!).toBeCloseTo(-F, 5);
    expect(braces(frame, r)[1]!).toBeCloseTo(F, 5);
  });

  it('with braces only pushing one post takes everything and its brace twice the force', () => {
    const { frame, H, braceLength } = setUp();
    const r = responseOf(frame, 'push', 'pushOnly')!;
    expect(r.working).toEqual([false, true]);
    expect(feet(frame, r)[0]!).toBeCloseTo(0, 6);
    expect(feet(frame, r)[1]!).toBeCloseTo(-P, 6);
    expect(braces(frame, r)[1]!).toBeCloseTo((P * H * braceLength) / (36 * 24), 5);
  });

  it('bends the post at the foot of its brace by V times the height up to there, tension on the side it leans from', () => {
    const { frame, H } = setUp();
    const r = responseOf(frame, 'push', 'bothWays')!;
    const last = frame.mesh.posts[1]!;
    const at = sectionsOf(last, frame.layout).find((s) => Math.abs(s.atIn - (H - 36)) < 1e-6)!;
    expect(Math.abs(r.values[at.moment]!)).toBeCloseTo((P / 2) * (H - 36), 4);
    // a foot pushed back toward -x stretches the +x face of the post above it
    expect(r.values[at.moment]!).toBeGreaterThan(0);
  });

  it('stands on its feet with a couple of P H over the span', () => {
    const { frame, H } = setUp();
    const r = responseOf(frame, 'push', 'bothWays')!;
    const vertical = frame.mesh.posts.map((p) => r.values[footIndex(frame.layout, p) + 1]!);
    expect(vertical[1]!).toBeCloseTo((P * H) / 120, 5);
    expect(vertical[0]!).toBeCloseTo((-P * H) / 120, 5);
  });

  it('held by something else leaves that the whole push where its posts turn at both ends', () => {
    const { frame } = setUp({ pullGiven: false, holdsItself: false });
    const r = responseOf(frame, 'push', 'pushOnly')!;
    expect(r.held).toBe(true);
    const held = r.values[holdIndex(frame.layout, frame.mesh)]!;
    expect(held + feet(frame, r).reduce((a, b) => a + b, 0)).toBeCloseTo(-P, 6);
  });
});

describe('what a response tells', () => {
  const valuesIn = (more: Parameters<typeof combination>[1]): { frame: LineFrame; values: Float64Array } => {
    const frame = analysed(membersOf(bent), lineLoadsOf([push]), [combination({ push: 1 }, more)]);
    return { frame, values: frame.responses[0]!.values };
  };
  const known = (values: Float64Array, from: number, to: number): boolean[] => [
    ...new Set(Array.from(values.subarray(from, to), (v) => Number.isFinite(v))),
  ];

  it('is forces for strength, moves for sag, both where the line sways; the rest is no number', () => {
    const asked = [
      [{ gravityOnly: true }, true, false],
      [{ swaysAlong: true }, true, true],
      [{ gravityOnly: true, purpose: 'sag' }, false, true],
      [{ gravityOnly: true, purpose: 'sagLongTerm' }, false, true],
    ] as const;
    for (const [more, forces, moves] of asked) {
      const { frame, values } = valuesIn(more);
      expect(known(values, 0, frame.layout.movesAt)).toEqual([forces]);
      expect(known(values, frame.layout.movesAt, values.length)).toEqual([moves]);
    }
  });
});

describe('which brace models are run', () => {
  const models = (more: Parameters<typeof combination>[1], pullGiven: boolean): string[] =>
    analysed(membersOf(bent), lineLoadsOf([push]), [combination({ push: 1 }, more)], {
      pullGiven,
      holdsItself: true,
    }).responses.map(({ braceModel }) => braceModel);

  it('gravity: both ways, only pushing, idle, whether or not a pull is given', () => {
    expect(models({ gravityOnly: true }, false)).toEqual(['bothWays', 'pushOnly', 'idle']);
    expect(models({ gravityOnly: true }, true)).toEqual(['bothWays', 'pushOnly', 'idle']);
  });

  it('sway: both ways only where a pull is given; never idle', () => {
    expect(models({ swaysAlong: true }, false)).toEqual(['pushOnly']);
    expect(models({ swaysAlong: true }, true)).toEqual(['bothWays', 'pushOnly']);
  });

  it('both ways alone where every brace pushes anyway and the line is held alike', () => {
    const press: LineCase = { ...push, points: [{ xIn: 60, downLb: 4000, alongLb: 10 }] };
    const frame = analysed(membersOf(bent), lineLoadsOf([press]), [sway]);
    const only = analysed(membersOf(bent), lineLoadsOf([press]), [sway], { pullGiven: false, holdsItself: true });
    expect(frame.responses.map(({ braceModel }) => braceModel)).toEqual(['bothWays']);
    expect(only.responses.map(({ braceModel }) => braceModel)).toEqual(['pushOnly']);
    expect(frame.responses[0]!.values).toEqual(only.responses[0]!.values);
    expect(braces(only, only.responses[0]!).every((lb) => lb > 0)).toBe(true);
  });

  it('a push that leaves no brace pushing falls, unless a pull is given', () => {
    const oneBrace = membersOf({ ...bent, bracesAt: [[1, 'minus']] });
    const back: LineCase = { ...push, points: push.points.map((p) => ({ ...p, downLb: -600, alongLb: -10 })) };
    const run = (pullGiven: boolean) =>
      analysed(oneBrace, lineLoadsOf([back]), [sway], { pullGiven, holdsItself: true });
    expect(run(false).unheld.map(({ reason }) => reason.code)).toEqual(['nothingHoldsWhilePulled']);
    expect(run(false).responses).toEqual([]);
    expect(run(true).unheld).toEqual([]);
    expect(run(true).responses.map(({ braceModel }) => braceModel)).toEqual(['bothWays']);
  });

  // With one brace left the bent is determinate: moments about the top of its post give V H L / (a b), lifted or not.
  it('a lift opens one brace of a bent and leaves the other pressed by the push alone', () => {
    const lift: LineCase = { ...push, points: [...push.points, { xIn: 60, downLb: -40_000, alongLb: 0 }] };
    const members = membersOf(bent);
    const frame = analysed(members, lineLoadsOf([lift]), [sway], { pullGiven: false, holdsItself: true });
    expect(frame.unheld).toEqual([]);
    const r = responseOf(frame, 'push', 'pushOnly')!;
    const H = members.posts[1]!.axisZIn - members.posts[1]!.footZIn;
    expect(r.working).toEqual([false, true]);
    expect(braces(frame, r)[1]!).toBeCloseTo((P * H * Math.hypot(24, 36)) / (36 * 24), 4);
  });
});
