import { describe, expect, it } from 'vitest';
import type { BeamElement, FrameModel } from '../../../src/engine/solver/model.ts';
import { area, endsOf, inertia, movesOf, numberAt, solveFrame } from './frames.ts';

/**
 * Two equal posts on pinned feet, a beam hinged on both post tops, one brace at each. The closed forms are derived at
 * each test by statics and by the unit-load method; `drop` is down the post, `run` along the beam.
 */
const E = 1.2e6;
const H = 108;
const L = 144;
const POST = 8;
const BEAM = 10;
const BRACE = 5;

/** drop and run of braces at 30, 45 and 60 degrees with the post, and one in between. */
const BRACES = [
  { drop: 36 * Math.sqrt(3), run: 36 },
  { drop: 36, run: 36 },
  { drop: 30, run: 30 * Math.sqrt(3) },
  { drop: 50, run: 33 },
];

function bent(drop: number, run: number): FrameModel {
  const part = (id: string, from: string, to: string, d: number): BeamElement => ({
    kind: 'beam',
    id,
    from,
    to,
    E,
    section: { kind: 'prismatic', areaIn2: area(d), inertiaIn4: inertia(d) },
  });
  const foot = H - drop;
  return {
    nodes: [
      { id: 'A', u: 0, w: 0 },
      { id: 'Ab', u: 0, w: foot },
      { id: 'At', u: 0, w: H },
      { id: 'B', u: L, w: 0 },
      { id: 'Bb', u: L, w: foot },
      { id: 'Bt', u: L, w: H },
      { id: 'b0', u: 0, w: H, hingedTo: 'At' },
      { id: 'b1', u: run, w: H },
      { id: 'bm', u: L / 2, w: H },
      { id: 'b2', u: L - run, w: H },
      { id: 'b3', u: L, w: H, hingedTo: 'Bt' },
    ],
    elements: [
      part('A low', 'A', 'Ab', POST),
      part('A high', 'Ab', 'At', POST),
      part('B low', 'B', 'Bb', POST),
      part('B high', 'Bb', 'Bt', POST),
      part('beam 1', 'b0', 'b1', BEAM),
      part('beam 2', 'b1', 'bm', BEAM),
      part('beam 3', 'bm', 'b2', BEAM),
      part('beam 4', 'b2', 'b3', BEAM),
      { kind: 'bar', id: 'brace A', from: 'Ab', to: 'b1', EA: E * area(BRACE) },
      { kind: 'bar', id: 'brace B', from: 'Bb', to: 'b2', EA: E * area(BRACE) },
    ],
    supports: ['A', 'B'].map((node) => ({ node, u: true, w: true, turn: false })),
  };
}

const BEAM_PARTS = ['beam 1', 'beam 2', 'beam 3', 'beam 4'];
/** How far a value is off, as a share of what is expected. */
const off = (value: number, expected: number): number => Math.abs(value / expected - 1);

describe('knee-braced bent', () => {
  it.each(BRACES)('sways as statics and the unit-load method say, drop $drop, run $run', ({ drop, run }) => {
    const P = 1000;
    const V = P / 2; // half of the push at each top: the shear in each post by symmetry
    const h = H - drop;
    const brace = Math.hypot(drop, run);
    const model = bent(drop, run);
    const state = solveFrame(model, { nodes: ['At', 'Bt'].map((node) => ({ node, u: V, w: 0 })), elements: [] });

    // moments of one post about its top: V H = (brace, horizontal) drop
    const pull = (V * H * brace) / (drop * run);
    expect(off(numberAt(endsOf(model, state, 'brace A'), 0), pull)).toBeLessThan(1e-9);
    expect(off(numberAt(endsOf(model, state, 'brace B'), 0), -pull)).toBeLessThan(1e-9);
    const [Au = NaN, Aw = NaN, , Bu = NaN, Bw = NaN] = state.reactions;
    expect(off(Au, -V)).toBeLessThan(1e-9);
    expect(off(Bu, -V)).toBeLessThan(1e-9);
    expect(off(Aw, (-P * H) / L)).toBeLessThan(1e-9);
    expect(off(Bw, (P * H) / L)).toBeLessThan(1e-9);

    // the post: moment V h at the brace, none at foot and top; shear V below, V h/drop the other way above
    const [, lowShear = NaN, footMoment = NaN, , , braceMoment = NaN] = endsOf(model, state, 'A low');
    expect(Math.abs(footMoment)).toBeLessThan(1e-9 * V * H);
    expect(off(Math.abs(braceMoment), V * h)).toBeLessThan(1e-9);
    expect(off(numberAt(endsOf(model, state, 'A high'), 1), (-lowShear * h) / drop)).toBeLessThan(1e-9);

    // the beam: the pin holds down with V H/run - 2 V H/L, so the moment at the brace is that times the run
    const beamMoment = V * H * (1 - (2 * run) / L);
    expect(off(Math.abs(numberAt(endsOf(model, state, 'beam 1'), 5)), beamMoment)).toBeLessThan(1e-9);
    expect(Math.abs(numberAt(endsOf(model, state, 'beam 2'), 5))).toBeLessThan(1e-9 * beamMoment);
    expect(off(Math.abs(numberAt(endsOf(model, state, 'beam 1'), 1)), (V * H) / run - (2 * V * H) / L)).toBeLessThan(
      1e-9,
    );

    // drift: int M m/EI and N n/EA over all members, with m = M/P and n = N/P; the pins press the beam with V H/drop
    const lowN = (P * H) / L;
    const highN = lowN - (V * H) / run;
    const axialPosts = (2 * (lowN ** 2 * h + highN ** 2 * drop)) / (P * E * area(POST));
    const axialBeam = (2 * ((V * H) / drop) ** 2 * run) / (P * E * area(BEAM));
    const posts = 2 * ((V * h) ** 2 / P) * ((h + drop) / 3 / (E * inertia(POST)));
    const beam = 2 * (beamMoment ** 2 / P) * (L / 2 / 3 / (E * inertia(BEAM)));
    const braces = 2 * (pull ** 2 / P) * (brace / (E * area(BRACE)));
    expect(off(numberAt(movesOf(model, state, 'At'), 0), posts + beam + braces + axialPosts + axialBeam)).toBeLessThan(
      1e-9,
    );
  });

  it.each(BRACES)('carries gravity with the brace force of the force method, drop $drop, run $run', ({ drop, run }) => {
    const w = 30;
    const h = H - drop;
    const brace = Math.hypot(drop, run);
    const postEA = E * area(POST);
    const beamEA = E * area(BEAM);
    const model = bent(drop, run);
    const loads = BEAM_PARTS.map((element) => ({ element, fromU: 0, toU: 0, fromW: -w, toW: -w }));
    const state = solveFrame(model, { nodes: [], elements: loads });

    // redundant X = vertical part of each brace; feet push out with X run/H, the pin pulls with X (run/drop - run/H)
    const sagAtBrace = (w * run * (L ** 3 - 2 * L * run ** 2 + run ** 3)) / (24 * E * inertia(BEAM));
    const pin = run / drop - run / H;
    const give =
      (run ** 2 * (3 * L - 4 * run)) / (6 * E * inertia(BEAM)) +
      (run ** 2 * h ** 2) / (3 * E * inertia(POST) * H) +
      brace ** 3 / (drop ** 2 * E * area(BRACE)) +
      (pin ** 2 * run + (run / H) ** 2 * (L / 2 - run)) / beamEA +
      drop / postEA;
    const X = (sagAtBrace + (w * L * drop) / (2 * postEA)) / give;

    expect(off(numberAt(endsOf(model, state, 'brace A'), 0), (-X * brace) / drop)).toBeLessThan(1e-9);
    expect(off(numberAt(state.reactions, 0), (X * run) / H)).toBeLessThan(1e-9);
    expect(off(numberAt(state.reactions, 1), (w * L) / 2)).toBeLessThan(1e-9);
    expect(off(Math.abs(numberAt(endsOf(model, state, 'A low'), 5)), (X * run * h) / H)).toBeLessThan(1e-9);
    expect(off(numberAt(endsOf(model, state, 'beam 2'), 5), (w * L ** 2) / 8 - X * run)).toBeLessThan(1e-9);
    expect(off(numberAt(endsOf(model, state, 'beam 1'), 0), X * pin)).toBeLessThan(1e-9);
  });

  it('moves nothing and strains nothing when both feet shift alike, and strains when one does', () => {
    const model = bent(36, 50);
    const both = ['A', 'B'].map((node) => ({ node, u: 0.5 }));
    const alike = solveFrame(model, { nodes: [], elements: [], shifts: both });
    model.nodes.forEach(({ id }) => expect(off(numberAt(movesOf(model, alike, id), 0), 0.5)).toBeLessThan(1e-9));
    expect(Math.max(...alike.forces.map(Math.abs))).toBeLessThan(1e-6);

    const apart = solveFrame(model, { nodes: [], elements: [], shifts: both.slice(0, 1) });
    expect(numberAt(apart.reactions, 0)).toBeGreaterThan(1);
    expect(off(numberAt(apart.reactions, 3), -numberAt(apart.reactions, 0))).toBeLessThan(1e-9);
    // reciprocity: a push at the beam makes at that foot minus the reaction that the foot's shift needs per inch
    const pushed = solveFrame(model, { nodes: [{ node: 'bm', u: 300, w: -700 }], elements: [] });
    const [u = NaN, sag = NaN] = movesOf(model, apart, 'bm');
    expect(off(numberAt(pushed.reactions, 0) * 0.5, -(300 * u - 700 * sag))).toBeLessThan(1e-9);
  });
});
