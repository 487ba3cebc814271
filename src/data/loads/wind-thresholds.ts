import { clause, remembered, type ClauseRef } from '../sources.ts';
import { AREA_LIMITS } from './free-roof-components.ts';
import { FREE_ROOF_RANGE } from './free-roof-main.ts';
import { ROUND_FLOW_LIMIT } from './open-frame.ts';
import { HILL_LIMITS } from './wind-topography.ts';
import { WALLED_ROOF } from './wind-walled.ts';

/** A place where the standard lets wind jump: between these more wind never gives less. */
export interface WindThreshold {
  readonly of: string;
  readonly at: number;
  readonly unit: 'deg' | 'ft sqrt(psf)' | '1';
  readonly clause: ClauseRef;
}

const threshold = (
  of: string,
  at: number,
  unit: WindThreshold['unit'],
  where: string,
  by: typeof clause | typeof remembered = clause,
): WindThreshold => ({ of, at, unit, clause: by('ASCE7', where) });

/** Every threshold of the wind on a roof, each once. */
export const WIND_THRESHOLDS = {
  flatRow: threshold(
    'slope below which the flat row serves',
    FREE_ROOF_RANGE.interpolatedFromDeg,
    'deg',
    'Fig. 27.3-4',
  ),
  figureEnds: threshold('slope up to which there are figures', FREE_ROOF_RANGE.greatestSlopeDeg, 'deg', 'Fig. 27.3-4'),
  bandsSlope: threshold(
    'slope below which bands serve across',
    FREE_ROOF_RANGE.bandsAcrossBelowDeg,
    'deg',
    'Fig. 27.3-4',
  ),
  bandsHeight: threshold('h/L below which they do', FREE_ROOF_RANGE.leastHeightOverLength, '1', 'Fig. 27.3-4'),
  clearFlow: threshold(
    'blocked share up to which flow is clear',
    FREE_ROOF_RANGE.clearBlockedAtMost,
    '1',
    'Fig. 27.3-4',
  ),
  smallArea: threshold('area of the smallest class, in a2', AREA_LIMITS.small, '1', 'Fig. 30.7-1', remembered),
  middleArea: threshold('area of the middle class, in a2', AREA_LIMITS.middle, '1', 'Fig. 30.7-1', remembered),
  roundFlow: threshold(
    'D sqrt(q) up to which a round part drags more',
    ROUND_FLOW_LIMIT,
    'ft sqrt(psf)',
    'Table 29.4-2',
  ),
  walledSlope: threshold(
    'slope from which a walled roof has halves',
    WALLED_ROOF.slopeFigureFromDeg,
    'deg',
    'Fig. 27.3-1',
  ),
  hill: threshold('steepness from which a hill counts', HILL_LIMITS.leastSteepness, '1', '26.8.1', remembered),
} as const satisfies Readonly<Record<string, WindThreshold>>;
