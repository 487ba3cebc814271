import { MisuseError, notNegative, positive } from '../../errors.ts';
import { radiansFromDegrees } from '../../units.ts';
import type { Face, ShankLine, StickShape } from './round-geometry.ts';
import type { Vector } from './space.ts';

/** A stick under the head that lies across the one that holds: a purlin log on a rafter, a strip on a beam. */
export type LyingStick =
  | {
      readonly kind: 'round';
      readonly diameterIn: number;
      /** cut off where it lies on the other, and under the head [in] */
      readonly seatIn: number;
      readonly topIn: number;
    }
  | { readonly kind: 'sawn'; readonly widthIn: number; readonly depthIn: number };

/** The round stick that holds the tip, with the flat cut for the other one [in]. */
export interface HoldingLog {
  readonly diameterIn: number;
  readonly flatIn: number;
}

/** Two sticks and the axis of a fastener through both. */
export interface JointShape {
  readonly side: StickShape;
  readonly main: StickShape;
  readonly line: ShankLine;
}

const UP: Vector = [0, 0, 1];
const DOWN: Vector = [0, 0, -1];
const ALONG: Vector = [1, 0, 0];
const ORIGIN: Vector = [0, 0, 0];

/** A log along x with its flat on top. */
function holding({ diameterIn, flatIn }: HoldingLog): StickShape & { readonly topIn: number } {
  const topIn = positive('diameterIn', diameterIn) / 2 - cutOff('flatIn', flatIn, diameterIn);
  return { axisAt: ORIGIN, axis: ALONG, diameterIn, faces: [{ at: [0, 0, topIn], outward: UP }], topIn };
}

function cutOff(name: string, depthIn: number, diameterIn: number): number {
  if (notNegative(name, depthIn) >= diameterIn / 2) throw new MisuseError(name, depthIn, 'less than half the log');
  return depthIn;
}

/**
 * A stick that lies on a log and a fastener straight down through both.
 * @param crossingDeg between the two axes, above 0 to 90 [deg]
 * @param fromCrossing of the fastener from where the axes cross: along the log that holds, and across it [in]
 * @throws MisuseError if a dimension is out of bounds or the angle not above 0 to 90
 * @source MECHANICS: plane geometry
 */
export function lyingAcross(
  side: LyingStick,
  main: HoldingLog,
  crossingDeg: number,
  fromCrossing: { readonly alongIn: number; readonly acrossIn: number },
): JointShape {
  if (!(crossingDeg > 0 && crossingDeg <= 90)) throw new MisuseError('crossingDeg', crossingDeg, 'above 0 to 90');
  const log = holding(main);
  const turn = radiansFromDegrees(crossingDeg);
  const axis: Vector = [Math.cos(turn), Math.sin(turn), 0];
  return {
    side: side.kind === 'round' ? roundOn(side, axis, log.topIn) : sawnOn(side, axis, log.topIn),
    main: log,
    line: { at: [fromCrossing.alongIn, fromCrossing.acrossIn, 0], into: DOWN },
  };
}

function roundOn(side: Extract<LyingStick, { kind: 'round' }>, axis: Vector, topIn: number): StickShape {
  const r = positive('diameterIn', side.diameterIn) / 2;
  const middleIn = topIn + r - cutOff('seatIn', side.seatIn, side.diameterIn);
  const headIn = middleIn + r - cutOff('topIn', side.topIn, side.diameterIn);
  return {
    axisAt: [0, 0, middleIn],
    axis,
    diameterIn: side.diameterIn,
    faces: [
      { at: [0, 0, headIn], outward: UP },
      { at: [0, 0, topIn], outward: DOWN },
    ],
  };
}

function sawnOn(side: Extract<LyingStick, { kind: 'sawn' }>, axis: Vector, topIn: number): StickShape {
  const half = positive('widthIn', side.widthIn) / 2;
  const across: Vector = [-axis[1], axis[0], 0];
  const back: Vector = [axis[1], -axis[0], 0];
  const edge = (outward: Vector): Face => ({ at: [half * outward[0], half * outward[1], 0], outward });
  return {
    axisAt: [0, 0, topIn + positive('depthIn', side.depthIn) / 2],
    axis,
    diameterIn: null,
    faces: [
      { at: [0, 0, topIn + side.depthIn], outward: UP },
      { at: [0, 0, topIn], outward: DOWN },
      edge(across),
      edge(back),
    ],
  };
}

/** A brace that meets a log, both axes in one plane: a housing is a flat on the log, a cope follows the log's surface. */
export interface MeetingBrace {
  readonly diameterIn: number;
  /** between the two axes, above 0 to 90 [deg] */
  readonly angleDeg: number;
}

/**
 * The end of a brace on a log and a fastener through the brace into it, in the plane of both axes.
 * @param main the log; its flat is the housing, 0 for a cope on the whole log
 * @param fromCrossingIn along the brace, from where the axes meet to where the fastener crosses its axis [in]
 * @param slantDeg between the fastener and the log's axis, 0 to 180 without the ends [deg]: 90 is square to the log, the
 *                 brace's own angle is along the brace, 90 more than that square to it
 * @throws MisuseError if a dimension or an angle is out of bounds
 * @source MECHANICS: plane geometry
 */
export function throughBrace(
  brace: MeetingBrace,
  main: HoldingLog,
  fromCrossingIn: number,
  slantDeg: number,
): JointShape {
  if (!(brace.angleDeg > 0 && brace.angleDeg <= 90)) throw new MisuseError('angleDeg', brace.angleDeg, 'above 0 to 90');
  if (!(slantDeg > 0 && slantDeg < 180)) throw new MisuseError('slantDeg', slantDeg, 'between 0 and 180');
  positive('diameterIn', brace.diameterIn);
  positive('fromCrossingIn', fromCrossingIn);
  const phi = radiansFromDegrees(brace.angleDeg);
  const slant = radiansFromDegrees(slantDeg);
  const axis: Vector = [Math.cos(phi), 0, Math.sin(phi)];
  return {
    side: { axisAt: ORIGIN, axis, diameterIn: brace.diameterIn, faces: [] },
    main: holding(main),
    line: {
      at: [fromCrossingIn * axis[0], 0, fromCrossingIn * axis[2]],
      into: [-Math.cos(slant), 0, -Math.sin(slant)],
    },
  };
}
