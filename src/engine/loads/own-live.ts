import { emptyLineCase, type LineCase } from './cases.ts';
import type { LineSetting } from './line-setting.ts';

/** Loads the person hangs on the line (points and stretches, downward, live). */
export function ownLive(c: LineSetting): LineCase | null {
  const points = c.project.ownLoads.flatMap((own) => {
    if (own.kind !== 'live' || own.direction !== 'down') return [];
    if (own.where.on === 'line' && own.where.line === c.line.id)
      return [{ xIn: own.where.xIn, downLb: own.where.lb, alongLb: 0 }];
    if (own.where.on === 'stretch' && own.where.line === c.line.id)
      return spreadPoints(own.where.fromXIn, own.where.toXIn, own.where.plf);
    return [];
  });
  return points.length > 0 ? { ...emptyLineCase('own-live'), points } : null;
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
