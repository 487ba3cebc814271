import type { Seen, SourceKey } from '../sources.ts';

/** Moisture of the living tree, percent of oven-dry weight. */
export interface GreenMoisture {
  readonly species: string;
  readonly parts: {
    readonly heartwoodPct: number | null;
    readonly sapwoodPct: number | null;
    readonly source: SourceKey;
    readonly table: string;
    readonly seen: Seen;
  } | null;
  /** average over the whole stem; see WHOLE_TREE for its source */
  readonly wholeTreePct: number | null;
}

export const WHOLE_TREE = { source: 'TREE_WEIGHTS', table: 'species table', seen: 'public copy' } as const;

/**
 * Green moisture by species. The coast values of Douglas-fir stand in for two interior types; both redwoods share the
 * species' average, and all four Douglas-firs theirs.
 * @source WOOD_HANDBOOK Table 4-1 (heartwood, sapwood); TREE_WEIGHTS (whole tree)
 */
export const GREEN_MOISTURE: readonly GreenMoisture[] = [
  {
    species: 'Western redcedar',
    parts: { heartwoodPct: 58, sapwoodPct: 249, source: 'WOOD_HANDBOOK', table: 'Table 4-1', seen: 'public copy' },
    wholeTreePct: 39.58,
  },
  { species: 'Northern white-cedar', parts: null, wholeTreePct: 98.93 },
  {
    species: 'Port-Orford-cedar',
    parts: { heartwoodPct: 50, sapwoodPct: 98, source: 'WOOD_HANDBOOK', table: 'Table 4-1', seen: 'public copy' },
    wholeTreePct: null,
  },
  {
    species: 'Yellow-cedar',
    parts: { heartwoodPct: 32, sapwoodPct: 166, source: 'WOOD_HANDBOOK', table: 'Table 4-1', seen: 'public copy' },
    wholeTreePct: 71.71,
  },
  {
    species: 'Incense-cedar',
    parts: { heartwoodPct: 40, sapwoodPct: 213, source: 'WOOD_HANDBOOK', table: 'Table 4-1', seen: 'public copy' },
    wholeTreePct: 106.06,
  },
  { species: 'Atlantic white-cedar', parts: null, wholeTreePct: null },
  {
    species: 'Eastern redcedar',
    parts: { heartwoodPct: 33, sapwoodPct: null, source: 'WOOD_HANDBOOK', table: 'Table 4-1', seen: 'public copy' },
    wholeTreePct: 34.75,
  },
  {
    species: 'Redwood, old-growth',
    parts: { heartwoodPct: 86, sapwoodPct: 210, source: 'WOOD_HANDBOOK', table: 'Table 4-1', seen: 'memory' },
    wholeTreePct: 122.58,
  },
  { species: 'Redwood, young-growth', parts: null, wholeTreePct: 122.58 },
  {
    species: 'Baldcypress',
    parts: { heartwoodPct: 121, sapwoodPct: 171, source: 'WOOD_HANDBOOK', table: 'Table 4-1', seen: 'public copy' },
    wholeTreePct: 94.6,
  },
  {
    species: 'Douglas-fir, Coast',
    parts: { heartwoodPct: 37, sapwoodPct: 115, source: 'WOOD_HANDBOOK', table: 'Table 4-1', seen: 'public copy' },
    wholeTreePct: 35.33,
  },
  {
    species: 'Douglas-fir, Interior West',
    parts: { heartwoodPct: 37, sapwoodPct: 115, source: 'WOOD_HANDBOOK', table: 'Table 4-1', seen: 'public copy' },
    wholeTreePct: 35.33,
  },
  {
    species: 'Douglas-fir, Interior North',
    parts: { heartwoodPct: 37, sapwoodPct: 115, source: 'WOOD_HANDBOOK', table: 'Table 4-1', seen: 'public copy' },
    wholeTreePct: 35.33,
  },
  { species: 'Douglas-fir, Interior South', parts: null, wholeTreePct: 35.33 },
  {
    species: 'Western larch',
    parts: { heartwoodPct: 54, sapwoodPct: 119, source: 'WOOD_HANDBOOK', table: 'Table 4-1', seen: 'public copy' },
    wholeTreePct: 60.25,
  },
  {
    species: 'Tamarack',
    parts: { heartwoodPct: 49, sapwoodPct: null, source: 'WOOD_HANDBOOK', table: 'Table 4-1', seen: 'memory' },
    wholeTreePct: 53.71,
  },
  {
    species: 'Lodgepole pine',
    parts: { heartwoodPct: 41, sapwoodPct: 120, source: 'WOOD_HANDBOOK', table: 'Table 4-1', seen: 'public copy' },
    wholeTreePct: 64.47,
  },
  {
    species: 'Ponderosa pine',
    parts: { heartwoodPct: 40, sapwoodPct: 148, source: 'WOOD_HANDBOOK', table: 'Table 4-1', seen: 'memory' },
    wholeTreePct: 89.79,
  },
  { species: 'Eastern white pine', parts: null, wholeTreePct: 64.97 },
  {
    species: 'Red pine',
    parts: { heartwoodPct: 32, sapwoodPct: 134, source: 'WOOD_HANDBOOK', table: 'Table 4-1', seen: 'memory' },
    wholeTreePct: 64.17,
  },
  { species: 'Jack pine', parts: null, wholeTreePct: 100.32 },
  {
    species: 'Loblolly pine',
    parts: { heartwoodPct: 33, sapwoodPct: 110, source: 'WOOD_HANDBOOK', table: 'Table 4-1', seen: 'public copy' },
    wholeTreePct: 80.72,
  },
  {
    species: 'Shortleaf pine',
    parts: { heartwoodPct: 32, sapwoodPct: 122, source: 'WOOD_HANDBOOK', table: 'Table 4-1', seen: 'memory' },
    wholeTreePct: 77.3,
  },
  {
    species: 'Longleaf pine',
    parts: { heartwoodPct: 31, sapwoodPct: 106, source: 'WOOD_HANDBOOK', table: 'Table 4-1', seen: 'public copy' },
    wholeTreePct: 63.22,
  },
  { species: 'Slash pine', parts: null, wholeTreePct: 72.13 },
  {
    species: 'Western hemlock',
    parts: { heartwoodPct: 85, sapwoodPct: 170, source: 'WOOD_HANDBOOK', table: 'Table 4-1', seen: 'public copy' },
    wholeTreePct: 56.45,
  },
  {
    species: 'Eastern hemlock',
    parts: { heartwoodPct: 97, sapwoodPct: 119, source: 'WOOD_HANDBOOK', table: 'Table 4-1', seen: 'public copy' },
    wholeTreePct: 110.87,
  },
  {
    species: 'Grand fir',
    parts: { heartwoodPct: 91, sapwoodPct: 136, source: 'WOOD_HANDBOOK', table: 'Table 4-1', seen: 'public copy' },
    wholeTreePct: 106.06,
  },
  {
    species: 'White fir',
    parts: { heartwoodPct: 98, sapwoodPct: 160, source: 'WOOD_HANDBOOK', table: 'Table 4-1', seen: 'public copy' },
    wholeTreePct: 103.57,
  },
  {
    species: 'Engelmann spruce',
    parts: { heartwoodPct: 51, sapwoodPct: 173, source: 'WOOD_HANDBOOK', table: 'Table 4-1', seen: 'public copy' },
    wholeTreePct: 89.39,
  },
  {
    species: 'Sitka spruce',
    parts: { heartwoodPct: 41, sapwoodPct: 142, source: 'WOOD_HANDBOOK', table: 'Table 4-1', seen: 'memory' },
    wholeTreePct: 60.24,
  },
  { species: 'White spruce', parts: null, wholeTreePct: 51.59 },
  {
    species: 'Black spruce',
    parts: { heartwoodPct: 52, sapwoodPct: 113, source: 'WOOD_HANDBOOK', table: 'Table 4-1', seen: 'memory' },
    wholeTreePct: 47.61,
  },
  {
    species: 'Yellow-poplar',
    parts: { heartwoodPct: 83, sapwoodPct: 106, source: 'WOOD_HANDBOOK', table: 'Table 4-1', seen: 'public copy' },
    wholeTreePct: 95.0,
  },
  {
    species: 'White oak',
    parts: { heartwoodPct: 64, sapwoodPct: 78, source: 'WOOD_HANDBOOK', table: 'Table 4-1', seen: 'public copy' },
    wholeTreePct: 68.27,
  },
  {
    species: 'Northern red oak',
    parts: { heartwoodPct: 80, sapwoodPct: 69, source: 'WOOD_HANDBOOK', table: 'Table 4-1', seen: 'public copy' },
    wholeTreePct: 83.14,
  },
  { species: 'Black locust', parts: null, wholeTreePct: 40.83 },
  {
    species: 'Balsam fir',
    parts: { heartwoodPct: 88, sapwoodPct: 173, source: 'WOOD_HANDBOOK', table: 'Table 4-1', seen: 'public copy' },
    wholeTreePct: 118.55,
  },
  { species: 'Subalpine fir', parts: null, wholeTreePct: 44.74 },
  { species: 'Red spruce', parts: null, wholeTreePct: 47.27 },
  { species: 'Western white pine', parts: null, wholeTreePct: 55.81 },
];
