import type { Cited } from '../wood/cited.ts';

/** Wood over 19 % is wet; logs are built in green and dry under their roof. */
export type Moisture = 'wet' | 'dry';

/** How the fasteners of a joint stand, as far as drying wood can split between them. */
export type Arrangement = 'one' | 'oneRowAlongGrain' | 'rowsWithOwnPlates' | 'rows';

/**
 * Wet service factors of connections. `madeWet` is wood wet when put together and dry in use, `usedWet` wood wet in use.
 * Thick shanks are those of 1/4 in. and more; made wet they lose nothing when there is one, one row along the grain, or
 * a plate of its own on every row. Threads made wet and used dry lose nothing against pull. A nail loses hold when its
 * wood changes either way.
 * @source NDS Table 11.3.3 (2018)
 */
export const WET_CONNECTIONS: Cited & {
  readonly lateralThick: { readonly madeWet: number; readonly usedWet: number };
  readonly lateralThin: { readonly madeWet: number; readonly usedWet: number };
  readonly threadPulled: { readonly usedWet: number };
  readonly nailPulled: { readonly changes: number; readonly staysWet: number };
  readonly pullThrough: { readonly usedWet: number };
} = {
  lateralThick: { madeWet: 0.4, usedWet: 0.7 },
  lateralThin: { madeWet: 0.7, usedWet: 0.7 },
  threadPulled: { usedWet: 0.7 },
  nailPulled: { changes: 0.25, staysWet: 1 },
  pullThrough: { usedWet: 0.7 },
  source: 'NDS',
  where: 'Table 11.3.3',
  seen: 'memory',
};
