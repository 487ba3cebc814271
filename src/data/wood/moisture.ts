import type { Cited } from './cited.ts';

/** Moisture of the living tree, percent of oven-dry weight. */
export interface GreenMoisture {
  readonly species: string;
  readonly parts: (Cited & { readonly heartwoodPct: number | null; readonly sapwoodPct: number | null }) | null;
  /** average over the whole stem; see WHOLE_TREE for its source */
  readonly wholeTreePct: number | null;
}

export const WHOLE_TREE: Cited = { source: 'TREE_WEIGHTS', where: 'species table', seen: 'public copy' };

type Parts = readonly [heartwood: number | null, sapwood: number | null] | null;

const row = (
  species: string,
  parts: Parts,
  wholeTreePct: number | null,
  seen: Cited['seen'] = 'public copy',
): GreenMoisture => ({
  species,
  parts: parts && {
    heartwoodPct: parts[0],
    sapwoodPct: parts[1],
    source: 'WOOD_HANDBOOK',
    where: 'Table 4-1',
    seen,
  },
  wholeTreePct,
});

/**
 * Green moisture by species: heartwood and sapwood, whole tree. The coast values of Douglas-fir stand in for two interior
 * types; both redwoods share the species' average, and all four Douglas-firs theirs.
 * @source WOOD_HANDBOOK Table 4-1 (heartwood, sapwood); TREE_WEIGHTS (whole tree)
 */
export const GREEN_MOISTURE: readonly GreenMoisture[] = [
  row('Western redcedar', [58, 249], 39.58),
  row('Northern white-cedar', null, 98.93),
  row('Port-Orford-cedar', [50, 98], null),
  row('Yellow-cedar', [32, 166], 71.71),
  row('Incense-cedar', [40, 213], 106.06),
  row('Atlantic white-cedar', null, null),
  row('Eastern redcedar', [33, null], 34.75),
  row('Redwood, old-growth', [86, 210], 122.58, 'memory'),
  row('Redwood, young-growth', null, 122.58),
  row('Baldcypress', [121, 171], 94.6),
  row('Douglas-fir, Coast', [37, 115], 35.33),
  row('Douglas-fir, Interior West', [37, 115], 35.33),
  row('Douglas-fir, Interior North', [37, 115], 35.33),
  row('Douglas-fir, Interior South', null, 35.33),
  row('Western larch', [54, 119], 60.25),
  row('Tamarack', [49, null], 53.71, 'memory'),
  row('Lodgepole pine', [41, 120], 64.47),
  row('Ponderosa pine', [40, 148], 89.79, 'memory'),
  row('Eastern white pine', null, 64.97),
  row('Red pine', [32, 134], 64.17, 'memory'),
  row('Jack pine', null, 100.32),
  row('Loblolly pine', [33, 110], 80.72),
  row('Shortleaf pine', [32, 122], 77.3, 'memory'),
  row('Longleaf pine', [31, 106], 63.22),
  row('Slash pine', null, 72.13),
  row('Western hemlock', [85, 170], 56.45),
  row('Eastern hemlock', [97, 119], 110.87),
  row('Grand fir', [91, 136], 106.06),
  row('White fir', [98, 160], 103.57),
  row('Engelmann spruce', [51, 173], 89.39),
  row('Sitka spruce', [41, 142], 60.24, 'memory'),
  row('White spruce', null, 51.59),
  row('Black spruce', [52, 113], 47.61, 'memory'),
  row('Yellow-poplar', [83, 106], 95),
  row('White oak', [64, 78], 68.27),
  row('Northern red oak', [80, 69], 83.14),
  row('Black locust', null, 40.83),
  row('Balsam fir', [88, 173], 118.55),
  row('Subalpine fir', null, 44.74),
  row('Red spruce', null, 47.27),
  row('Western white pine', null, 55.81),
];
