/** Middle and slow end of a row of times [ms]. */
export interface Spread {
  readonly medianMs: number;
  readonly p95Ms: number;
  readonly count: number;
}

export function spreadOf(timesMs: readonly number[]): Spread {
  const sorted = [...timesMs].sort((a, b) => a - b);
  const at = (share: number): number => sorted[Math.min(sorted.length - 1, Math.floor(share * sorted.length))] ?? NaN;
  return { medianMs: at(0.5), p95Ms: at(0.95), count: sorted.length };
}
