import type { Shrinkage } from '../../data/wood/drying-and-decay.ts';
import { notNegative, positive } from '../errors.ts';
import { inches, type Inches } from '../units.ts';

/** Moisture at which wood begins to shrink [%]. @source WOOD_HANDBOOK eq. 4-9 */
const FIBRE_SATURATION_PCT = 30;

/**
 * What a log loses in diameter while it dries; its drying checks open by what the rings lose beyond that.
 * @param greenDiameterIn wood diameter of the green log [in]
 * @param moisturePct moisture it comes to in service [%]; at 30 % and above nothing is lost
 * @returns loss along a radius, over the whole diameter [in]
 * @throws MisuseError if the diameter is not above zero or the moisture below zero
 * @source WOOD_HANDBOOK eq. 4-9: S = S0 (1 - M / 30)
 */
export function diameterLostInDrying({ radialPct }: Shrinkage, greenDiameterIn: number, moisturePct: number): Inches {
  const dried = Math.max(0, 1 - notNegative('moisturePct', moisturePct) / FIBRE_SATURATION_PCT);
  return inches((positive('greenDiameterIn', greenDiameterIn) * radialPct * dried) / 100);
}
