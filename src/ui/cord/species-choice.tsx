import { DRYING_AND_DECAY, type DecayClass } from '../../data/wood/drying-and-decay.ts';
import { DRY_WOOD, type DryWood } from '../../data/wood/dry-wood.ts';
import { diameterLostInDrying } from '../../engine/material/shrinkage.ts';
import { findSpecies } from '../../engine/material/species.ts';
import type { Log } from '../../engine/project/model.ts';
import { quantity } from '../../engine/units.ts';
import { YoursChoice, type Choice } from '../fields/choice.tsx';
import { useWorkbench } from '../state/use-workbench.ts';
import { showLength } from '../units/show-length.ts';
import { showQuantity } from '../units/show-quantity.ts';
import { lowerCase } from './letter-case.ts';

/** Where a woodsman looks for a species, by its genus. */
const FAMILIES: Readonly<Record<string, string>> = {
  Pseudotsuga: 'Douglas-firs and larches',
  Larix: 'Douglas-firs and larches',
  Pinus: 'pines',
  Abies: 'firs and hemlocks',
  Tsuga: 'firs and hemlocks',
  Picea: 'spruces',
};
const CEDARS = 'cedars, redwoods, cypress';

const familyOf = ({ name, scientificName }: DryWood): string =>
  FAMILIES[scientificName.split(' ')[0] ?? ''] ?? (findSpecies(name)?.kind === 'hardwood' ? 'hardwoods' : CEDARS);

/** Places and people keep their capital inside a sentence. */
const PROPER = /^(Atlantic|Douglas|Engelmann|Port-Orford|Sitka)/;

const inWords = (name: string): string => (PROPER.test(name) ? name : lowerCase(name));

const LISTED: readonly Choice[] = DRY_WOOD.map((species) => ({
  value: species.name,
  words: inWords(species.name),
  group: familyOf(species),
})).toSorted((a, b) => a.group.localeCompare(b.group) || a.words.localeCompare(b.words));

/** The species of a wood: every one of the table, by family. */
export function SpeciesChoice({ woodId, of }: { readonly woodId: string; readonly of: string }) {
  const species = useSpeciesName(woodId);
  const isListed = LISTED.some(({ value }) => value === species);
  const choices = isListed
    ? LISTED
    : [{ value: species, words: inWords(species), group: 'not in the table' }, ...LISTED];
  return <YoursChoice path={`woods[${woodId}].species`} label={`${of}: species`} choices={choices} />;
}

const useSpeciesName = (woodId: string): string =>
  useWorkbench(({ project }) => project?.woods.find(({ id }) => id === woodId)?.species ?? '');

const DECAY: Readonly<Record<DecayClass, string>> = {
  exceptional: 'Its heartwood resists decay exceptionally well',
  resistant: 'Its heartwood resists decay well',
  moderate: 'Its heartwood resists decay moderately',
  slight: 'Its heartwood hardly resists decay',
};
/** Moisture that a log under an open roof comes to in a few years. */
const UNDER_ROOF_PCT = 15;

/** What the species does once it is built in: decay, and what drying takes and gives. */
export function SpeciesAside({ log }: { readonly log: Log }) {
  const species = findSpecies(useSpeciesName(log.woodId));
  const system = useWorkbench((state) => state.system);
  const dry = DRY_WOOD.find(({ name }) => name === species?.name);
  if (!species || !dry) return null;
  const known = DRYING_AND_DECAY.find((row) => row.species === species.name);
  const buttIn = log.stations[0]?.diameterIn ?? 0;
  const lost = known?.shrinkage && buttIn > 0 ? diameterLostInDrying(known.shrinkage, buttIn, UNDER_ROOF_PCT) : null;
  const stress = (psi: number): string => showQuantity(quantity(psi, 'psi'), system);
  return (
    <p className="aside">
      <i>{dry.scientificName}</i>. {known && `${DECAY[known.decay.heartwood]}; the sapwood of no species does. `}
      {lost !== null &&
        `Drying to ${UNDER_ROOF_PCT} % takes about ${showLength(lost, system, { nearest: 16, feetFrom: 'never' })} off the diameter of the butt. `}
      Its clear wood breaks in bending at {stress(species.green.bendingPsi)} green and {stress(dry.bendingPsi)} at 12 %
      moisture: every value derived here is of green wood and green size.
    </p>
  );
}
