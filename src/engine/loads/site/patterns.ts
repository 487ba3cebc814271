import { MisuseError } from '../../errors.ts';
import { message, type Message } from '../../message.ts';

/** One way of loading the segments (spans, and overhangs counted as spans) of a continuous member. */
export interface LoadPattern {
  /** stable and unique among the patterns of one kind of load */
  readonly id: string;
  readonly words: Message;
  /** per segment, in order */
  readonly factors: readonly number[];
}

/**
 * Partial snow on a continuous member: besides the full balanced load, which is not listed here.
 * Not for members that run from ridge to eave of a gable at 1/2 in 12 or steeper; a continuous member of a monoslope
 * needs it.
 * @param segments  spans and overhangs, each counted as a span
 * @returns patterns of 1 and 0.5 on the balanced snow; none for a single span
 * @throws MisuseError  if `segments` is not a whole number above zero
 * @source ASCE7 7.5.1 cases 1 to 3 (7-16): an end segment full; an end segment half; two neighbours full
 */
export function partialPatterns(segments: number): readonly LoadPattern[] {
  const n = wholeNumber(segments);
  if (n === 1) return [];
  const ends = [0, n - 1];
  return distinct([
    ...ends.map((end) => pattern(`endFull-${end + 1}`, message('snowEndFull', { segment: end + 1 }), n, 0.5, 1, [end])),
    ...ends.map((end) => pattern(`endHalf-${end + 1}`, message('snowEndHalf', { segment: end + 1 }), n, 1, 0.5, [end])),
    ...neighbours(n).map((i) =>
      pattern(`pairFull-${i + 1}`, message('snowPairFull', { segment: i + 1, next: i + 2 }), n, 0.5, 1, [i, i + 1]),
    ),
  ]);
}

/**
 * Reduced roof live load on a continuous member: on alternate or on two neighbouring segments, none elsewhere,
 * besides the full load, which is not listed here.
 * @param segments  spans and overhangs, each counted as a span
 * @returns patterns of 1 and 0; none for a single span
 * @throws MisuseError  if `segments` is not a whole number above zero
 * @source ASCE7 4.8.1 (7-16), from memory; needed where the load is reduced below 20 psf
 */
export function alternatePatterns(segments: number): readonly LoadPattern[] {
  const n = wholeNumber(segments);
  if (n === 1) return [];
  const every = (parity: number) => Array.from({ length: n }, (_, i) => i).filter((i) => i % 2 === parity);
  return distinct([
    pattern('odd', message('liveOddOnly'), n, 0, 1, every(0)),
    pattern('even', message('liveEvenOnly'), n, 0, 1, every(1)),
    ...neighbours(n).map((i) =>
      pattern(`pair-${i + 1}`, message('livePairOnly', { segment: i + 1, next: i + 2 }), n, 0, 1, [i, i + 1]),
    ),
  ]);
}

function wholeNumber(segments: number): number {
  if (!Number.isInteger(segments) || segments < 1) {
    throw new MisuseError('segments', segments, 'a whole number of segments, one or more');
  }
  return segments;
}

const neighbours = (n: number): readonly number[] => Array.from({ length: n - 1 }, (_, i) => i);

const pattern = (
  id: string,
  words: Message,
  n: number,
  elsewhere: number,
  there: number,
  where: readonly number[],
): LoadPattern => ({
  id,
  words,
  factors: Array.from({ length: n }, (_, i) => (where.includes(i) ? there : elsewhere)),
});

/** First of each; a pattern of full load everywhere is the balanced case and falls out too. */
function distinct(patterns: readonly LoadPattern[]): readonly LoadPattern[] {
  const met = new Set<string>();
  return patterns.filter(({ factors }) => {
    const key = factors.join();
    if (met.has(key) || factors.every((factor) => factor === 1)) return false;
    met.add(key);
    return true;
  });
}
