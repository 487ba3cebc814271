import { CLEAR_WOOD, type ClearWoodSpecies } from '../../data/wood/species.ts';

/** The words of a name in any order: 'coast Douglas fir' and 'Douglas-fir, Coast' are one species. */
export const nameKey = (name: string): string =>
  name
    .toLowerCase()
    .split(/[^a-z]+/)
    .filter((word) => word !== '')
    .sort()
    .join(' ');

const BY_NAME: ReadonlyMap<string, ClearWoodSpecies> = new Map(
  CLEAR_WOOD.map((species) => [nameKey(species.name), species]),
);

/** The species of the clear-wood table by its common name, spelling of capitals and hyphens aside; null: not listed. */
export const findSpecies = (name: string): ClearWoodSpecies | null => BY_NAME.get(nameKey(name)) ?? null;
