import * as fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { braceSites } from '../../../../src/engine/checks/brace/brace-checks.ts';
import { braceFitRows } from '../../../../src/engine/checks/brace/brace-fit.ts';
import { pushIndex } from '../../../../src/engine/frame/read-response.ts';
import type { Capacity, Project } from '../../../../src/engine/project/model.ts';
import { plainShed, type Measures } from '../../../support/plain-shed.ts';
import { lineBench } from '../../frame/line-bench.ts';
import { handResponse, siteOf, thicker, verdict } from '../sites.ts';

const ID = 'brace-0-0-plus';
/** 30 degrees from the post on a level axis: 20 along, 34.64 down, 40 long; brace of 5 in., even logs. */
const steep: Partial<Measures> = {
  set: 'axis',
  runIn: 20,
  dropIn: 20 * Math.sqrt(3),
  beamDiametersIn: [12, 12],
  postDiametersIn: [9, 9],
};

/** The first brace pushed with a force [lb]; snow duration. */
function pushed(project: Project, pushLb: number) {
  const { context } = lineBench(project);
  return {
    sites: braceSites(context),
    r: handResponse(context, [[pushIndex(context.frame.layout, 0), pushLb]]),
    context,
  };
}
const verdictOf = (project: Project, ruleId: string, place: string, pushLb: number) => {
  const { sites, r } = pushed(project, pushLb);
  return verdict(siteOf(sites, ruleId, ID, place), r);
};

/** NDS 3.10.3 as printed. */
const hankinson = (Fc: number, Fcp: number, deg: number): number => {
  const [s, c] = [Math.sin((deg * Math.PI) / 180), Math.cos((deg * Math.PI) / 180)];
  return (Fc * Fcp) / (Fc * s * s + Fcp * c * c);
};

describe('a brace along itself', () => {
  // NDS 3.7.1, 3.7.3: s = 0.886 x 5 = 4.431; le/d = 40 / 4.431 = 9.027; FcE = 0.822 x 440,000 / 81.49 = 4438 psi;
  // Fc* = 800 x 1.15 = 920; a = 4.824; CP = 5.824/1.6 - sqrt((5.824/1.6)2 - 4.824/0.8) = 3.640 - 2.687 = 0.953.
  it('[brace.push] 8,000 lb on 5 in. over 40 in. is 407 psi against 920 CP, worked out in the comment', () => {
    const v = verdictOf(plainShed(steep), 'brace.push', '', 8000);
    const side = (5 * Math.sqrt(Math.PI)) / 2;
    const a = (0.822 * 440_000) / (40 / side) ** 2 / 920;
    const CP = (1 + a) / 1.6 - Math.sqrt(((1 + a) / 1.6) ** 2 - a / 0.8);
    expect(v.demand!.value).toBeCloseTo(8000 / (6.25 * Math.PI), 6);
    expect(v.demand!.value).toBeCloseTo(407.4, 1);
    expect(CP).toBeCloseTo(0.953, 3);
    expect(v.capacity!.value).toBeCloseTo(920 * CP, 6);
  });

  it('[brace.slender] 40 in. over the side of the square of equal area is 9.03, at most 50', () => {
    const v = verdictOf(plainShed(steep), 'brace.slender', '', 0);
    expect(v.demand!.value).toBeCloseTo(9.027, 3);
    expect(v.capacity!.value).toBe(50);
  });

  // proof [brace.pull]: closed-form - force over the thinnest section against Ft CD (NDS 3.8.1)
  it('[brace.pull] 3,000 lb of pull at the thin end of 4 in. is 239 psi against 550 x 1.15', () => {
    // 4 in. at 40 in. from the butt of a log that is 5 there and 2 at 120
    const v = verdictOf(plainShed({ ...steep, braceDiametersIn: [5, 2] }), 'brace.pull', '', -3000);
    expect(v.demand!.value).toBeCloseTo(3000 / (4 * Math.PI), 6);
    expect(v.capacity!.value).toBeCloseTo(632.5, 9);
    expect(verdictOf(plainShed(steep), 'brace.pull', '', 3000).demand!.value).toBe(0);
  });
});

describe('the ends of a brace', () => {
  const coped = { ...steep, braceEnd: { kind: 'coped', depthIn: 0 } } as const;

  // 30 degrees at the post: half the push is square to it; at the beam 60 degrees: 0.866 of it. Saddled ends bear on
  // the ellipse pi d2 / 4 / sin. The log is pressed across its grain, the brace at the other angle.
  it('[brace.bearing] square to post and beam 30 and 60 degrees are not swapped', () => {
    const area = (Math.PI * 25) / 4;
    const post = verdictOf(plainShed(coped), 'brace.bearing', 'post', 4000);
    expect(post.demand!.value).toBeCloseTo((4000 * 0.5) / (area / 0.5), 6);
    expect(post.capacity!.value).toBeCloseTo(Math.min(300, hankinson(920, 300, 60)), 6);
    const beam = verdictOf(plainShed(coped), 'brace.bearing', 'top', 4000);
    expect(beam.demand!.value).toBeCloseTo((4000 * Math.sin(Math.PI / 3)) / (area / Math.sin(Math.PI / 3)), 6);
    expect(beam.capacity!.value).toBeCloseTo(Math.min(300, hankinson(920, 300, 30)), 6);
  });

  it('[brace.bearing] a pulling brace presses on nothing', () => {
    expect(verdictOf(plainShed(coped), 'brace.bearing', 'post', -4000).demand!.value).toBe(0);
  });

  it('[brace.bearing] a flat of no depth touches along a line: not given', () => {
    const v = verdictOf(plainShed({ ...steep, braceEnd: { kind: 'flat', depthIn: 0 } }), 'brace.bearing', 'post', 4000);
    expect([v.status, v.reason?.code]).toEqual(['notGiven', 'braceEndHasNoFlat']);
  });

  // Shoulder: 2/3 of width times depth; a housing 1 in. deep in 9 in. has a floor of 2 sqrt(8) = 5.657, wider than the
  // brace of 5. The log is pressed along its grain, the brace at 30 degrees to its own.
  it('[brace.shoulder] a housing 1 in. deep takes the part along on 2/3 x 5 x 1 in2', () => {
    const v = verdictOf(
      plainShed({ ...steep, braceEnd: { kind: 'housed', depthIn: 1 } }),
      'brace.shoulder',
      'post',
      2000,
    );
    expect(v.demand!.value).toBeCloseTo((2000 * Math.cos(Math.PI / 6)) / ((2 / 3) * 5), 6);
    expect(v.capacity!.value).toBeCloseTo(Math.min(920, hankinson(920, 300, 30)), 6);
  });

  // NDS App. E.3 (from memory): half the plane counts. Floor of the housing 5 in. wide (the brace), 8 x 1 in. long at most
  // (own rule), Fv 100 x 1.15: 100 x 1.15 x 5 x 8 / 2 = 2,300 lb.
  // proof [brace.shoulderShear]: closed-form - half of Fv' times floor and eight depths (NDS App. E.3, from memory)
  it('[brace.shoulderShear] the log beyond a housing 1 in. deep shears on half of 5 by 8 in.', () => {
    const v = verdictOf(
      plainShed({ ...steep, braceEnd: { kind: 'housed', depthIn: 1 } }),
      'brace.shoulderShear',
      'post',
      2000,
    );
    expect(v.demand!.value).toBeCloseTo(1000 * Math.sqrt(3), 6);
    expect(v.capacity!.value).toBeCloseTo(2300, 6);
  });

  const rated: Capacity = {
    kind: 'rated',
    label: 'lags, invented',
    parts: { pushLb: null, pullLb: 1200, alongLb: 1000, acrossLb: null },
    durationIncluded: 1,
  };
  const joined = (capacity: Capacity): Project => ({
    ...plainShed(coped),
    joints: {
      defaults: [
        { kind: 'bracePost', capacity },
        { kind: 'braceTop', capacity },
      ],
      own: [],
    },
  });

  it('[brace.shoulder] a saddled end has none: its joint must be rated along, else nobody has said', () => {
    const unsaid = verdictOf(plainShed(coped), 'brace.shoulder', 'post', 2000);
    expect([unsaid.status, unsaid.demand!.value.toFixed(3)]).toEqual(['notGiven', (1000 * Math.sqrt(3)).toFixed(3)]);
    const said = verdictOf(joined(rated), 'brace.shoulder', 'top', 1600);
    expect(said.demand!.value).toBeCloseTo(800, 6);
    expect(said.ratio!).toBeCloseTo(0.8, 9);
  });

  // proof [brace.tie]: closed-form - brace force of the frame against the typed pull, never more than typed
  it('[brace.tie] asks both ends for the whole pull and never counts more than was typed', () => {
    for (const place of ['bracePost', 'braceTop']) {
      const v = verdictOf(joined(rated), 'brace.tie', place, -600);
      expect([v.demand!.value, v.capacity!.value]).toEqual([600, 1200]);
    }
    expect(verdictOf(joined(rated), 'brace.tie', 'braceTop', 600).demand!.value).toBe(0);
    expect(verdictOf(joined(null), 'brace.tie', 'braceTop', -600).status).toBe('notGiven');
  });
});

describe('the smallest section of a brace', () => {
  const crushed = (measures: Partial<Measures>) =>
    verdictOf(plainShed({ ...steep, ...measures }), 'brace.crushing', '', 8000);

  // proof [brace.crushing]: closed-form - P / A of the tip, and of a circle clipped to the width of the flat, against Fc CD
  it('[brace.crushing] of an even brace with saddled ends is its whole circle, against 800 x 1.15 without buckling', () => {
    const v = crushed({ braceEnd: { kind: 'coped', depthIn: 0 } });
    expect(v.demand!.value).toBeCloseTo(8000 / (6.25 * Math.PI), 6);
    expect(v.capacity!.value).toBeCloseTo(920, 9);
  });

  it('[brace.crushing] of a tapering brace is its tip', () => {
    // brace log of 120 in. from 5 to 4 in.; 40 in. of it from the butt
    const tip = 5 - 40 / 120;
    const v = crushed({ braceEnd: { kind: 'coped', depthIn: 0 }, braceDiametersIn: [5, 4] });
    expect(v.demand!.value).toBeCloseTo(8000 / ((Math.PI / 4) * tip * tip), 6);
  });

  it('[brace.crushing] of an end let in by half an inch is what the narrow flat on the post takes up', () => {
    // flat on a 9 in. post: 2 sqrt(0.5 x 8.5) = 4.123 in.; circle of 5 in. within it: d2 / 2 (asin k + k sqrt(1 - k2))
    const k = (2 * Math.sqrt(0.5 * 8.5)) / 5;
    const area = (25 / 2) * (Math.asin(k) + k * Math.sqrt(1 - k * k));
    expect(area).toBeLessThan(6.25 * Math.PI);
    const v = crushed({ braceEnd: { kind: 'housed', depthIn: 0.5 } });
    expect(v.demand!.value).toBeCloseTo(8000 / area, 6);
  });

  it('[brace.crushing] a pull asks nothing of it', () => {
    expect(verdictOf(plainShed(steep), 'brace.crushing', '', -8000)).toMatchObject({ status: 'pass', ratio: 0 });
  });
});

describe('a thicker brace under the very same force', () => {
  // The contact of a saddled end grows with the thinner of the two logs, the floor of a housing with the log.
  it('[brace.push] [brace.crushing] [brace.pull] [brace.bearing] never has a larger ratio', () => {
    const bench = lineBench(plainShed({ ...steep, braceEnd: { kind: 'coped', depthIn: 0 }, braceDiametersIn: [5, 4] }));
    const rules = ['brace.push', 'brace.crushing', 'brace.pull', 'brace.bearing', 'brace.slender'];
    const real = (min: number, max: number) => fc.double({ min, max, noNaN: true });
    fc.assert(
      fc.property(real(1, 1.6), real(-6000, 9000), (by, force) => {
        const [thin, thick] = [bench.context, thicker(bench.context, by)].map((c) =>
          braceSites(c).filter(({ ruleId, memberId }) => memberId === ID && rules.includes(ruleId)),
        );
        const r = handResponse(bench.context, [[pushIndex(bench.frame.layout, 0), force]]);
        thin!.forEach((site, k) => {
          expect(verdict(thick![k]!, r).ratio!).toBeLessThanOrEqual(verdict(site, r).ratio! + 1e-12);
        });
      }),
      { seed: 141, numRuns: 100 },
    );
  });
});

describe('braces that cannot be built', () => {
  // proof [brace.fit]: closed-form - two runs along one span against the distance between its posts
  it('[brace.fit] two runs that add up to the distance between the posts cross, a shorter one fits', () => {
    const { members } = lineBench(plainShed(steep)).context.frame;
    const span = members.posts[1]!.xIn - members.posts[0]!.xIn;
    const withRuns = (runIn: number) => ({ ...members, braces: members.braces.map((b) => ({ ...b, runIn })) });
    expect(braceFitRows(withRuns(span / 2 - 1))).toEqual([]);
    const crossed = braceFitRows(withRuns(span / 2 + 1));
    expect(crossed.map((row) => [row.status, row.ratio, row.reason?.code])).toEqual(
      crossed.map(() => ['fail', null, 'bracesCross']),
    );
    expect(crossed.length).toBeGreaterThan(1);
  });
});
