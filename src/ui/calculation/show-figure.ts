import type { Quantity, Unit } from '../../engine/units.ts';
import { showing, showNumber } from '../units/show-quantity.ts';
import type { UnitSystem } from '../units/system.ts';

/** Enough to redo a line with a pocket calculator and meet the next one. */
const FIGURES = 4;
const MOST_DECIMALS = 9;
/** Below it zeros after the point are hard to count: powers of ten are written instead. */
const LEAST_PLAIN = 1e-5;
const NO_LIMIT = 'no limit';
/** Forces and stresses below it are what the rounding of a machine leaves of zero. */
const NOISE = 1e-6;
const FORCES: ReadonlySet<Unit> = new Set(['lb', 'lb·in', 'psi']);

/**
 * A number of a step with its unit: at least four figures of it, no zeros that say nothing. What has no bound (the stress
 * at which a held member would buckle) says so.
 */
export function showFigure({ value, unit }: Quantity, system: UnitSystem): string {
  const shown = showing(unit, system);
  const own = value * shown.per;
  if (Number.isNaN(own)) return '';
  if (!Number.isFinite(own)) return NO_LIMIT;
  const isZero = isNothing({ value, unit });
  const isTiny = !isZero && Math.abs(own) < LEAST_PLAIN;
  const amount = isTiny ? inPowers(own) : plain(isZero ? 0 : own, shown.decimals);
  if (shown.unit === '') return amount;
  return shown.unit === '°' ? `${amount}°` : `${amount} ${shown.unit}`;
}

/** Zero, or a force that is what rounding leaves of it. */
export const isNothing = ({ value, unit }: Quantity): boolean =>
  value === 0 || (FORCES.has(unit) && Math.abs(value) < NOISE);

function plain(own: number, usual: number): string {
  const before = own === 0 ? 1 : Math.floor(Math.log10(Math.abs(own))) + 1;
  const most = Math.min(MOST_DECIMALS, Math.max(usual, FIGURES - before));
  const rounded = Number(own.toFixed(most));
  return showNumber(rounded, decimalsOf(rounded, most));
}

/** `9.694 × 10^-13` */
function inPowers(own: number): string {
  const [digits = '', power = ''] = own.toExponential(FIGURES - 1).split('e');
  return `${digits.replace('-', '−')} × 10^${power}`;
}

/** How many decimals a rounded number needs, at most so many. */
function decimalsOf(rounded: number, most: number): number {
  for (let n = 0; n < most; n++) if (Number(rounded.toFixed(n)) === rounded) return n;
  return most;
}
