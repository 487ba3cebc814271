import type { LineResponse } from '../../frame/line-frame.ts';
import { SAME_PLACE_IN } from '../../frame/line-mesh.ts';
import { put } from '../../note.ts';
import { clause } from '../../../data/sources.ts';
import { quantity } from '../../units.ts';
import type { CheckSite } from '../site-of-check.ts';
import type { LineCheckContext } from '../line-context.ts';
import { sagLimit } from '../wood/sag.ts';
import type { BeamStation, BeamStretch } from './beam-sections.ts';

/**
 * Sag of a beam against its own supports: between posts from the line that joins its seats, past the last post from the
 * seat. Up counts as well as down.
 * @source IBC Table 1604.3 (roof without a ceiling); NDS 3.5.2 for creep
 */
export function sagSites(context: LineCheckContext, on: BeamStretch): readonly CheckSite<LineResponse>[] {
  const { mesh, layout } = context.frame;
  const first = on.stations[0]!;
  const last = on.stations[on.stations.length - 1]!;
  const length = on.stretch.toXIn - on.stretch.fromXIn;
  const seatAtStart = mesh.posts.some((p) => Math.abs(p.post.xIn - on.stretch.fromXIn) <= SAME_PLACE_IN);
  const seatAtEnd = mesh.posts.some((p) => Math.abs(p.post.xIn - on.stretch.toXIn) <= SAME_PLACE_IN);
  const w = (s: BeamStation, v: Float64Array): number => v[s.move + 1]!;
  const sag = (s: BeamStation, v: Float64Array): number => {
    if (seatAtStart && seatAtEnd) {
      const t = (s.xIn - first.xIn) / (last.xIn - first.xIn || 1);
      return Math.abs(w(first, v) * (1 - t) + w(last, v) * t - w(s, v));
    }
    return Math.abs(w(seatAtStart ? first : last, v) - w(s, v));
  };
  const worst = ({ values }: LineResponse): BeamStation => {
    let found = first;
    let most = -Infinity;
    for (const s of on.stations) {
      const m = sag(s, values);
      if (Number.isNaN(m)) return s;
      if (m > most) {
        most = m;
        found = s;
      }
    }
    return found;
  };
  const site = (ruleId: 'beam.sag' | 'beam.sagLongTerm', purpose: 'sag' | 'sagLongTerm'): CheckSite<LineResponse> => ({
    ruleId,
    memberId: on.beam.id,
    place: { kind: on.stretch.kind, name: on.stretch.name },
    unit: 'in',
    purpose,
    demand: (r, note) => {
      const s = worst(r);
      note?.({
        symbol: 'Δ',
        words: 'greatest sag from the supports',
        formula: 'sum of factor × case',
        put: layout
          .parts(r, s.move + 1)
          .map((p) => put(`${p.factor} ×`, -p.value, 'in', `${p.name}, downward move there`)),
        result: quantity(sag(s, r.values), 'in'),
        clause: clause('MECHANICS', 'plane frame, first order'),
      });
      return sag(s, r.values);
    },
    capacity: (r, note) => {
      const live = r.combination.factors.some((f) => f.caseId.startsWith('roof-live'));
      return sagLimit(
        length,
        purpose === 'sagLongTerm' ? 'longTerm' : live ? 'live' : 'snowOrWind',
        on.stretch.kind === 'overhang',
        note,
      );
    },
    worstAt: (r) => worst(r).atIn,
    grows: { power: 4, diameterAt: (r) => worst(r).diameterIn },
  });
  return [site('beam.sag', 'sag'), site('beam.sagLongTerm', 'sagLongTerm')];
}
