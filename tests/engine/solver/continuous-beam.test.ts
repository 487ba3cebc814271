import * as fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { continuousBeam, type BeamOnRollers, type RollerLoads } from '../../../src/engine/solver/continuous-beam.ts';
import { inertia, numberAt, simpson } from './frames.ts';

const E = 1.4e6;
const inches = (min: number, max: number) => fc.integer({ min: min * 8, max: max * 8 }).map((n) => n / 8);

interface Partial {
  readonly from: number;
  readonly to: number;
  readonly w: number;
}

/** Load on one span of length L: uniform w from a to b, counted from the left end of the span. */
interface OnSpan {
  readonly a: number;
  readonly b: number;
  readonly w: number;
}

const onSpan = ({ from, to, w }: Partial, left: number, right: number): OnSpan => {
  const a = Math.min(Math.max(from, left), right) - left;
  const b = Math.max(Math.min(to, right), left) - left;
  return { a, b: Math.max(a, b), w };
};
/** Load terms of the three-moment equation (6 A x / L), seen from the far end: integral of P a (L^2 - a^2)/L. */
const termFromRight = ({ a, b, w }: OnSpan, L: number) =>
  (w / L) * ((L ** 2 * (b ** 2 - a ** 2)) / 2 - (b ** 4 - a ** 4) / 4);
const termFromLeft = ({ a, b, w }: OnSpan, L: number) => termFromRight({ a: L - b, b: L - a, w }, L);

/** Elimination without pivoting: the three-moment matrix is diagonally dominant. */
function solveDense(matrix: number[][], side: number[]): number[] {
  const n = side.length;
  for (let k = 0; k < n; k++) {
    for (let i = k + 1; i < n; i++) {
      const factor = numberAt(matrix[i] ?? [], k) / numberAt(matrix[k] ?? [], k);
      matrix[i] = (matrix[i] ?? []).map((value, j) => value - factor * numberAt(matrix[k] ?? [], j));
      side[i] = numberAt(side, i) - factor * numberAt(side, k);
    }
  }
  for (let k = n - 1; k >= 0; k--) {
    const known = side.slice(k + 1).reduce((sum, value, j) => sum + value * numberAt(matrix[k] ?? [], k + 1 + j), 0);
    side[k] = (numberAt(side, k) - known) / numberAt(matrix[k] ?? [], k);
  }
  return side;
}

/** Clapeyron's three-moment equation for a prismatic beam with overhangs: moments at the supports, and reactions. */
function threeMoments(length: number, supports: readonly number[], loads: readonly Partial[]) {
  const n = supports.length;
  const at = (i: number) => numberAt(supports, i);
  const spanLoads = (left: number, right: number) => loads.map((load) => onSpan(load, left, right));
  const sum = (values: readonly number[]) => values.reduce((total, value) => total + value, 0);
  const endMoment = (left: number, right: number, pivot: number) =>
    -sum(spanLoads(left, right).map(({ a, b, w }) => w * (b - a) * Math.abs(left + (a + b) / 2 - pivot)));
  const first = endMoment(0, at(0), at(0));
  const last = endMoment(at(n - 1), length, at(n - 1));
  const matrix: number[][] = [];
  const side: number[] = [];
  for (let i = 1; i < n - 1; i++) {
    const left = at(i) - at(i - 1);
    const right = at(i + 1) - at(i);
    const row = Array.from({ length: n }, (_, j) =>
      j === i - 1 ? left : j === i ? 2 * (left + right) : j === i + 1 ? right : 0,
    );
    const loadTerms =
      sum(spanLoads(at(i - 1), at(i)).map((load) => termFromRight(load, left))) +
      sum(spanLoads(at(i), at(i + 1)).map((load) => termFromLeft(load, right)));
    side.push(-loadTerms - numberAt(row, 0) * first - numberAt(row, n - 1) * last);
    matrix.push(row.slice(1, n - 1));
  }
  const moments = [first, ...solveDense(matrix, side), last];
  const total = (left: number, right: number) => sum(spanLoads(left, right).map(({ a, b, w }) => w * (b - a)));
  const reactions = supports.map((x, i) => {
    let reaction = (i === 0 ? total(0, x) : 0) + (i === n - 1 ? total(x, length) : 0);
    if (i > 0) {
      const L = x - at(i - 1);
      const simple = sum(spanLoads(at(i - 1), x).map(({ a, b, w }) => (w * (b - a) * (a + b)) / 2 / L));
      reaction += simple + (numberAt(moments, i - 1) - numberAt(moments, i)) / L;
    }
    if (i < n - 1) {
      const L = at(i + 1) - x;
      const simple = sum(spanLoads(x, at(i + 1)).map(({ a, b, w }) => w * (b - a) * (1 - (a + b) / 2 / L)));
      reaction += simple + (numberAt(moments, i + 1) - numberAt(moments, i)) / L;
    }
    return reaction;
  });
  return { moments, reactions };
}

const arrangements = fc
  .record({
    overhangs: fc.tuple(inches(0, 30), inches(0, 30)),
    spans: fc.array(inches(20, 120), { minLength: 1, maxLength: 29 }),
    loads: fc.array(fc.tuple(fc.integer({ min: 0, max: 1000 }), fc.integer({ min: 0, max: 1000 }), inches(-20, 20)), {
      minLength: 1,
      maxLength: 4,
    }),
  })
  .map(({ overhangs, spans, loads }) => {
    const supports = [overhangs[0]];
    spans.forEach((span) => supports.push(numberAt(supports, supports.length - 1) + span));
    const length = numberAt(supports, supports.length - 1) + overhangs[1];
    const eighths = (share: number) => Math.round((8 * length * share) / 1000) / 8;
    const parts = loads.map(([a, b, w]) => ({ from: eighths(Math.min(a, b)), to: eighths(Math.max(a, b)), w }));
    return { supports, length, parts };
  });

const uniform = (from: number, to: number, w: number): RollerLoads['lines'][number] => ({
  fromIn: from,
  toIn: to,
  fromLbPerIn: w,
  toLbPerIn: w,
});
const prismatic = (lengthIn: number, supportsAtIn: readonly number[], stationsAtIn: readonly number[]) => ({
  lengthIn,
  E,
  pieces: [{ toIn: lengthIn, section: { kind: 'prismatic' as const, areaIn2: 8.25, inertiaIn4: 20.8 } }],
  supportsAtIn,
  stationsAtIn,
});

describe('continuous beam', () => {
  it('agrees with the three-moment equation for 2 to 30 supports, overhangs and loads on any part', () => {
    fc.assert(
      fc.property(arrangements, ({ supports, length, parts }) => {
        const [state] = continuousBeam(prismatic(length, supports, supports), [
          { lines: parts.map(({ from, to, w }) => uniform(from, to, w)), points: [] },
        ]);
        const { moments, reactions } = threeMoments(length, supports, parts);
        const size = parts.reduce((sum, { from, to, w }) => sum + Math.abs(w) * (to - from), 0);
        reactions.forEach((reaction, i) =>
          expect(Math.abs(numberAt(state?.reactionsLb ?? [], i) - reaction)).toBeLessThanOrEqual(1e-9 * size),
        );
        moments.forEach((moment, i) =>
          expect(Math.abs((state?.stations[i]?.momentLbIn ?? NaN) - moment)).toBeLessThanOrEqual(1e-8 * size * 120),
        );
        expect(state?.residual).toBeLessThan(1e-9);
      }),
      { numRuns: 200, seed: 3 },
    );
  });

  it('puts loads that end within a sixteenth of an inch of a support there, with the same force and moment', () => {
    const near = fc.integer({ min: -3, max: 3 }).map((n) => n / 64);
    const load = fc.tuple(fc.nat(30), near, fc.nat(30), near, inches(1, 20));
    fc.assert(
      fc.property(arrangements, load, ({ supports, length }, [i, offI, j, offJ, w]) => {
        const at = (k: number, off: number) =>
          Math.min(length, Math.max(0, numberAt(supports, k % supports.length) + off));
        const from = Math.min(at(i, offI), at(j, offJ));
        const to = Math.max(at(i, offI), at(j, offJ));
        const beam = prismatic(length, supports, supports);
        const [state] = continuousBeam(beam, [{ lines: [uniform(from, to, w)], points: [] }]);
        const reactions = state?.reactionsLb ?? [];
        const size = w * (to - from);
        const sum = reactions.reduce((total, reaction) => total + reaction, 0);
        const moment = reactions.reduce((total, reaction, k) => total + reaction * numberAt(supports, k), 0);
        expect(Math.abs(sum - size)).toBeLessThanOrEqual(1e-9 * size);
        expect(Math.abs(moment - (size * (from + to)) / 2)).toBeLessThanOrEqual(1e-9 * size * length);
        const exact = threeMoments(length, supports, [{ from, to, w }]).reactions;
        // how the load lies within the sixteenth is lost: the order of (1/16 over the span) squared
        exact.forEach((reaction, k) =>
          expect(Math.abs(numberAt(reactions, k) - reaction)).toBeLessThanOrEqual(2e-5 * size),
        );
        expect(state?.residual).toBeLessThan(1e-9);
      }),
      { numRuns: 200, seed: 9 },
    );
  });

  it('the shear steps by the reaction at a support and by the load under a point load', () => {
    const beam = prismatic(200, [20, 90, 180], [0, 20, 50, 90, 180, 200]);
    const [state] = continuousBeam(beam, [{ lines: [uniform(0, 200, 3)], points: [{ atIn: 50, lb: 400 }] }]);
    const [start, first, load, middle, last, end] = state?.stations ?? [];
    const step = (station: typeof start) => (station?.shearAfterLb ?? NaN) - (station?.shearBeforeLb ?? NaN);
    [first, middle, last].forEach((station, i) =>
      expect(step(station)).toBeCloseTo(numberAt(state?.reactionsLb ?? [], i), 8),
    );
    expect(step(load)).toBeCloseTo(-400, 8);
    // free ends carry nothing; the overhangs hang by statics
    for (const free of [start?.shearAfterLb, start?.momentLbIn, end?.shearBeforeLb, end?.momentLbIn])
      expect(free).toBeCloseTo(0, 6);
    expect(first?.momentLbIn).toBeCloseTo((-3 * 20 ** 2) / 2, 6);
    expect(last?.shearAfterLb).toBeCloseTo(3 * 20, 8);
  });

  it('a simple span sags 5 w L^4/(384 E I) at midspan and its light overhang rises by the end slope', () => {
    const L = 150;
    const c = 25;
    const w = 4;
    const [state] = continuousBeam(prismatic(L + c, [0, L], [L / 2, L + c]), [
      { lines: [uniform(0, L, w)], points: [] },
    ]);
    const EI = E * 20.8;
    expect((state?.stations[0]?.sagIn ?? NaN) / ((5 * w * L ** 4) / (384 * EI))).toBeCloseTo(1, 9);
    expect((state?.stations[1]?.sagIn ?? NaN) / ((-w * L ** 3 * c) / (24 * EI))).toBeCloseTo(1, 9);
  });

  it('a tapered pole with an overhang sags at its tip as the unit-load integral says', () => {
    const L = 140;
    const c = 40;
    const butt = 6;
    const tip = 4;
    const beam: BeamOnRollers = {
      lengthIn: L + c,
      E,
      pieces: [{ toIn: L + c, section: { kind: 'round', fromDiameterIn: butt, toDiameterIn: tip } }],
      supportsAtIn: [0, L],
      stationsAtIn: [L + c, 70],
    };
    // 2 lb/in at the butt growing to 6 lb/in at the tip, and a pull up of 30 lb at the tip
    const load = { fromIn: 0, toIn: L + c, fromLbPerIn: 2, toLbPerIn: 6 };
    const [state] = continuousBeam(beam, [{ lines: [load], points: [{ atIn: L + c, lb: -30 }] }]);
    const w = (x: number) => 2 + (4 * x) / (L + c);
    const right = (simpson((x) => x * w(x), 0, L + c, 4) - 30 * (L + c)) / L;
    const left = simpson(w, 0, L + c, 2) - 30 - right;
    const moment = (x: number) => left * x - simpson((y) => (x - y) * w(y), 0, x, 4) + (x > L ? right * (x - L) : 0);
    const unit = (x: number) => (x < L ? (-c * x) / L : x - L - c);
    const EI = (x: number) => E * inertia(butt + ((tip - butt) * x) / (L + c));
    const work = (x: number) => (moment(x) * unit(x)) / EI(x);
    const sag = simpson(work, 0, L) + simpson(work, L, L + c);
    expect((state?.stations[0]?.sagIn ?? NaN) / sag).toBeCloseTo(1, 9);
    expect((state?.stations[1]?.momentLbIn ?? NaN) / moment(70)).toBeCloseTo(1, 9);
    expect(state?.reactionsLb[1]).toBeCloseTo(right, 7);
  });

  it('a pole told in two pieces is the same pole, and answers each load by itself', () => {
    const piece = (toIn: number, fromDiameterIn: number, toDiameterIn: number) => ({
      toIn,
      section: { kind: 'round' as const, fromDiameterIn, toDiameterIn },
    });
    const beam = { lengthIn: 200, E, supportsAtIn: [10, 100, 190], stationsAtIn: [0, 33, 60, 100, 200] };
    const loads = [
      { lines: [uniform(0, 77, 5)], points: [] },
      { lines: [], points: [{ atIn: 150, lb: 90 }] },
    ];
    const whole = continuousBeam({ ...beam, pieces: [piece(200, 8, 4)] }, loads);
    const halves = continuousBeam({ ...beam, pieces: [piece(50, 8, 7), piece(200, 7, 4)] }, loads);
    const alone = loads.flatMap((load) => continuousBeam({ ...beam, pieces: [piece(200, 8, 4)] }, [load]));
    const flat = (states: typeof whole) =>
      states.flatMap(({ reactionsLb, stations }) => [
        ...reactionsLb,
        ...stations.flatMap((s) => [s.momentLbIn, s.shearBeforeLb, s.shearAfterLb, 1e4 * s.sagIn]),
      ]);
    const expected = flat(whole);
    expect(expected).toHaveLength(2 * (3 + 5 * 4));
    for (const other of [flat(halves), flat(alone)]) {
      expect(other).toHaveLength(expected.length);
      other.forEach((value, i) => expect(value).toBeCloseTo(numberAt(expected, i), 6));
    }
  });
});
