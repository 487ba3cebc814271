import { MisuseError, positive } from '../errors.ts';
import { GAUSS_POINTS } from './quadrature.ts';
import { axialStiffnessAt, bendingStiffnessAt, flexibilityOf } from './section.ts';
import type { BarElement, BeamElement } from './model.ts';

/**
 * No element is shorter: its stiffness grows with the cube of what is missing, until rounding hides whether the frame
 * holds. Who makes the nodes puts those together that lie closer.
 */
const SHORTEST_IN = 1 / 32;

/**
 * An element as its ends feel it. Along it runs x from start to end, y is a quarter turn counter-clockwise from x.
 * Of its six end movements only three deform it: the stretch and the turns of its ends against the chord between them;
 * moments here are counter-clockwise on the element.
 */
export interface ElasticElement {
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
}

/** An element made ready for any load. */
export interface ReadyElement extends ElasticElement {
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
export function lieOf(elementId: string, from: Place, to: Place): Pick<ElasticElement, 'lengthIn' | 'cos' | 'sin'> {
  const lengthIn = Math.hypot(to.u - from.u, to.w - from.w);
  if (!(lengthIn >= SHORTEST_IN) || !Number.isFinite(lengthIn))
    throw new MisuseError('element too short', elementId, `nodes at least ${SHORTEST_IN} in apart`);
  return { lengthIn, cos: (to.u - from.u) / lengthIn, sin: (to.w - from.w) / lengthIn };
}

/**
 * @throws MisuseError  when the element is too short, or a stiffness that is not finite and above zero
 * @source MECHANICS flexibilities of the member lying on its two ends, turned round
 */
export function elasticElement(element: BeamElement | BarElement, from: Place, to: Place): ElasticElement {
  const { lengthIn, cos, sin } = lieOf(element.id, from, to);
  if (element.kind === 'bar') {
    const stretch = positive('axial stiffness of a bar', element.EA) / lengthIn;
    return { lengthIn, cos, sin, isBeam: false, stretch, startTurn: 0, crossTurn: 0, endTurn: 0 };
  }
  const { E, section } = element;
  positive('modulus of elasticity', E);
  positive('section at the start', section.kind === 'round' ? section.fromDiameterIn : section.areaIn2);
  positive('section at the end', section.kind === 'round' ? section.toDiameterIn : section.inertiaIn4);
  const give = flexibilityOf(element);
  const determinant = lengthIn * (give.start * give.end - give.cross ** 2);
  return {
    lengthIn,
    cos,
    sin,
    isBeam: true,
    stretch: 1 / (lengthIn * give.stretch),
    startTurn: give.end / determinant,
    crossTurn: -give.cross / determinant,
    endTurn: give.start / determinant,
  };
}

/** @throws MisuseError  as {@link elasticElement} */
export function readyElement(element: BeamElement | BarElement, from: Place, to: Place): ReadyElement {
  const elastic = elasticElement(element, from, to);
  const { lengthIn, cos, sin, isBeam, stretch, startTurn, crossTurn, endTurn } = elastic;
  const held = element.kind === 'bar' ? heldBar(elastic) : heldBeam(element, elastic);
  return { lengthIn, cos, sin, isBeam, stretch, startTurn, crossTurn, endTurn, held };
}

/** The same EA all along: a load straight from 1 to 0 is carried two thirds by the start. */
const heldBar = ({ lengthIn: L }: ElasticElement): ReadyElement['held'] => ({
  startMoment: NO_EFFECT,
  endMoment: NO_EFFECT,
  startPull: { a: L / 3, b: L / 6 },
});

function heldBeam(beam: BeamElement, { lengthIn: L, ...elastic }: ElasticElement): ReadyElement['held'] {
  const { startTurn, crossTurn, endTurn, stretch } = elastic;
  const { startA, endA, startB, endB, pullA, pullB } = bareEffects(beam, L);
  return {
    startMoment: { a: -startTurn * startA - crossTurn * endA, b: -startTurn * startB - crossTurn * endB },
    endMoment: { a: -crossTurn * startA - endTurn * endA, b: -crossTurn * startB - endTurn * endB },
    startPull: { a: pullA * L * stretch, b: pullB * L * stretch },
  };
}

/**
 * What 1 lb/in at the start (A) or at the end (B), straight to zero at the other, does to an element that only lies on
 * its two ends: turns of both ends under the load across it, stretch of the whole under the load along it, per inch.
 */
function bareEffects(beam: BeamElement, L: number) {
  const sums = { startA: 0, endA: 0, startB: 0, endB: 0, pullA: 0, pullB: 0 };
  for (const { at: t, weight } of GAUSS_POINTS) {
    // moment of the load alone on the simple span
    const momentOfA = (L * L * t * (-2 + 3 * t - t * t)) / 6;
    const momentOfB = (L * L * t * (t * t - 1)) / 6;
    const EI = bendingStiffnessAt(beam, t);
    sums.startA -= weight * (((1 - t) * momentOfA) / EI);
    sums.endA += weight * ((t * momentOfA) / EI);
    sums.startB -= weight * (((1 - t) * momentOfB) / EI);
    sums.endB += weight * ((t * momentOfB) / EI);
    // thrust gathered up to t
    const EA = axialStiffnessAt(beam, t);
    sums.pullA += weight * ((L * (t - (t * t) / 2)) / EA);
    sums.pullB += weight * ((L * t * t) / 2 / EA);
  }
  const { startA, endA, startB, endB, pullA, pullB } = sums;
  return { startA: L * startA, endA: L * endA, startB: L * startB, endB: L * endB, pullA, pullB };
}
