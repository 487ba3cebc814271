import type { Note } from '../../note.ts';
import type { CheckSite } from '../site-of-check.ts';
import { sagAfterYears, sagLimit, type SagKind } from '../wood/sag.ts';
import type { RafterLoading, Segment } from './rafter-loading.ts';
import { evenBrings, type Influence } from './rafter-influence.ts';
import { stationsOf, worstIndex, type RafterResponse } from './rafter-responses.ts';
import { tellEffect } from './rafter-telling.ts';
import { depthAt } from './rafter-stations.ts';

/**
 * Sag of one segment of a rafter square to its slope, from the line through its supports; up counts as well as down.
 * Live, snow and 0.42 of strength wind each alone, and creep of the dead load with live or snow.
 * @source IBC Table 1604.3 (roof without a ceiling); NDS 3.5.2 for creep
 */
export function rafterSagSites(
  loading: RafterLoading,
  influence: Influence,
  segment: Segment,
  kcr: number,
): readonly CheckSite<RafterResponse>[] {
  const { stick } = loading.rafter;
  const within = stationsOf(loading.run, segment);
  const worst = (r: RafterResponse): number => worstIndex(within, (i) => Math.abs(r.sags[i]!));
  const site = (
    ruleId: 'rafter.sag' | 'rafter.sagLongTerm',
    purpose: 'sag' | 'sagLongTerm',
  ): CheckSite<RafterResponse> => ({
    ruleId,
    memberId: loading.rafter.id,
    place: { kind: segment.kind, name: segment.name },
    unit: 'in',
    purpose,
    demand: (r, note) => {
      if (note) tellSag(loading, influence, r, worst(r), kcr, note);
      return Math.abs(r.sags[worst(r)]!);
    },
    capacity: (r, note) => sagLimit(segment.toIn - segment.fromIn, kindOf(r), segment.kind === 'overhang', note),
    worstAt: (r) => loading.run.stationsIn[worst(r)]!,
    ...(stick?.kind === 'round'
      ? {
          grows: {
            power: 4 as const,
            diameterAt: (r: RafterResponse) => depthAt(stick, loading.run.stationsIn[worst(r)]!),
          },
        }
      : {}),
  });
  return [site('rafter.sag', 'sag'), site('rafter.sagLongTerm', 'sagLongTerm')];
}

function kindOf({ combination }: RafterResponse): SagKind {
  if (combination.purpose === 'sagLongTerm') return 'longTerm';
  return combination.factors.some((f) => f.caseId.startsWith('roof-live')) ? 'live' : 'snowOrWind';
}

function tellSag(
  loading: RafterLoading,
  influence: Influence,
  r: RafterResponse,
  at: number,
  kcr: number,
  note: Note,
): void {
  const of = influence.sags;
  tellEffect(loading, r, { symbol: 'Δ', words: 'sag, down +', unit: 'in', perLoadUnit: 'in', of, at }, note);
  if (r.combination.purpose !== 'sagLongTerm') return;
  const dead = loading.dead.reduce((sum, d, part) => sum + d.heavy * evenBrings(of, part, at), 0);
  sagAfterYears(dead, r.sags[at]! - (kcr - 1) * dead, kcr, note);
}
