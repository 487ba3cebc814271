import { PER } from '../../data/metric.ts';
import type { CheckRow } from '../../engine/evaluation.ts';
import { showLength } from '../units/show-length.ts';
import { showNumber } from '../units/show-quantity.ts';
import type { UnitSystem } from '../units/system.ts';

/** Eighths of an inch, or whole millimetres, in an inch. */
const STEPS_PER_INCH = { feet: 8, metric: PER.mmPerInch } as const;

/**
 * What is left or what lacks, in wood or in pounds; always to the cautious side: less to spare, more missing.
 * null where a row has no such measure.
 */
export function roomOf(row: Pick<CheckRow, 'status' | 'spareIn' | 'spareLb'>, system: UnitSystem): string | null {
  if (row.status !== 'pass' && row.status !== 'fail') return null;
  if (row.spareIn !== null) return woodRoom(row.spareIn, system);
  return row.spareLb === null ? null : forceRoom(row.spareLb, system);
}

function woodRoom(spareIn: number, system: UnitSystem): string {
  const steps = Math.floor(spareIn * STEPS_PER_INCH[system]);
  if (steps === 0) return 'next to nothing to spare';
  const shown = showLength(Math.abs(steps) / STEPS_PER_INCH[system], system, { nearest: 8, feetFrom: 'never' });
  return steps > 0 ? `${shown} to spare` : `${shown} missing`;
}

function forceRoom(spareLb: number, system: UnitSystem): string {
  const kilonewtons = system === 'metric';
  const per = kilonewtons ? 100 * PER.kilonewtonsPerPound : 1;
  const steps = Math.floor(spareLb * per);
  const shown = kilonewtons ? `${showNumber(Math.abs(steps) / 100, 2)} kN` : `${showNumber(Math.abs(steps), 0)} lb`;
  return steps >= 0 ? `${shown} of room` : `${shown} too little`;
}
