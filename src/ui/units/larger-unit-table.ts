import { create, unitDependencies } from 'mathjs';

/** Only the unit reader of the library is built: there is no evaluator here that a typed text could reach. */
const table = create(unitDependencies ?? {});

// one number, then unit names with powers and products: anything else is not even handed over
const NUMBER_AND_UNIT = /^[-+]?\d*\.?\d+\s*[A-Za-z][A-Za-z0-9 ^*/]{0,40}$/;

/** The text in the wanted unit; null when it is no quantity of that kind. */
export function readByLargerTable(text: string, wanted: string): number | null {
  if (!NUMBER_AND_UNIT.test(text.trim())) return null;
  try {
    const value = table.unit(text.trim()).toNumber(wanted);
    return Number.isFinite(value) ? value : null;
  } catch {
    return null; // no unit of that name, or it measures something else
  }
}
