import * as fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { analyseLine } from '../../../src/engine/frame/line-frame.ts';
import { meshLine } from '../../../src/engine/frame/line-mesh.ts';
import { SAME_PLACE_IN } from '../../../src/engine/frame/mesh-builder.ts';
import { footIndex, holdIndex, pinForce } from '../../../src/engine/frame/read-response.ts';
import { emptyLineCase, type LineCase } from '../../../src/engine/loads/cases.ts';
import { plainShed, WOOD } from '../../support/plain-shed.ts';
import { analysed, combination, lineLoadsOf, membersOf, randomCase, randomLine, responseOf } from './hand-line.ts';
import { placed } from './line-bench.ts';
import { membersOfLine } from '../../../src/engine/frame/line-mesh.ts';

describe('the mesh of a frame line', () => {
  it('merges places nearer than a sixteenth and keeps every load on a node', () => {
    const members = membersOf({});
    const near = [0.03, 0.05, 29.97, 72, 72.04, 72.08, 143.96];
    const mesh = meshLine(members, () => WOOD.E, near);
    const xs = mesh.beams[0]!.nodes.map((n) => mesh.model.nodes[n]!.u);
    for (let i = 1; i < xs.length; i++) expect(xs[i]! - xs[i - 1]!).toBeGreaterThan(SAME_PLACE_IN);
    for (const x of near) expect(Math.min(...xs.map((u) => Math.abs(u - x)))).toBeLessThanOrEqual(SAME_PLACE_IN + 1e-9);
  });

  it('cuts a beam at least every foot and a post every two', () => {
    const { beams, posts, model } = meshLine(membersOf({ bracesAt: [] }), () => WOOD.E, []);
    const gaps = (nodes: readonly number[], axis: 'u' | 'w'): number[] =>
      nodes.slice(1).map((n, i) => model.nodes[n]![axis] - model.nodes[nodes[i]!]![axis]);
    expect(Math.max(...gaps(beams[0]!.nodes, 'u'))).toBeLessThanOrEqual(12 + 1e-9);
    expect(Math.max(...gaps(posts[0]!.nodes, 'w'))).toBeLessThanOrEqual(24 + 1e-9);
  });

  it('has a station at the middle and both ends of a cut drawn by hand', () => {
    const cut = {
      id: 'dap',
      member: 'beam-0-0',
      kind: 'dap',
      centreIn: 65.3,
      lengthIn: 5,
      depthIn: 1,
      angleDeg: 0,
      by: 'hand',
    } as const;
    const shelter = placed({ ...plainShed(), cuts: [cut] });
    const mesh = meshLine(membersOfLine(shelter, shelter.lines[0]!), () => WOOD.E, []);
    const xs = mesh.beams[0]!.nodes.map((n) => mesh.model.nodes[n]!.u);
    for (const x of [62.8, 65.3, 67.8]) expect(Math.min(...xs.map((u) => Math.abs(u - x)))).toBeLessThan(1e-9);
  });

  it('carries the diameter of the wood at every station, post and beam', () => {
    const members = membersOf({});
    const mesh = meshLine(members, () => WOOD.E, []);
    mesh.beams[0]!.atIn.forEach((at, i) => expect(mesh.beams[0]!.diameterIn[i]).toBeCloseTo(12 - (2 * at) / 240, 9));
    const post = mesh.posts[0]!;
    post.atIn.forEach((at, i) => expect(post.diameterIn[i]).toBeCloseTo(9 - Math.min(at, post.post.lengthIn) / 160, 9));
  });

  it('a beam on one post only is a mechanism, said in words', () => {
    const members = membersOf({ postXsIn: [70], pierTopsIn: [6], bracesAt: [] });
    const answer = analyseLine(members, lineLoadsOf([]), [], () => WOOD.E, { pullGiven: true, holdsItself: true });
    expect(answer).toMatchObject({ ok: false, reason: { code: 'lineIsMechanism', values: { line: 'A' } } });
  });

  it('a pinned line without braces that nothing else holds has nothing that holds it sideways', () => {
    const frame = analysed(membersOf({ bracesAt: [] }), lineLoadsOf([]), [combination({})]);
    expect(frame.unheld.map(({ reason }) => reason.code)).toEqual(['nothingHoldsSideways']);
    expect(frame.responses.map(({ braceModel, held }) => [braceModel, held])).toEqual([['noBraces', true]]);
    const fixed = analysed(membersOf({ bracesAt: [], fixity: 'fixed' }), lineLoadsOf([]), [combination({})]);
    expect(fixed.unheld).toEqual([]);
    expect(fixed.responses[0]!.held).toBe(false);
  });
});

describe('loads and reactions of a line', () => {
  // proof [frame.balance]: closed-form - sums of loads and of reactions, forces and moments, taken apart in the test
  it('[frame.balance] are in balance: both forces and moments about the datum, on random lines', () => {
    const lineAndCase = randomLine.chain((members) => fc.tuple(fc.constant(members), randomCase(members, 'load')));
    fc.assert(
      fc.property(lineAndCase, ([members, lineCase]) => {
        const frame = analysed(members, lineLoadsOf([lineCase]), [combination({ load: 1 }, { swaysAlong: true })]);
        const response = responseOf(frame, 'load', 'bothWays');
        fc.pre(response !== undefined);
        const { mesh, layout } = frame;
        const loads = forcesOf(lineCase, frame.mesh, members);
        const feet = mesh.posts.map((p) => {
          const at = footIndex(layout, p);
          return { u: p.post.xIn, w: p.post.footZIn, fu: response!.values[at]!, fw: response!.values[at + 1]! };
        });
        const all = [...loads, ...feet];
        const scale = all.reduce((most, f) => Math.max(most, Math.abs(f.fu), Math.abs(f.fw)), 1);
        expect(Math.abs(all.reduce((sum, f) => sum + f.fu, 0))).toBeLessThan(1e-7 * scale);
        expect(Math.abs(all.reduce((sum, f) => sum + f.fw, 0))).toBeLessThan(1e-7 * scale);
        const turn = all.reduce((sum, f) => sum + f.u * f.fw - f.w * f.fu, 0);
        expect(Math.abs(turn)).toBeLessThan(1e-7 * scale * 500);
        expect(frame.residual).toBeLessThan(1e-9);
      }),
      { seed: 121, numRuns: 60 },
    );
  });

  it('at a splice each seat takes what its own beam brings', () => {
    const members = membersOf({
      postXsIn: [0, 72, 144],
      pierTopsIn: [6, 6, 6],
      beamEndsIn: [0, 72, 144],
      set: 'axis',
      bracesAt: [],
    });
    // the first beam carries 10 lb/in, the second 30: simple spans
    const spans: LineCase = {
      ...emptyLineCase('load'),
      points: [
        { xIn: 36, downLb: 720, alongLb: 0 },
        { xIn: 108, downLb: 2160, alongLb: 0 },
      ],
    };
    const setting = { pullGiven: true, holdsItself: false };
    const frame = analysed(members, lineLoadsOf([spans]), [combination({ load: 1 })], setting);
    const { values } = frame.responses[0]!;
    const middle = frame.mesh.posts[1]!;
    expect(pinForce(frame.mesh, middle, 'beam-0-0').down(values)).toBeCloseTo(360, 5);
    expect(pinForce(frame.mesh, middle, 'beam-0-1').down(values)).toBeCloseTo(1080, 5);
    expect(values[footIndex(frame.layout, middle) + 1]!).toBeCloseTo(1440, 5);
    expect(values[holdIndex(frame.layout, frame.mesh)]!).toBeCloseTo(0, 5);
  });
});

interface Force {
  readonly u: number;
  readonly w: number;
  readonly fu: number;
  readonly fw: number;
}

/** Resultants of a case, part by part: where each acts and how much. */
function forcesOf(c: LineCase, mesh: ReturnType<typeof meshLine>, members: ReturnType<typeof membersOf>): Force[] {
  const axis = (x: number): number => {
    const nodes = mesh.beams[0]!.nodes.map((n) => mesh.model.nodes[n]!);
    const i = Math.max(
      1,
      nodes.findIndex(({ u }) => x <= u),
    );
    const [a, b] = [nodes[i - 1]!, nodes[i]!];
    return a.w + ((x - a.u) / (b.u - a.u)) * (b.w - a.w);
  };
  // a point load goes to the nearest node, at most a sixteenth away
  const nodeOf = (x: number): { readonly u: number; readonly w: number } => {
    const node = mesh.beams[0]!.nodes.map((n) => mesh.model.nodes[n]!).find(
      ({ u }) => Math.abs(u - x) <= SAME_PLACE_IN,
    )!;
    return { u: node.u, w: node.w };
  };
  const line = (
    from: Force['u'],
    to: Force['u'],
    a: number,
    b: number,
    at: (s: number) => { u: number; w: number },
    down: boolean,
  ): Force[] => {
    // a straight load on a straight piece: even part at its middle, triangle at two thirds
    const L = to - from;
    const parts = [
      { lb: a * L, s: from + L / 2 },
      { lb: ((b - a) * L) / 2, s: from + (2 * L) / 3 },
    ];
    return parts.map(({ lb, s }) => ({ ...at(s), fu: down ? 0 : lb, fw: down ? -lb : 0 }));
  };
  // a load on the beam counts by the inch of its axis, which climbs as the log tapers
  const [start, end] = [c.onBeam[0]!, c.onBeam[1]!];
  const climb = Math.hypot(1, (axis(end.xIn) - axis(start.xIn)) / (end.xIn - start.xIn));
  return [
    ...c.points.map((p) => ({ ...nodeOf(p.xIn), fu: p.alongLb, fw: -p.downLb })),
    ...line(
      start.xIn,
      end.xIn,
      climb * start.downLbPerIn,
      climb * end.downLbPerIn,
      (s) => ({ u: s, w: axis(s) }),
      true,
    ),
    ...c.onPosts.flatMap((on) => {
      const post = members.posts.find(({ id }) => id === on.postId)!;
      const at = (s: number) => ({ u: post.xIn, w: s });
      return [
        ...line(post.footZIn, post.axisZIn, on.footDownLbPerIn, on.topDownLbPerIn, at, true),
        ...line(post.footZIn, post.axisZIn, on.alongLbPerIn, on.alongLbPerIn, at, false),
      ];
    }),
    ...c.onBraces.flatMap((on) => {
      const link = mesh.braces.find(({ brace }) => brace.id === on.braceId)!;
      return [link.postNode, link.topNode].map((n) => ({
        u: mesh.model.nodes[n]!.u,
        w: mesh.model.nodes[n]!.w,
        fu: on.alongLb / 2,
        fw: -on.downLb / 2,
      }));
    }),
  ];
}
