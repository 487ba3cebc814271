import { clause } from '../../../data/sources.ts';
import type { AtEnds } from '../../loads/rafter-run.ts';
import { put, type Note, type Put, type Step } from '../../note.ts';
import { quantity, type Unit } from '../../units.ts';
import type { RafterCase, RafterLoading } from './rafter-loading.ts';
import { evenBrings, sumOf, type Brings, type Influence } from './rafter-influence.ts';
import { shakenPush } from './rafter-shaken.ts';
import { deadShare, type RafterResponse } from './rafter-responses.ts';

/** An effect that is to be told: which, where, and in which unit one pound per inch brings it about. */
export interface ToldEffect {
  readonly symbol: string;
  readonly words: string;
  readonly unit: Unit;
  readonly perLoadUnit: Unit;
  readonly of: Brings;
  /** where wind comes down otherwise than plumb loads do, as at supports */
  readonly windOf?: Brings;
  readonly at: number;
  /** plumb loads bring nothing of it */
  readonly windOnly?: true;
}

/** Writes how an effect adds up from the loads on the parts of the run; it tells the numbers of `rafterResponses`. */
export function tellEffect(loading: RafterLoading, response: RafterResponse, effect: ToldEffect, note: Note): void {
  const { combination, plumbLoads, windLoads } = response;
  const { of, at, windOf = of } = effect;
  const others = sumOf(plumbLoads, of, at) + sumOf(windLoads, windOf, at);
  const terms = plumbLoads.flatMap((load, part): readonly Term[] => {
    const dead = deadShare(combination.dead, loading.dead[part]!, evenBrings(of, part, at), others);
    const plumb = termsOf({ part, kind: 'plumb', dead }, load, of, at);
    const wind = termsOf({ part, kind: 'wind', dead: 0 }, windLoads[part]!, windOf, at);
    if (effect.windOnly) return wind;
    return wind.every((w) => w.load === 0) ? plumb : [...plumb, ...wind];
  });
  note({
    symbol: effect.symbol,
    words: effect.words,
    formula: terms.map((t) => `${named('w', t)} × ${named('m', t)}`).join(' + '),
    put: terms.flatMap((t): readonly Put[] => [
      put(named('w', t), t.load, 'lb/in', `${t.kind === 'wind' ? 'wind' : 'load'} ${placeWords(t)}`, [
        loadStep(loading, response, t),
      ]),
      put(named('m', t), t.brings, effect.perLoadUnit, `brought here by 1 lb/in ${placeWords(t)}`),
    ]),
    result: quantity(
      terms.reduce((sum, t) => sum + t.load * t.brings, 0),
      effect.unit,
    ),
    clause: clause('MECHANICS', 'beam on its lines, loads square to the slope'),
  });
}

/** What a support holds, least or greatest over the ways in which the level part of the wind may be held. */
export function tellReaction(
  loading: RafterLoading,
  influence: Influence,
  response: RafterResponse,
  support: number,
  which: 'least' | 'greatest',
  note: Note,
): void {
  const way = (i: number): number => sumOf(response.windLoads, influence.wind[i]!, support);
  const ways = influence.wind.map((_, i) => i);
  const taken = ways.reduce((a, b) => ((which === 'least' ? way(b) < way(a) : way(b) > way(a)) ? b : a));
  const words = 'force that the support holds, down +';
  const told = { symbol: 'R', words, unit: 'lb', perLoadUnit: 'in', at: support } as const;
  tellEffect(loading, response, { ...told, of: influence.plumb, windOf: influence.wind[taken]! }, note);
}

/** What a support holds of the level part of the wind, in the way that asks most of it, or of an earthquake. */
export function tellLevel(
  loading: RafterLoading,
  influence: Influence,
  response: RafterResponse,
  support: number,
  note: Note,
): void {
  // wind and earthquake never act together
  if (shakenPush(loading.shaken, response.combination, note) > 0) return;
  const way = (of: Brings): number => Math.abs(sumOf(response.windLoads, of, support));
  const of = influence.level.reduce((a, b) => (way(b) > way(a) ? b : a));
  const words = 'level force that the support holds, toward the high side +';
  tellEffect(
    loading,
    response,
    { symbol: 'H', words, unit: 'lb', perLoadUnit: 'in', of, at: support, windOnly: true },
    note,
  );
}

interface Loaded {
  readonly part: number;
  readonly kind: 'plumb' | 'wind';
  readonly dead: number;
}

interface Term extends Loaded {
  /** the end at which the load counts, falling to nothing at the other; `both` where it is even */
  readonly end: keyof AtEnds | 'both';
  readonly load: number;
  readonly brings: number;
}

/** An even load is told in one term, a sloping one by its two ends. */
function termsOf(loaded: Loaded, { low, high }: AtEnds, of: Brings, at: number): readonly Term[] {
  const { part, dead } = loaded;
  if (low === high) return [{ ...loaded, end: 'both', load: low + dead, brings: evenBrings(of, part, at) }];
  return [
    { ...loaded, end: 'low', load: low + dead, brings: of[part]!.low[at]! },
    { ...loaded, end: 'high', load: high + dead, brings: of[part]!.high[at]! },
  ];
}

const END_MARK = { both: '', low: 'a', high: 'b' } as const;

const named = (letter: string, { part, kind, end }: Term): string =>
  `${letter}${part + 1}${END_MARK[end]}${kind === 'wind' ? "'" : ''}`;

const placeWords = ({ part, end }: Term): string =>
  end === 'both' ? `on part ${part + 1} of the run` : `at the ${end} end of part ${part + 1} of the run`;

function loadStep(loading: RafterLoading, { combination }: RafterResponse, term: Term): Step {
  const { run, rafter, surfacePsf } = loading;
  const { fromIn, toIn } = run.parts[term.part]!;
  const isWind = term.kind === 'wind';
  const end = term.end === 'high' ? 'high' : 'low';
  const acting = combination.factors.flatMap(({ caseId, factor }): readonly { factor: number; found: RafterCase }[] => {
    const found = loading.cases.find((c) => c.loadCase.id === caseId)!;
    return found.isWind === isWind ? [{ factor, found }] : [];
  });
  const products = acting.map((_, i) => `f${i + 1} × p${i + 1} × b × c / 144`);
  return {
    symbol: named('w', term),
    words: `square to the slope ${whereWords(term.end, fromIn, toIn)} from the eave`,
    formula: [...(isWind ? [] : ['wD']), ...products].join(' + '),
    put: [
      ...(isWind
        ? []
        : [
            put(
              'wD',
              term.dead,
              'lb/in',
              `dead load as it counts here; surface ${surfacePsf.heavy.toFixed(2)} psf heavy`,
            ),
          ]),
      put('b', rafter.tributaryWidthIn, 'in', 'width of roof it carries'),
      put(
        'c',
        isWind ? 1 : run.cos * run.cos,
        '1',
        isWind ? 'square to the slope already' : 'cosine of the slope, squared',
      ),
      ...acting.flatMap(({ factor, found }, i) => [
        put(`f${i + 1}`, factor, '1', `factor of ${found.loadCase.id}`),
        put(
          `p${i + 1}`,
          found.psf[term.part]![end],
          'psf',
          found.zones ? `${found.loadCase.id}, zone ${found.zones[term.part]}` : found.loadCase.id,
          found.steps(term.part, end),
        ),
      ]),
    ],
    result: quantity(term.load, 'lb/in'),
    clause: clause('ASCE7', '2.4.1'),
  };
}

const whereWords = (end: Term['end'], fromIn: number, toIn: number): string =>
  end === 'both'
    ? `from ${fromIn.toFixed(1)} to ${toIn.toFixed(1)} in.`
    : `at ${(end === 'low' ? fromIn : toIn).toFixed(1)} in.`;
