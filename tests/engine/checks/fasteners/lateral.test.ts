import { describe, expect, it } from 'vitest';
import { CUT_WASHERS } from '../../../../src/data/fasteners/bolts.ts';
import { STEELS } from '../../../../src/data/fasteners/steel.ts';
import { dowelBearingOnSteel, dowelBearingOnWood } from '../../../../src/engine/checks/fasteners/dowel-bearing.ts';
import { adjustedLateral, lateralWetFactor, toeNail } from '../../../../src/engine/checks/fasteners/lateral-factors.ts';
import { lateralValue, type LateralFastener } from '../../../../src/engine/checks/fasteners/lateral.ts';
import { bearingDiameter, bendingYieldOf } from '../../../../src/engine/checks/fasteners/shank.ts';
import {
  boltThreadIn,
  rootDiameterOf,
  threadAtNut,
  threadAtPoint,
} from '../../../../src/engine/checks/fasteners/thread-in-piece.ts';
import { MisuseError } from '../../../../src/engine/errors.ts';
import { stepsOf } from '../../../../src/engine/note.ts';
import { isGiven } from '../../material/recompute.ts';
import { redoFaults } from '../redo-step.ts';

const wood = (lengthIn: number, angleDeg = 0, gravity = 0.5) =>
  ({ material: 'wood', lengthIn, gravity, angleDeg, grain: 'side' }) as const;
const BOLT: LateralFastener = {
  kind: 'bolt',
  nominalIn: 0.5,
  diameterIn: 0.5,
  tipIn: 0,
  main: wood(5),
  side: wood(2, 30),
  gapIn: 0,
  planes: 1,
};
const LAG: LateralFastener = {
  ...BOLT,
  kind: 'lag',
  nominalIn: 0.375,
  diameterIn: 0.265,
  tipIn: 0.21875,
  main: wood(3),
  side: wood(1.5),
};
const codeOf = (fastener: LateralFastener) => {
  const answer = lateralValue(fastener);
  return answer.ok ? 'ok' : answer.reason.code;
};

describe('lateral value of one fastener', () => {
  it('is the least of the modes, each divided by its own term (hand calculation of a 1/2 in. bolt)', () => {
    // both pieces 3-1/2 in. and along the grain, G 0.50: Fe 5600, q 2800 lb/in, M 937.5 lb-in, mode IV governs:
    // P^2 / (2 q) in each piece holds M: P = sqrt(2 M q) = 2291.3, over 3.2
    const answer = lateralValue({ ...BOLT, main: wood(3.5), side: wood(3.5) });
    expect(answer).toEqual({ ok: true, mode: 'IV', ZLb: expect.closeTo(Math.sqrt(2 * 937.5 * 2800) / 3.2, 8) });
  });

  it('at an angle to the grain lies between along and across (Hankinson by hand at 30 degrees)', () => {
    const across = (6100 * 0.5 ** 1.45) / Math.sqrt(0.5);
    expect(dowelBearingOnWood(0.5, 0.5, 30)).toBeCloseTo((5600 * across) / (5600 * 0.25 + across * 0.75), 8);
    const valueAt = (angleDeg: number) => {
      const answer = lateralValue({ ...BOLT, side: wood(2, angleDeg) });
      return answer.ok ? answer.ZLb : NaN;
    };
    const values = [0, 15, 30, 45, 60, 75, 90].map(valueAt);
    expect([...values].sort((a, b) => b - a)).toEqual(values);
  });

  it('in end grain bears as across the grain (NDS 12.3.3.4, from memory)', () => {
    const inEnd = lateralValue({ ...LAG, main: { ...wood(3), grain: 'end' } });
    expect(inEnd).toEqual(lateralValue({ ...LAG, main: wood(3, 90) }));
  });

  it('half of a tapered tip does not bear', () => {
    const blunt = lateralValue({ ...LAG, tipIn: 0, main: wood(1.6), side: wood(6) });
    const tapered = lateralValue({ ...LAG, tipIn: 0.1, main: wood(1.65), side: wood(6) });
    expect(tapered).toEqual(blunt);
  });

  it('counts wood heavier than any printed row as the heaviest one, and refuses lighter wood', () => {
    expect(lateralValue({ ...BOLT, main: wood(5, 0, 0.9) })).toEqual(lateralValue({ ...BOLT, main: wood(5, 0, 0.73) }));
    expect(codeOf({ ...BOLT, side: wood(2, 0, 0.28) })).toBe('fastenerWoodTooLight');
  });

  it.each([
    ['a bolt thicker than the equations reach', { ...BOLT, nominalIn: 1.125, diameterIn: 1.125 }, 'fastenerTooThick'],
    ['a lag screw under 4 diameters without its tip', { ...LAG, main: wood(1.7) }, 'fastenerTooShort'],
    ['a lag screw of 4 diameters and its tip', { ...LAG, main: wood(1.71875) }, 'ok'],
    [
      'a nail under 6 diameters',
      { ...BOLT, kind: 'nail', nominalIn: 0.162, diameterIn: 0.162, main: wood(0.97) },
      'fastenerTooShort',
    ],
    ['a nail of 6 diameters', { ...BOLT, kind: 'nail', nominalIn: 0.162, diameterIn: 0.162, main: wood(0.972) }, 'ok'],
    ['a lag screw in two planes', { ...LAG, planes: 2 }, 'fastenerTwoPlanes'],
    [
      'a nail thinner than the printed yield strengths',
      { ...BOLT, kind: 'nail', nominalIn: 0.08, diameterIn: 0.08 },
      'fastenerYieldNotListed',
    ],
  ] as const)('%s: %s', (_what, fastener, code) => {
    expect(codeOf(fastener)).toBe(code);
  });

  it('a nail loses straight under 10 diameters, a lag screw only by its bearing length', () => {
    const nail = { ...BOLT, kind: 'nail', nominalIn: 0.162, diameterIn: 0.162, tipIn: 0.324, side: wood(1.5) } as const;
    const at = (lengthIn: number) => {
      const answer = lateralValue({ ...nail, main: wood(lengthIn) });
      return answer.ok ? answer.ZLb : NaN;
    };
    expect(at(1.296) / at(1.62)).toBeCloseTo(0.8, 9);
    expect(at(3)).toBe(at(1.62));
    expect(lateralValue({ ...LAG, main: wood(2) })).toEqual(lateralValue({ ...LAG, main: wood(4) }));
    const { steps } = stepsOf((note) => lateralValue({ ...nail, main: wood(1.296) }, note));
    const short = steps.slice(-1);
    expect(short.map(({ symbol }) => symbol)).toEqual(['Zp']);
    expect(redoFaults((note) => short.forEach((step) => note?.(step)))).toEqual([]);
  });

  it('a thicker side piece never carries less', () => {
    const values = [0.5, 0.75, 1, 1.5, 2, 3, 5].map((lengthIn) => {
      const answer = lateralValue({ ...BOLT, side: wood(lengthIn) });
      return answer.ok ? answer.ZLb : NaN;
    });
    expect([...values].sort((a, b) => a - b)).toEqual(values);
  });

  it('writes steps that another calculator redoes', () => {
    const open = { ...LAG, gapIn: 0.0625 };
    const { value, steps } = stepsOf((note) => lateralValue(open, note));
    expect(value).toEqual(lateralValue(open));
    const all = [...steps, ...steps.flatMap((step) => step.put.flatMap(({ from }) => from ?? []))];
    for (const step of all.filter((each) => !isGiven(each))) {
      expect(redoFaults((note) => void note?.(step))).toEqual([]);
    }
    expect(steps.at(-1)?.words).toContain(value.ok ? `mode ${value.mode}` : 'nothing');
  });

  it('leaves what it was given alone', () => {
    const given = structuredClone(LAG);
    lateralValue(given);
    expect(given).toEqual(LAG);
  });
});

describe('cut washers (NDS Appendix L, Table L6, from memory)', () => {
  it.each(CUT_WASHERS.rows)('of $nominalIn in. has a hole 1/16 in. wider than its bolt', (washer) => {
    expect(washer.holeIn).toBeCloseTo(washer.nominalIn + 1 / 16, 2);
    expect(washer.outsideIn).toBeGreaterThan(2 * washer.holeIn);
  });
});

describe('what of a shank bears', () => {
  it('is the full shank while at most a quarter of its bearing is thread (NDS 12.3.7, from memory)', () => {
    expect(bearingDiameter(0.5, 0.371, { threadIn: 1, bearingIn: 4 })).toBe(0.5);
    expect(bearingDiameter(0.5, 0.371, { threadIn: 1.01, bearingIn: 4 })).toBe(0.371);
    expect(redoFaults((note) => bearingDiameter(0.5, 0.371, { threadIn: 2, bearingIn: 4 }, note))).toEqual([]);
  });

  it.each([
    ['lag', 0.375, 0.265],
    ['lag', 0.5, 0.371],
    ['bolt', 0.625, 0.514],
    ['screw', 0.19, 0.152],
    ['nail', 0.162, 0.162],
    ['driftPin', 0.5, 0.5],
  ] as const)('the root of a %s of %f in. is %f in. (NDS Appendix L, from memory)', (kind, nominalIn, rootIn) => {
    expect(rootDiameterOf(kind, nominalIn)).toEqual({ ok: true, rootIn });
  });

  it('a size that is not listed has no root', () => {
    expect(rootDiameterOf('lag', 0.55)).toEqual({
      ok: false,
      reason: { code: 'fastenerSizeNotListed', values: { fastener: 'lag screw', diameterIn: 0.55 } },
    });
  });

  it('a bolt is threaded over two diameters and a quarter inch, half an inch when longer than 6 in. (Table L1)', () => {
    expect(boltThreadIn(0.5, 6)).toBe(1.25);
    expect(boltThreadIn(0.5, 8)).toBe(1.5);
  });

  it('thread at the point: a 3/8 by 6 in. lag screw, 3-1/2 in. of thread, 4-1/2 in. deep, tip 0.2188 in.', () => {
    const inPiece = threadAtPoint(3.5, 0.21875, 4.5);
    expect(inPiece).toEqual({ threadIn: 3.390625, bearingIn: 4.390625 });
    expect(bearingDiameter(0.375, 0.265, inPiece)).toBe(0.265);
    // thread that reaches out of the piece fills it
    expect(threadAtPoint(6, 0.21875, 4.5)).toEqual({ threadIn: 4.390625, bearingIn: 4.390625 });
  });

  it('thread under a nut: 1-1/4 in., of which 3/4 in. is in washer, nut and air', () => {
    expect(threadAtNut(1.25, 0.75, 3.5)).toEqual({ threadIn: 0.5, bearingIn: 3.5 });
    expect(bearingDiameter(0.5, 0.406, threadAtNut(1.25, 0.75, 3.5))).toBe(0.5);
    expect(bearingDiameter(0.5, 0.406, threadAtNut(1.5, 0.5, 3.5))).toBe(0.406);
    expect(threadAtNut(1.25, 2, 3.5).threadIn).toBe(0);
  });

  it.each([
    ['nail', 0.113, 100_000],
    ['nail', 0.148, 90_000],
    ['nail', 0.207, 80_000],
    ['nail', 0.263, 70_000],
    ['spike', 0.312, 60_000],
    ['screw', 0.19, 80_000],
    ['lag', 0.25, 70_000],
    ['lag', 0.375, 45_000],
    ['lag', 0.75, 45_000],
    ['bolt', 0.5, 45_000],
  ] as const)('a %s of %f in. yields at %i psi (NDS Appendix I, Table I1, from memory)', (kind, nominalIn, FybPsi) => {
    expect(bendingYieldOf(kind, nominalIn)).toEqual({ ok: true, FybPsi });
  });

  it('has no printed strength thinner than 0.099 in. or, for a wood screw, thicker than 0.375 in.', () => {
    expect(bendingYieldOf('nail', 0.098).ok).toBe(false);
    expect(bendingYieldOf('screw', 0.38).ok).toBe(false);
  });
});

describe('factors of a lateral value', () => {
  const SETTING = {
    kind: 'lag',
    nominalIn: 0.5,
    made: 'wet',
    used: 'dry',
    arrangement: 'rows',
    grain: 'side',
    isToed: false,
  } as const;

  it.each([
    [0.5, 'dry', 'dry', 'rows', 1],
    [0.5, 'wet', 'dry', 'rows', 0.4],
    [0.5, 'wet', 'dry', 'one', 1],
    [0.5, 'wet', 'dry', 'oneRowAlongGrain', 1],
    [0.5, 'wet', 'dry', 'rowsWithOwnPlates', 1],
    [0.5, 'wet', 'wet', 'one', 0.7],
    [0.5, 'dry', 'wet', 'rows', 0.7],
    [0.162, 'wet', 'dry', 'one', 0.7],
    [0.162, 'dry', 'dry', 'one', 1],
    [0.162, 'wet', 'wet', 'rows', 0.7],
  ] as const)(
    '%f in. made %s, used %s, standing as %s: CM %f (NDS Table 11.3.3, from memory)',
    (nominalIn, made, used, arrangement, CM) => {
      expect(lateralWetFactor({ nominalIn, made, used, arrangement })).toBe(CM);
    },
  );

  it('multiplies them all (NDS Table 11.3.1): 1.6 for wind, two rows made wet, half the end distance', () => {
    expect(adjustedLateral(600, SETTING, { CD: 1.6, Cg: 0.98, Cdelta: 0.5 })).toBeCloseTo(
      600 * 1.6 * 0.4 * 0.98 * 0.5,
      9,
    );
    const inEnd = { ...SETTING, arrangement: 'one', grain: 'end' } as const;
    expect(adjustedLateral(600, inEnd, { CD: 1, Cg: 1, Cdelta: 1 })).toBeCloseTo(600 * 0.67, 9);
    const toed = { ...SETTING, kind: 'nail', nominalIn: 0.162, isToed: true } as const;
    expect(() => adjustedLateral(600, { ...SETTING, isToed: true }, { CD: 1, Cg: 1, Cdelta: 1 })).toThrow(MisuseError);
    expect(adjustedLateral(141, toed, { CD: 1.15, Cg: 1, Cdelta: 1 })).toBeCloseTo(141 * 1.15 * 0.7 * 0.83, 9);
  });

  it('writes steps that another calculator redoes', () => {
    const { steps } = stepsOf((note) =>
      adjustedLateral(600, { ...SETTING, grain: 'end' }, { CD: 1.6, Cg: 0.98, Cdelta: 0.5 }, note),
    );
    const computed = steps.filter((step) => !isGiven(step));
    expect(computed.map(({ symbol }) => symbol)).toEqual(["Z'"]);
    expect(redoFaults((note) => computed.forEach((step) => note?.(step)))).toEqual([]);
    expect(redoFaults((note) => dowelBearingOnWood(0.46, 0.5, 35, note))).toEqual([]);
    expect(redoFaults((note) => dowelBearingOnWood(0.46, 0.162, 35, note))).toEqual([]);
    expect(redoFaults((note) => dowelBearingOnSteel(STEELS.plate, note))).toEqual([]);
  });

  it('a toe-nail of 3-1/2 in. has 1.167 in. in the side piece and 1.864 in. beyond (hand: 3.5 cos 30 less a third)', () => {
    expect(toeNail(3.5).sideIn).toBeCloseTo(1.1667, 4);
    expect(toeNail(3.5).penetrationIn).toBeCloseTo(1.8644, 4);
    expect(redoFaults((note) => toeNail(3.5, note))).toEqual([]);
    expect(() => toeNail(0)).toThrow(MisuseError);
  });
});
