import type { Cited } from '../wood/cited.ts';

/** A steel by its least strengths. */
export interface SteelGrade extends Cited {
  readonly words: string;
  readonly FyPsi: number;
  readonly FuPsi: number;
  /** how a plate of it is made, which decides how hard a shank may press on it; null: a rod, not a plate */
  readonly plate: 'hotRolled' | 'coldFormed' | null;
}

/** Steels of plates, straps, bolts and lag screws. Where nobody says which, the weaker of the usual ones is meant. */
export const STEELS = {
  plate: {
    words: 'hot-rolled plate, A36',
    FyPsi: 36_000,
    FuPsi: 58_000,
    plate: 'hotRolled',
    source: 'A36',
    where: 'least strengths',
    seen: 'memory',
  },
  strap: {
    words: 'cold-formed sheet and strap, A653 grade 33',
    FyPsi: 33_000,
    FuPsi: 45_000,
    plate: 'coldFormed',
    source: 'A653',
    where: 'structural steel, grade 33',
    seen: 'memory',
  },
  rod: {
    words: 'bolts and lag screws, A307 grade A',
    FyPsi: 36_000,
    FuPsi: 60_000,
    plate: null,
    source: 'A307',
    where: 'grade A',
    seen: 'memory',
  },
} as const satisfies Record<string, SteelGrade>;

/** How hard a shank may press on steel, as a multiple of Fu. @source NDS Appendix I: 2.4 / 1.6 and 2.2 / 1.6 */
export const SHANK_ON_STEEL: Cited & Readonly<Record<'hotRolled' | 'coldFormed', number>> = {
  hotRolled: 1.5,
  coldFormed: 1.375,
  source: 'NDS',
  where: 'Appendix I, I.2',
  seen: 'public copy',
};
