import type { LineResponse } from '../../frame/line-frame.ts';
import { SAME_PLACE_IN } from '../../frame/mesh-builder.ts';
import { bowAt, bowOfBeam } from '../../geometry/bow.ts';
import { put, type Note } from '../../note.ts';
import { clause } from '../../../data/sources.ts';
import { quantity } from '../../units.ts';
import type { CheckSite } from '../site-of-check.ts';
import { lastRemembered } from '../last-remembered.ts';
import type { LineCheckContext } from '../line-context.ts';
import { sagLimit } from '../wood/sag.ts';
import type { BeamStation, BeamStretch } from './beam-sections.ts';

/**
 * Sag of a beam against its own supports: between posts from the line that joins its seats, past the last post from the
 * seat. Up counts as well as down. A crown laid down hangs below that line before anything lies on it and is added between
 * posts; laid up it relieves, which is not counted (own rules, safe side).
 * @source IBC Table 1604.3 (roof without a ceiling); NDS 3.5.2 for creep; OWN for the crown
 */
export function sagSites(context: LineCheckContext, on: BeamStretch): readonly CheckSite<LineResponse>[] {
  const { mesh, layout } = context.frame;
  const first = on.stations[0]!;
  const last = on.stations[on.stations.length - 1]!;
  const length = on.stretch.toXIn - on.stretch.fromXIn;
  const seatAtStart = mesh.posts.some((p) => Math.abs(p.post.xIn - on.stretch.fromXIn) <= SAME_PLACE_IN);
  const seatAtEnd = mesh.posts.some((p) => Math.abs(p.post.xIn - on.stretch.toXIn) <= SAME_PLACE_IN);
  const isSpan = seatAtStart && seatAtEnd;
  const { upIn } = bowOfBeam(context.project, on.beam);
  const seat = seatAtStart ? first : last;
  /** how far a value at a station lies below the straight line between the seats, or below the one seat */
  const below = (t: number, atFirst: number, atLast: number, atSeat: number, here: number): number =>
    isSpan ? atFirst * (1 - t) + atLast * t - here : atSeat - here;
  const places = on.stations.map((station): SagPlace => {
    const t = (station.xIn - first.xIn) / (last.xIn - first.xIn || 1);
    const crownAt = ({ xIn }: BeamStation): number => bowAt(upIn, on.beam, xIn);
    const isCrowned = isSpan && upIn < 0;
    return {
      station,
      t,
      crownDownIn: isCrowned ? below(t, crownAt(first), crownAt(last), crownAt(seat), crownAt(station)) : 0,
    };
  });
  const moved = ({ station, t }: SagPlace, v: Float64Array): number =>
    below(t, v[first.move + 1]!, v[last.move + 1]!, v[seat.move + 1]!, v[station.move + 1]!);
  const sag = (place: SagPlace, v: Float64Array): number => {
    const movedIn = moved(place, v);
    return Math.max(Math.abs(movedIn), movedIn + place.crownDownIn);
  };
  const worst = lastRemembered(({ values }: LineResponse): SagPlace => {
    let found = places[0]!;
    let most = -Infinity;
    for (const place of places) {
      const m = sag(place, values);
      if (Number.isNaN(m)) return place;
      if (m > most) {
        most = m;
        found = place;
      }
    }
    return found;
  });
  const site = (ruleId: 'beam.sag' | 'beam.sagLongTerm', purpose: 'sag' | 'sagLongTerm'): CheckSite<LineResponse> => ({
    ruleId,
    memberId: on.beam.id,
    place: { kind: on.stretch.kind, name: on.stretch.name },
    unit: 'in',
    purpose,
    demand: (r, note) => {
      const place = worst(r);
      note?.({
        symbol: 'Δ',
        words: 'greatest sag from the supports',
        formula: 'sum of factor × case',
        put: layout
          .parts(r, place.station.move + 1)
          .map((p) => put(`${p.factor} ×`, -p.value, 'in', `${p.name}, downward move there`)),
        result: quantity(Math.abs(moved(place, r.values)), 'in'),
        clause: clause('MECHANICS', 'plane frame, first order'),
      });
      if (note) tellCrown(moved(place, r.values), place.crownDownIn, upIn, note);
      return sag(place, r.values);
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
    worstAt: (r) => worst(r).station.atIn,
    grows: { power: 4, diameterAt: (r) => worst(r).station.diameterIn },
  });
  return [site('beam.sag', 'sag'), site('beam.sagLongTerm', 'sagLongTerm')];
}

/** A station of the stretch, how far it lies along it, from 0 to 1, and how far a crown laid down hangs there. */
interface SagPlace {
  readonly station: BeamStation;
  readonly t: number;
  readonly crownDownIn: number;
}

/** What the crown of the log makes of the sag. */
function tellCrown(movedIn: number, crownDownIn: number, upIn: number, note: Note): void {
  if (upIn === 0) return;
  note({
    symbol: 'Δc',
    words: 'sag with the crown of the log',
    formula: 'max(abs(Δ), Δ + c)',
    put: [
      put('Δ', movedIn, 'in', 'sag from the supports, down +'),
      upIn > 0
        ? put('c', 0, 'in', 'the crown lies up: it relieves, which is not counted')
        : put('c', crownDownIn, 'in', 'how far the crown hangs below the line between the seats'),
    ],
    result: quantity(Math.max(Math.abs(movedIn), movedIn + crownDownIn), 'in'),
    clause: clause('OWN', 'a crown laid down counts as sag'),
  });
}
