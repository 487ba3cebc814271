import { MisuseError } from '../errors.ts';
import type { BeamOnRollers, RollerLoads } from './continuous-beam.ts';
import type { BeamElement, ElementLoad, FrameModel, LoadState, NodeLoad } from './model.ts';

/** What lies closer to a support, an end or another load becomes one place with it: no element gets shorter. */
const CLOSE_IN = 1 / 16;
/** A place may lie beyond the ends by no more than rounding. */
const ROUNDING_IN = 1e-6;

export interface RollerFrame {
  /** nodes from the start on, ascending; node and element `i` are named by their number */
  readonly places: readonly number[];
  readonly model: FrameModel;
  readonly loadState: (load: RollerLoads) => LoadState;
}

/** The frame of a beam on rollers, with a node wherever one of the loads begins, ends or stands. */
export function rollerFrame(beam: BeamOnRollers, loads: readonly RollerLoads[]): RollerFrame {
  checkSupports(beam);
  const places = placesOf(beam, loads);
  const indexAt = (atIn: number): number => nearestPlace(places, atIn);
  return { places, model: modelOf(beam, places, indexAt), loadState: (load) => loadState(load, places, indexAt) };
}

/** @throws MisuseError  for a place beyond the ends of the beam */
export function within({ lengthIn }: BeamOnRollers, atIn: number): number {
  if (!(atIn >= -ROUNDING_IN && atIn <= lengthIn + ROUNDING_IN))
    throw new MisuseError('place on a beam', atIn, `a place from 0 to ${lengthIn}`);
  return Math.min(lengthIn, Math.max(0, atIn));
}

function checkSupports(beam: BeamOnRollers): void {
  const { supportsAtIn } = beam;
  if (supportsAtIn.length < 2) throw new MisuseError('supports of a beam', supportsAtIn.length, 'at least two');
  supportsAtIn.forEach((atIn, i) => {
    if (i > 0 && !(atIn - supportsAtIn[i - 1]! >= CLOSE_IN))
      throw new MisuseError('supports of a beam', atIn, `at least ${CLOSE_IN} beyond the one before`);
  });
}

/** Supports first, then ends, changes of section and of load: of two close together the first named stays. */
function placesOf(beam: BeamOnRollers, loads: readonly RollerLoads[]): number[] {
  const wanted = [
    ...beam.supportsAtIn,
    0,
    beam.lengthIn,
    ...beam.pieces.map((piece) => piece.toIn),
    ...loads.flatMap((load) => [
      ...load.lines.flatMap((line) => [line.fromIn, line.toIn]),
      ...load.points.map((point) => point.atIn),
    ]),
  ].map((atIn) => within(beam, atIn));
  const places: number[] = [];
  for (const atIn of wanted) if (!places.some((place) => Math.abs(place - atIn) < CLOSE_IN)) places.push(atIn);
  return places.sort((a, b) => a - b);
}

function nearestPlace(places: readonly number[], atIn: number): number {
  let nearest = 0;
  for (let i = 1; i < places.length; i++)
    if (Math.abs(places[i]! - atIn) < Math.abs(places[nearest]! - atIn)) nearest = i;
  return nearest;
}

function modelOf(beam: BeamOnRollers, places: readonly number[], indexAt: (atIn: number) => number): FrameModel {
  const last = beam.pieces[beam.pieces.length - 1];
  if (!last || Math.abs(last.toIn - beam.lengthIn) > ROUNDING_IN)
    throw new MisuseError('pieces of a beam', last?.toIn, `the last reaching to ${beam.lengthIn}`);
  const elements: BeamElement[] = [];
  let pieceFromIn = 0;
  for (const { toIn, section } of beam.pieces) {
    if (!(toIn > pieceFromIn)) throw new MisuseError('pieces of a beam', toIn, 'ascending ends');
    for (let i = indexAt(pieceFromIn); i < indexAt(toIn); i++) {
      const fractionAt = (place: number) => (place - pieceFromIn) / (toIn - pieceFromIn);
      elements.push({
        kind: 'beam',
        id: String(i),
        from: String(i),
        to: String(i + 1),
        E: beam.E,
        section: partOf(section, fractionAt(places[i]!), fractionAt(places[i + 1]!)),
      });
    }
    pieceFromIn = toIn;
  }
  return {
    nodes: places.map((u, i) => ({ id: String(i), u, w: 0 })),
    elements,
    supports: beam.supportsAtIn.map((atIn, i) => ({ node: String(indexAt(atIn)), u: i === 0, w: true, turn: false })),
  };
}

function partOf(section: BeamElement['section'], from: number, to: number): BeamElement['section'] {
  if (section.kind === 'prismatic') return section;
  const diameterAt = (fraction: number) =>
    section.fromDiameterIn + fraction * (section.toDiameterIn - section.fromDiameterIn);
  return { kind: 'round', fromDiameterIn: diameterAt(from), toDiameterIn: diameterAt(to) };
}

function loadState(load: RollerLoads, places: readonly number[], indexAt: (atIn: number) => number): LoadState {
  const nodes: NodeLoad[] = [];
  const elements: ElementLoad[] = [];
  /** the load between two places of which none is far from the node, as a force and a moment on it */
  const gather = (node: number, line: RollerLoads['lines'][number]) => {
    const { lb, momentLbIn } = resultant(line, places[node]!);
    if (lb !== 0 || momentLbIn !== 0) nodes.push({ node: String(node), u: 0, w: -lb, turn: -momentLbIn });
  };
  for (const line of load.lines) {
    const { fromIn, toIn, fromLbPerIn, toLbPerIn } = line;
    if (toIn < fromIn) throw new MisuseError('load on a beam', toIn, `an end at or beyond its start ${fromIn}`);
    const first = indexAt(fromIn);
    const last = indexAt(toIn);
    if (first === last) {
      gather(first, line);
      continue;
    }
    const intensityAt = (atIn: number) => fromLbPerIn + ((atIn - fromIn) / (toIn - fromIn)) * (toLbPerIn - fromLbPerIn);
    const part = (partFromIn: number, partToIn: number) => ({
      fromIn: partFromIn,
      toIn: partToIn,
      fromLbPerIn: intensityAt(partFromIn),
      toLbPerIn: intensityAt(partToIn),
    });
    // what lies outside the outermost places, or minus what is missing inside them
    gather(first, part(fromIn, places[first]!));
    gather(last, part(places[last]!, toIn));
    for (let i = first; i < last; i++) {
      const fromW = -intensityAt(places[i]!);
      const toW = -intensityAt(places[i + 1]!);
      elements.push({ element: String(i), fromU: 0, toU: 0, fromW, toW });
    }
  }
  for (const { atIn, lb } of load.points) {
    const node = indexAt(atIn);
    nodes.push({ node: String(node), u: 0, w: -lb, turn: -lb * (atIn - places[node]!) });
  }
  return { nodes, elements };
}

/** Sum of a straight line load, and its moment about a place (from right of it positive); a backward one counts minus. */
function resultant(line: RollerLoads['lines'][number], aboutIn: number): { lb: number; momentLbIn: number } {
  const { fromIn, toIn, fromLbPerIn: a, toLbPerIn: b } = line;
  const length = toIn - fromIn;
  const lb = (length * (a + b)) / 2;
  return { lb, momentLbIn: lb * (fromIn - aboutIn) + (length ** 2 * (a + 2 * b)) / 6 };
}
