import type { Project } from '../../engine/project/model.ts';
import type { MeasuredFrom } from '../state/open-work.ts';
import { valueAt } from '../state/value-at.ts';
import { traitPath } from '../cord/own.ts';

export interface DimensionLeaf {
  readonly path: string;
  readonly from: MeasuredFrom;
}

/**
 * Which number of the project a length on the drawing stands for: the brace's own leg or that of all braces, the one
 * line that carries the height. null where nothing is given that could be changed.
 */
export function leafOfDimension(project: Project, path: string, shownIn: number, sign: 1 | -1): DimensionLeaf | null {
  const written = writtenPath(project, path);
  const stored = written === null ? undefined : valueAt(project, written);
  if (written === null || typeof stored !== 'number') return null;
  return { path: written, from: { zeroIn: stored - sign * shownIn, sign } };
}

function writtenPath(project: Project, path: string): string | null {
  const leg = /^members\[([^\]]+)\]\.(runIn|dropIn)$/.exec(path);
  if (leg?.[1] !== undefined && leg[2] !== undefined) return traitPath(project, leg[1], leg[2]);
  if (/^supportLines\[[^\]]+\]\.height\.zIn$/.test(path)) {
    const carrier = project.supportLines.find(({ height }) => height !== null);
    return carrier ? `supportLines[${carrier.id}].height.zIn` : null;
  }
  return path;
}
