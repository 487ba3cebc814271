import * as fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { lineBuckling, type LineBuckling } from '../../../src/engine/frame/line-buckling.ts';
import type { LineFrame, LineResponse, LineSetting } from '../../../src/engine/frame/line-frame.ts';
import { emptyLineCase, type LineCase } from '../../../src/engine/loads/cases.ts';
import type { Combination } from '../../../src/engine/loads/combination.ts';
import { WOOD, type Measures } from '../../support/plain-shed.ts';
import { analysed, combination, lineLoadsOf, membersOf, randomCase, randomLine, responseOf } from './hand-line.ts';

/** Emin over E of derived values, before rounding down: NDS App. D with a coefficient of variation of 0.25. */
const SHARE = 0.3653;
const stabilityShare = () => SHARE;

const bent: Partial<Measures> = {
  postXsIn: [0, 120],
  beamEndsIn: [0, 120],
  beamDiametersIn: [10, 10],
  postDiametersIn: [6, 6],
  braceDiametersIn: [5, 5],
  set: 'axis',
  runIn: 24,
  dropIn: 36,
};

const onPosts = (id: string, ...downLb: readonly [number, number]): LineCase => ({
  ...emptyLineCase(id),
  points: downLb.map((lb, i) => ({ xIn: 120 * i, downLb: lb, alongLb: 0 })),
});
const level: LineCase = { ...emptyLineCase('level'), points: [{ xIn: 0, downLb: 0, alongLb: 800 }] };
const cases = [onPosts('both', 4000, 4000), onPosts('left', 5000, 500), onPosts('lift', -900, -900), level];
const gravity = (factors: Readonly<Record<string, number>>): Combination => combination(factors, { gravityOnly: true });
const sway = (factors: Readonly<Record<string, number>>): Combination => combination(factors, { swaysAlong: true });
const combinations = [
  gravity({ both: 1 }),
  gravity({ both: 2 }),
  gravity({ left: 1 }),
  gravity({ lift: 1 }),
  sway({ both: 0.75, level: 1 }),
  sway({ left: 1, level: -1 }),
];

const lineOf = (measures: Partial<Measures>, setting?: LineSetting): LineFrame =>
  analysed(membersOf({ ...bent, ...measures }), lineLoadsOf(cases), combinations, setting);

/** How a response buckles when nothing is asked together with it. */
const byItself = (frame: LineFrame, r: LineResponse): LineBuckling =>
  lineBuckling({ ...frame, responses: [r] }, stabilityShare)(r)!;
const off = (value: number, expected: number): number => Math.abs(value / expected - 1);

describe('buckling of a frame line', () => {
  // Euler, closed form: posts on pins under a beam that something else holds
  it('[frame.buckling] matches Euler for posts on pins, held at the beam', () => {
    const frame = lineOf({ bracesAt: [] }, { pullGiven: false, holdsItself: false });
    const r = responseOf(frame, 'both', 'noBraces')!;
    const { axisZIn, footZIn } = frame.mesh.posts[0]!.post;
    const euler = (Math.PI ** 2 * SHARE * WOOD.E * Math.PI * 6 ** 4) / 64 / (axisZIn - footZIn) ** 2;
    const buckling = byItself(frame, r);
    expect(off(buckling.factor, euler / 4000)).toBeLessThan(0.005);
    expect(buckling.swayFactor).toBe(Infinity);
  });

  it('falls as one over the load', () => {
    const frame = lineOf({});
    const [one, two] = ['both', 'both'].map((id, i) =>
      frame.responses.find(
        (r) => r.combination.factors[0]!.caseId === id && r.combination.factors[0]!.factor === i + 1,
      ),
    );
    expect(off(byItself(frame, two!).factor, byItself(frame, one!).factor / 2)).toBeLessThan(1e-6);
  });

  it('sways where the line holds itself and moves every post; held, its sway has no end', () => {
    const frame = lineOf({});
    const found = lineBuckling(frame, stabilityShare);
    const free = found(responseOf(frame, 'both', 'bothWays')!)!;
    expect(free.swayFactor).toBe(free.factor);
    free.envelope.postMoves.forEach((move) => expect(move).toBeGreaterThan(0.5));
    const held = found(responseOf(frame, 'both', 'pushOnly')!)!;
    expect(held.swayFactor).toBe(Infinity);
    expect(held.factor).toBeGreaterThan(free.factor);
  });

  it('gives idle braces the smaller factor of the other models of their combination', () => {
    const frame = lineOf({});
    const found = lineBuckling(frame, stabilityShare);
    const factorOf = (model: LineResponse['braceModel']): number => found(responseOf(frame, 'left', model)!)!.factor;
    expect(factorOf('idle')).toBe(Math.min(factorOf('bothWays'), factorOf('pushOnly')));
  });

  it('has no factor where every post is pulled, and none for combinations that ask for sag', () => {
    const pulled = combination({ lift: 1 }, { gravityOnly: true });
    const sag = combination({ both: 1 }, { gravityOnly: true, purpose: 'sag' });
    const frame = analysed(membersOf({ ...bent, bracesAt: [] }), lineLoadsOf(cases), [pulled, sag], {
      pullGiven: false,
      holdsItself: false,
    });
    const found = lineBuckling(frame, stabilityShare);
    expect(frame.responses.map((r) => found(r)?.factor ?? null)).toEqual([Infinity, null]);
  });

  it('stiffer wood buckles later in proportion', () => {
    const frame = lineOf({});
    const r = responseOf(frame, 'both', 'bothWays')!;
    const twice = lineBuckling({ ...frame, responses: [r] }, () => 2 * SHARE)(r)!;
    expect(off(twice.factor, 2 * byItself(frame, r).factor)).toBeLessThan(1e-6);
  });

  it('a mirrored line buckles at the same factor', () => {
    const left = analysed(membersOf(bent), lineLoadsOf([onPosts('load', 5000, 900)]), [gravity({ load: 1 })]);
    const right = analysed(membersOf(bent), lineLoadsOf([onPosts('load', 900, 5000)]), [gravity({ load: 1 })]);
    const [a, b] = [left, right].map((frame) => byItself(frame, responseOf(frame, 'load', 'bothWays')!));
    expect(off(a!.factor, b!.factor)).toBeLessThan(1e-6);
  });

  // what the docstring proves: asked together never above, and not far below, asked alone
  it('asked together, no response is given more than asked alone, nor much less', () => {
    fc.assert(
      fc.property(
        randomLine.chain((members) =>
          fc.tuple(fc.constant(members), randomCase(members, 'one'), randomCase(members, 'two')),
        ),
        ([members, one, two]) => {
          const asked = [
            gravity({ one: 1 }),
            gravity({ two: 1 }),
            gravity({ one: 0.5, two: 0.5 }),
            sway({ one: 1 }),
            sway({ one: 0.75, two: -0.5 }),
          ];
          const frame = analysed(members, lineLoadsOf([one, two]), asked);
          const found = lineBuckling(frame, stabilityShare);
          for (const r of frame.responses) {
            if (r.braceModel === 'idle') continue;
            const together = 1 / found(r)!.factor;
            const alone = 1 / byItself(frame, r).factor;
            expect(together).toBeGreaterThanOrEqual(alone * (1 - 1e-6) - 1e-12);
            expect(together - alone).toBeLessThanOrEqual(Math.max(0.02, 0.1 * together));
          }
        },
      ),
      { numRuns: 40 },
    );
  });
});
