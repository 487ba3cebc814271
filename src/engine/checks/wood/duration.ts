import { clause } from '../../../data/sources.ts';
import type { Note } from '../../note.ts';
import { quantity } from '../../units.ts';

/** How long the shortest load of a combination lasts over the life of the shelter. */
export type DurationKind = 'permanent' | 'tenYears' | 'twoMonths' | 'sevenDays' | 'tenMinutes';

const FACTORS: Readonly<Record<DurationKind, { readonly CD: number; readonly words: string }>> = {
  permanent: { CD: 0.9, words: 'permanent: dead load' },
  tenYears: { CD: 1.0, words: 'ten years: stored goods, floor live load' },
  twoMonths: { CD: 1.15, words: 'two months: snow' },
  sevenDays: { CD: 1.25, words: 'seven days: roof live load' },
  tenMinutes: { CD: 1.6, words: 'ten minutes: wind, notional sway' },
};
const TABLE = clause('NDS', 'Table 2.3.2');

/**
 * Load duration factor CD of a combination, by the shortest load in it.
 * Applies to Fb, Ft, Fv and Fc; never to E, Emin or Fc-perp.
 * @source NDS Table 2.3.2 (2018). Impact (2.0) is left out: no load of this workbench is an impact.
 */
export function durationFactor(kind: DurationKind, note?: Note): number {
  const { CD, words } = FACTORS[kind];
  note?.({
    symbol: 'CD',
    words: `load duration factor, ${words}`,
    formula: 'read from the table',
    put: [],
    result: quantity(CD, '1'),
    clause: TABLE,
  });
  return CD;
}
