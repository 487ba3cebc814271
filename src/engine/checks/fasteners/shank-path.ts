import { positive } from '../../errors.ts';
import { refused, type Refused } from './refused.ts';
import {
  angleToGrainDeg,
  edgeBeside,
  stretchIn,
  type ShankLine,
  type StickShape,
  type Stretch,
} from './round-geometry.ts';

/** What a fastener finds in one of the two sticks. */
export interface StickOnPath {
  /** along the shank [in] */
  readonly thicknessIn: number;
  /** between shank and grain [deg] */
  readonly angleToGrainDeg: number;
  /** wood beside the shank where the sticks meet, and half way through this one [in]; null: it runs along the grain */
  readonly edgeAtFaceIn: number | null;
  readonly edgeHalfWayIn: number | null;
}

export type ShankPath =
  | {
      readonly ok: true;
      /** the stick under the head, and the one that holds the tip */
      readonly side: StickOnPath;
      readonly main: StickOnPath;
      /** air between them, along the shank [in] */
      readonly gapIn: number;
    }
  | Refused;

/**
 * The way of a fastener through the stick under its head into the one that holds it. Where the sticks overlap, the
 * first is cut to fit the other: a cope, a saddle, an end let into a housing.
 * @param side, main the sticks
 * @param line axis of the fastener, from the head inward
 * @returns thicknesses, gap and edges, or a refusal where it passes beside a stick
 * @throws MisuseError if a diameter is not above zero
 * @source MECHANICS: line and cylinder, line and plane
 */
export function shankPath(side: StickShape, main: StickShape, line: ShankLine): ShankPath {
  const inMain = stretchIn(main, line);
  if (!inMain) return refused('shankMissesStick', { stick: 'stick that is to hold it' });
  const whole = stretchIn(side, line);
  const inSide = whole && { fromIn: whole.fromIn, toIn: Math.min(whole.toIn, inMain.fromIn) };
  if (!inSide || inSide.toIn <= inSide.fromIn) return refused('shankMissesStick', { stick: 'stick under its head' });
  return {
    ok: true,
    side: onPath(side, line, inSide, inSide.toIn),
    main: onPath(main, line, inMain, inMain.fromIn),
    gapIn: inMain.fromIn - inSide.toIn,
  };
}

function onPath(stick: StickShape, line: ShankLine, { fromIn, toIn }: Stretch, faceIn: number): StickOnPath {
  return {
    thicknessIn: toIn - fromIn,
    angleToGrainDeg: angleToGrainDeg(stick, line),
    edgeAtFaceIn: edgeBeside(stick, line, faceIn),
    edgeHalfWayIn: edgeBeside(stick, line, (fromIn + toIn) / 2),
  };
}

/** A length that only just fits, worked out from surfaces, may miss by this. */
const ROUNDING_IN = 1e-9;

/** A fastener of a certain length on its path. */
export type DrivenIn = { readonly ok: true; readonly penetrationIn: number } | Refused;

/**
 * How far a fastener goes into the stick that holds it.
 * @param lengthIn from under the head to the tip [in]
 * @param underHeadIn washer or plate under the head [in]
 * @returns penetration along the shank [in], or a refusal: it ends before that stick, or comes out of it
 * @throws MisuseError if the length is not above zero
 * @source MECHANICS; OWN: the tip of a driven fastener stays in the wood
 */
export function drivenInto(path: Extract<ShankPath, { ok: true }>, lengthIn: number, underHeadIn = 0): DrivenIn {
  positive('lengthIn', lengthIn);
  const beginsIn = underHeadIn + path.side.thicknessIn + path.gapIn;
  const roomIn = beginsIn + path.main.thicknessIn;
  if (lengthIn <= beginsIn) return refused('shankEndsEarly', { lengthIn, beginsIn });
  if (lengthIn > roomIn + ROUNDING_IN) return refused('shankComesOut', { lengthIn, roomIn });
  return { ok: true, penetrationIn: lengthIn - beginsIn };
}
