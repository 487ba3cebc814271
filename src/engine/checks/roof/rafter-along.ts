import { clause } from '../../../data/sources.ts';
import { dragOfRafter } from '../../loads/rafter-drag.ts';
import { put, type Note } from '../../note.ts';
import { quantity } from '../../units.ts';
import type { RoofCheckContext } from './context.ts';
import type { RafterLoading } from './rafter-loading.ts';
import type { RafterResponse } from './rafter-responses.ts';
import { shakenPush } from './rafter-shaken.ts';

/**
 * Push along a line that a rafter hands to it: wind on its broad side in every combination with wind, whichever way that
 * blows (own rule, safe side), or the earthquake on all of its strip, whole on each line.
 * @returns force of a response [lb]
 * @source ASCE7 29.4, 12.8 (7-16)
 */
export function pushAlong(
  context: RoofCheckContext,
  loading: RafterLoading,
  lineId: string,
): (r: RafterResponse, note?: Note) => number {
  const line = context.shelter.lines.find((l) => l.id === lineId)!;
  const dragLb = dragOfRafter(context.project, context.shelter, line, loading.rafter, context.site);
  return (r, note) => {
    // wind and earthquake never act together
    const shaken = shakenPush(loading.shaken, r.combination, note);
    if (shaken > 0) return shaken;
    const factor = r.combination.factors.find((f) => f.caseId.startsWith('wind'))?.factor ?? 0;
    const push = factor * dragLb;
    note?.({
      symbol: 'L',
      words: 'wind along the line on the broad side of the rafter',
      formula: 'f × W',
      put: [
        put('f', factor, '1', 'factor of wind in this combination'),
        put('W', dragLb, 'lb', "the rafter's share of the line's push on the edge of the roof, strength level"),
      ],
      result: quantity(push, 'lb'),
      clause: clause('ASCE7', '29.4'),
    });
    return push;
  };
}
