import { MisuseError } from '../errors.ts';
import { PER_FORCE } from './end-forces.ts';
import { factorFrame } from './factor.ts';
import { insideElement } from './inside-element.ts';
import type { BeamElement, ElementLoad, FrameModel, LoadState, NodeLoad } from './model.ts';

/** Places closer together than this are one place. */
const SAME_PLACE_IN = 1e-6;

/** A straight member lying on rollers that hold it both down and up; places are measured from its start. */
export interface BeamOnRollers {
  readonly lengthIn: number;
  /** modulus of elasticity [psi] */
  readonly E: number;
  /** from the start, each piece as far as its `toIn`, the last to the end; one piece unless the section changes its law */
  readonly pieces: readonly { readonly toIn: number; readonly section: BeamElement['section'] }[];
  /** ascending, at least two, none beyond the ends */
  readonly supportsAtIn: readonly number[];
  /** where moment, shear and sag are wanted */
  readonly stationsAtIn: readonly number[];
}

/** Loads square to the member, down positive. */
export interface RollerLoads {
  /** from one place to another, straight between the two intensities [lb/in] */
  readonly lines: readonly {
    readonly fromIn: number;
    readonly toIn: number;
    readonly fromLbPerIn: number;
    readonly toLbPerIn: number;
  }[];
  readonly points: readonly { readonly atIn: number; readonly lb: number }[];
}

export interface StationForces {
  readonly atIn: number;
  /** sagging + [lb·in] */
  readonly momentLbIn: number;
  /** just before and just after the station; they differ at a support and under a point load [lb] */
  readonly shearBeforeLb: number;
  readonly shearAfterLb: number;
  /** down + [in] */
  readonly sagIn: number;
}

export interface RollerState {
  /** up on the member +; negative where it would lift off [lb] */
  readonly reactionsLb: readonly number[];
  readonly stations: readonly StationForces[];
  /** unbalanced force over the sum of absolute loads */
  readonly residual: number;
}

/**
 * Continuous beam: purlins, rafters, any straight member on two to many supports, with overhangs, prismatic or tapered.
 * Sloping members are given as they lie, with the loads square to them, or in plan, as the caller decides.
 * @returns one state for each of `loads`, in their order; stations in the order asked for
 * @throws MisuseError  with fewer than two supports, supports at one place or out of order, anything beyond the ends
 * @limits  small movements, rigid rollers; a negative reaction is answered as it is, the member does not lift off
 */
export function continuousBeam(beam: BeamOnRollers, loads: readonly RollerLoads[]): RollerState[] {
  checkSupports(beam);
  const places = placesOf(beam, loads);
  const indexAt = (atIn: number): number => nearestPlace(places, atIn);
  const model = modelOf(beam, places, indexAt);
  const factored = factorFrame(model);
  if (!factored.ok) throw new MisuseError('beam that moves freely', factored.node, 'two supports that hold it');
  const stations = beam.stationsAtIn.map((atIn) => stationReader(model, places, within(beam, atIn)));
  return loads.map((load) => {
    const state = loadState(load, places, indexAt);
    const { moves, forces, reactions, residual } = factored.solve(state);
    return {
      reactionsLb: beam.supportsAtIn.map((_, i) => reactions[3 * i + 1]!),
      stations: stations.map((read) => read({ moves, forces }, state.elements)),
      residual,
    };
  });
}

function checkSupports({ supportsAtIn, lengthIn }: BeamOnRollers): void {
  if (supportsAtIn.length < 2) throw new MisuseError('supports of a beam', supportsAtIn.length, 'at least two');
  supportsAtIn.forEach((atIn, i) => {
    const before = i === 0 ? -Infinity : supportsAtIn[i - 1]!;
    if (!(atIn - before > SAME_PLACE_IN)) throw new MisuseError('support of a beam', atIn, 'one beyond the one before');
    if (!(atIn >= -SAME_PLACE_IN && atIn <= lengthIn + SAME_PLACE_IN))
      throw new MisuseError('support of a beam', atIn, `a place from 0 to ${lengthIn}`);
  });
}

function within({ lengthIn }: BeamOnRollers, atIn: number): number {
  if (!(atIn >= -SAME_PLACE_IN && atIn <= lengthIn + SAME_PLACE_IN))
    throw new MisuseError('place on a beam', atIn, `a place from 0 to ${lengthIn}`);
  return Math.min(lengthIn, Math.max(0, atIn));
}

/** Ends, supports, changes of section and of load, ascending, each once: the nodes of the frame. */
function placesOf(beam: BeamOnRollers, loads: readonly RollerLoads[]): number[] {
  const wanted = [
    0,
    beam.lengthIn,
    ...beam.pieces.map((piece) => piece.toIn),
    ...beam.supportsAtIn,
    ...loads.flatMap((load) => [
      ...load.lines.flatMap((line) => [line.fromIn, line.toIn]),
      ...load.points.map((point) => point.atIn),
    ]),
  ].map((atIn) => within(beam, atIn));
  const places: number[] = [];
  for (const atIn of wanted.sort((a, b) => a - b))
    if (places.length === 0 || atIn - places[places.length - 1]! > SAME_PLACE_IN) places.push(atIn);
  return places;
}

function nearestPlace(places: readonly number[], atIn: number): number {
  let low = 0;
  let high = places.length - 1;
  while (low < high) {
    const middle = (low + high) >> 1;
    if (places[middle]! < atIn - SAME_PLACE_IN) low = middle + 1;
    else high = middle;
  }
  return low;
}

function modelOf(beam: BeamOnRollers, places: readonly number[], indexAt: (atIn: number) => number): FrameModel {
  const last = beam.pieces[beam.pieces.length - 1];
  if (!last || Math.abs(last.toIn - beam.lengthIn) > SAME_PLACE_IN)
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
  const elements: ElementLoad[] = [];
  for (const { fromIn, toIn, fromLbPerIn, toLbPerIn } of load.lines) {
    if (toIn < fromIn) throw new MisuseError('load on a beam', toIn, `an end at or beyond its start ${fromIn}`);
    const intensityAt = (place: number) =>
      fromLbPerIn + ((place - fromIn) / (toIn - fromIn)) * (toLbPerIn - fromLbPerIn);
    for (let i = indexAt(fromIn); i < indexAt(toIn); i++)
      elements.push({
        element: String(i),
        fromU: 0,
        toU: 0,
        fromW: -intensityAt(places[i]!),
        toW: -intensityAt(places[i + 1]!),
      });
  }
  const nodes: NodeLoad[] = load.points.map(({ atIn, lb }) => ({ node: String(indexAt(atIn)), u: 0, w: -lb }));
  return { nodes, elements };
}

type StationReader = (
  state: { readonly moves: Float64Array; readonly forces: Float64Array },
  loads: readonly ElementLoad[],
) => StationForces;

function stationReader(model: FrameModel, places: readonly number[], atIn: number): StationReader {
  const next = nearestPlace(places, atIn);
  const onPlace = Math.abs(places[next]! - atIn) <= SAME_PLACE_IN;
  const before = next - 1;
  if (!onPlace) {
    const read = insideElement(model, String(before), (atIn - places[before]!) / (places[next]! - places[before]!));
    return (state, loads) => {
      const { M, V, across } = read(state, loads);
      return { atIn, momentLbIn: M, shearBeforeLb: V, shearAfterLb: V, sagIn: -across };
    };
  }
  const isLast = next === model.elements.length;
  return ({ moves, forces }) => ({
    atIn,
    // a free end carries nothing: its moment is that of the element that ends or begins there
    momentLbIn: isLast ? forces[PER_FORCE * before + 5]! : forces[PER_FORCE * next + 2]!,
    shearBeforeLb: before < 0 ? 0 : forces[PER_FORCE * before + 4]!,
    shearAfterLb: isLast ? 0 : forces[PER_FORCE * next + 1]!,
    sagIn: -moves[3 * next + 1]!,
  });
}
