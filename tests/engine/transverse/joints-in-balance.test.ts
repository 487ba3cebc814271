import * as fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import type { LineFrame, LineResponse } from '../../../src/engine/frame/line-frame.ts';
import { pushIndex } from '../../../src/engine/frame/read-response.ts';
import type { Project } from '../../../src/engine/project/model.ts';
import { exampleText, soundProject } from '../../support/files.ts';
import { bracedShed } from '../../support/braced-shed.ts';
import { tiedShed } from '../../support/tied-shed.ts';
import { acrossBench, framesOf } from './row-bench.ts';

interface Pieces {
  level: number;
  plumb: number;
  turning: number;
  /** greatest of the forces that meet, to tell rounding from a fault */
  most: number;
}

/**
 * What all pieces that meet in a node do to it: posts and tie logs by the forces of their faces, braces by their push. A face
 * whose grain runs along t takes N along t and V square to it, to the left of t; V is the slope of M.
 */
function atNodes({ mesh, layout }: LineFrame, { values, working }: LineResponse): readonly Pieces[] {
  const nodes = mesh.model.nodes.map((): Pieces => ({ level: 0, plumb: 0, turning: 0, most: 0 }));
  const placeOf = new Map(mesh.model.nodes.map(({ id }, i) => [id, i]));
  const add = (node: number, level: number, plumb: number, turning: number): void => {
    nodes[node]!.turning += turning;
    // what is pinned to another node hands it its forces and turns by itself
    const { hingedTo } = mesh.model.nodes[node]!;
    const at = nodes[hingedTo === undefined ? node : placeOf.get(hingedTo)!]!;
    at.level += level;
    at.plumb += plumb;
    at.most = Math.max(at.most, Math.abs(level), Math.abs(plumb));
  };
  for (const chain of [...mesh.posts, ...mesh.beams]) {
    for (let i = 0; i < chain.count; i++) {
      const [from, to] = [chain.nodes[i]!, chain.nodes[i + 1]!];
      const [a, b] = [mesh.model.nodes[from]!, mesh.model.nodes[to]!];
      const length = Math.hypot(b.u - a.u, b.w - a.w);
      const [tu, tw] = [(b.u - a.u) / length, (b.w - a.w) / length];
      const face = (k: number) => [0, 1, 2].map((part) => values[(chain.firstElement + i) * 6 + k + part]!);
      for (const [node, [N, V, M], sign] of [
        [from, face(0), 1],
        [to, face(3), -1],
      ] as const)
        add(node, sign * (N! * tu + V! * tw), sign * (N! * tw - V! * tu), sign * M!);
    }
  }
  mesh.braces.forEach((link, j) => {
    const push = working[j] ? values[pushIndex(layout, j)]! : 0;
    add(link.postNode, -push * link.du, -push * link.dw, 0);
    add(link.topNode, push * link.du, push * link.dw, 0);
  });
  return nodes;
}

/**
 * The nodes of a row that no load and no ground reaches in its plane but the weight of braces, and what is spread over members.
 * Lines push at the axes of their beams, which lie under the rafter that braces run to.
 */
function inner({ mesh }: LineFrame, beamAxes: ReadonlyMap<string, number>): ReadonlySet<number> {
  const ends = mesh.posts.flatMap((p) => {
    const pushed = p.nodes.filter((n) => Math.abs(mesh.model.nodes[n]!.w - beamAxes.get(p.memberId)!) < 0.1);
    return [p.nodes[0]!, ...pushed];
  });
  return new Set(mesh.model.nodes.map((_, i) => i).filter((i) => i !== mesh.holdNode && !ends.includes(i)));
}

/** How far every inner node of every row is out of balance, beside the greatest force there; weights of braces left out. */
function imbalance(project: Project): number {
  let most = 0;
  for (const { context } of framesOf(acrossBench(project))) {
    const { frame } = context;
    const looked = inner(frame, new Map(context.shelter.posts.map((p) => [p.id, p.axisZIn])));
    const braced = new Set(frame.mesh.braces.flatMap((b) => [b.postNode, b.topNode]));
    // where dead load is made adverse value by value, what meets in a node need not belong to one instant
    const states = frame.responses.filter(
      (r) => r.combination.purpose === 'strength' && r.combination.dead.weight === 'heavy',
    );
    expect(states.length).toBeGreaterThan(0);
    for (const r of states)
      atNodes(frame, r).forEach((node, i) => {
        if (!looked.has(i)) return;
        const out = Math.max(Math.abs(node.level), braced.has(i) ? 0 : Math.abs(node.plumb));
        most = Math.max(most, out / Math.max(1, node.most), Math.abs(node.turning) / Math.max(1, 100 * node.most));
      });
  }
  return most;
}

// Statics: what meets in a joint holds it at rest.
describe('every joint of a frame across', () => {
  it.each(['firewood-shed', 'framed-shed'] as const)(
    'of %s is at rest under every load, however its braces work',
    (name) => {
      expect(imbalance(soundProject(exampleText(name)))).toBeLessThan(1e-7);
    },
  );

  it('of sheds of random poles and braces to them is at rest', () => {
    const random = fc.record({
      runIn: fc.double({ min: 20, max: 40, noNaN: true }),
      dropIn: fc.double({ min: 30, max: 50, noNaN: true }),
      rafterDiametersIn: fc.constantFrom([8, 8] as const, [9, 7] as const),
      bracesAt: fc.constantFrom(['high'] as const, ['low'] as const, ['high', 'low'] as const),
      pullLb: fc.constantFrom(20_000, 0),
    });
    fc.assert(
      fc.property(random, (braced) => {
        expect(imbalance(bracedShed({ ...braced, at: [0] }))).toBeLessThan(1e-7);
      }),
      { seed: 132, numRuns: 8 },
    );
  });

  it('of sheds of random ties and braces is at rest', () => {
    const random = fc.record({
      downIn: fc.double({ min: 12, max: 30, noNaN: true }),
      runIn: fc.double({ min: 16, max: 40, noNaN: true }),
      dropIn: fc.double({ min: 16, max: 40, noNaN: true }),
      tieDiametersIn: fc.constantFrom([8, 8] as const, [9, 6] as const, [6, 9] as const),
      bracesAt: fc.constantFrom(['near'] as const, ['far'] as const, ['near', 'far'] as const),
      pullLb: fc.constantFrom(20_000, 0),
    });
    fc.assert(
      fc.property(random, (tied) => {
        expect(imbalance(tiedShed({ ...tied, at: [0] }))).toBeLessThan(1e-7);
      }),
      { seed: 131, numRuns: 12 },
    );
  });
});
