import * as fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { NAILS, SPIKES } from '../../../../src/data/fasteners/nails.ts';
import { say } from '../../../../src/data/words/say.ts';
import { headPullThrough, referencePullThrough } from '../../../../src/engine/checks/fasteners/head-pull-through.ts';
import { holdingLength } from '../../../../src/engine/checks/fasteners/holding-length.ts';
import { grainMet, withdrawal, type PulledFastener } from '../../../../src/engine/checks/fasteners/withdrawal.ts';
import { MisuseError } from '../../../../src/engine/errors.ts';
import type { Note } from '../../../../src/engine/note.ts';
import { redoFaults } from '../redo-step.ts';

const lag: PulledFastener = Object.freeze({
  kind: 'lag',
  diameterIn: 0.5,
  lengthIn: 8,
  penetrationIn: 5,
  gravity: 0.5,
  grain: 'side',
  isToed: false,
  made: 'dry',
  used: 'dry',
});
const nail: PulledFastener = Object.freeze({
  ...lag,
  kind: 'nail',
  diameterIn: 0.162,
  lengthIn: 3.5,
  penetrationIn: 2,
});
const screw: PulledFastener = Object.freeze({
  ...lag,
  kind: 'screw',
  diameterIn: 0.19,
  lengthIn: 3,
  penetrationIn: 1.5,
});

/** The steps that are worked out; those that a table prints have nothing to redo. */
const workedOut = (note?: Note): Note | undefined => note && ((step) => step.put.length > 0 && note(step));

const poundsOf = (answer: ReturnType<typeof withdrawal>): number => (answer.ok ? answer.pounds : NaN);
const pull = (fastener: PulledFastener, CD = 1): number => poundsOf(withdrawal(fastener, CD));
const why = (answer: ReturnType<typeof withdrawal>): string => (answer.ok ? 'taken' : answer.reason.code);

describe('length that holds', () => {
  // NDS Appendix L, Table L2 (from memory): 8 in. long: 4.5 in. of thread, tip of 5/16 in.
  it('NDS 12.2.1.1: of a lag screw the thread counts, without its tip', () => {
    expect(holdingLength({ ...lag, penetrationIn: 7 })).toEqual({ ok: true, lengthIn: 4.5 - 5 / 16 });
    expect(holdingLength({ ...lag, penetrationIn: 4 })).toEqual({ ok: true, lengthIn: 4 - 5 / 16 });
  });

  it('a lag screw between two listed lengths has the thread of the shorter one', () => {
    expect(holdingLength({ ...lag, lengthIn: 8.5, penetrationIn: 8 })).toEqual(
      holdingLength({ ...lag, lengthIn: 8, penetrationIn: 8 }),
    );
  });

  // two thirds of 3 in. are thread, two diameters of it the tip
  it('of a wood screw two thirds count, without its tip; of a nail all that is in', () => {
    const all = holdingLength({ ...screw, penetrationIn: 2.5 });
    expect(all.ok && all.lengthIn).toBeCloseTo(2 - 0.38, 12);
    expect(holdingLength(nail)).toEqual({ ok: true, lengthIn: 2 });
  });

  it('NDS 12.1.4.6, 12.1.5.6, 12.1.6.5: at the least penetration it is taken, under it refused with the rule', () => {
    expect(holdingLength({ ...lag, penetrationIn: 2 + 5 / 16 }).ok).toBe(true);
    const short = holdingLength({ ...lag, penetrationIn: 2.3 });
    expect(short.ok ? '' : say(short.reason)).toContain('2 5/16 in are needed, 4 times its diameter');
    expect(holdingLength({ ...nail, penetrationIn: 6 * 0.162 }).ok).toBe(true);
    expect(holdingLength({ ...nail, penetrationIn: 0.97 }).ok).toBe(false);
    expect(holdingLength({ ...screw, penetrationIn: 1.13 }).ok).toBe(false);
  });

  it('a lag screw that no table lists is refused with the ones that are', () => {
    const odd = holdingLength({ ...lag, diameterIn: 0.4 });
    expect(odd.ok ? '' : say(odd.reason)).toContain('0.25, 0.3125, 0.375');
    expect(holdingLength({ ...lag, lengthIn: 0.9 }).ok).toBe(false);
  });
});

describe('what a fastener holds against pull', () => {
  // 1800 x 0.5^1.5 x 0.5^0.75 = 378.40 lb per in.; the thread of 4.5 in. is all in, less its tip of 5/16: 4.1875 in.
  it('NDS 12.2.1: pounds are per inch, times length, times every factor', () => {
    const perInch = 1800 * 0.353553390593 * 0.594603557501;
    expect(pull(lag)).toBeCloseTo(perInch * 4.1875, 6);
    expect(pull(lag, 1.6)).toBeCloseTo(1.6 * pull(lag), 9);
    expect(pull({ ...lag, grain: 'end' })).toBeCloseTo(0.75 * pull(lag), 9);
  });

  it('NDS Table 11.3.3 (from memory): threads lose in wet use only, nails when their wood changes', () => {
    expect(pull({ ...lag, made: 'wet' })).toBe(pull(lag));
    expect(pull({ ...lag, used: 'wet' })).toBeCloseTo(0.7 * pull(lag), 9);
    expect(pull({ ...screw, made: 'wet', used: 'wet' })).toBeCloseTo(0.7 * pull(screw), 9);
    expect(pull({ ...nail, made: 'wet' })).toBeCloseTo(0.25 * pull(nail), 9);
    expect(pull({ ...nail, used: 'wet' })).toBeCloseTo(0.25 * pull(nail), 9);
    expect(pull({ ...nail, made: 'wet', used: 'wet' })).toBe(pull(nail));
  });

  it('NDS 12.5.4.1 (from memory): a slanted nail holds 0.67, and moisture is not asked', () => {
    expect(pull({ ...nail, isToed: true })).toBeCloseTo(0.67 * pull(nail), 9);
    expect(pull({ ...nail, isToed: true, made: 'wet' })).toBe(pull({ ...nail, isToed: true }));
    expect(why(withdrawal({ ...screw, isToed: true }, 1))).toBe('toedOnlyNails');
  });

  it('NDS 12.2.2, 12.5.2 (from memory): nails and wood screws hold nothing in end grain', () => {
    expect(why(withdrawal({ ...nail, grain: 'end' }, 1))).toBe('pulledFromEndGrain');
    expect(why(withdrawal({ ...screw, grain: 'end' }, 1))).toBe('pulledFromEndGrain');
    expect(why(withdrawal({ ...nail, kind: 'spike', grain: 'end' }, 1))).toBe('pulledFromEndGrain');
  });

  it('NDS 12.2.1.1: lighter wood than is printed is refused, heavier wood counts as the heaviest printed', () => {
    expect(why(withdrawal({ ...lag, gravity: 0.3 }, 1))).toBe('pulledWoodTooLight');
    expect(pull({ ...lag, gravity: 0.31 })).toBeGreaterThan(0);
    expect(pull({ ...lag, gravity: 0.9 })).toBe(pull({ ...lag, gravity: 0.73 }));
  });

  it('heavier wood, a deeper hold and a longer lag screw never hold less', () => {
    fc.assert(
      fc.property(
        fc.double({ min: 0.31, max: 0.8, noNaN: true }),
        fc.double({ min: 2.4, max: 9, noNaN: true }),
        fc.double({ min: 0, max: 2, noNaN: true }),
        (gravity, penetrationIn, more) => {
          const given = { ...lag, lengthIn: 9, gravity, penetrationIn };
          expect(pull({ ...given, gravity: gravity + more })).toBeGreaterThanOrEqual(pull(given));
          expect(pull({ ...given, penetrationIn: penetrationIn + more })).toBeGreaterThanOrEqual(pull(given));
          expect(pull({ ...given, lengthIn: 9 + more })).toBeGreaterThanOrEqual(pull(given));
        },
      ),
      { seed: 52 },
    );
  });

  it.each([
    ['lag screw in end grain', { ...lag, grain: 'end' as const }],
    ['lag screw with its thread part way in', { ...lag, penetrationIn: 3 }],
    ['wood screw in wet wood', { ...screw, used: 'wet' as const }],
    ['slanted nail', { ...nail, isToed: true }],
    ['nail that dries', { ...nail, made: 'wet' as const }],
  ])('every step can be redone on another calculator: %s', (_, fastener) => {
    expect(redoFaults((note) => withdrawal(fastener, 1.6, workedOut(note)))).toEqual([]);
  });

  it('what cannot be is refused by a throw', () => {
    expect(() => withdrawal({ ...lag, diameterIn: 0 }, 1)).toThrow(MisuseError);
    expect(() => withdrawal({ ...lag, penetrationIn: -1 }, 1)).toThrow(MisuseError);
    expect(() => withdrawal(lag, 0)).toThrow(MisuseError);
    expect(() => withdrawal(lag, NaN)).toThrow(MisuseError);
  });

  // Hankinson's line from 0.75 along the grain to 1 square to it, written out: 0.990 at 80 degrees
  it('what is neither square to the grain nor along it counts as along; at 80 degrees one per cent is at stake', () => {
    const sin2 = Math.sin((80 * Math.PI) / 180) ** 2;
    expect(0.75 / (0.75 * sin2 + (1 - sin2))).toBeCloseTo(0.99, 3);
    expect([0, 45, 79.9, 80, 90].map(grainMet)).toEqual(['end', 'end', 'end', 'side', 'side']);
  });
});

describe('a head that is pulled through', () => {
  const head = { kind: 'nail', headIn: 0.344, sideIn: 0.75, gravity: 0.42, used: 'dry' } as const;

  // 690 x pi x 0.344 x 0.1764 x 0.75 = 98.65 lb, worked by hand
  it('NDS 12.2.5 (from memory): a thin stick by its thickness', () => {
    expect(referencePullThrough(0.344, 0.75, 0.42)).toBeCloseTo(98.65, 2);
  });

  // 1725 x pi x 0.118336 x 0.1764 = 113.12 lb, worked by hand
  it('NDS 12.2.5 (from memory): from two and a half heads on the thickness no longer counts', () => {
    expect(referencePullThrough(0.344, 1.5, 0.42)).toBeCloseTo(113.12, 2);
    expect(referencePullThrough(0.344, 0.86, 0.42)).toBeCloseTo(referencePullThrough(0.344, 3, 0.42), 9);
  });

  it('NDS Tables 11.3.1, 11.3.3 (from memory): duration and wet use are in', () => {
    const dry = headPullThrough(head, 1);
    const wet = headPullThrough({ ...head, used: 'wet' }, 1.6);
    expect(poundsOf(wet) / poundsOf(dry)).toBeCloseTo(0.7 * 1.6, 12);
  });

  it('other heads than flat round ones are refused: nothing is printed for them', () => {
    expect(why(headPullThrough({ ...head, headIn: null }, 1))).toBe('headNotKnown');
    expect(why(headPullThrough({ ...head, kind: 'lag' }, 1))).toBe('headNotKnown');
    expect(why(headPullThrough({ ...head, kind: 'bolt' }, 1))).toBe('headNotKnown');
    expect(why(headPullThrough({ ...head, gravity: 0.29 }, 1))).toBe('pulledWoodTooLight');
  });

  it('every step can be redone on another calculator, of thin sticks and of thick ones', () => {
    expect(redoFaults((note) => headPullThrough(head, 1.6, workedOut(note)))).toEqual([]);
    expect(redoFaults((note) => headPullThrough({ ...head, sideIn: 2 }, 1.6, workedOut(note)))).toEqual([]);
  });

  // common practice: heads of common nails grow with their shanks, spikes are thicker than nails of their name
  it('tables of nails and spikes are in order', () => {
    const ascends = (values: readonly number[]) => values.every((value, i) => i === 0 || value >= values[i - 1]!);
    expect(ascends(NAILS.rows.map(({ diameterIn }) => diameterIn))).toBe(true);
    expect(ascends(NAILS.rows.map(({ headIn }) => headIn ?? 0))).toBe(true);
    expect(ascends(SPIKES.rows.map(({ diameterIn }) => diameterIn))).toBe(true);
    for (const { name, diameterIn } of SPIKES.rows.slice(0, 5)) {
      const size = name.split(' ')[0]!;
      expect(NAILS.rows.find((row) => row.name.startsWith(`${size} `))!.diameterIn).toBeLessThan(diameterIn);
    }
  });
});
