import * as fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { firstOrderOf, type LineFrame, type LineResponse } from '../../../src/engine/frame/line-frame.ts';
import { pushOnly } from '../../../src/engine/frame/push-only.ts';
import { footIndex, pushIndex } from '../../../src/engine/frame/read-response.ts';
import { swayTimes, withSecondOrder } from '../../../src/engine/frame/second-order.ts';
import { emptyLineCase, type DeadPiece, type LineCase } from '../../../src/engine/loads/cases.ts';
import type { Combination } from '../../../src/engine/loads/combination.ts';
import { WOOD, type Measures } from '../../support/plain-shed.ts';
import { analysed, combination, lineLoadsOf, membersOf, randomCase, randomLine, responseOf } from './hand-line.ts';

/** Stiffness for stability as for forces, so that closed forms know one E. */
const whole = () => 1;
/** Emin over E of derived values. @source NDS App. D, from memory */
const SHARE = 0.3653;
const share = () => SHARE;
const off = (value: number, expected: number): number => Math.abs(value / expected - 1);
const sway = (factors: Readonly<Record<string, number>>, more: Partial<Combination> = {}): Combination =>
  combination(factors, { swaysAlong: true, ...more });

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
const down = (id: string, ...downLb: readonly [number, number]): LineCase => ({
  ...emptyLineCase(id),
  points: downLb.map((lb, i) => ({ xIn: 120 * i, downLb: lb, alongLb: 0 })),
});
const level: LineCase = { ...emptyLineCase('level'), points: [{ xIn: 0, downLb: 0, alongLb: 400 }] };

describe('second order of a line', () => {
  // Timoshenko and Gere, Theory of Elastic Stability, 2nd ed., art. 1.3 turned round a fixed foot (from memory): a post with
  // P on top and H at its top moves by H h^3 / (3 EI) x 3 (tan u - u) / u^3, with u = h sqrt(P / EI); its foot takes
  // H h tan u / u. The amplifier 1 / (1 - P / Pcr) is good to 1 % for the move and on the far side for the moment.
  it.each([0.1, 0.25, 0.4])(
    'of posts on fixed feet at P / Pcr %s lies within a hundredth of the closed form',
    (part) => {
      const pinned = membersOf({ ...bent, bracesAt: [] });
      const fixity = { along: 'fixed', across: 'pinned' } as const;
      const members = { ...pinned, posts: pinned.posts.map((p) => ({ ...p, foot: { ...p.foot, fixity } })) };
      const post = members.posts[0]!;
      const h = post.axisZIn - post.footZIn;
      const EI = (WOOD.E * Math.PI * 6 ** 4) / 64;
      const P = (part * ((Math.PI / 2) ** 2 * EI)) / h ** 2;
      const frame = withSecondOrder(
        analysed(members, lineLoadsOf([down('both', P, P), level]), [sway({ both: 1, level: 1 })]),
        whole,
      );
      const r = responseOf(frame, 'both+level', 'noBraces')!;
      const u = h * Math.sqrt(P / EI);
      const H = 200; // of the 400 lb each post takes half, being alike
      const top = frame.layout.movesAt + 3 * frame.mesh.posts[0]!.beamNodes[0]!.node;
      expect(off(r.values[top]!, ((H * h ** 3) / (3 * EI)) * ((3 * (Math.tan(u) - u)) / u ** 3))).toBeLessThan(0.01);
      const foot = Math.abs(r.values[footIndex(frame.layout, frame.mesh.posts[0]!) + 2]!);
      const exact = (H * h * Math.tan(u)) / u;
      expect(foot).toBeGreaterThan(exact);
      expect(foot).toBeLessThan(1.12 * exact);
    },
  );

  const cases = [down('left', 5000, 500), level];
  const asked = [sway({ left: 1, level: 1 }), combination({ left: 1 }, { gravityOnly: true })];

  it('counts so often what a free line differs in from the held one, in every value', () => {
    const first = analysed(membersOf(bent), lineLoadsOf(cases), asked);
    const frame = withSecondOrder(first, share);
    // uneven gravity drifts: it counts too
    for (const id of ['left+level', 'left']) {
      const r = responseOf(frame, id, 'bothWays')!;
      const { times } = r.secondOrder!;
      expect(off(times, 1 / (1 - 1 / r.buckling!.swayFactor))).toBeLessThan(1e-12);
      const held = frame.layout.with(r.working, false)!.combine(r.combination);
      const free = responseOf(first, id, 'bothWays')!.values;
      for (let i = 0; i < frame.layout.movesAt; i++) {
        const expected = held[i]! + times * (free[i]! - held[i]!);
        expect(Math.abs(r.values[i]! - expected)).toBeLessThan(1e-6 * Math.max(1, Math.abs(expected)));
      }
    }
  });

  it('leaves held lines and sag of first order', () => {
    const sag = combination({ left: 1 }, { gravityOnly: true, purpose: 'sag', id: 'sag' });
    const frame = withSecondOrder(analysed(membersOf(bent), lineLoadsOf(cases), [...asked, sag]), share);
    for (const r of frame.responses.filter((each) => each.held || each.combination.purpose === 'sag'))
      expect(r.secondOrder).toBeUndefined();
  });

  it('tells what each case brings, so that the parts add up to the value', () => {
    const dead: DeadPiece[] = [{ piece: 'roof', heavy: down('h', 900, 400), light: down('l', 500, 200) }];
    const lift = sway({ level: 1 }, { dead: { factor: 0.6, weight: 'light' } });
    const frame = withSecondOrder(analysed(membersOf(bent), lineLoadsOf(cases, dead), [...asked, lift]), share);
    for (const r of frame.responses.filter((each) => each.secondOrder)) {
      const at = pushIndex(frame.layout, 0);
      const sum = frame.layout.parts(r, at).reduce((all, part) => all + part.factor * part.value, 0);
      expect(Math.abs(sum - r.values[at]!)).toBeLessThan(1e-6 * Math.max(1, Math.abs(sum)));
    }
  });

  it('counts once where the line would sway over, and its buckling says so', () => {
    const heavy = [down('left', 900_000, 900_000), level];
    const frame = withSecondOrder(analysed(membersOf(bent), lineLoadsOf(heavy), asked), share);
    const r = responseOf(frame, 'left+level', 'bothWays')!;
    expect(r.buckling!.swayFactor).toBeLessThan(1);
    expect(r.secondOrder).toBeUndefined();
    expect(swayTimes(r.buckling!)).toBe(1);
  });

  /** What must hold of a response whose braces only push, its sway counted as often as it does. */
  const settled = ({ layout }: LineFrame, r: LineResponse): boolean =>
    pushOnly(layout, r.combination, r.working, !r.held, r.secondOrder?.times ?? 1)!.working.every(
      (on, j) => on === r.working[j],
    );

  it('braces that only push are those that push under the larger sway, and it is never smaller than asked', () => {
    let told = 0;
    fc.assert(
      fc.property(
        randomLine.chain((members) =>
          fc.tuple(fc.constant(members), randomCase(members, 'one'), randomCase(members, 'two')),
        ),
        ([members, one, two]) => {
          const combinations = [sway({ one: 3 }), sway({ one: 2, two: 1 }), sway({ two: -2 })];
          const frame = withSecondOrder(analysed(members, lineLoadsOf([one, two]), combinations), share);
          for (const r of frame.responses.filter(({ braceModel, held }) => braceModel === 'pushOnly' && !held)) {
            if (!r.buckling || r.buckling.swayFactor <= 1) continue;
            told += 1;
            expect(settled(frame, r)).toBe(true);
            expect(r.secondOrder?.times ?? 1).toBeGreaterThanOrEqual(swayTimes(r.buckling) * (1 - 1e-12));
            expect(firstOrderOf(r).working).toEqual(r.working);
          }
        },
      ),
      { numRuns: 40 },
    );
    expect(told).toBeGreaterThan(20);
  });
});
