import { MisuseError } from '../errors.ts';
import { PER_FORCE } from './end-forces.ts';
import { factorFrame } from './factor.ts';
import { insideElement } from './inside-element.ts';
import type { BeamElement, ElementLoad, FrameModel } from './model.ts';
import { rollerFrame, within } from './roller-frame.ts';

/** A straight member lying on rollers that hold it both down and up; places are measured from its start. */
export interface BeamOnRollers {
  readonly lengthIn: number;
  /** modulus of elasticity [psi] */
  readonly E: number;
  /** from the start, each piece as far as its `toIn`, the last to the end; one piece unless the section changes its law */
  readonly pieces: readonly { readonly toIn: number; readonly section: BeamElement['section'] }[];
  /** ascending, at least two, a sixteenth of an inch or more apart, none beyond the ends */
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
 * @throws MisuseError  with fewer than two supports, supports too close together or out of order, anything beyond the ends
 * @limits  small movements, rigid rollers; loads that begin, end or stand within a sixteenth of an inch of a support or of
 *   each other act there as the same force and moment; a negative reaction is answered as it is, the member does not lift off
 */
export function continuousBeam(beam: BeamOnRollers, loads: readonly RollerLoads[]): RollerState[] {
  const { places, model, loadState } = rollerFrame(beam, loads);
  const factored = factorFrame(model);
  if (!factored.ok) throw new MisuseError('beam that moves freely', factored.node, 'two supports that hold it');
  const stations = beam.stationsAtIn.map((atIn) => stationReader(model, places, within(beam, atIn)));
  return loads.map((load) => {
    const state = loadState(load);
    const { moves, forces, reactions, residual } = factored.solve(state);
    return {
      reactionsLb: beam.supportsAtIn.map((_, i) => reactions[3 * i + 1]!),
      stations: stations.map((read) => read({ moves, forces }, state.elements)),
      residual,
    };
  });
}

type StationReader = (
  state: { readonly moves: Float64Array; readonly forces: Float64Array },
  loads: readonly ElementLoad[],
) => StationForces;

const SAME_PLACE_IN = 1e-6;

function stationReader(model: FrameModel, places: readonly number[], atIn: number): StationReader {
  const last = places.length - 1;
  const found = places.findIndex((place) => place >= atIn - SAME_PLACE_IN);
  const next = found < 0 ? last : found;
  // an end of the beam may have gone to a support close by
  if (next === 0 || found < 0 || places[next]! - atIn <= SAME_PLACE_IN) return placeReader(atIn, next, last);
  const before = next - 1;
  const read = insideElement(model, String(before), (atIn - places[before]!) / (places[next]! - places[before]!));
  return (state, loads) => {
    const { M, V, across } = read(state, loads);
    return { atIn, momentLbIn: M, shearBeforeLb: V, shearAfterLb: V, sagIn: -across };
  };
}

/** Elements bear the number of the place they start from. */
function placeReader(atIn: number, place: number, last: number): StationReader {
  return ({ moves, forces }) => {
    const [shearBeforeLb, momentBefore] =
      place === 0 ? [0, 0] : [forces[PER_FORCE * (place - 1) + 4]!, forces[PER_FORCE * (place - 1) + 5]!];
    const [shearAfterLb, momentAfter] =
      place === last ? [0, 0] : [forces[PER_FORCE * place + 1]!, forces[PER_FORCE * place + 2]!];
    // they differ where a load close by acts here as force and moment
    const momentLbIn = Math.abs(momentBefore) > Math.abs(momentAfter) ? momentBefore : momentAfter;
    return { atIn, momentLbIn, shearBeforeLb, shearAfterLb, sagIn: -moves[3 * place + 1]! };
  };
}
