import type { Face, StickShape } from '../../engine/checks/fasteners/round-geometry.ts';
import { stretchIn } from '../../engine/checks/fasteners/round-geometry.ts';
import { dot, plus, type Vector } from '../../engine/checks/fasteners/space.ts';
import type { JointPiece } from '../../engine/checks/joints/joint-setting.ts';
import { ALONG_X, opposite, UP } from '../../engine/checks/joints/stick-shape.ts';
import { between, roundDiameterWithin } from '../../engine/geometry/beam-shape.ts';
import type { BeamGeometry } from '../../engine/geometry/shelter.ts';
import { behindFace, circleRing, reachOf, squareRing, withPoints, type Ring } from './ring.ts';

/** A cut on a stretch of a stick: square to its grain at the end, slanted at its beginning where it has a ramp [in]. */
export interface LocalCut {
  readonly face: Face;
  readonly fromIn: number;
  readonly toIn: number;
  readonly rampIn: number;
}

/** A piece as it is drawn: rings along its grain, measured from its place at the joint. */
export interface Body {
  readonly axisAt: Vector;
  readonly axis: Vector;
  readonly rings: readonly Ring[];
  /** its section at the joint, and the same before anything was cut from it there */
  readonly atJoint: Ring;
  readonly uncut: Ring;
  /** it goes on beyond the drawing at its start, at its end */
  readonly goesOn: readonly [start: boolean, end: boolean];
}

/** A stick along its grain: where its middle is, how thick it is, what is planed or sawn off over its whole length. */
export interface Lying {
  readonly shape: StickShape;
  readonly middleAt: (tIn: number) => Vector;
  readonly ringAt: (tIn: number) => Ring;
  /** places where its thickness bends [in] */
  readonly bendsIn: readonly number[];
  /** cuts at the joint alone */
  readonly cutFaces: readonly Face[];
  /** along the grain from the joint to both ends [in] */
  readonly endsIn: readonly [number, number];
}

const WIDE_IN = 400;

/** How a piece lies; null where nobody has said what it is. A beam lies with its taper and crown as its line sets it. */
export function lyingOf(piece: JointPiece, beam?: BeamGeometry): Lying | null {
  const { shape, stick } = piece;
  if (!shape) return null;
  const { axisAt, axis, diameterIn } = shape;
  const start = piece.toEndsIn?.[0] ?? WIDE_IN;
  const isSawn = stick?.kind === 'sawn';
  const own = isSawn ? shape.faces.slice(0, 4) : [];
  const others = shape.faces.slice(own.length);
  const isPlaned = ({ outward }: Face): boolean => outward[2] > 0.999 && Math.abs(axis[2]) < 0.1;
  const planed = others.filter(isPlaned);
  const profile = stick?.kind === 'round' ? stick : null;
  const here = profile ? roundDiameterWithin(profile, start) : 0;
  const thickAt = (t: number): number =>
    (diameterIn ?? 0) + (profile ? roundDiameterWithin(profile, start + t) - here : 0);
  const upIn = (t: number): number => (beam && profile ? crownOf(beam, axisAt, t) : 0);
  const middleAt = (t: number): Vector => plus(plus(axisAt, axis, t), UP, upIn(t));
  const ringAt = (t: number): Ring => {
    const whole = isSawn ? squareRing(plus(axisAt, axis, t), axis, WIDE_IN) : circleRing(middleAt(t), axis, thickAt(t));
    const top = beam && profile ? planed.map((face) => ({ ...face, at: topOf(beam, axisAt, t) })) : planed;
    return [...own, ...top].reduce(behindFace, whole);
  };
  return {
    shape,
    middleAt,
    ringAt,
    bendsIn: [
      ...(profile?.profile.map(({ atIn }) => atIn - start) ?? []),
      ...(beam?.stations.map(({ xIn }) => xIn - axisAt[0]) ?? []),
    ],
    cutFaces: others.filter((face) => !isPlaned(face) && Math.abs(dot(face.outward, axis)) < 0.9),
    endsIn: [-start, piece.toEndsIn?.[1] ?? WIDE_IN],
  };
}

/** How much higher the middle of a beam lies than at the joint [in]. */
function crownOf(beam: BeamGeometry, axisAt: Vector, t: number): number {
  const { stations } = beam;
  const x = axisAt[0] + t;
  return between(stations, x, (s) => s.undersideZIn) + between(stations, x, (s) => s.diameterIn) / 2 - axisAt[2];
}

const topOf = ({ stations }: BeamGeometry, axisAt: Vector, t: number): Vector =>
  plus([0, axisAt[1], between(stations, axisAt[0] + t, (s) => s.topZIn)], ALONG_X, axisAt[0] + t);

const NEXT_IN = 1e-6;

/** The stretch of a stick from one place to another, with the cuts that are made there and the flats for plates at the joint. */
export function bodyOf(
  lying: Lying,
  seats: readonly LocalCut[],
  wantedFromIn: number,
  wantedToIn: number,
  flats: readonly LocalCut[],
): Body {
  const cuts = [...seats, ...flats];
  const fromIn = Math.max(wantedFromIn, lying.endsIn[0]);
  const toIn = Math.min(wantedToIn, lying.endsIn[1]);
  const places = [
    fromIn,
    toIn,
    ...lying.bendsIn,
    ...cuts.flatMap((c) => [c.fromIn - NEXT_IN, c.fromIn + c.rampIn, c.toIn, c.toIn + NEXT_IN]),
  ].filter((t) => t >= fromIn && t <= toIn);
  const atIn = Math.min(Math.max(0, fromIn), toIn);
  return {
    axisAt: lying.shape.axisAt,
    axis: lying.shape.axis,
    rings: [...new Set(places)].toSorted((a, b) => a - b).map((t) => cutRing(lying.ringAt(t), cuts, t)),
    atJoint: [...lying.cutFaces, ...flats.map(({ face }) => face)].reduce(behindFace, lying.ringAt(atIn)),
    uncut: lying.ringAt(atIn),
    goesOn: [fromIn > lying.endsIn[0] + NEXT_IN, toIn < lying.endsIn[1] - NEXT_IN],
  };
}

/** A ring at a place along the grain, less the cuts that reach there. */
const cutRing = (ring: Ring, cuts: readonly LocalCut[], t: number): Ring =>
  cuts.filter((c) => c.fromIn + c.rampIn <= t && t <= c.toIn).reduce((left, { face }) => behindFace(left, face), ring);

/**
 * A stick that ends against another one, fibre by fibre on its surface: flat on a flat, let into a housing, or coped
 * round a log.
 * @param away  +1 where it runs off along its grain, -1 where it runs against it
 */
export function bodyAgainst(
  lying: Lying,
  other: StickShape,
  away: 1 | -1,
  reachIn: number,
  flats: readonly LocalCut[],
): Body {
  const { axis, axisAt } = lying.shape;
  const far = lying.endsIn[away > 0 ? 1 : 0];
  const t = away > 0 ? Math.min(reachIn, far) : Math.max(-reachIn, far);
  const outer = withPoints(lying.ringAt(t), lying.shape.diameterIn === null ? 16 : 1);
  const inward = away > 0 ? opposite(axis) : axis;
  const whole = outer.map((at) => {
    const meets = stretchIn(other, { at, into: inward });
    return plus(at, inward, meets ? meets.fromIn : Math.abs(t));
  });
  const ends = flats.reduce<Ring>((ring, { face }) => behindFace(ring, face), whole);
  const afterFlats = flats.slice(0, 1).flatMap(({ fromIn, toIn }): readonly Ring[] => {
    const last = away > 0 ? toIn : fromIn;
    return [cutRing(lying.ringAt(last), flats, last), lying.ringAt(last + away * NEXT_IN)];
  });
  const rings = [ends, ...afterFlats, outer];
  const goesOn = Math.abs(t - far) > NEXT_IN;
  return {
    axisAt,
    axis,
    rings: away > 0 ? rings : rings.toReversed(),
    atJoint: ends,
    uncut: ends,
    goesOn: away > 0 ? [false, goesOn] : [goesOn, false],
  };
}

/** Where a contact lies along another stick, measured from its own place at the joint. */
export function cutsAt({ shape, cutFaces }: Lying, contact: Ring): readonly LocalCut[] {
  const [fromIn, toIn] = reachOf(contact, shape.axisAt, shape.axis);
  return cutFaces.map((face) => ({ face, fromIn, toIn, rampIn: 0 }));
}
