import { ASSIGNED_GRAVITY } from '../../../data/fasteners/withdrawal.ts';
import { clause } from '../../../data/sources.ts';
import { positive } from '../../errors.ts';
import { cited, givenStep } from '../../material/citation.ts';
import { findLumberGroup } from '../../material/sawn-values.ts';
import { nameKey } from '../../material/species.ts';
import type { Note } from '../../note.ts';

/**
 * Specific gravity for fasteners of a log or a sawn stick: what the standard gives the group that holds its species, or
 * the species itself, else what its design values carry, which is the species on green volume.
 * @param species name as typed: a species or a group
 * @param otherwise gravity of the design values: green basis, or the lightest listed wood where the species is unknown
 * @returns G
 * @throws MisuseError if the gravity of the design values is not above zero
 * @source NDS Table 12.3.3A; WOOD_HANDBOOK Table 5-3b (green basis, which is lower: safe side)
 */
export function fastenerGravity(species: string, otherwise: number, note?: Note): number {
  const onGreenVolume = {
    G: positive('otherwise', otherwise),
    words: `${species} on green volume`,
    where: clause('WOOD_HANDBOOK', 'Table 5-3b'),
  };
  const { G, words, where } = ofSpecies(species) ?? ofGroup(species) ?? onGreenVolume;
  note?.(givenStep('G', `specific gravity for fasteners, ${words}`, G, '1', where));
  return G;
}

const ASSIGNED_BY_NAME = new Map(ASSIGNED_GRAVITY.map((row) => [nameKey(row.species), row]));

function ofSpecies(species: string) {
  const row = ASSIGNED_BY_NAME.get(nameKey(species));
  return row ? { G: row.specificGravity, words: row.species, where: cited(row.source, row.where, row.seen) } : null;
}

function ofGroup(species: string) {
  const group = findLumberGroup(species);
  return group
    ? { G: group.specificGravity, words: `${species} as ${group.name}`, where: clause('NDS', 'Table 12.3.3A') }
    : null;
}
