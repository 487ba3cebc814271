import type { Cited } from './cited.ts';

// What a species does once it is built in: no strength follows from it, so it comes with the sentences about a log.

/** From green to oven-dry, per cent of the green size. */
export interface Shrinkage extends Cited {
  /** across the rings: along a radius */
  readonly radialPct: number;
  /** along the rings: what opens drying checks */
  readonly tangentialPct: number;
  readonly volumePct: number;
}

/** Of heartwood only: the sapwood of no species lasts outdoors. */
export type DecayClass = 'exceptional' | 'resistant' | 'moderate' | 'slight';

export interface DryingAndDecay {
  readonly species: string;
  /** null where the table has no row */
  readonly shrinkage: Shrinkage | null;
  readonly decay: Cited & { readonly heartwood: DecayClass };
}

const shrinkage =
  (seen: Cited['seen']) =>
  (radialPct: number, tangentialPct: number, volumePct: number): Shrinkage => ({
    radialPct,
    tangentialPct,
    volumePct,
    source: 'WOOD_HANDBOOK',
    where: 'Table 4-3',
    seen,
  });
const seen = shrinkage('public copy');
const fromMemory = shrinkage('memory');

const row = (
  species: string,
  shrinks: Shrinkage | null,
  heartwood: DecayClass,
  how: 'public copy' | 'memory' = 'public copy',
): DryingAndDecay => ({
  species,
  shrinkage: shrinks,
  decay:
    how === 'memory'
      ? { heartwood, source: 'WOOD_HANDBOOK_2010', where: 'Table 14-1', seen: how }
      : { heartwood, source: 'MO312', where: 'Table 2-1', seen: how },
});

/**
 * Radial, tangential and volume shrinkage; decay resistance of the heartwood. Old growth lasts longer than second growth,
 * which is mostly sapwood: baldcypress, eastern white pine, longleaf and slash pine stand as second growth.
 * @source WOOD_HANDBOOK Table 4-3 (shrinkage; some rows from memory); MO312 Table 2-1 (decay)
 */
export const DRYING_AND_DECAY: readonly DryingAndDecay[] = [
  row('Western redcedar', seen(2.4, 5, 6.8), 'resistant'),
  row('Northern white-cedar', seen(2.2, 4.9, 7.2), 'resistant'),
  row('Port-Orford-cedar', seen(4.6, 6.9, 10.1), 'resistant'),
  row('Yellow-cedar', seen(2.8, 6, 9.2), 'resistant'),
  row('Incense-cedar', seen(3.3, 5.2, 7.7), 'resistant'),
  row('Atlantic white-cedar', seen(2.9, 5.4, 8.8), 'resistant'),
  row('Eastern redcedar', seen(3.1, 4.7, 7.8), 'resistant'),
  row('Redwood, old-growth', fromMemory(2.6, 4.4, 6.8), 'resistant'),
  row('Redwood, young-growth', fromMemory(2.2, 4.9, 7), 'moderate', 'memory'),
  row('Baldcypress', fromMemory(3.8, 6.2, 10.5), 'moderate'),
  row('Douglas-fir, Coast', seen(4.8, 7.6, 12.4), 'moderate'),
  row('Douglas-fir, Interior West', seen(4.8, 7.5, 11.8), 'moderate'),
  row('Douglas-fir, Interior North', seen(3.8, 6.9, 10.7), 'moderate'),
  row('Douglas-fir, Interior South', null, 'moderate'),
  row('Western larch', seen(4.5, 9.1, 14), 'moderate'),
  row('Tamarack', fromMemory(3.7, 7.4, 13.6), 'moderate'),
  row('Lodgepole pine', seen(4.3, 6.7, 11.1), 'slight'),
  row('Ponderosa pine', fromMemory(3.9, 6.2, 9.7), 'slight'),
  row('Eastern white pine', fromMemory(2.1, 6.1, 8.2), 'moderate'),
  row('Red pine', fromMemory(3.8, 7.2, 11.3), 'slight'),
  row('Jack pine', seen(3.7, 6.6, 10.3), 'slight'),
  row('Loblolly pine', seen(4.8, 7.4, 12.3), 'slight'),
  row('Shortleaf pine', seen(4.6, 7.7, 12.3), 'slight'),
  row('Longleaf pine', seen(5.1, 7.5, 12.2), 'moderate'),
  row('Slash pine', seen(5.4, 7.6, 12.1), 'moderate'),
  row('Western hemlock', seen(4.2, 7.8, 12.4), 'slight'),
  row('Eastern hemlock', seen(3, 6.8, 9.7), 'slight'),
  row('Grand fir', seen(3.4, 7.5, 11), 'slight', 'memory'),
  row('White fir', seen(3.3, 7, 9.8), 'slight', 'memory'),
  row('Engelmann spruce', seen(3.8, 7.1, 11), 'slight'),
  row('Sitka spruce', fromMemory(4.3, 7.5, 11.5), 'slight'),
  row('White spruce', null, 'slight'),
  row('Black spruce', fromMemory(4.1, 6.8, 11.3), 'slight'),
  row('Yellow-poplar', seen(4.6, 8.2, 12.7), 'slight'),
  row('White oak', seen(5.6, 10.5, 16.3), 'resistant'),
  row('Northern red oak', seen(4, 8.6, 13.7), 'slight'),
  row('Black locust', fromMemory(4.6, 7.2, 10.2), 'exceptional'),
];
