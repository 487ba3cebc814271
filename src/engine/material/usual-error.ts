import { USUAL_ERROR_IN } from '../../data/wood/measuring-error.ts';
import type { Log } from '../project/model.ts';

/**
 * The error that a log's diameters usually have, by how they are known.
 * @returns [in]; of a log read in several ways the greatest, rounded up to a sixteenth
 * @source own defaults
 */
export function usualErrorIn({ how, stations }: Pick<Log, 'how' | 'stations'>): number {
  if (how !== 'measured') return USUAL_ERROR_IN[how];
  const isByGirth = stations.every(({ read }) => read === 'girth');
  return isByGirth ? Math.ceil(USUAL_ERROR_IN.byGirth * 16) / 16 : USUAL_ERROR_IN.byCalliper;
}
