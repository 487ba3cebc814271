import { factorFrame } from '../../../src/engine/solver/factor.ts';
import type {
  BeamElement,
  ElementLoad,
  FrameModel,
  FrameNode,
  FrameState,
  LoadState,
} from '../../../src/engine/solver/model.ts';

/** Solves one load, or says which node moves freely. */
export function solveFrame(model: FrameModel, load: LoadState): FrameState {
  const factored = factorFrame(model);
  if (!factored.ok) throw new Error(`mechanism: ${factored.node} moves in ${factored.moves}`);
  return factored.solve(load);
}

/** Index of an element or a node of the model; the arrays of a state follow it. */
export function indexOf(list: readonly { readonly id: string }[], id: string): number {
  const i = list.findIndex((entry) => entry.id === id);
  if (i < 0) throw new Error(`no ${id}`);
  return i;
}

export const numberAt = (values: ArrayLike<number>, i: number): number => values[i] ?? NaN;

/** N, V, M at the start and at the end of an element. */
export function endsOf(model: FrameModel, state: FrameState, element: string): readonly number[] {
  const at = 6 * indexOf(model.elements, element);
  return Array.from(state.forces.slice(at, at + 6));
}

/** u, w and turn of a node. */
export function movesOf(model: FrameModel, state: FrameState, node: string): readonly number[] {
  const at = 3 * indexOf(model.nodes, node);
  return Array.from(state.moves.slice(at, at + 3));
}

export interface Point {
  readonly u: number;
  readonly w: number;
}

export const between = (a: Point, b: Point, t: number): Point => ({
  u: a.u + t * (b.u - a.u),
  w: a.w + t * (b.w - a.w),
});

/** A round member, straight-tapered from end to end, cut into elements `name.1`, `name.2` ... at the given fractions. */
export function roundMember(
  name: string,
  ends: readonly [string, Point, string, Point],
  diameters: readonly [number, number],
  E: number,
  cuts: readonly number[] = [],
): { nodes: FrameNode[]; elements: BeamElement[] } {
  const [first, a, last, b] = ends;
  const stops = [0, ...cuts, 1];
  const nodeId = (i: number) => (i === 0 ? first : i === stops.length - 1 ? last : `${name}.n${i}`);
  const diameterAt = (t: number) => diameters[0] + t * (diameters[1] - diameters[0]);
  return {
    nodes: cuts.map((t, i) => ({ id: nodeId(i + 1), ...between(a, b, t) })),
    elements: stops.slice(1).map((t, i) => ({
      kind: 'beam',
      id: `${name}.${i + 1}`,
      from: nodeId(i),
      to: nodeId(i + 1),
      E,
      section: { kind: 'round', fromDiameterIn: diameterAt(numberAt(stops, i)), toDiameterIn: diameterAt(t) },
    })),
  };
}

/** The same load down on each of the elements [lb per inch of element]. */
export const downOn = (elements: readonly { readonly id: string }[], lbPerIn: number): ElementLoad[] =>
  elements.map(({ id }) => ({ element: id, fromU: 0, toU: 0, fromW: -lbPerIn, toW: -lbPerIn }));

export const inertia = (d: number): number => (Math.PI * d ** 4) / 64;
export const area = (d: number): number => (Math.PI * d ** 2) / 4;

/** Simpson's rule, the tests' own way to an integral. */
export function simpson(f: (x: number) => number, from: number, to: number, panels = 2000): number {
  const h = (to - from) / panels;
  let sum = f(from) + f(to);
  for (let i = 1; i < panels; i++) sum += (i % 2 === 1 ? 4 : 2) * f(from + i * h);
  return (sum * h) / 3;
}

/** The same frame with each tapered element cut at fractions that depend on its length. */
function cutAt(model: FrameModel, cutsOf: (lengthIn: number) => readonly number[]): FrameModel {
  const nodes = [...model.nodes];
  const elements: FrameModel['elements'][number][] = [];
  for (const element of model.elements) {
    const from = model.nodes.find(({ id }) => id === element.from);
    const to = model.nodes.find(({ id }) => id === element.to);
    if (element.kind === 'bar' || element.section.kind === 'prismatic' || !from || !to) {
      elements.push(element);
      continue;
    }
    const { fromDiameterIn, toDiameterIn } = element.section;
    const cuts = cutsOf(Math.hypot(to.u - from.u, to.w - from.w));
    const ends = [element.from, from, element.to, to] as const;
    const member = roundMember(element.id, ends, [fromDiameterIn, toDiameterIn], element.E, cuts);
    nodes.push(...member.nodes);
    elements.push(...member.elements);
  }
  return { ...model, nodes, elements };
}

/** Each tapered element cut into `pieces` of one length. */
export const cutFiner = (model: FrameModel, pieces: number): FrameModel =>
  cutAt(model, () => Array.from({ length: pieces - 1 }, (_, i) => (i + 1) / pieces));

/** Each tapered element cut a little more than 1/32 in from its ends. */
export const withShortEnds = (model: FrameModel): FrameModel =>
  cutAt(model, (lengthIn) => [0.032 / lengthIn, 1 - 0.032 / lengthIn]);
