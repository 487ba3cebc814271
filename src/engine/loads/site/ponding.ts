import type { Shelter } from '../../geometry/shelter.ts';

/** Below this rise a bay is susceptible to ponding [in per ft]. @source ASCE7 8.4 (7-16), from memory */
export const LEAST_DRAINING_RISE = 0.25;

/** True where some slope of the roof drains so slowly that water may gather on it and bend it further. */
export const mayPond = ({ planes }: Shelter): boolean => planes.some((p) => p.risePer12 < LEAST_DRAINING_RISE);
