import { MisuseError } from '../errors.ts';
import { lieOf } from './element.ts';
import { PER_FORCE } from './end-forces.ts';
import type { BeamElement, ElementLoad, FrameModel, FrameState } from './model.ts';
import { integrate } from './quadrature.ts';
import { bendingStiffnessAt } from './section.ts';
import { PER_NODE } from './unknowns.ts';

/** Forces at a place inside an element, signs as at its ends, and how far it has moved square to itself. */
export interface InsideElement {
  /** tension + [lb] */
  readonly N: number;
  /** dM/ds [lb] */
  readonly V: number;
  /** sagging + [lb·in] */
  readonly M: number;
  /** square to the element, to the left of one who walks from its start to its end (up when it runs to the right) [in] */
  readonly across: number;
}

/**
 * Reads a place inside an element, exactly for the loads of {@link ElementLoad}. All that depends on the place alone is
 * worked out once, so that many states can be read there by plain arithmetic; the answer is linear in state and loads.
 * @param fraction  0 at the start of the element, 1 at its end
 * @returns reader of a state of that frame with the element loads it was solved for (those of other elements are
 *   passed over); the bending of a bar between its ends is not known and counts as none
 * @throws MisuseError  for an unknown element or a fraction outside 0 to 1
 * @source  MECHANICS unit-load integral over M/EI on the chord between the element's ends
 */
export function insideElement(
  model: FrameModel,
  elementId: string,
  fraction: number,
): (state: Pick<FrameState, 'moves' | 'forces'>, loads: readonly ElementLoad[]) => InsideElement {
  if (!(fraction >= 0 && fraction <= 1))
    throw new MisuseError('place in an element', fraction, 'a fraction from 0 to 1');
  const index = model.elements.findIndex((element) => element.id === elementId);
  const element = model.elements[index];
  if (!element) throw new MisuseError('unknown element', elementId, 'an element of the frame');
  const from = nodeIndex(model, element.from);
  const to = nodeIndex(model, element.to);
  const { lengthIn: L, cos, sin } = lieOf(elementId, model.nodes[from]!, model.nodes[to]!);
  const x = fraction * L;
  const give = element.kind === 'beam' ? bowing(element, L, fraction) : NO_BOWING;

  return ({ moves, forces }, loads) => {
    let acrossA = 0;
    let acrossB = 0;
    let alongA = 0;
    let alongB = 0;
    for (const load of loads) {
      if (load.element !== elementId) continue;
      acrossA += load.fromW * cos - load.fromU * sin;
      acrossB += load.toW * cos - load.toU * sin;
      alongA += load.fromU * cos + load.fromW * sin;
      alongB += load.toU * cos + load.toW * sin;
    }
    const startN = forces[PER_FORCE * index]!;
    const startV = forces[PER_FORCE * index + 1]!;
    const startM = forces[PER_FORCE * index + 2]!;
    // gathered from the start to here by a load straight from a to b
    const gathered = (a: number, b: number) => x * (a + ((b - a) * fraction) / 2);
    const movedAcross = (node: number) => moves[PER_NODE * node + 1]! * cos - moves[PER_NODE * node]! * sin;
    return {
      N: startN - gathered(alongA, alongB),
      V: startV + gathered(acrossA, acrossB),
      M: startM + startV * x + x * x * (acrossA / 2 + ((acrossB - acrossA) * fraction) / 6),
      across:
        (1 - fraction) * movedAcross(from) +
        fraction * movedAcross(to) +
        give.perStartM * startM +
        give.perStartV * startV +
        give.perLoadA * acrossA +
        give.perLoadB * acrossB,
    };
  };
}

/** Movement from the chord for one unit of moment and shear at the start, and of load at the start and at the end. */
interface Bowing {
  readonly perStartM: number;
  readonly perStartV: number;
  readonly perLoadA: number;
  readonly perLoadB: number;
}

const NO_BOWING: Bowing = { perStartM: 0, perStartV: 0, perLoadA: 0, perLoadB: 0 };

function bowing(beam: BeamElement, L: number, fraction: number): Bowing {
  // moment at t from a unit load square to the chord at `fraction`, over EI; upward movement is minus its work
  const onChord = (moment: (t: number) => number) =>
    -L *
    L *
    (integrate((t) => (t * (1 - fraction) * moment(t)) / bendingStiffnessAt(beam, t), 0, fraction) +
      integrate((t) => (fraction * (1 - t) * moment(t)) / bendingStiffnessAt(beam, t), fraction, 1));
  return {
    perStartM: onChord(() => 1),
    perStartV: onChord((t) => L * t),
    perLoadA: onChord((t) => L * L * (t ** 2 / 2 - t ** 3 / 6)),
    perLoadB: onChord((t) => (L * L * t ** 3) / 6),
  };
}

function nodeIndex(model: FrameModel, id: string): number {
  const index = model.nodes.findIndex((node) => node.id === id);
  if (index < 0) throw new MisuseError('unknown node', id, 'a node of the frame');
  return index;
}
