/**
 * Units beyond our own tables (yards, rods, kilogram-force ...). The conversion library is large, so it is loaded after
 * first paint; until then, and off-line on a first visit, such a unit is simply not known.
 */
type Reader = (text: string, wanted: string) => number | null;

let reader: Reader | null = null;

export async function loadOtherUnits(): Promise<void> {
  reader ??= (await import('./larger-unit-table.ts')).readByLargerTable;
}

/** The text in the wanted unit; null when the larger table is not loaded or has no such quantity. */
export const readOtherUnit: Reader = (text, wanted) => reader?.(text, wanted) ?? null;
