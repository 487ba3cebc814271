import type { ShowLength } from '../drawing/words.ts';
import { showLength } from '../units/show-length.ts';
import type { UnitSystem } from '../units/system.ts';

interface Shows {
  readonly length: ShowLength;
  readonly diameter: ShowLength;
}

/** How the drawing writes lengths: one function for each system, always the same one. */
export const SHOWS: Readonly<Record<UnitSystem, Shows>> = {
  feet: {
    length: (inches) => showLength(inches, 'feet', { style: 'marks' }),
    diameter: (inches) => showLength(inches, 'feet', { feetFrom: 'never' }),
  },
  metric: {
    length: (inches) => showLength(inches, 'metric', { style: 'marks' }),
    diameter: (inches) => showLength(inches, 'metric', { feetFrom: 'never' }),
  },
};
