import { remembered } from '../../../data/sources.ts';
import { breaks } from '../../check.ts';
import type { LineResponse } from '../../frame/line-frame.ts';
import { SAME_PLACE_IN } from '../../frame/mesh-builder.ts';
import { clause } from '../../../data/sources.ts';
import type { SeatGeometry } from '../../geometry/shelter.ts';
import { put } from '../../note.ts';
import { quantity } from '../../units.ts';
import type { CheckSite } from '../site-of-check.ts';
import { forcePut, tellForce, valuesIn, type LineCheckContext } from '../line-context.ts';
import { durationFactor } from '../wood/duration.ts';
import { adjustedShear, rectangularEndNotchShear, roundEndNotchShear } from '../wood/shear.ts';
import { greatestOf, throughCut, type BeamStation, type BeamStretch } from './beam-sections.ts';

/**
 * Shear of a beam, station by station; 4 V / 3 A on a round section. Loads close to a support are not left out (safe side).
 * @source NDS 3.4.2; MECHANICS circle
 */
export function beamShearSite(context: LineCheckContext, on: BeamStretch): CheckSite<LineResponse> {
  const values = valuesIn(context, on.beam.id);
  const typed = on.beam.stick?.kind === 'typed' ? on.beam.stick : null;
  const measure = typed
    ? (s: BeamStation, v: Float64Array) => Math.abs(v[s.shear]!)
    : (s: BeamStation, v: Float64Array) => Math.abs(v[s.shear]!) / s.section.shearAreaIn2;
  const worst = greatestOf(
    on.stations,
    (s) => s.shear,
    (s) => (typed ? 1 : 1 / s.section.shearAreaIn2),
  );
  const unit = typed ? 'lb' : 'psi';
  const through = typed ? null : throughCut(on);
  return {
    ruleId: 'beam.shear',
    memberId: on.beam.id,
    place: { kind: on.stretch.kind, name: on.stretch.name },
    unit,
    purpose: 'strength',
    isByDuration: true,
    stops: () => through,
    demand: (r, note) => {
      const s = worst(r);
      note?.({
        symbol: typed ? 'V' : 'fv',
        words: typed ? 'greatest shear' : 'greatest shear stress',
        formula: typed ? '|V|' : '|V| / Av',
        put: [
          forcePut(context, r, s.shear, 'V', 'lb', 'shear'),
          ...(typed ? [] : [put('Av', s.section.shearAreaIn2, 'in2', 'shear area: 3/4 of a whole round section')]),
        ],
        result: quantity(measure(s, r.values), unit),
        clause: clause('NDS', '3.4.2'),
      });
      return measure(s, r.values);
    },
    capacity: (r, note) => {
      if (note) durationFactor(r.combination.duration, note);
      if (typed || !values) {
        const limit = (typed?.VallowLb ?? NaN) * r.combination.durationFactor;
        note?.({
          symbol: "V'",
          words: 'shear that the maker allows, with the load duration',
          formula: 'V CD',
          put: [
            put('V', typed?.VallowLb ?? NaN, 'lb', 'typed'),
            put('CD', r.combination.durationFactor, '1', 'load duration factor'),
          ],
          result: quantity(limit, 'lb'),
          clause: clause('OWN', 'values as typed'),
        });
        return limit;
      }
      for (const step of note ? values.steps('Fv') : []) note?.(step);
      return adjustedShear(values.FvPsi, r.combination.durationFactor, note);
    },
    worstAt: (r) => worst(r).atIn,
    grows: { power: 2, diameterAt: (r) => worst(r).diameterIn, cutAt: (r) => worst(r).cutIn },
  };
}

/** A seat counts as an end seat when less than one diameter of log goes on past its bearing (own rule). */
const isEndSeat = (seat: SeatGeometry): boolean => seat.toBeamEndIn <= seat.beamDiameterIn;

/** A cut close to the end of the log. */
export interface EndCut {
  /** stable, built from ids */
  readonly name: string;
  readonly xIn: number;
  /** how far to both sides of x its sections lie [in] */
  readonly reachIn: number;
  readonly depthIn: number;
  readonly diameterIn: number;
}

/** The seat of a post as a cut at the end of the log; null where the log goes on or nothing is cut. */
export const endSeatCut = (seat: SeatGeometry, postId: string): EndCut | null =>
  isEndSeat(seat) && seat.depthIn > 0
    ? { name: postId, xIn: seat.xIn, reachIn: SAME_PLACE_IN, depthIn: seat.depthIn, diameterIn: seat.beamDiameterIn }
    : null;

/**
 * Shear at a cut at the end of the log, judged as if it lay on the stretched side.
 * @source NDS 3.4.3.2 (from memory): V' = 2/3 Fv' An (dn/d)2
 */
export function endNotchSite(context: LineCheckContext, on: BeamStretch, cut: EndCut): CheckSite<LineResponse> | null {
  const values = valuesIn(context, on.beam.id);
  const stick = on.beam.stick;
  if (!values || !stick || stick.kind === 'typed') return null;
  const beside = on.stations.filter((s) => Math.abs(s.xIn - cut.xIn) <= cut.reachIn);
  if (beside.length === 0) return null;
  const worst = greatestOf(beside, (s) => s.shear);
  return {
    ruleId: 'beam.endNotch',
    memberId: on.beam.id,
    place: { kind: 'support', name: `${cut.name}@${on.stretch.name}` },
    unit: 'lb',
    clause: remembered('NDS', '3.4.3.2'),
    purpose: 'strength',
    isByDuration: true,
    stops: () =>
      cut.depthIn > cut.diameterIn / 4
        ? breaks({ code: 'cutTooDeep', values: { depthIn: cut.depthIn, limitIn: cut.diameterIn / 4 } })
        : null,
    demand: (r, note) => {
      const s = worst(r);
      if (note) tellForce(context, r, s.shear, 'V', 'lb', 'shear beside the cut', note);
      return Math.abs(r.values[s.shear]!);
    },
    capacity: (r, note) => {
      const Fv = adjustedShear(values.FvPsi, r.combination.durationFactor, note);
      return stick.kind === 'round'
        ? roundEndNotchShear(Fv, cut.diameterIn, cut.depthIn, note)
        : rectangularEndNotchShear(Fv, stick.breadthIn, stick.depthIn, cut.depthIn, note);
    },
    reason: () => (cut.depthIn > cut.diameterIn / 8 ? { code: 'endCutCaution', values: {} } : null),
  };
}
