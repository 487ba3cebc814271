import { clause } from '../../../data/sources.ts';
import type { TypedStick } from '../../geometry/shelter.ts';
import type { Combination } from '../../loads/combination.ts';
import { message } from '../../message.ts';
import { put, type Note } from '../../note.ts';
import { quantity } from '../../units.ts';
import type { CheckSite } from '../site-of-check.ts';
import type { RafterLoading, Segment } from './rafter-loading.ts';
import type { Influence } from './rafter-influence.ts';
import { stationsOf, worstIndex, type RafterResponse } from './rafter-responses.ts';
import { tellEffect } from './rafter-telling.ts';

/** A typed section is judged by moment against what its maker allows. */
export function typedRafterBendingSite(
  loading: RafterLoading,
  influence: Influence,
  stick: TypedStick,
  segment: Segment,
): CheckSite<RafterResponse> {
  const within = stationsOf(loading.run, segment);
  const worst = (r: RafterResponse): number => worstIndex(within, (i) => Math.abs(r.moments[i]!));
  return {
    ruleId: 'rafter.bending',
    memberId: loading.rafter.id,
    place: { kind: segment.kind, name: segment.name },
    unit: 'lb·in',
    purpose: 'strength',
    demand: (r, note) => {
      const told = { symbol: 'M', words: 'greatest moment', unit: 'lb·in', perLoadUnit: 'in2' } as const;
      if (note) tellEffect(loading, r, { ...told, of: influence.moments, at: worst(r) }, note);
      return Math.abs(r.moments[worst(r)]!);
    },
    capacity: (r, note) => typedCapacity('Fb S', stick.FbSIn3Psi, 'lb·in', r, note),
    worstAt: (r) => loading.run.stationsIn[worst(r)]!,
    reason: () => message('typedSection', { name: stick.name }),
  };
}

/** A maker's value with the load duration of the combination. */
export function typedCapacity(
  symbol: string,
  typed: number,
  unit: 'lb·in' | 'lb',
  { combination }: { readonly combination: Combination },
  note?: Note,
): number {
  const capacity = typed * combination.durationFactor;
  note?.({
    symbol: `${symbol}'`,
    words: 'what the maker allows, with the load duration',
    formula: `${symbol} × CD`,
    put: [put(symbol, typed, unit, 'typed'), put('CD', combination.durationFactor, '1', 'load duration factor')],
    result: quantity(capacity, unit),
    clause: clause('OWN', 'values as typed'),
  });
  return capacity;
}
