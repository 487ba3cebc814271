import { firstOrderOf, type LineResponse } from '../../frame/line-frame.ts';
import type { PostChain } from '../../frame/read-response.ts';
import type { PostGeometry } from '../../geometry/shelter.ts';
import type { DesignValues } from '../../material/values.ts';
import type { Note } from '../../note.ts';
import { insteadOf } from '../../project/instead.ts';
import type { Project } from '../../project/model.ts';
import { lastRemembered } from '../last-remembered.ts';
import type { LineCheckContext } from '../line-context.ts';
import { adjustedCompression, allowableColumnStress, columnStabilityFactor, eulerStress } from '../wood/column.ts';
import { equalAreaSide, representativeDiameter } from '../wood/tapered-column.ts';
import { effectiveLength, type EffectiveLength } from './effective-length.ts';
import { greatestPush, type PostStation } from './post-stations.ts';
import { eulerOfLine, eulerOfRow, type EulerOfLine } from './euler-of-line.ts';

/** A post as a column in one direction, its length by table. */
export interface ColumnPlane {
  readonly direction: 'along' | 'across';
  readonly length: EffectiveLength;
  readonly areaIn2: number;
  readonly sideIn: number;
  readonly FcEPsi: number;
  /** of the column stability factor */
  readonly c: number;
  readonly tell: (note: Note) => void;
}

/** Euler stresses of a post in one response. */
export interface EulerStresses {
  readonly alongPsi: number;
  readonly acrossPsi: number;
}

/** A post as a column. */
export interface PostColumn {
  readonly planes: readonly [along: ColumnPlane, across: ColumnPlane];
  /** of the representative section, the smaller of both directions [in2] */
  readonly areaIn2: number;
  /** in the plane of a line or of a row that holds itself from its buckling, else by the length of the table */
  readonly eulerIn: (r: LineResponse) => EulerStresses;
  /** writes how the smaller of them comes about */
  readonly tellSmaller: (r: LineResponse, note: Note) => void;
  /** the plane whose length by table decides; null where the buckling of the line does */
  readonly decidingPlane: (r: LineResponse) => ColumnPlane | null;
}

export function postColumn(
  context: LineCheckContext,
  chain: PostChain,
  stations: readonly PostStation[],
  values: DesignValues,
): PostColumn {
  const { project } = context;
  const along = columnPlane(project, chain.post, values, 'along');
  const across = columnPlane(project, chain.post, values, 'across');
  const areaIn2 = Math.min(along.areaIn2, across.areaIn2);
  const ofLine = eulerOfLine(context, chain, along, areaIn2, values);
  const ofRow = eulerOfRow(context, chain, across, areaIn2);
  const pushIn = (r: LineResponse): number => greatestPush(stations, firstOrderOf(r));
  const eulerIn = lastRemembered((r: LineResponse): EulerStresses => ({
    alongPsi: ofLine ? ofLine(r, pushIn(r)) : along.FcEPsi,
    acrossPsi: ofRow ? ofRow(r, pushIn(r)) : across.FcEPsi,
  }));
  const isAlong = (r: LineResponse): boolean => {
    const { alongPsi, acrossPsi } = eulerIn(r);
    return alongPsi <= acrossPsi;
  };
  return {
    planes: [along, across],
    areaIn2,
    eulerIn,
    tellSmaller: (r, note) => {
      if (isAlong(r)) tellEuler(ofLine, r, pushIn(r), along, note);
      else tellEuler(ofRow, r, pushIn(r), across, note);
    },
    decidingPlane: (r) => (isAlong(r) ? (ofLine ? null : along) : ofRow ? null : across),
  };
}

function tellEuler(
  ofFrame: EulerOfLine | null,
  r: LineResponse,
  pushLb: number,
  byTable: ColumnPlane,
  note: Note,
): void {
  if (ofFrame) ofFrame(r, pushLb, note);
  else byTable.tell(note);
}

/** Round posts: equal-area square of the representative diameter of the taper. @source NDS 3.7.2, 3.7.3 */
function columnPlane(
  project: Project,
  post: PostGeometry,
  values: DesignValues,
  direction: 'along' | 'across',
): ColumnPlane {
  const length = effectiveLength(project, post, direction);
  const stick = post.stick!;
  const c = insteadOf(project, 'columnC', post.id)?.value ?? values.cForColumns;
  if (stick.kind === 'round') {
    const diameters = stick.profile.map((p) => p.diameterIn);
    const smallest = Math.min(...diameters);
    const largest = Math.max(...diameters);
    const typed = insteadOf(project, 'columnTaperA', post.id);
    const ends = typed ? { a: typed.value } : length.ends;
    const d = representativeDiameter(smallest, largest, ends);
    const sideIn = equalAreaSide(d);
    return {
      direction,
      length,
      sideIn,
      areaIn2: (Math.PI * d * d) / 4,
      FcEPsi: eulerStress(values.EminPsi, length.lengthIn, sideIn),
      c,
      tell: (note) => {
        representativeDiameter(smallest, largest, ends, note);
        equalAreaSide(d, note);
        eulerStress(values.EminPsi, length.lengthIn, sideIn, note);
      },
    };
  }
  // along the line a sawn post is as deep as it lies, across it as broad
  const sideIn = stick.kind === 'sawn' ? (direction === 'along' ? stick.depthIn : stick.breadthIn) : NaN;
  const areaIn2 = stick.kind === 'sawn' ? stick.breadthIn * stick.depthIn : NaN;
  return {
    direction,
    length,
    sideIn,
    areaIn2,
    FcEPsi: eulerStress(values.EminPsi, length.lengthIn, sideIn),
    c,
    tell: (note) => void eulerStress(values.EminPsi, length.lengthIn, sideIn, note),
  };
}

/** Fc' of the post in one response: the weaker direction. */
export function allowableColumn(column: PostColumn, values: DesignValues, r: LineResponse, note?: Note): number {
  const star = adjustedCompression(values.FcPsi, r.combination.durationFactor, note);
  if (note) column.tellSmaller(r, note);
  const { alongPsi, acrossPsi } = column.eulerIn(r);
  const FcE = Math.min(alongPsi, acrossPsi);
  return allowableColumnStress(star, columnStabilityFactor(star, FcE, column.planes[0].c, note), note);
}
