import type { RuleId } from '../../../data/rules.ts';
import { clause } from '../../../data/sources.ts';
import { outside } from '../../check.ts';
import type { LineResponse } from '../../frame/line-frame.ts';
import type { Stick } from '../../geometry/shelter.ts';
import type { DesignValues } from '../../material/values.ts';
import { message } from '../../message.ts';
import { put, type Note } from '../../note.ts';
import { quantity } from '../../units.ts';
import { beamStretches, throughCut, type BeamStation, type BeamStretch } from '../beam/beam-sections.ts';
import { pullShareOf, STRETCHED_CUT } from '../beam/bending.ts';
import { roundStability, sawnStability } from '../beam/sawn-stability.ts';
import { forcePut, valuesIn, type LineCheckContext } from '../line-context.ts';
import type { CheckSite } from '../site-of-check.ts';
import { adjustedBending } from '../wood/bending.ts';
import { durationFactor } from '../wood/duration.ts';
import { adjustedShear } from '../wood/shear.ts';
import { blownTie, type BlownTie } from './blown-along.ts';

type Solid = Exclude<Stick, { kind: 'typed' }>;

/** A stretch of a tie log that is pushed sideways. */
interface Sideways {
  readonly context: LineCheckContext;
  readonly on: BeamStretch;
  readonly stick: Solid;
  readonly values: DesignValues;
  readonly blown: BlownTie;
}

/**
 * Tie logs while the shelter is pushed along its lines: what weighs on them bends them down, the push to the side.
 * @source NDS 3.3, 3.9.1; MECHANICS two moments of a round section add as a vector, of a sawn one in its corner
 */
export const tieSidewaysSites = (context: LineCheckContext): readonly CheckSite<LineResponse>[] =>
  beamStretches(context).flatMap((on) => {
    const { stick } = on.beam;
    if (!stick) return [];
    const blown = blownTie(context, on.beam);
    const values = valuesIn(context, on.beam.id);
    if (stick.kind === 'typed' || !values) return [typedSite(on, blown)];
    const sideways = { context, on, stick, values, blown };
    return [bendingSite(sideways), shearSite(sideways)];
  });

const askedOf = (ruleId: RuleId, { beam, stretch }: BeamStretch, { pushIn }: BlownTie) =>
  ({
    ruleId,
    memberId: beam.id,
    place: { kind: stretch.kind, name: stretch.name },
    purpose: 'strength',
    isByDuration: true,
    applies: (r: LineResponse) => pushIn(r.combination) > 0,
  }) as const;

/** Its maker says how much it bears upright alone. */
const typedSite = (on: BeamStretch, blown: BlownTie): CheckSite<LineResponse> => ({
  ...askedOf('tie.sideways', on, blown),
  unit: 'lb·in',
  stops: () => outside(message('typedTieSideways')),
  demand: () => NaN,
  capacity: () => NaN,
});

function bendingSite({ context, on, stick, values, blown }: Sideways): CheckSite<LineResponse> {
  const pullShare = pullShareOf(values);
  const through = throughCut(on);
  const { kind, fromXIn, toXIn } = on.stretch;
  const stability = stick.kind === 'sawn' ? sawnStability(stick, values, kind, toXIn - fromXIn) : roundStability;
  /** A cut is stretched by one of the two moments, whichever side it is on. */
  const timesOf = (s: BeamStation): number => (s.cuts.length > 0 ? STRETCHED_CUT : 1);
  const stressAt = (s: BeamStation, r: LineResponse): number => {
    const [up, side] = [Math.abs(r.values[s.moment]!), blown.pushIn(r.combination) * blown.momentAt(s.atIn)];
    const S = s.section.modulusIn3;
    const bent = stick.kind === 'round' ? Math.hypot(up, side) / S : up / S + side / sideModulus(stick, s);
    return timesOf(s) * bent + (pullShare * Math.abs(r.values[s.axial]!)) / s.section.areaIn2;
  };
  const worst = worstOf(on.stations, stressAt);
  return {
    ...askedOf('tie.sideways', on, blown),
    unit: 'psi',
    stops: (r) => {
      if (through) return through;
      return stability(r.combination.durationFactor).outside ? outside(message('rollsOver')) : null;
    },
    demand: (r, note) => {
      const s = worst(r);
      const fb = stressAt(s, r);
      if (!note) return fb;
      const side = tellSide('moment', blown.pushIn(r.combination, note), blown.momentAt(s.atIn), note);
      s.section.tell(note);
      note({
        symbol: 'fb',
        words: 'bending stress of both moments, with the force along the log',
        formula:
          stick.kind === 'round'
            ? 'k × sqrt(M^2 + Mh^2) / S + (Fb / Ft) × abs(N) / A'
            : 'k × (abs(M) / S + Mh / Sh) + (Fb / Ft) × abs(N) / A',
        put: [
          put('k', timesOf(s), '1', timesOf(s) === 1 ? 'no cut here' : 'net section of a cut (own rule)'),
          forcePut(context, r, s.moment, 'M', 'lb·in', 'moment'),
          put('Mh', side, 'lb·in', 'moment to the side'),
          put('S', s.section.modulusIn3, 'in3', 'section modulus'),
          ...(stick.kind === 'round' ? [] : [put('Sh', sideModulus(stick, s), 'in3', 'section modulus to the side')]),
          put('Fb / Ft', pullShare, '1', 'bending value over pull value'),
          forcePut(context, r, s.axial, 'N', 'lb', 'force along the log'),
          put('A', s.section.areaIn2, 'in2', 'area'),
        ],
        result: quantity(fb, 'psi'),
        clause: clause('NDS', '3.3, 3.9.1'),
      });
      return fb;
    },
    capacity: (r, note) => {
      if (note) durationFactor(r.combination.duration, note);
      for (const step of note ? values.steps('Fb') : []) note?.(step);
      const CD = r.combination.durationFactor;
      return adjustedBending(values.FbPsi, CD, stability(CD, note).CL, 1, note);
    },
    worstAt: (r) => worst(r).atIn,
  };
}

/** Of what cuts leave of a sawn stick, bent over its broad sides [in3]. */
const sideModulus = ({ breadthIn }: { readonly breadthIn: number }, s: BeamStation): number =>
  (s.section.areaIn2 * breadthIn) / 6;

function shearSite({ context, on, values, blown }: Sideways): CheckSite<LineResponse> {
  const stressAt = (s: BeamStation, r: LineResponse): number =>
    Math.hypot(r.values[s.shear]!, blown.pushIn(r.combination) * blown.shearAt(s.atIn)) / s.section.shearAreaIn2;
  const worst = worstOf(on.stations, stressAt);
  const through = throughCut(on);
  return {
    ...askedOf('tie.sidewaysShear', on, blown),
    unit: 'psi',
    stops: () => through,
    demand: (r, note) => {
      const s = worst(r);
      const fv = stressAt(s, r);
      if (!note) return fv;
      const side = tellSide('shear', blown.pushIn(r.combination, note), blown.shearAt(s.atIn), note);
      note({
        symbol: 'fv',
        words: 'greatest shear stress of both forces',
        formula: 'sqrt(V^2 + Vh^2) / Av',
        put: [
          forcePut(context, r, s.shear, 'V', 'lb', 'shear'),
          put('Vh', side, 'lb', 'shear to the side'),
          put('Av', s.section.shearAreaIn2, 'in2', 'shear area: 3/4 of a whole round section'),
        ],
        result: quantity(fv, 'psi'),
        clause: clause('NDS', '3.4.2'),
      });
      return fv;
    },
    capacity: (r, note) => {
      if (note) durationFactor(r.combination.duration, note);
      for (const step of note ? values.steps('Fv') : []) note?.(step);
      return adjustedShear(values.FvPsi, r.combination.durationFactor, note);
    },
    worstAt: (r) => worst(r).atIn,
  };
}

const worstOf =
  (stations: readonly BeamStation[], stressAt: (s: BeamStation, r: LineResponse) => number) =>
  (r: LineResponse): BeamStation =>
    stations.reduce((a, b) => (stressAt(b, r) > stressAt(a, r) ? b : a), stations[0]!);

const TO_THE_SIDE = {
  moment: { symbol: 'Mh', each: 'm1', eachUnit: 'in2', unit: 'lb·in', words: 'moment to the side' },
  shear: { symbol: 'Vh', each: 'v1', eachUnit: 'in', unit: 'lb', words: 'shear to the side' },
} as const;

/** What the push on each inch makes of the tie as a beam on its two posts. */
function tellSide(which: keyof typeof TO_THE_SIDE, p: number, perPound: number, note: Note): number {
  const { symbol, each, eachUnit, unit, words } = TO_THE_SIDE[which];
  const side = p * perPound;
  note({
    symbol,
    words: `${words}, as a beam on its two posts`,
    formula: `p × ${each}`,
    put: [
      put('p', p, 'lb/in', 'push along the lines on each inch of the tie log'),
      put(each, perPound, eachUnit, 'the same for one pound on each inch'),
    ],
    result: quantity(side, unit),
    clause: clause('MECHANICS', 'beam on two supports'),
  });
  return side;
}
