import { clause, type ClauseRef } from '../sources.ts';
import { DRIFT, SLIDING, SNOW_LIMITS, UNBALANCED } from './snow.ts';

/** A place where the standard lets snow jump: between these more snow, a longer roof or a higher step never gives less. */
export interface SnowThreshold {
  readonly of: string;
  readonly at: number;
  readonly unit: 'deg' | 'psf' | 'ft' | 'in 12' | '1';
  readonly clause: ClauseRef;
}

const threshold = (of: string, at: number, unit: SnowThreshold['unit'], where: string): SnowThreshold => ({
  of,
  at,
  unit,
  clause: clause('ASCE7', where),
});

/** Every threshold of the snow on a roof, each once. */
export const SNOW_THRESHOLDS = {
  lowSlope: threshold('slope below which a least snow is asked', SNOW_LIMITS.lowSlopeBelowDeg, 'deg', '7.3.4'),
  rainOnSnow: threshold('ground snow up to which rain is added', SNOW_LIMITS.rainOnSnowGroundPsf, 'psf', '7.10'),
  driftGap: threshold('gap from which no drift comes over', DRIFT.gapFt, 'ft', '7.7.2'),
  driftGapPerStep: threshold('gap over step from which no drift comes over', DRIFT.gapPerStep, '1', '7.7.2'),
  slidingGap: threshold('gap from which no snow slides over', SLIDING.overFt, 'ft', '7.9'),
  slidingGapPerStep: threshold('gap over step from which no snow slides over', 1, '1', '7.9'),
  slipperySlides: threshold('rise above which a slippery roof sheds', SLIDING.slipperyAbovePer12, 'in 12', '7.9'),
  otherSlides: threshold('rise above which another roof sheds', SLIDING.otherAbovePer12, 'in 12', '7.9'),
  leastUnbalanced: threshold('rise from which a gable is unbalanced', UNBALANCED.leastRisePer12, 'in 12', '7.6.1'),
  greatestUnbalanced: threshold(
    'rise up to which a gable is unbalanced',
    UNBALANCED.greatestRisePer12,
    'in 12',
    '7.6.1',
  ),
  narrowGable: threshold('eave to ridge up to which a gable is narrow', UNBALANCED.narrowToFt, 'ft', '7.6.1'),
} as const satisfies Readonly<Record<string, SnowThreshold>>;
