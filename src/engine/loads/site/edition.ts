import { COMPUTED_EDITION, EDITION_BY_CODE_YEAR } from '../../../data/loads/editions.ts';
import { message, type Message } from '../../message.ts';

const INTERNATIONAL = /\b(IBC|IRC|International (Building|Residential) Code)\b/i;
const YEAR = /\b20\d\d\b/;

/**
 * Load standard that an adopted code goes with, as far as its name says so: `2018 IBC`, `IRC 2021`.
 * @returns null where the name tells nothing
 * @source IBC chapter 35 of each edition (from memory)
 */
function editionOfCode(building: string): string | null {
  const year = INTERNATIONAL.test(building) ? YEAR.exec(building)?.[0] : undefined;
  return year === undefined ? null : (EDITION_BY_CODE_YEAR[year] ?? null);
}

/** What to say where the adopted code goes with another load standard than the one that is computed; null where not. */
export function codeOfAnotherEdition(building: string | null): Message | null {
  const edition = building === null ? null : editionOfCode(building);
  if (building === null || edition === null || edition === COMPUTED_EDITION) return null;
  return message('codeOfAnotherEdition', { building, edition, computed: COMPUTED_EDITION });
}
