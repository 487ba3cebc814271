import { clause } from '../../../data/sources.ts';
import type { Combination } from '../../loads/combination.ts';
import { mayHoldLevel } from '../../loads/rafter-reactions.ts';
import { put, type Note } from '../../note.ts';
import { capacityOf, jointKey } from '../../project/joint-capacity.ts';
import type { FrameLine } from '../../project/model.ts';
import { quantity } from '../../units.ts';
import { checkSource, plainSource, type CheckSource } from '../check-source.ts';
import { ratedSite } from '../joints/rated-site.ts';
import { togetherSite } from '../joints/together-site.ts';
import { refused, unasked, type RoofCheckContext } from './context.ts';
import { pullAt, type AnalysedRafters, type RafterChecks } from './rafter-checks.ts';
import type { RafterResponse } from './rafter-responses.ts';

/** One way in which rafters ask something of the strip under them. */
interface StripAsk {
  readonly ruleId: 'strip.tie' | 'strip.across';
  readonly part: 'pull' | 'across';
  readonly symbol: string;
  readonly words: string;
  readonly forceAt: (r: RafterResponse, support: number) => number;
}

const PULL: StripAsk = {
  ruleId: 'strip.tie',
  part: 'pull',
  symbol: 'T',
  words: 'pull of the hardest pulling rafter on this line',
  forceAt: pullAt,
};
const ACROSS: StripAsk = {
  ruleId: 'strip.across',
  part: 'across',
  symbol: 'H',
  words: 'level force of the hardest pushing rafter on this line',
  forceAt: (r, support) => r.level[support]!,
};

/**
 * Strip on its beam: what the hardest rafter hands on, combination by combination, against a rating for each rafter. The
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
    const asks = holdsLevel ? [PULL, ACROSS] : [PULL];
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
    return [
      ...asks.map((ask) => askedSource(context, line, onLine, ask)),
      ...(holdsLevel ? togetherSource(context, line, onLine) : []),
    ];
  });
}

interface LineForce {
  readonly combination: Combination;
  readonly forceLb: number;
  readonly rafterLabel: string;
}

function askedSource(
  context: RoofCheckContext,
  line: FrameLine,
  onLine: readonly AnalysedRafters[],
  { ruleId, part, symbol, words, forceAt }: StripAsk,
): CheckSource {
  return checkSource({
    responses: greatestForces(onLine, line.id, forceAt),
    sites: [
      ratedSite<LineForce>({
        ruleId,
        memberId: line.id,
        place: { kind: 'whole', name: '' },
        capacity: capacityOf(context.project, 'stripBeam', jointKey('stripBeam', line.id)),
        part,
        force: (r, note) => {
          note?.({
            symbol,
            words: `${words}, ${r.rafterLabel}`,
            formula: symbol,
            put: [put(symbol, r.forceLb, 'lb', 'as at the tie of that rafter')],
            result: quantity(r.forceLb, 'lb'),
            clause: clause('ASCE7', '2.4.1'),
          });
          return r.forceLb;
        },
      }),
    ],
  });
}

/** Pull and level force of the same rafter in the same combination. */
interface RafterAsk {
  readonly combination: Combination;
  readonly pullLb: number;
  readonly levelLb: number;
  readonly rafterLabel: string;
}

function togetherSource(
  context: RoofCheckContext,
  line: FrameLine,
  onLine: readonly AnalysedRafters[],
): readonly CheckSource[] {
  const handedOn =
    (words: string, of: (r: RafterAsk) => number) =>
    (r: RafterAsk, note?: Note): number => {
      note?.({
        symbol: 'P',
        words: `${words}, ${r.rafterLabel}`,
        formula: 'P',
        put: [put('P', of(r), 'lb', 'as at the tie of that rafter')],
        result: quantity(of(r), 'lb'),
        clause: clause('ASCE7', '2.4.1'),
      });
      return of(r);
    };
  const site = togetherSite<RafterAsk>({
    ruleId: 'strip.together',
    memberId: line.id,
    place: { kind: 'whole', name: '' },
    capacity: capacityOf(context.project, 'stripBeam', jointKey('stripBeam', line.id)),
    parts: [
      { part: 'pull', force: handedOn('pull of a rafter', (r) => r.pullLb) },
      { part: 'across', force: handedOn('level force of that rafter', (r) => r.levelLb) },
    ],
  });
  if (!site) return [];
  const worst = new Map<string, RafterAsk>();
  for (const { loading, responses } of onLine) {
    const support = loading.run.supportLines.indexOf(line.id);
    for (const r of responses) {
      const { combination } = r;
      if (combination.purpose !== 'strength') continue;
      const asked: RafterAsk = {
        combination,
        pullLb: pullAt(r, support),
        levelLb: r.level[support]!,
        rafterLabel: loading.rafter.label,
      };
      const known = worst.get(combination.id);
      if (!known || site.demand(asked) > site.demand(known)) worst.set(combination.id, asked);
    }
  }
  const responses = [...worst.values()];
  return [checkSource({ responses, sites: [site] })];
}

function greatestForces(
  rafters: readonly AnalysedRafters[],
  lineId: string,
  forceAt: StripAsk['forceAt'],
): readonly LineForce[] {
  const worst = new Map<string, LineForce>();
  for (const { loading, responses } of rafters) {
    const support = loading.run.supportLines.indexOf(lineId);
    for (const r of responses) {
      if (r.combination.purpose !== 'strength') continue;
      const known = worst.get(r.combination.id);
      const forceLb = forceAt(r, support);
      if (!known || forceLb > known.forceLb)
        worst.set(r.combination.id, { combination: r.combination, forceLb, rafterLabel: loading.rafter.label });
    }
  }
  return [...worst.values()];
}
