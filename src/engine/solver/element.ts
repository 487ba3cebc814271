import { MisuseError, positive } from '../errors.ts';
import { integrate } from './quadrature.ts';
import { axialStiffnessAt, bendingStiffnessAt, flexibilityOf } from './section.ts';
import type { BarElement, BeamElement } from './model.ts';

/**
 * No element is shorter: its stiffness grows with the cube of what is missing, until rounding hides whether the frame
 * holds. Who makes the nodes puts those together that lie closer.
 */
const SHORTEST_IN = 1 / 32;

/**
 * An element made ready for any load. Along it runs x from start to end, y is a quarter turn counter-clockwise from x.
 * Of its six end movements only three deform it: the stretch and the turns of its ends against the chord between them;
 * moments here are counter-clockwise on the element.
 */
export interface ReadyElement {
  readonly isBeam: boolean;
  readonly lengthIn: number;
  readonly cos: number;
  readonly sin: number;
  /** pull per inch of stretch [lb/in] */
  readonly stretch: number;
  /** moment at one end for a turn of the same or of the other end [lb·in/rad]; zero for a bar */
  readonly startTurn: number;
  readonly crossTurn: number;
  readonly endTurn: number;
  /** what the held ends feel from a load of 1 lb/in at the start (`a`) or at the end (`b`), straight to zero at the other */
  readonly held: {
    readonly startMoment: LoadEffect;
    readonly endMoment: LoadEffect;
    readonly startPull: LoadEffect;
  };
}

interface Place {
  readonly u: number;
  readonly w: number;
}

interface LoadEffect {
  readonly a: number;
  readonly b: number;
}

const NO_EFFECT: LoadEffect = { a: 0, b: 0 };

/**
 * How long an element is and how it lies.
 * @param from  place of its start in the frame's plane [in]
 * @throws MisuseError  when it is shorter than {@link SHORTEST_IN}
 */
export function lieOf(elementId: string, from: Place, to: Place): Pick<ReadyElement, 'lengthIn' | 'cos' | 'sin'> {
  const lengthIn = Math.hypot(to.u - from.u, to.w - from.w);
  if (!(lengthIn >= SHORTEST_IN) || !Number.isFinite(lengthIn))
    throw new MisuseError('element too short', elementId, `nodes at least ${SHORTEST_IN} in apart`);
  return { lengthIn, cos: (to.u - from.u) / lengthIn, sin: (to.w - from.w) / lengthIn };
}

/**
 * @throws MisuseError  when the element is too short, or a stiffness that is not finite and above zero
 * @source MECHANICS flexibilities of the member lying on its two ends, turned round
 */
export function readyElement(element: BeamElement | BarElement, from: Place, to: Place): ReadyElement {
  const lie = lieOf(element.id, from, to);
  const stiffness = element.kind === 'bar' ? readyBar(element, lie.lengthIn) : readyBeam(element, lie.lengthIn);
  return { ...lie, ...stiffness };
}

type Stiffness = Omit<ReadyElement, 'lengthIn' | 'cos' | 'sin'>;

function readyBar(bar: BarElement, L: number): Stiffness {
  const stretch = positive('axial stiffness of a bar', bar.EA) / L;
  // the same EA all along: a load straight from 1 to 0 is carried two thirds by the start
  const startPull = { a: L / 3, b: L / 6 };
  const held = { startMoment: NO_EFFECT, endMoment: NO_EFFECT, startPull };
  return { isBeam: false, stretch, startTurn: 0, crossTurn: 0, endTurn: 0, held };
}

function readyBeam(beam: BeamElement, L: number): Stiffness {
  const { E, section } = beam;
  positive('modulus of elasticity', E);
  positive('section at the start', section.kind === 'round' ? section.fromDiameterIn : section.areaIn2);
  positive('section at the end', section.kind === 'round' ? section.toDiameterIn : section.inertiaIn4);
  const give = flexibilityOf(beam);
  const determinant = L * (give.start * give.end - give.cross ** 2);
  const startTurn = give.end / determinant;
  const crossTurn = -give.cross / determinant;
  const endTurn = give.start / determinant;

  // moment of the load alone on the simple span, for 1 lb/in at one end; t = x/L
  const momentOfA = (t: number) => (L * L * t * (-2 + 3 * t - t * t)) / 6;
  const momentOfB = (t: number) => (L * L * t * (t * t - 1)) / 6;
  // thrust gathered up to t by 1 lb/in along the element
  const gatheredA = (t: number) => L * (t - (t * t) / 2);
  const gatheredB = (t: number) => (L * t * t) / 2;

  const turns = (moment: (t: number) => number) => ({
    start: -L * integrate((t) => ((1 - t) * moment(t)) / bendingStiffnessAt(beam, t), 0, 1),
    end: L * integrate((t) => (t * moment(t)) / bendingStiffnessAt(beam, t), 0, 1),
  });
  const turnsA = turns(momentOfA);
  const turnsB = turns(momentOfB);
  const pull = (gathered: (t: number) => number) =>
    integrate((t) => gathered(t) / axialStiffnessAt(beam, t), 0, 1) / give.stretch;
  return {
    isBeam: true,
    stretch: 1 / (L * give.stretch),
    startTurn,
    crossTurn,
    endTurn,
    held: {
      startMoment: {
        a: -startTurn * turnsA.start - crossTurn * turnsA.end,
        b: -startTurn * turnsB.start - crossTurn * turnsB.end,
      },
      endMoment: {
        a: -crossTurn * turnsA.start - endTurn * turnsA.end,
        b: -crossTurn * turnsB.start - endTurn * turnsB.end,
      },
      startPull: { a: pull(gatheredA), b: pull(gatheredB) },
    },
  };
}
