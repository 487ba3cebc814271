import { clause } from '../../../data/sources.ts';
import { outside } from '../../check.ts';
import type { DesignValues } from '../../material/values.ts';
import type { LineResponse } from '../../frame/line-frame.ts';
import type { Note } from '../../note.ts';
import { put } from '../../note.ts';
import { quantity } from '../../units.ts';
import type { CheckSite } from '../site-of-check.ts';
import { forcePut, valuesIn, type LineCheckContext } from '../line-context.ts';
import { adjustedBending } from '../wood/bending.ts';
import { durationFactor } from '../wood/duration.ts';
import { roundStability, sawnStability } from './sawn-stability.ts';
import {
  cutIsStretched,
  greatestOf,
  stationPicker,
  hasStretchedCut,
  stretchedCuts,
  throughCut,
  type BeamStation,
  type BeamStretch,
} from './beam-sections.ts';

/** Net section of a cut that is stretched counts with twice the bending stress (own rule). */
export const STRETCHED_CUT = 2;

/**
 * Bending of a tapering beam, station by station; the worst section is a result, not an assumption.
 * The small thrust that braces put into the beam is added as pull at Fb / Ft, whichever way it acts (safe side).
 * @source NDS 3.3, 3.9.1; round sections with CL = 1 (3.3.3.1), sawn ones by 3.3.3
 */
export function beamBendingSite(context: LineCheckContext, on: BeamStretch): CheckSite<LineResponse> {
  const values = valuesIn(context, on.beam.id);
  const place = { kind: on.stretch.kind, name: on.stretch.name } as const;
  if (!values) return typedBendingSite(context, on);
  const pullShare = pullShareOf(values);
  const { kind, fromXIn, toXIn } = on.stretch;
  const stick = on.beam.stick;
  const through = throughCut(on);
  const stability = stick?.kind === 'sawn' ? sawnStability(stick, values, kind, toXIn - fromXIn) : roundStability;
  const worst = stationPicker(on.stations, (s) => ({
    at: s.moment,
    plus: bentBy(s, 1),
    minus: bentBy(s, -1),
    thrust: pullShare / s.section.areaIn2,
  }));
  return {
    ruleId: 'beam.bending',
    memberId: on.beam.id,
    place,
    unit: 'psi',
    purpose: 'strength',
    isByDuration: true,
    stops: (r) => {
      if (through) return through;
      return stability(r.combination.durationFactor).outside ? outside({ code: 'rollsOver', values: {} }) : null;
    },
    demand: (r, note) => {
      const s = worst(r);
      const total = stressAt(s, r.values, pullShare);
      if (note) tellStress(context, r, s, pullShare, total, note);
      return total;
    },
    capacity: (r, note) => {
      if (note) durationFactor(r.combination.duration, note);
      for (const step of note ? values.steps('Fb') : []) note?.(step);
      const CD = r.combination.durationFactor;
      return adjustedBending(values.FbPsi, CD, stability(CD, note).CL, 1, note);
    },
    worstAt: (r) => worst(r).atIn,
    reason: (r) => {
      const isSeatStretched = stretchedCuts(worst(r), r.values).some((cut) => cut.madeBy === 'seat');
      return isSeatStretched ? { code: 'seatTurnsTension', values: {} } : null;
    },
    grows: { power: 3, diameterAt: (r) => worst(r).diameterIn, cutAt: (r) => worst(r).cutIn },
  };
}

/** How much harsher a pull is than bending: Fb / Ft. */
export const pullShareOf = (values: DesignValues): number => values.FbPsi / values.FtPsi;

/** Bending stress at a station with the thrust along the beam counted as pull; a stretched cut counts twice [psi]. */
export function stressAt(s: BeamStation, v: Float64Array, pullShare: number): number {
  const bent = (stretchFactor(s, v) * Math.abs(v[s.moment]!)) / s.section.modulusIn3;
  return bent + (pullShare * Math.abs(v[s.axial]!)) / s.section.areaIn2;
}

/** Stress that a unit of sagging (1) or hogging (-1) moment makes, a cut that it stretches counted twice [psi]. */
const bentBy = (s: BeamStation, sign: 1 | -1): number =>
  (s.cuts.some((cut) => cutIsStretched(cut, sign)) ? STRETCHED_CUT : 1) / s.section.modulusIn3;

const stretchFactor = (s: BeamStation, values: Float64Array): number =>
  hasStretchedCut(s, values) ? STRETCHED_CUT : 1;

function tellStress(
  context: LineCheckContext,
  r: LineResponse,
  s: BeamStation,
  pullShare: number,
  total: number,
  note: Note,
): void {
  s.section.tell(note);
  const twice = stretchFactor(s, r.values);
  note({
    symbol: 'fb',
    words: 'bending stress, with the thrust along the beam',
    formula: 'k |M| / S + (Fb / Ft) |N| / A',
    put: [
      put('k', twice, '1', twice === 1 ? 'no stretched cut here' : 'net section of a stretched cut (own rule)'),
      forcePut(context, r, s.moment, 'M', 'lb·in', 'moment'),
      put('S', s.section.modulusIn3, 'in3', 'section modulus'),
      put('Fb / Ft', pullShare, '1', 'bending value over pull value'),
      forcePut(context, r, s.axial, 'N', 'lb', 'thrust along the beam'),
      put('A', s.section.areaIn2, 'in2', 'area'),
    ],
    result: quantity(total, 'psi'),
    clause: clause('NDS', '3.3, 3.9.1'),
  });
}

/** A section typed from its maker is judged by moment. */
function typedBendingSite(context: LineCheckContext, on: BeamStretch): CheckSite<LineResponse> {
  const stick = on.beam.stick;
  const limit = stick?.kind === 'typed' ? stick.FbSIn3Psi : NaN;
  const moment = (s: BeamStation, v: Float64Array): number => Math.abs(v[s.moment]!);
  const worst = greatestOf(on.stations, (s) => s.moment);
  return {
    ruleId: 'beam.bending',
    memberId: on.beam.id,
    place: { kind: on.stretch.kind, name: on.stretch.name },
    unit: 'lb·in',
    purpose: 'strength',
    isByDuration: true,
    demand: (r, note) => {
      const s = worst(r);
      note?.({
        symbol: 'M',
        words: 'greatest moment',
        formula: '|M|',
        put: [forcePut(context, r, s.moment, 'M', 'lb·in', 'moment')],
        result: quantity(moment(s, r.values), 'lb·in'),
        clause: clause('MECHANICS', 'plane frame, first order'),
      });
      return moment(s, r.values);
    },
    capacity: (r, note) => {
      const capacity = limit * r.combination.durationFactor;
      note?.({
        symbol: "M'",
        words: 'moment that the maker allows, with the load duration',
        formula: 'Fb S CD',
        put: [
          put('Fb S', limit, 'lb·in', 'typed'),
          put('CD', r.combination.durationFactor, '1', 'load duration factor'),
        ],
        result: quantity(capacity, 'lb·in'),
        clause: clause('OWN', 'values as typed'),
      });
      return capacity;
    },
    worstAt: (r) => worst(r).atIn,
    reason: () => ({ code: 'typedSection', values: { name: stick?.kind === 'typed' ? stick.name : '' } }),
  };
}
