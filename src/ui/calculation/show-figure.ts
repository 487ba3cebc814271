import type { Quantity } from '../../engine/units.ts';
import { showing, showNumber } from '../units/show-quantity.ts';
import type { UnitSystem } from '../units/system.ts';

/** Enough to redo a line with a pocket calculator and meet the next one. */
const FIGURES = 4;
const MOST_DECIMALS = 9;

/** A number of a step with its unit: at least four figures of it, no zeros that say nothing. */
export function showFigure({ value, unit }: Quantity, system: UnitSystem): string {
  const shown = showing(unit, system);
  const own = value * shown.per;
  if (!Number.isFinite(own)) return '';
  const before = own === 0 ? 1 : Math.floor(Math.log10(Math.abs(own))) + 1;
  const most = Math.min(MOST_DECIMALS, Math.max(shown.decimals, FIGURES - before));
  const rounded = Number(own.toFixed(most));
  const amount = showNumber(rounded, decimalsOf(rounded, most));
  if (shown.unit === '') return amount;
  return shown.unit === '°' ? `${amount}°` : `${amount} ${shown.unit}`;
}

/** How many decimals a rounded number needs, at most so many. */
function decimalsOf(rounded: number, most: number): number {
  for (let n = 0; n < most; n++) if (Number(rounded.toFixed(n)) === rounded) return n;
  return most;
}
