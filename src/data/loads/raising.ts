import type { Seen, SourceKey } from '../sources.ts';

/** Steps in which a shelter goes up; each is looked at with everything of it in place. */
export const STAGES = ['posts', 'beams', 'braces', 'rafters', 'roof'] as const;
export type StageId = (typeof STAGES)[number];

/** Angles of a temporary brace with the ground that are offered; the middle one is usual [deg]. Common practice. */
export const TEMPORARY_BRACE_ANGLES = [30, 45, 60] as const;
export const USUAL_BRACE_ANGLE = 45;

/** Where a temporary brace meets its post, as a share of the way from foot to seat. Common practice. */
export const TEMPORARY_BRACE_AT = 2 / 3;

/** Least level push on what stands while people work on it: one person who leans, or a share of the weight. */
export const LEAST_RAISING_PUSH = {
  personLb: 50,
  shareOfWeight: 0.02,
  source: 'ASCE37' satisfies SourceKey,
  seen: 'memory' satisfies Seen,
} as const;
