import { firstOrderOf, type LineResponse } from '../../frame/line-frame.ts';
import type { PostChain } from '../../frame/read-response.ts';
import type { DesignValues } from '../../material/values.ts';
import type { Note } from '../../note.ts';
import { STRETCHED_CUT } from '../beam/bending.ts';
import { lastRemembered } from '../last-remembered.ts';
import type { LineCheckContext } from '../line-context.ts';
import { bentAcross } from './bent-across.ts';
import { offsetMoment } from './seat-offset.ts';
import { allowableColumn, type PostColumn } from './column.ts';
import { greatestPush, stretchFactor, type PostStation } from './post-stations.ts';
import { pullAndBendingOf, pushAndBendingOf } from './push-and-bending.ts';

/** A sum of stress over allowable at one station of a post in one response; it must not pass 1. */
export type StationSum = (s: PostStation, r: LineResponse, note?: Note) => number;

/** Compression stress on what is left at a station; Infinity where a housing goes through the post [psi]. */
export const crushingStress = (s: PostStation, values: Float64Array): number =>
  s.section.areaIn2 > 0 ? Math.max(0, -values[s.axial]!) / s.section.areaIn2 : Infinity;

/**
 * Push and bending together: fb on the net section there, fc on the representative section, both planes together. The moment is
 * of first order: what the push adds to it on the bent post is the clause's own 1 - fc / FcE, with the greatest push of the
 * post. Where gravity and sway oppose, the moment of second order may be the harder one: it then stands in its place, with
 * that share taken off again (safe side).
 * @source NDS 3.9.2
 */
export function pushedSum(
  context: LineCheckContext,
  chain: PostChain,
  stations: readonly PostStation[],
  column: PostColumn,
  values: DesignValues,
): StationSum {
  const pushAndBending = pushAndBendingOf(chain.post.stick!, column.planes, values);
  const across = bentAcross(context, chain);
  const beside = besideAxis(context, chain);
  const FcPrime = lastRemembered((r: LineResponse) => allowableColumn(column, values, r));
  const fcIn = lastRemembered((r: LineResponse) => greatestPush(stations, r) / column.areaIn2);
  return (s, r, note) => {
    if (s.section.areaIn2 === 0) return Infinity; // a housing goes through the post
    const fcPsi = fcIn(r);
    const euler = column.eulerIn(r);
    const besideAlong = beside.along(s, r, fcPsi / euler.alongPsi, note);
    const besideAcross = beside.across(s, r, fcPsi / euler.acrossPsi, note);
    const bent = (forces: Float64Array): number => timesAlong(s, forces, besideAlong) * Math.abs(forces[s.moment]!);
    const left = Math.max(0, 1 - fcPsi / euler.alongPsi);
    const first = firstOrderOf(r).values;
    const at = {
      fcPsi,
      FcAllowablePsi: FcPrime(r),
      euler,
      alongLbIn: Math.max(bent(first), r.values === first ? 0 : bent(r.values) * left) + besideAlong,
      acrossLbIn: across(r, s, note) + besideAcross,
      modulusIn3: s.section.modulusIn3,
      acrossModulusIn3: s.acrossModulusIn3,
      CD: r.combination.durationFactor,
    };
    return pushAndBending(at, note);
  };
}

/** Pull and bending together, both lines of the clause, moments of both planes together. @source NDS 3.9.1 */
export function pulledSum(context: LineCheckContext, chain: PostChain, values: DesignValues): StationSum {
  const pullAndBending = pullAndBendingOf(chain.post.stick!, values);
  const across = bentAcross(context, chain);
  const beside = besideAxis(context, chain);
  return (s, r, note) => {
    if (s.section.areaIn2 === 0) return Infinity; // a housing goes through the post
    const besideAlong = beside.along(s, r, 0, note);
    const besideAcross = beside.across(s, r, 0, note);
    const at = {
      ftPsi: Math.max(0, r.values[s.axial]!) / s.section.areaIn2,
      alongLbIn: timesAlong(s, r.values, besideAlong) * Math.abs(r.values[s.moment]!) + besideAlong,
      acrossLbIn: across(r, s, note) + besideAcross,
      modulusIn3: s.section.modulusIn3,
      acrossModulusIn3: s.acrossModulusIn3,
      CD: r.combination.durationFactor,
    };
    return pullAndBending(at, note);
  };
}

/** What beams that press beside the axis add at a station, by fc / FcE in that plane, a cut counted twice [lb·in] */
type BesideAxis = (s: PostStation, r: LineResponse, pushShare: number, note?: Note) => number;

/** Which way such a beam bends the post is not asked: a housing counts as stretched where one does. */
function besideAxis(context: LineCheckContext, chain: PostChain): Readonly<Record<'along' | 'across', BesideAxis>> {
  const moment = (way: 'along' | 'across'): BesideAxis => {
    const offset = offsetMoment(context, chain, way);
    return offset ? (s, r, pushShare, note) => cutCounts(s) * offset(r, s.atIn, pushShare, note) : () => 0;
  };
  return { along: moment('along'), across: moment('across') };
}

const cutCounts = (s: PostStation): number => (s.housing ? STRETCHED_CUT : 1);

/** How often a housing there counts under the moment of the line. */
const timesAlong = (s: PostStation, values: Float64Array, besideLbIn: number): number =>
  besideLbIn > 0 ? cutCounts(s) : stretchFactor(s, values, STRETCHED_CUT);
