import { stretchIn } from '../../engine/checks/fasteners/round-geometry.ts';
import { dot, lengthOf, plus, type Vector } from '../../engine/checks/fasteners/space.ts';
import type { JointPiece, JointSetting } from '../../engine/checks/joints/joint-setting.ts';
import { beamPiece, postPiece } from '../../engine/checks/joints/frame-pieces.ts';
import type { Shelter } from '../../engine/geometry/shelter.ts';
import { bodyAgainst, bodyOf, cutsAt, lyingOf, type Body, type LocalCut, type Lying } from './body.ts';
import { plateFlats } from './plate-flats.ts';
import { reachOf } from './ring.ts';
import type { Shank } from './shanks.ts';

/** Both pieces of a joint as they are drawn, and what lies under them; null what nobody has given a size. */
export interface Bodies {
  readonly upper: Body | null;
  readonly lower: Body | null;
  readonly under: Body | null;
  /** middle of the drawing */
  readonly middle: Vector;
  /** how far from it the pieces are drawn [in] */
  readonly reachIn: number;
}

/** Everything that is drawn is at least this long on each side of the joint [in]. */
const LEAST_REACH_IN = 4;
/** Wood that is drawn beyond what meets there, in thicknesses of the thicker piece. */
const BEYOND = 0.8;

/** @param shanks  of all rows: what plates lie on is cut where they are fastened */
export function bodiesOf(
  setting: JointSetting,
  shelter: Shelter,
  hardwareReachIn: number,
  shanks: readonly Shank[] = [],
): Bodies {
  const { upper, lower, kind } = setting;
  const lyings = [upper, lower].map((piece) => lyingOf(piece, beamUnder(shelter, piece)));
  const [above, below] = [lyings[0] ?? null, lyings[1] ?? null];
  const middle = setting.line && kind !== 'sheetPurlin' && kind !== 'sheetRafter' ? setting.line.at : setting.at;
  const thickest = Math.max(...lyings.map(thicknessOf));
  const reachIn = Math.max(LEAST_REACH_IN, (0.5 + BEYOND) * thickest, hardwareReachIn);
  const around = { middle, reachIn };
  const under = underOf(setting, shelter, around);
  const [aboveFlats, belowFlats] = [plateFlats(upper, shanks, setting.at), plateFlats(lower, shanks, setting.at)];
  if (above && below && endsAgainst(setting, above, below)) {
    const away = awayFrom(above);
    const reach = reachIn + Math.abs(along(above, middle));
    const against = bodyAgainst(above, below.shape, away, reach, aboveFlats);
    const contact = away > 0 ? against.rings[0]! : against.rings[1]!;
    return {
      upper: against,
      lower: windowOf(below, { ...around, flats: belowFlats }, cutsAt(below, contact)),
      under,
      ...around,
    };
  }
  return {
    upper: above && upperBody(setting, above, below, under, { ...around, flats: aboveFlats }),
    lower: below && lowerBody(setting, below, under, { ...around, flats: belowFlats }),
    under,
    ...around,
  };
}

interface Around {
  readonly middle: Vector;
  readonly reachIn: number;
}

const along = ({ shape }: Lying, place: Vector): number => dot(plus(place, shape.axisAt, -1), shape.axis);

/** The stretch of a piece that is drawn, with the flats that plates lie on. */
interface Window extends Around {
  readonly flats: readonly LocalCut[];
}

const windowOf = (lying: Lying, { middle, reachIn, flats }: Window, cuts: readonly LocalCut[]): Body => {
  const at = along(lying, middle);
  return bodyOf(lying, cuts, at - reachIn, at + reachIn, flats);
};

const beamUnder = (shelter: Shelter, { id }: JointPiece) => shelter.beams.find((b) => b.id === id);

function thicknessOf(lying: Lying | null): number {
  if (!lying) return 0;
  const ring = lying.ringAt(0);
  return 2 * Math.max(...ring.map((p) => lengthOf(plus(p, lying.shape.axisAt, -1))));
}

/** A brace on its logs, a tie between its posts: its end is cut to fit the other piece. */
export const isFitted = (kind: JointSetting['kind']): boolean =>
  kind === 'bracePost' || kind === 'braceTop' || kind === 'tiePost';

function endsAgainst({ kind }: JointSetting, above: Lying, below: Lying): boolean {
  if (!isFitted(kind)) return false;
  const { axisAt, axis } = above.shape;
  const atEnd = Math.min(-above.endsIn[0], above.endsIn[1]) < 1e-6;
  return atEnd && stretchIn(below.shape, { at: axisAt, into: axis }) !== null;
}

const awayFrom = ({ endsIn }: Lying): 1 | -1 => (endsIn[1] > -endsIn[0] ? 1 : -1);

function upperBody(setting: JointSetting, above: Lying, below: Lying | null, under: Body | null, around: Window): Body {
  switch (setting.kind) {
    case 'beamPost':
      return windowOf(above, around, below ? cutsAt(above, below.ringAt(0)) : []);
    case 'beamSplice':
      return windowOf(above, around, cutsUnder(above, under));
    case 'rafterStrip':
    case 'rafterLedger':
      return windowOf(above, around, birdsMouth(above, below, setting.kind === 'rafterLedger'));
    case 'rafterRafter':
      return plumbEnd(windowOf(above, around, []), setting);
    default:
      return windowOf(above, around, []);
  }
}

function lowerBody(setting: JointSetting, below: Lying, under: Body | null, around: Window): Body {
  switch (setting.kind) {
    case 'beamSplice':
      return windowOf(below, around, cutsUnder(below, under));
    case 'rafterRafter':
      return plumbEnd(windowOf(below, around, []), setting);
    default:
      return windowOf(below, around, []);
  }
}

/** A seat that a beam shares with the next one: as far as the post under both reaches. */
const cutsUnder = (beam: Lying, under: Body | null): readonly LocalCut[] => (under ? cutsAt(beam, under.uncut) : []);

/** A seat on a log is drawn at most this long [in]; as a common bearer is wide. */
const SEAT_ON_LOG_IN = 3.5;

/** A seat cut of a rafter: level over what bears it, plumb at its lower end, and to where it runs out of the wood. */
function birdsMouth(rafter: Lying, below: Lying | null, isAtEnd: boolean): readonly LocalCut[] {
  const { axis, axisAt } = rafter.shape;
  const cos = Math.hypot(axis[0], axis[1]);
  const sin = axis[2];
  const upSlope: Vector = [axis[0] / cos, axis[1] / cos, 0];
  const out: Vector = [-upSlope[0] * sin, -upSlope[1] * sin, cos];
  const toUndersideIn = -reachOf(rafter.ringAt(0), axisAt, out)[0];
  const undersideZ = axisAt[2] - toUndersideIn / cos;
  const half = halfWide(below, upSlope);
  const place = (levelIn: number, z: number): number => levelIn * cos + (z - axisAt[2]) * sin;
  return rafter.cutFaces.flatMap((face): readonly LocalCut[] => {
    const seatZ = face.at[2];
    if (seatZ - undersideZ <= 1e-6) return [];
    const runsOutAt = sin > 0 ? ((seatZ - undersideZ) * cos) / sin : Infinity;
    const fromIn = place(-half, undersideZ - (half * sin) / cos);
    const toIn = isAtEnd ? rafter.endsIn[1] : place(Math.min(half, runsOutAt), seatZ);
    return [{ face, fromIn, toIn, rampIn: place(-half, seatZ) - fromIn }];
  });
}

function halfWide(below: Lying | null, way: Vector): number {
  if (!below) return SEAT_ON_LOG_IN / 2;
  const [fromIn, toIn] = reachOf(below.ringAt(0), below.shape.axisAt, way);
  const half = (toIn - fromIn) / 2;
  return below.shape.diameterIn === null ? half : Math.min(half, SEAT_ON_LOG_IN / 2);
}

/** Rafters of two slopes end plumb against one another. */
function plumbEnd(body: Body, { at, ways }: JointSetting): Body {
  const slope = dot(body.axis, ways.pull);
  const plumb = body.rings.at(-1)!.map((p) => plus(p, body.axis, dot(plus(at, p, -1), ways.pull) / slope));
  return { ...body, rings: [...body.rings.slice(0, -1), plumb] };
}

/** What lies under both pieces and is no part of the joint: the beam under its strip, the post under a splice. */
function underOf(setting: JointSetting, shelter: Shelter, { reachIn }: Around): Body | null {
  const { kind, lower, at } = setting;
  if (kind === 'beamSplice') {
    const post = shelter.posts.find(({ id }) => id === setting.place);
    const lying = post && lyingOf(postPiece(post, post.seatZIn));
    return lying ? bodyOf(lying, [], -reachIn, reachIn, []) : null;
  }
  const isOnStrip = kind === 'rafterStrip' && shelter.lines.some(({ id }) => id === lower.id);
  const line = isOnStrip ? shelter.lines.find(({ id }) => id === lower.id) : undefined;
  const beam = line && shelter.beams.find((b) => b.line === line.id && b.fromXIn <= at[0] && at[0] <= b.toXIn);
  const lying = beam && lyingOf(beamPiece(beam, at[0], line.yIn), beam);
  return lying ? bodyOf(lying, [], -reachIn, reachIn, []) : null;
}
