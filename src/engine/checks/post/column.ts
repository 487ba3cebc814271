import type { PostGeometry } from '../../geometry/shelter.ts';
import type { DesignValues } from '../../material/values.ts';
import type { Note } from '../../note.ts';
import { insteadOf } from '../../project/instead.ts';
import type { Project } from '../../project/model.ts';
import { adjustedCompression, allowableColumnStress, columnStabilityFactor, eulerStress } from '../wood/column.ts';
import { equalAreaSide, representativeDiameter } from '../wood/tapered-column.ts';
import { effectiveLength, type EffectiveLength } from './effective-length.ts';

/** A post as a column in one direction. */
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

export function columnPlanes(project: Project, post: PostGeometry, values: DesignValues): readonly ColumnPlane[] {
  return (['along', 'across'] as const).map((direction) => columnPlane(project, post, values, direction));
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

/** Fc' of the post: the weaker direction. */
export function allowableColumn(planes: readonly ColumnPlane[], values: DesignValues, CD: number, note?: Note): number {
  const weaker = planes.reduce((a, b) => (b.FcEPsi < a.FcEPsi ? b : a));
  const star = adjustedCompression(values.FcPsi, CD, note);
  if (note) weaker.tell(note);
  return allowableColumnStress(star, columnStabilityFactor(star, weaker.FcEPsi, weaker.c, note), note);
}

export const smallerFcE = (planes: readonly ColumnPlane[]): number => Math.min(...planes.map((p) => p.FcEPsi));
