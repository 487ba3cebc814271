import { firstOrderOf, type LineResponse } from '../../frame/line-frame.ts';
import type { PostChain } from '../../frame/read-response.ts';
import type { DesignValues } from '../../material/values.ts';
import type { Note } from '../../note.ts';
import { STRETCHED_CUT } from '../beam/bending.ts';
import type { LineCheckContext } from '../line-context.ts';
import { bentAcross } from './bent-across.ts';
import { offsetMoment } from './seat-offset.ts';
import { allowableColumn, lastRemembered, type PostColumn } from './column.ts';
import { stretchFactor, type PostStation } from './post-stations.ts';
import { pullAndBendingOf, pushAndBendingOf } from './push-and-bending.ts';

/** A sum of stress over allowable at one station of a post in one response; it must not pass 1. */
export type StationSum = (s: PostStation, r: LineResponse, note?: Note) => number;

/** Compression stress on what is left at a station; Infinity where a housing goes through the post [psi]. */
export const crushingStress = (s: PostStation, values: Float64Array): number =>
  s.section.areaIn2 > 0 ? Math.max(0, -values[s.axial]!) / s.section.areaIn2 : Infinity;

/**
 * Push and bending together: fb on the net section there, fc on the representative section. Moments of both planes
 * together. The moment is of first order: what the push adds to it on the bent post is the clause's own 1 - fc / FcE.
 * @source NDS 3.9.2
 */
export function pushedSum(
  context: LineCheckContext,
  chain: PostChain,
  column: PostColumn,
  values: DesignValues,
): StationSum {
  const pushAndBending = pushAndBendingOf(chain.post.stick!, column.planes, values);
  const across = bentAcross(context, chain);
  const beside = offsetMoment(context, chain);
  const FcPrime = lastRemembered((r) => allowableColumn(column, values, r));
  return (s, r, note) => {
    if (s.section.areaIn2 === 0) return Infinity; // a housing goes through the post
    const first = firstOrderOf(r).values;
    const fcPsi = Math.max(0, -r.values[s.axial]!) / column.areaIn2;
    const euler = column.eulerIn(r);
    const besideLbIn = beside?.(r, s.atIn, fcPsi / euler.alongPsi, note) ?? 0;
    // which way a seat bends the post is not asked: a cut counts as stretched then
    const twice = besideLbIn > 0 && s.housing ? STRETCHED_CUT : stretchFactor(s, first, STRETCHED_CUT);
    const at = {
      fcPsi,
      FcAllowablePsi: FcPrime(r),
      euler,
      alongLbIn: twice * (Math.abs(first[s.moment]!) + besideLbIn),
      acrossLbIn: across(r, s, note),
      modulusIn3: s.section.modulusIn3,
      CD: r.combination.durationFactor,
    };
    return pushAndBending(at, note);
  };
}

/** Pull and bending together, both lines of the clause, moments of both planes together. @source NDS 3.9.1 */
export function pulledSum(context: LineCheckContext, chain: PostChain, values: DesignValues): StationSum {
  const pullAndBending = pullAndBendingOf(chain.post.stick!, values);
  const across = bentAcross(context, chain);
  return (s, r, note) => {
    if (s.section.areaIn2 === 0) return Infinity; // a housing goes through the post
    const at = {
      ftPsi: Math.max(0, r.values[s.axial]!) / s.section.areaIn2,
      alongLbIn: stretchFactor(s, r.values, STRETCHED_CUT) * r.values[s.moment]!,
      acrossLbIn: across(r, s, note),
      modulusIn3: s.section.modulusIn3,
      CD: r.combination.durationFactor,
    };
    return pullAndBending(at, note);
  };
}
