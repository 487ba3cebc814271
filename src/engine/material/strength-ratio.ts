import { clause } from '../../data/sources.ts';
import { GRAIN_RATIOS, GREATEST_RATIOS, LOWEST_RATIOS } from '../../data/wood/strength-ratios.ts';
import { message, type Message } from '../message.ts';
import { put, stepsOf, type Note, type Step } from '../note.ts';
import type { Log, Seen } from '../project/model.ts';
import { inches, quantity } from '../units.ts';
import { cited, givenStep } from './citation.ts';
import type { Ratios } from './derived-values.ts';
import { knotBendingRatio, knotCompressionRatio } from './knots.ts';
import { diameterAtKnots } from './log-diameter.ts';

/** A knot wider than this share of the diameter is past the method (own rule). */
const WIDEST_KNOT_SHARE = 1 / 3;

export type StrengthRatioAnswer =
  | { readonly ok: true; readonly ratios: Ratios; readonly heldBackBy: Message }
  | { readonly ok: false; readonly reason: Message };

/** One thing that limits the log: what it leaves, how that came about, and how to say it. */
interface Limit {
  readonly bending: number;
  readonly compression: number;
  readonly bendingSteps: () => readonly Step[];
  readonly compressionSteps: () => readonly Step[];
  readonly says: Message;
}
type LimitAnswer = { readonly ok: true; readonly limit: Limit } | { readonly ok: false; readonly reason: Message };

/** True when knots or slope of grain of the log were not looked at, so that a stated lowest ratio stands in. */
export const logNotLookedAt = (log: Log): boolean => !areKnotsMeasured(log) || !isGrainRead(log);

/** Knots count as measured when those of the worst foot are listed, or none were found, and the wood diameter there is known. */
export const areKnotsMeasured = (log: Log): boolean =>
  log.seen !== null && knotGroups(log.seen).length > 0 && diameterAtKnots(log, undefined) !== null;

/** Only the widest knot was written down: how many others share its foot is not known. */
export const isFootUnlisted = ({ seen }: Log): boolean =>
  (seen?.worstKnotIn ?? 0) > 0 && (seen?.knotsInWorstFootIn ?? []).length === 0;

export const isGrainRead = (log: Log): boolean => (log.seen?.grainSlope1In ?? null) !== null;

/**
 * What knots and slope of grain leave of a log's strength, and which of them holds it back.
 * The least of both counts, never above what a graded pole is allowed.
 * @returns ratios with their steps; `ok: false` with the reason when the log is past the method
 * @source D245 Table 1 (slope of grain); own rule after D2899 (knots); D2899 grade factors (upper limits)
 * @limits  grain steeper than 1 in 6, a knot over a third of the diameter, knots that take everything: not answered
 */
export function strengthRatio(log: Log): StrengthRatioAnswer {
  const grain = grainLimit(log);
  if (!grain.ok) return grain;
  const knots = knotLimit(log);
  if (!knots.ok) return knots;
  const limits = [knots.limit, grain.limit, BEST_LOG];
  const bending = Math.min(...limits.map((limit) => limit.bending));
  const compression = Math.min(...limits.map((limit) => limit.compression));
  if (!(bending > 0) || !(compression > 0)) return { ok: false, reason: message('logKnotsTakeEverything') };
  const heldBackBy = logIsUnseen(log)
    ? message('logHeldByNotLookedAt')
    : (limits.find((limit) => limit.bending === bending) ?? BEST_LOG).says;
  return {
    ok: true,
    heldBackBy,
    ratios: {
      bending,
      compression,
      bendingSteps: () => leastOf(limits, 'bending', bending),
      compressionSteps: () => leastOf(limits, 'compression', compression),
    },
  };
}

const logIsUnseen = (log: Log): boolean => !areKnotsMeasured(log) && !isGrainRead(log);

const BEST_LOG: Limit = limitFrom(
  GREATEST_RATIOS.bending,
  GREATEST_RATIOS.compression,
  'SR_best',
  'best ratio that a looked-at log is given',
  clause('D2899', 'grade factors'),
  message('logHeldByBestRatio', { ratio: GREATEST_RATIOS.bending }),
);

const UNSEEN_CLAUSE = clause('OWN', 'not looked at: stated lowest strength ratio');

function grainLimit(log: Log): LimitAnswer {
  const oneIn = log.seen?.grainSlope1In ?? null;
  if (oneIn === null) {
    const words = 'slope of grain was not read: stated lowest ratio';
    const says = message('logHeldByGrainNotRead');
    return {
      ok: true,
      limit: limitFrom(LOWEST_RATIOS.bending, LOWEST_RATIOS.compression, 'SR_grain', words, UNSEEN_CLAUSE, says),
    };
  }
  const row = GRAIN_RATIOS.rows.findLast((candidate) => candidate.oneIn <= oneIn);
  if (!row) return { ok: false, reason: message('logGrainTooSteep', { oneIn }) };
  const words = `slope of grain 1 in ${oneIn}, row 1 in ${row.oneIn}`;
  const says = message('logHeldByGrain', { oneIn });
  return {
    ok: true,
    limit: limitFrom(
      row.bending,
      row.compression,
      'SR_grain',
      words,
      cited(GRAIN_RATIOS.source, GRAIN_RATIOS.where, GRAIN_RATIOS.seen),
      says,
    ),
  };
}

function limitFrom(
  bending: number,
  compression: number,
  symbol: string,
  words: string,
  where: Step['clause'],
  says: Message,
): Limit {
  return {
    bending,
    compression,
    bendingSteps: () => [givenStep(symbol, `${words} (bending)`, bending, '1', where)],
    compressionSteps: () => [givenStep(symbol, `${words} (compression)`, compression, '1', where)],
    says,
  };
}

/**
 * The knots of the worst foot, and the widest knot by itself when it sits elsewhere; a widest knot of zero with nothing
 * listed: none found. Without the list of the foot nothing is measured: the sum of its knots weakens the log.
 */
function knotGroups({ knotsInWorstFootIn: foot = [], worstKnotIn: worst }: Seen): readonly (readonly number[])[] {
  if (foot.length === 0) return worst === 0 ? [[]] : [];
  return worst !== null && worst > Math.max(...foot) ? [foot, [worst]] : [foot];
}

function knotLimit(log: Log): LimitAnswer {
  const groups = log.seen ? knotGroups(log.seen) : [];
  // the place belongs to one knot or one foot; with two groups it is unknown which, so the thinnest place counts
  const place = groups.length > 1 ? undefined : log.seen?.knotAtFromButtIn;
  const diameter = diameterAtKnots(log, place);
  const widest = Math.max(0, log.seen?.worstKnotIn ?? 0, ...groups.flat());
  if (diameter !== null && widest > diameter * WIDEST_KNOT_SHARE) {
    return { ok: false, reason: message('logKnotTooWide', { knotIn: widest, diameterIn: diameter }) };
  }
  if (groups.length === 0 || diameter === null) {
    const words = 'knots were not measured: stated lowest ratio';
    const says = message(isFootUnlisted(log) ? 'logHeldByFootUnlisted' : 'logHeldByKnotsNotMeasured');
    return {
      ok: true,
      limit: limitFrom(LOWEST_RATIOS.bending, LOWEST_RATIOS.compression, 'SR_knots', words, UNSEEN_CLAUSE, says),
    };
  }
  const d = inches(diameter);
  const bending = worstOf(groups, (group, note) => knotBendingRatio(group, d, note));
  const compression = worstOf(groups, (group, note) => knotCompressionRatio(group, d, note));
  return {
    ok: true,
    limit: {
      bending: bending.value,
      compression: compression.value,
      bendingSteps: bending.steps,
      compressionSteps: compression.steps,
      says: message('logHeldByKnots', { knotIn: widest, diameterIn: diameter }),
    },
  };
}

function worstOf(
  groups: readonly (readonly number[])[],
  ratioOf: (group: readonly number[], note?: Note) => number,
): { readonly value: number; readonly steps: () => readonly Step[] } {
  return groups
    .map((group) => ({ value: ratioOf(group), steps: () => stepsOf((note) => ratioOf(group, note)).steps }))
    .reduce((worst, next) => (next.value < worst.value ? next : worst));
}

function leastOf(limits: readonly Limit[], kind: 'bending' | 'compression', least: number): readonly Step[] {
  const from = limits.map((limit) => (kind === 'bending' ? limit.bendingSteps() : limit.compressionSteps()));
  const puts = limits.map((limit, i) => {
    const last = from[i]!.at(-1)!;
    return put(last.symbol, limit[kind], '1', last.words);
  });
  return [
    ...from.flat(),
    {
      symbol: kind === 'bending' ? 'SR_b' : 'SR_c',
      words: `strength ratio in ${kind}: the least`,
      formula: `min(${puts.map((p) => p.symbol).join(', ')})`,
      put: puts,
      result: quantity(least, '1'),
      clause: clause('OWN', 'least of knots, slope of grain and best ratio'),
    },
  ];
}
