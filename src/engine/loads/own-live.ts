import type { LoadDuration } from '../../data/loads/combinations.ts';
import type { OwnLoad, Project } from '../project/model.ts';
import { emptyLineCase, type LineCase } from './cases.ts';
import type { LineSetting } from './line-setting.ts';

/** Own loads of this version: live, downward, at points and on stretches of a frame line; others are told in a row. */
export function isComputed(project: Project, { kind, direction, where }: OwnLoad): boolean {
  if (kind !== 'live' || direction !== 'down' || (where.on !== 'line' && where.on !== 'stretch')) return false;
  return project.supportLines.some((line) => line.kind === 'frame' && line.id === where.line);
}

/** How long what hangs on a line lasts: all of it counts as long as the longest (safe side), at least ten years. */
export function ownLiveDuration({ project, line }: LineSetting): LoadDuration {
  const isForEver = project.ownLoads.some(
    (own) =>
      isComputed(project, own) && own.duration === 'permanent' && 'line' in own.where && own.where.line === line.id,
  );
  return isForEver ? 'permanent' : 'tenYears';
}

/** Loads the person hangs on the line (points and stretches, downward, live). */
export function ownLive(c: LineSetting): LineCase | null {
  const points = c.project.ownLoads.flatMap((own) => {
    if (!isComputed(c.project, own)) return [];
    if (own.where.on === 'line' && own.where.line === c.line.id)
      return [{ xIn: own.where.xIn, downLb: own.where.lb, alongLb: 0 }];
    if (own.where.on === 'stretch' && own.where.line === c.line.id)
      return spreadPoints(own.where.fromXIn, own.where.toXIn, own.where.plf);
    return [];
  });
  return points.length > 0 ? { ...emptyLineCase('own-live'), points } : null;
}

/** What hangs on the line for ever, which an earthquake shakes like dead load [lb]. */
export function hungForEver({ project, line }: LineSetting): number {
  return project.ownLoads.reduce((sum, own) => {
    if (!isComputed(project, own) || own.duration !== 'permanent') return sum;
    if (own.where.on === 'line' && own.where.line === line.id) return sum + own.where.lb;
    if (own.where.on === 'stretch' && own.where.line === line.id)
      return sum + (own.where.plf * (own.where.toXIn - own.where.fromXIn)) / 12;
    return sum;
  }, 0);
}

/** A stretch of load as points no farther apart than a foot: what hangs on rafters and hooks anyway. */
function spreadPoints(fromXIn: number, toXIn: number, plfLoad: number): LineCase['points'] {
  const n = Math.max(1, Math.ceil((toXIn - fromXIn) / 12));
  const each = (plfLoad * (toXIn - fromXIn)) / 12 / n;
  return Array.from({ length: n }, (_, i) => ({
    xIn: fromXIn + ((toXIn - fromXIn) * (i + 0.5)) / n,
    downLb: each,
    alongLb: 0,
  }));
}
