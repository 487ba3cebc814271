import { clause, remembered } from '../../../data/sources.ts';
import type { LineResponse } from '../../frame/line-frame.ts';
import { bowOfBeam, type Bow } from '../../geometry/bow.ts';
import { put } from '../../note.ts';
import { quantity } from '../../units.ts';
import { lastRemembered } from '../last-remembered.ts';
import { forcePut, valuesIn, type LineCheckContext } from '../line-context.ts';
import type { CheckSite } from '../site-of-check.ts';
import { durationFactor } from '../wood/duration.ts';
import { adjustedShear } from '../wood/shear.ts';
import { throughCut, type BeamStation, type BeamStretch } from './beam-sections.ts';
import { twistOf } from './twist.ts';

/**
 * Wood begins to yield under twisting at two thirds of its shear strength along the grain: that stress counts one and a
 * half times. @source WOOD_HANDBOOK_2010 chapter 5, torsion strength, from memory
 */
const TWIST_COUNTS = 1.5;

/**
 * Shear of a log beam that bows to the side, with what the bow twists it: the greater of what goes to both ends of the
 * stretch, at every section of it (safe side), on the circle that the wood left there holds.
 * @source NDS 3.4.2; MECHANICS shaft of circular section; OWN for adding the two
 */
export function twistShearSites(context: LineCheckContext, on: BeamStretch): readonly CheckSite<LineResponse>[] {
  const values = valuesIn(context, on.beam.id);
  const twisting = twistOn(context, on);
  if (!values || !twisting) return [];
  const { bow } = twisting;
  const twistIn = lastRemembered((r: LineResponse) => twisting.twist(r.values));
  const through = throughCut(on);
  const shaftsIn3 = on.stations.map(shaftOf);
  const worst = (r: LineResponse): BeamStation => {
    const T = twistIn(r);
    let found = 0;
    let most = -Infinity;
    for (let i = 0; i < shaftsIn3.length; i++) {
      const m = twistedShear(on.stations[i]!, T, r.values, shaftsIn3[i]);
      if (Number.isNaN(m)) return on.stations[i]!;
      if (m > most) {
        most = m;
        found = i;
      }
    }
    return on.stations[found]!;
  };
  return [
    {
      ruleId: 'beam.twist',
      memberId: on.beam.id,
      place: { kind: on.stretch.kind, name: on.stretch.name },
      unit: 'psi',
      purpose: 'strength',
      isByDuration: true,
      stops: () => through,
      demand: (r, note) => {
        const s = worst(r);
        const T = twistIn(r);
        const shaftIn3 = shaftOf(s);
        note?.({
          symbol: 'τ',
          words: 'greatest twisting stress, on the circle that what is left of the log holds',
          formula: '16 × T / (π × d^3)',
          put: [
            put(
              'T',
              T,
              'lb·in',
              `twist from a bow of ${bow.sideIn.toFixed(2)} in to the side and the moments along the log`,
            ),
            put('d', s.diameterIn - s.cutIn, 'in', 'depth of wood there'),
          ],
          result: quantity(twistStress(T, shaftIn3), 'psi'),
          clause: clause('MECHANICS', 'shaft of circular section'),
        });
        note?.({
          symbol: 'fv',
          words: 'shear stress with the twist',
          formula: `abs(V) / Av + ${TWIST_COUNTS} × τ`,
          put: [
            forcePut(context, r, s.shear, 'V', 'lb', 'shear'),
            put('Av', s.section.shearAreaIn2, 'in2', 'shear area: 3/4 of a whole round section'),
            put('τ', twistStress(T, shaftIn3), 'psi', 'twisting stress'),
          ],
          result: quantity(twistedShear(s, T, r.values), 'psi'),
          clause: remembered('WOOD_HANDBOOK_2010', 'chapter 5, torsion strength'),
        });
        return twistedShear(s, T, r.values);
      },
      capacity: (r, note) => {
        if (note) durationFactor(r.combination.duration, note);
        for (const step of note ? values.steps('Fv') : []) note?.(step);
        return adjustedShear(values.FvPsi, r.combination.durationFactor, note);
      },
      worstAt: (r) => worst(r).atIn,
      grows: { power: [2, 3], diameterAt: (r) => worst(r).diameterIn, cutAt: (r) => worst(r).cutIn },
    },
  ];
}

/** What twists a stretch of a log beam; null for a straight or a sawn one. */
export function twistOn(
  context: LineCheckContext,
  on: BeamStretch,
): { readonly twist: (v: Float64Array) => number; readonly bow: Bow } | null {
  const bow = bowOfBeam(context.project, on.beam);
  return on.beam.stick?.kind !== 'round' || bow.sideIn === 0 ? null : { bow, twist: greatestTwist(context, on) };
}

/** Shear stress at a station with a twist on the stretch [psi]. */
export const twistedShear = (
  s: Pick<BeamStation, 'shear' | 'section' | 'diameterIn' | 'cutIn'>,
  T: number,
  v: Float64Array,
  shaftIn3 = shaftOf(s),
): number => Math.abs(v[s.shear]!) / s.section.shearAreaIn2 + TWIST_COUNTS * twistStress(T, shaftIn3);

/** π d3 of the circle that what is left of the log holds [in3] */
const shaftOf = (s: Pick<BeamStation, 'diameterIn' | 'cutIn'>): number => Math.PI * (s.diameterIn - s.cutIn) ** 3;

/** Greatest shear stress of a round shaft [psi]. @source MECHANICS 16 T / (π d3) */
const twistStress = (T: number, shaftIn3: number): number => (16 * T) / shaftIn3;

/** The greater of what goes to the two ends of a stretch; all of an overhang goes to its post [lb·in] */
function greatestTwist(
  { frame, project }: LineCheckContext,
  { beam, stretch }: BeamStretch,
): (v: Float64Array) => number {
  const bow = bowOfBeam(project, beam);
  const [from, to] = [Math.max(stretch.fromXIn, beam.fromXIn), Math.min(stretch.toXIn, beam.toXIn)];
  const within = (middle: number): boolean => middle > from && middle < to;
  const shares =
    stretch.kind === 'overhang'
      ? [() => 1]
      : [(x: number) => (to - x) / (to - from), (x: number) => (x - from) / (to - from)];
  const ends = shares.map((share) => twistOf(frame.mesh, beam, bow, (x, middle) => (within(middle) ? share(x) : 0)));
  return (v) => ends.reduce((most, end) => Math.max(most, Math.abs(end(v))), 0);
}
