import type { ThinnestLog } from '../evaluation.ts';
import { once } from '../once.ts';

/**
 * Least diameters along a round member, worked out when they are first read.
 * @param least in the order of the places; NaN where nothing is asked, Infinity where no log in reach passes [in]
 */
export function thinnestLog(memberId: string, atIn: readonly number[], least: () => readonly number[]): ThinnestLog {
  const known = once(() => least().map((d) => (Number.isFinite(d) ? d : null)));
  return {
    memberId,
    atIn,
    get leastDiameterIn() {
      return known();
    },
  };
}
