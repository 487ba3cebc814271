import { readyBuckling, type BucklingMode } from '../../../src/engine/solver/buckling.ts';
import type { BarElement, BeamElement, FrameModel, FrameNode, Support } from '../../../src/engine/solver/model.ts';
import { between, numberAt, type Point } from './frames.ts';

/** Diameters at start and end [in], or EI of a prismatic stick that hardly shortens [lb·in2]. */
export type Stick = readonly [number, number] | number;

/** Elements per stretch between joints as the frame lines are cut, and four times as many. */
export const SHIPPED = 5;
export const FINE = 4 * SHIPPED;

export const E = 1e6;
/** So stiff along itself that shortening is lost in rounding to a hundred-thousandth [in2]. */
const STOUT_IN2 = 1e5;

/** Frames drawn by hand: joints, sticks between them, bars, supports, and the thrust of every stick. */
export class Sketch {
  readonly #nodes: FrameNode[] = [];
  readonly #elements: (BeamElement | BarElement)[] = [];
  readonly #supports: Support[] = [];
  readonly #thrust: number[] = [];

  constructor(private readonly pieces: number) {}

  joint(id: string, at: Point, hingedTo?: string): this {
    this.#nodes.push({ id, ...at, ...(hingedTo === undefined ? {} : { hingedTo }) });
    return this;
  }

  stick(from: string, to: string, stick: Stick, thrust = 0): this {
    const [a, b] = [from, to].map((id) => this.#nodes.find((n) => n.id === id)!) as [FrameNode, FrameNode];
    const name = `${from}-${to}`;
    const idAt = (i: number): string => (i === 0 ? from : i === this.pieces ? to : `${name}.n${i}`);
    for (let i = 1; i < this.pieces; i++) this.joint(idAt(i), between(a, b, i / this.pieces));
    for (let i = 0; i < this.pieces; i++) {
      this.#elements.push({
        kind: 'beam',
        id: `${name}.${i}`,
        from: idAt(i),
        to: idAt(i + 1),
        E,
        section: sectionOf(stick, i / this.pieces, (i + 1) / this.pieces),
      });
      this.#thrust.push(thrust);
    }
    return this;
  }

  bar(from: string, to: string, EA: number, thrust = 0): this {
    this.#elements.push({ kind: 'bar', id: `${from}-${to}`, from, to, EA });
    this.#thrust.push(thrust);
    return this;
  }

  hold(node: string, u: boolean, w: boolean, turn: Support['turn'] = false): this {
    this.#supports.push({ node, u, w, turn });
    return this;
  }

  get model(): FrameModel {
    return { nodes: this.#nodes, elements: this.#elements, supports: this.#supports };
  }

  modes(count: number, times = 1): readonly BucklingMode[] {
    return readyBuckling(this.model)(new Set()).modes(
      this.#thrust.map((P) => times * P),
      count,
    );
  }

  /** Lowest factor; NaN where nothing buckles. */
  factor(times = 1): number {
    return this.modes(1, times)[0]?.factor ?? NaN;
  }
}

function sectionOf(stick: Stick, from: number, to: number): BeamElement['section'] {
  if (typeof stick === 'number') return { kind: 'prismatic', areaIn2: STOUT_IN2, inertiaIn4: stick / E };
  const at = (t: number): number => numberAt(stick, 0) + t * (numberAt(stick, 1) - numberAt(stick, 0));
  return { kind: 'round', fromDiameterIn: at(from), toDiameterIn: at(to) };
}

/** Root of a rising or falling function between two places where its sign differs. */
export function rootBetween(low: number, high: number, f: (x: number) => number): number {
  const rises = f(high) > 0;
  for (let k = 0; k < 200; k++) {
    const middle = (low + high) / 2;
    if (f(middle) > 0 === rises) high = middle;
    else low = middle;
  }
  return (low + high) / 2;
}
