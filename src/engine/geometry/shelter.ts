import type { BraceEnd, Foot, Id } from '../project/model.ts';

/**
 * Where everything is. Plain readonly data, inches; x along the lines, y across, z up from the datum.
 * Forces are taken between working points (where axes meet), cut lengths from surfaces.
 */
export interface Shelter {
  readonly lines: readonly LineGeometry[];
  readonly planes: readonly PlaneGeometry[];
  readonly posts: readonly PostGeometry[];
  readonly beams: readonly BeamGeometry[];
  readonly braces: readonly BraceGeometry[];
  readonly ties: readonly TieGeometry[];
  readonly rafters: readonly RafterGeometry[];
  readonly purlins: readonly PurlinGeometry[];
  /** lowest finished ground at any post [in] */
  readonly lowestGradeZIn: number;
  /** mean height of the covering above the lowest ground [in] */
  readonly meanRoofHeightIn: number;
  /** plan size of the covering [in] */
  readonly planAlongIn: number;
  readonly planAcrossIn: number;
}

/** What a member is made of, from its start. A round stick ends where its last station ends: nothing is extrapolated. */
export type Stick = RoundStick | SawnStick | TypedStick;
export interface RoundStick {
  readonly kind: 'round';
  readonly logId: Id;
  readonly woodId: Id;
  /** diameters from the member's start, ascending, straight between; the smaller of two callipers */
  readonly profile: readonly { readonly atIn: number; readonly diameterIn: number }[];
  /** where the log's butt lies */
  readonly buttAt: 'start' | 'end';
  /** depth of a planed flat over the full length (beam top, rafter and purlin top) [in] */
  readonly flatIn: number;
}
export interface SawnStick {
  readonly kind: 'sawn';
  /** as it lies: across the load and along the load, all plies together [in] */
  readonly breadthIn: number;
  readonly depthIn: number;
  readonly lay: 'edge' | 'flat';
  readonly plies: number;
  readonly species: string;
  readonly grade: string | null;
  readonly use: 'wet' | 'dry';
}
export interface TypedStick {
  readonly kind: 'typed';
  readonly name: string;
  readonly FbSIn3Psi: number;
  readonly VallowLb: number;
  readonly EIPsiIn4: number;
  readonly heavyPlf: number;
  readonly lightPlf: number;
}

export interface LineGeometry {
  readonly id: Id;
  readonly kind: 'frame' | 'ledger';
  /** A, B, C from the highest bearing down, then by y */
  readonly label: string;
  readonly yIn: number;
  /** level of the rafter seat [in] */
  readonly bearingZIn: number;
  readonly stripThicknessIn: number;
  readonly fromXIn: number;
  readonly toXIn: number;
  readonly beamIds: readonly Id[];
  /** ascending x */
  readonly postIds: readonly Id[];
}

export interface PlaneGeometry {
  readonly id: Id;
  /** roof; of several, roof B: the one that falls to line B */
  readonly label: string;
  /** high to low */
  readonly onLines: readonly Id[];
  readonly lineYIn: readonly number[];
  readonly risePer12: number;
  readonly slopeDeg: number;
  readonly fromXIn: number;
  readonly toXIn: number;
  /** y of the edges of the covering */
  readonly highYIn: number;
  readonly lowYIn: number;
  /** +1 when y grows down the slope, else -1 */
  readonly downY: 1 | -1;
  /** level of the top of the covering at the edges [in] */
  readonly highZIn: number;
  readonly lowZIn: number;
  /** horizontal distance between the edges [in] */
  readonly runIn: number;
}

export interface PostGeometry {
  readonly id: Id;
  /** A1, A2 ... */
  readonly label: string;
  readonly line: Id;
  readonly xIn: number;
  readonly yIn: number;
  readonly gradeZIn: number;
  readonly foot: Foot;
  /** where the frame holds the post: on its hardware, or the point of fixity of an embedded post [in] */
  readonly footZIn: number;
  /** where the post's wood begins: on its hardware, or at the bottom of the hole [in] */
  readonly woodFromZIn: number;
  readonly pierTopZIn: number | null;
  /** seat under the beam: where the post is cut [in] */
  readonly seatZIn: number;
  /** beam axis over the post: the working point [in] */
  readonly axisZIn: number;
  /** cut length of the post's wood [in] */
  readonly lengthIn: number;
  readonly stick: Stick | null;
  readonly seats: readonly SeatGeometry[];
}

export interface SeatGeometry {
  readonly beamId: Id;
  readonly xIn: number;
  readonly depthIn: number;
  /** length along the log [in] */
  readonly lengthIn: number;
  /** width of the flat across the log [in] */
  readonly widthIn: number;
  readonly beamDiameterIn: number;
  readonly postDiameterIn: number;
  /** overlap of the flat's rectangle and the post top's circle [in2] */
  readonly areaIn2: number;
  /** middle of that overlap from the post axis, toward higher x + [in] */
  readonly offsetIn: number;
  /** how far the beam's axis lies beside the post, square to the line, without sign [in] */
  readonly besideIn: number;
  /** from the nearer edge of the bearing to the beam's end [in] */
  readonly toBeamEndIn: number;
}

export interface BeamGeometry {
  readonly id: Id;
  readonly line: Id;
  readonly label: string;
  readonly fromXIn: number;
  readonly toXIn: number;
  readonly stick: Stick | null;
  /** axis, top and underside at stations along the beam, straight between (crown included in top and underside) */
  readonly stations: readonly {
    readonly xIn: number;
    readonly diameterIn: number;
    readonly axisZIn: number;
    readonly topZIn: number;
    readonly undersideZIn: number;
    readonly shimIn: number;
  }[];
  readonly cuts: readonly CutGeometry[];
  /** set where it lies on a slope, as a rafter in its row does: its stick runs up from the eave, all places are level */
  readonly slope?: { readonly cos: number; readonly eaveXIn: number; readonly downX: 1 | -1 };
}

/** A cut on a beam: side, station and depth. `seat` cuts are made by geometry, the rest by the person. */
export interface CutGeometry {
  readonly id: string;
  readonly kind: 'flat' | 'dap' | 'notch' | 'housing';
  readonly madeBy: 'seat' | 'brace' | 'hand';
  readonly atXIn: number;
  readonly lengthIn: number;
  readonly depthIn: number;
  /** 0 up, 180 down, turning toward +y */
  readonly angleDeg: number;
}

export interface BraceGeometry {
  readonly id: Id;
  readonly label: string;
  readonly postId: Id;
  readonly plane: 'along' | 'across';
  /** the beam, tie or rafter it runs to */
  readonly toId: Id;
  readonly side: 'plus' | 'minus';
  readonly runIn: number;
  readonly dropIn: number;
  /** angle with the post axis [deg] */
  readonly phiDeg: number;
  /** between working points [in] */
  readonly lengthIn: number;
  /** crown to crown, what is seen [in] */
  readonly visibleLengthIn: number;
  readonly postPoint: { readonly xIn: number; readonly yIn: number; readonly zIn: number };
  readonly topPoint: { readonly xIn: number; readonly yIn: number; readonly zIn: number };
  readonly postDiameterIn: number;
  readonly topDiameterIn: number;
  readonly stick: Stick | null;
  readonly ends: { readonly post: BraceEnd; readonly top: BraceEnd };
}

export interface TieGeometry {
  readonly id: Id;
  /** tie A1 B1 */
  readonly label: string;
  readonly fromPostId: Id;
  readonly toPostId: Id;
  readonly xIn: number;
  readonly fromYIn: number;
  readonly toYIn: number;
  readonly axisZIn: number;
  /** its axis meets those of the posts, or lies beside them */
  readonly ends: 'between' | 'beside';
  readonly stick: Stick | null;
}

export interface RafterGeometry {
  readonly id: Id;
  readonly label: string;
  readonly plane: Id;
  readonly xIn: number;
  /** width of roof it carries, to half way to its neighbours and out to the edges of the covering [in] */
  readonly tributaryWidthIn: number;
  readonly tributaryFromXIn: number;
  readonly tributaryToXIn: number;
  /** greater of the distances to its neighbours; null with a single rafter [in] */
  readonly spacingIn: number | null;
  /** horizontal distances from the eave (low) end: the rafter's ends and its supports, low to high [in] */
  readonly runIn: number;
  readonly supports: readonly {
    readonly line: Id;
    readonly atIn: number;
    readonly yIn: number;
    readonly zIn: number;
  }[];
  readonly slopeDeg: number;
  readonly eaveYIn: number;
  readonly downY: 1 | -1;
  readonly stick: Stick | null;
  readonly seatCutIn: number;
  readonly blocked: boolean;
  readonly continuous: boolean;
}

export interface PurlinGeometry {
  readonly id: Id;
  readonly label: string;
  readonly plane: Id;
  readonly upSlopeIn: number;
  /** where the strip of slope that it carries begins, from the low edge [in] */
  readonly tributaryFromIn: number;
  /** on the slope, to half way to its neighbours and to the edges [in] */
  readonly tributaryWidthIn: number;
  readonly slopeDeg: number;
  readonly fromXIn: number;
  readonly toXIn: number;
  /** x of the rafters under it, ascending */
  readonly rafterXIn: readonly number[];
  readonly rafterIds: readonly Id[];
  readonly stick: Stick | null;
}

/** Diameter of a round stick at a distance from the member's start; null beyond its last station. */
export function diameterAt(stick: RoundStick, atIn: number): number | null {
  const p = stick.profile;
  const first = p[0];
  const last = p[p.length - 1];
  if (!first || !last || atIn < first.atIn - 1e-9 || atIn > last.atIn + 1e-9) return null;
  for (let i = 1; i < p.length; i++) {
    const a = p[i - 1]!;
    const b = p[i]!;
    if (atIn <= b.atIn || i === p.length - 1) {
      const t = b.atIn === a.atIn ? 0 : Math.min(1, Math.max(0, (atIn - a.atIn) / (b.atIn - a.atIn)));
      return a.diameterIn + t * (b.diameterIn - a.diameterIn);
    }
  }
  return first.diameterIn;
}
