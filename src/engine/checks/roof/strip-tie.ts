import { clause } from '../../../data/sources.ts';
import type { Combination } from '../../loads/combination.ts';
import { mayHoldLevel } from '../../loads/rafter-reactions.ts';
import { put, type Note } from '../../note.ts';
import { jointKey } from '../../project/joint-capacity.ts';
import type { FrameLine } from '../../project/model.ts';
import { quantity } from '../../units.ts';
import { checkSource, plainSource, type CheckSource } from '../check-source.ts';
import { holderAt } from '../joints/holder.ts';
import { ratedSite } from '../joints/rated-site.ts';
import { togetherSite } from '../joints/together-site.ts';
import { refused, unasked, type RoofCheckContext } from './context.ts';
import { pushAlong } from './rafter-along.ts';
import type { AnalysedRafters, RafterChecks } from './rafter-checks.ts';
import { pullAt } from './rafter-ties.ts';

/** What one rafter hands on to the strip under it. */
interface RafterForce {
  readonly label: string;
  readonly pullLb: number;
  readonly levelLb: number;
  readonly alongLb: number;
}

/** The hardest rafter of each slope in one combination: at a ridge two of them hang on one place of the strip. */
interface OnStrip {
  readonly combination: Combination;
  readonly rafters: readonly RafterForce[];
}

/** One way in which rafters ask something of the strip under them. */
interface StripAsk {
  readonly ruleId: 'strip.tie' | 'strip.across' | 'strip.along';
  readonly part: 'pull' | 'across' | 'along';
  readonly symbol: string;
  readonly words: string;
  /** of one rafter, where directions are told together */
  readonly inShort: string;
  readonly of: (rafter: RafterForce) => number;
}

const PULL: StripAsk = {
  ruleId: 'strip.tie',
  part: 'pull',
  symbol: 'T',
  words: 'pull of the hardest pulling rafter on this line',
  inShort: 'pull of a rafter',
  of: (rafter) => rafter.pullLb,
};
const ACROSS: StripAsk = {
  ruleId: 'strip.across',
  part: 'across',
  symbol: 'H',
  words: 'level force of the hardest pushing rafter on this line',
  inShort: 'level force of that rafter',
  of: (rafter) => rafter.levelLb,
};
const ALONG: StripAsk = {
  ruleId: 'strip.along',
  part: 'along',
  symbol: 'L',
  words: 'push along the line of the rafter that pushes hardest that way',
  inShort: 'push of that rafter along the line',
  of: (rafter) => rafter.alongLb,
};

/**
 * Strip on its beam: what the hardest rafter hands on, combination by combination, against a rating for each place where
 * rafters lie. At a ridge that is the straight sum of both slopes, whichever way they push (own rule, safe side). The
 * strip's own weight is not counted against the pull (safe side).
 * @source ASCE7 2.4.1 (7-16)
 */
export function stripTieChecks(context: RoofCheckContext, rafters: RafterChecks): readonly CheckSource[] {
  return context.project.supportLines.flatMap((line): readonly CheckSource[] => {
    if (line.kind !== 'frame' || line.strip === null) return [];
    const onLine = rafters.analysed.filter((a) => a.loading.run.supportLines.includes(line.id));
    const holdsLevel = context.project.roofPlanes.some(
      (p) => p.onLines.includes(line.id) && mayHoldLevel(p.horizontalHeldBy, line.id),
    );
    const asks = holdsLevel ? [PULL, ACROSS, ALONG] : [PULL, ALONG];
    const wind = onLine.map((a) => a.loading.wind).find((w) => !w.ok);
    const problem = rafters.problem ?? (wind && !wind.ok ? refused(wind) : null);
    if (problem)
      return [
        plainSource(
          unasked(
            asks.map((ask) => ask.ruleId),
            line.id,
            problem,
          ),
        ),
      ];
    const measured = onLine.map((rafter) => ({ ...rafter, pushAlong: pushAlong(context, rafter.loading, line.id) }));
    return [
      ...asks.map((ask) => askedSource(context, line, measured, ask)),
      ...togetherSource(context, line, measured, asks),
    ];
  });
}

interface OnLine extends AnalysedRafters {
  readonly pushAlong: ReturnType<typeof pushAlong>;
}

const siteOn = (context: RoofCheckContext, line: FrameLine) =>
  ({
    memberId: line.id,
    place: { kind: 'whole', name: '' },
    holder: holderAt(context, 'stripBeam', jointKey('stripBeam', line.id)),
  }) as const;

function askedSource(
  context: RoofCheckContext,
  line: FrameLine,
  onLine: readonly OnLine[],
  ask: StripAsk,
): CheckSource {
  const { ruleId, part } = ask;
  return checkSource({
    responses: hardestOf(onLine, line.id, ask.of),
    sites: [ratedSite<OnStrip>({ ...siteOn(context, line), ruleId, part, force: handedOn(ask) })],
  });
}

function togetherSource(
  context: RoofCheckContext,
  line: FrameLine,
  onLine: readonly OnLine[],
  asks: readonly StripAsk[],
): readonly CheckSource[] {
  const site = togetherSite<OnStrip>({
    ...siteOn(context, line),
    ruleId: 'strip.together',
    parts: asks.map((ask) => ({ part: ask.part, force: handedOn({ ...ask, symbol: 'P', words: ask.inShort }) })),
  });
  if (!site) return [];
  const shares = (combination: Combination, rafter: RafterForce) => site.demand({ combination, rafters: [rafter] });
  const responses = hardestOf(onLine, line.id, (rafter, combination) => shares(combination, rafter));
  return [checkSource({ responses, sites: [site] })];
}

/** What the rafters of one place hand on to the strip, in one way [lb]. */
const handedOn =
  ({ symbol, words, of }: Pick<StripAsk, 'symbol' | 'words' | 'of'>) =>
  ({ rafters }: OnStrip, note?: Note): number => {
    const forceLb = rafters.reduce((sum, rafter) => sum + of(rafter), 0);
    const symbolOf = (i: number): string => (rafters.length > 1 ? `${symbol}${i + 1}` : symbol);
    note?.({
      symbol,
      words: `${words}, ${rafters.map(({ label }) => label).join(' and ')}`,
      formula: rafters.map((_, i) => symbolOf(i)).join(' + '),
      put: rafters.map((rafter, i) => put(symbolOf(i), of(rafter), 'lb', `as at the tie of ${rafter.label}`)),
      result: quantity(forceLb, 'lb'),
      clause: clause('ASCE7', '2.4.1'),
    });
    return forceLb;
  };

/** In every combination the hardest rafter of each slope on a line, by a measure of how hard. */
function hardestOf(
  onLine: readonly OnLine[],
  lineId: string,
  measure: (rafter: RafterForce, combination: Combination) => number,
): readonly OnStrip[] {
  const worst = new Map<string, { combination: Combination; bySlope: Map<1 | -1, RafterForce> }>();
  for (const { loading, responses, pushAlong: along } of onLine) {
    const { label, downY } = loading.rafter;
    const support = loading.run.supportLines.indexOf(lineId);
    for (const r of responses) {
      const { combination } = r;
      if (combination.purpose !== 'strength') continue;
      const found = worst.get(combination.id) ?? { combination, bySlope: new Map<1 | -1, RafterForce>() };
      worst.set(combination.id, found);
      const asked: RafterForce = {
        label,
        pullLb: pullAt(r, support),
        levelLb: r.level[support]!,
        alongLb: along(r),
      };
      const known = found.bySlope.get(downY);
      if (!known || measure(asked, combination) > measure(known, combination)) found.bySlope.set(downY, asked);
    }
  }
  return [...worst.values()].map(({ combination, bySlope }) => ({ combination, rafters: [...bySlope.values()] }));
}
