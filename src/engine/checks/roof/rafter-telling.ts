import { clause } from '../../../data/sources.ts';
import { put, type Note, type Put, type Step } from '../../note.ts';
import { quantity, type Unit } from '../../units.ts';
import type { RafterCase, RafterLoading } from './rafter-loading.ts';
import { deadShare, sumOf, type Influence, type RafterResponse } from './rafter-responses.ts';

/** An effect that is to be told: which, where, and in which unit one pound per inch brings it about. */
export interface ToldEffect {
  readonly symbol: string;
  readonly words: string;
  readonly unit: Unit;
  readonly perLoadUnit: Unit;
  readonly of: readonly ArrayLike<number>[];
  /** where wind comes down otherwise than plumb loads do, as at supports */
  readonly windOf?: readonly ArrayLike<number>[];
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
    const dead = deadShare(combination.dead, loading.dead[part]!, of[part]![at]!, others);
    const plumb = { part, kind: 'plumb', dead, load: load + dead, brings: of[part]![at]! } as const;
    const wind = { part, kind: 'wind', dead: 0, load: windLoads[part]!, brings: windOf[part]![at]! } as const;
    if (effect.windOnly) return [wind];
    return wind.load === 0 ? [plumb] : [plumb, wind];
  });
  note({
    symbol: effect.symbol,
    words: effect.words,
    formula: terms.map((t) => `${named('w', t)} × ${named('m', t)}`).join(' + '),
    put: terms.flatMap((t): readonly Put[] => [
      put(named('w', t), t.load, 'lb/in', `${t.kind === 'wind' ? 'wind' : 'load'} on part ${t.part + 1} of the run`, [
        loadStep(loading, response, t),
      ]),
      put(named('m', t), t.brings, effect.perLoadUnit, `brought here by 1 lb/in on part ${t.part + 1}`),
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

/** What a support holds of the level part of the wind, in the way that asks most of it. */
export function tellLevel(
  loading: RafterLoading,
  influence: Influence,
  response: RafterResponse,
  support: number,
  note: Note,
): void {
  const way = (of: readonly ArrayLike<number>[]): number => Math.abs(sumOf(response.windLoads, of, support));
  const of = influence.level.reduce((a, b) => (way(b) > way(a) ? b : a));
  const words = 'level force that the support holds, toward the high side +';
  tellEffect(
    loading,
    response,
    { symbol: 'H', words, unit: 'lb', perLoadUnit: 'in', of, at: support, windOnly: true },
    note,
  );
}

interface Term {
  readonly part: number;
  readonly kind: 'plumb' | 'wind';
  readonly dead: number;
  readonly load: number;
  readonly brings: number;
}

const named = (letter: string, { part, kind }: Term): string => `${letter}${part + 1}${kind === 'wind' ? "'" : ''}`;

function loadStep(loading: RafterLoading, { combination }: RafterResponse, term: Term): Step {
  const { run, rafter, surfacePsf } = loading;
  const { fromIn, toIn } = run.parts[term.part]!;
  const isWind = term.kind === 'wind';
  const acting = combination.factors.flatMap(({ caseId, factor }): readonly { factor: number; found: RafterCase }[] => {
    const found = loading.cases.find((c) => c.loadCase.id === caseId)!;
    return found.isWind === isWind ? [{ factor, found }] : [];
  });
  const products = acting.map((_, i) => `f${i + 1} × p${i + 1} × b × c / 144`);
  return {
    symbol: named('w', term),
    words: `square to the slope from ${fromIn.toFixed(1)} to ${toIn.toFixed(1)} in. from the eave`,
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
        put(`p${i + 1}`, found.psf[term.part]!, 'psf', found.loadCase.id, found.steps()),
      ]),
    ],
    result: quantity(term.load, 'lb/in'),
    clause: clause('ASCE7', '2.4.1'),
  };
}
