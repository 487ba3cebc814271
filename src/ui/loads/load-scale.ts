import { PER } from '../../data/metric.ts';
import { showNumber, showUnit } from '../units/show-quantity.ts';
import type { UnitSystem } from '../units/system.ts';

/** How long a load is drawn, the same for every case, so that one can be held against another. */
export interface LoadScale {
  readonly px: (value: number) => number;
  /** `1 in is 20 psf` */
  readonly words: string;
  /** the length that the words speak of [px] */
  readonly linePx: number;
}

/** An inch and a centimetre as style sheets measure them [px]. */
const LENGTHS = {
  feet: { px: 96, words: '1 in' },
  metric: { px: 96 / 2.54, words: '1 cm' },
} as const;
const SHOWN = {
  feet: { psf: 1, lb: 1 },
  metric: { psf: PER.kPaPerPsf, lb: PER.kilonewtonsPerPound },
} as const;
const ROUND = [1, 2, 3, 4, 5, 6, 8];

/** The finest round scale at which the greatest load is no longer than the room for it. */
export function loadScale(greatest: number, unit: 'psf' | 'lb', roomPx: number, system: UnitSystem): LoadScale {
  const { px: lengthPx, words } = LENGTHS[system];
  const shown = SHOWN[system][unit];
  const least = Math.max((greatest * shown * lengthPx) / roomPx, 1e-6);
  const power = 10 ** Math.floor(Math.log10(least));
  const perLength = power * (ROUND.find((n) => n * power >= least) ?? 10);
  const decimals = Math.max(0, -Math.floor(Math.log10(perLength)));
  return {
    px: (value) => (Math.abs(value) * shown * lengthPx) / perLength,
    words: `${words} is ${showNumber(perLength, decimals)} ${showUnit(unit, system)}`,
    linePx: lengthPx,
  };
}
