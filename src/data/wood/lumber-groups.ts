import type { Seen, SourceKey } from '../sources.ts';

/** A name under which graded lumber is stamped, with the species of our tables that it holds. */
export interface LumberGroup {
  readonly name: string;
  /** specific gravity for fasteners, oven-dry basis */
  readonly specificGravity: number;
  readonly species: readonly string[];
  readonly source: SourceKey;
  readonly seen: Seen;
}

const group = (name: string, specificGravity: number, species: readonly string[]): LumberGroup => ({
  name,
  specificGravity,
  species,
  source: 'NDS_SUPPLEMENT',
  seen: 'memory',
});

/**
 * Which species a stamp's name holds is from memory, the gravities were seen. A species that stands in two groups by
 * country is taken as grown in the United States; with a Canadian stamp the group's own name is typed.
 * @source NDS_SUPPLEMENT Table 2.1 (species combinations); NDS Table 12.3.3A (specific gravity)
 */
export const LUMBER_GROUPS: readonly LumberGroup[] = [
  group('Douglas Fir-Larch', 0.5, [
    'Douglas-fir, Coast',
    'Douglas-fir, Interior West',
    'Douglas-fir, Interior North',
    'Western larch',
  ]),
  group('Douglas Fir-South', 0.46, ['Douglas-fir, Interior South']),
  group('Hem-Fir', 0.43, ['Western hemlock', 'Grand fir', 'White fir']),
  group('Spruce-Pine-Fir (South)', 0.36, [
    'Balsam fir',
    'Black spruce',
    'Engelmann spruce',
    'Jack pine',
    'Lodgepole pine',
    'Red pine',
    'Red spruce',
    'Sitka spruce',
    'White spruce',
  ]),
  group('Spruce-Pine-Fir', 0.42, [
    'Balsam fir',
    'Black spruce',
    'Engelmann spruce',
    'Jack pine',
    'Lodgepole pine',
    'Red spruce',
    'Subalpine fir',
    'White spruce',
  ]),
  group('Western Cedars', 0.36, ['Western redcedar', 'Incense-cedar', 'Port-Orford-cedar', 'Yellow-cedar']),
  group('Southern Pine', 0.55, ['Loblolly pine', 'Longleaf pine', 'Shortleaf pine', 'Slash pine']),
];
