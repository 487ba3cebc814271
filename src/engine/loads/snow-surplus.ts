import type { PurlinGeometry, RafterGeometry } from '../geometry/shelter.ts';
import { radiansFromDegrees } from '../units.ts';
import { even, type AtEnds, type RafterPart } from './rafter-run.ts';

/** Snow between two level distances, straight between its two weights. */
export interface SnowBand {
  readonly fromIn: number;
  readonly toIn: number;
  readonly fromPsf: number;
  readonly toPsf: number;
}

/** Snow on top of an even one, by level distance from a line on the plan: a drift, a slide, a strip beside a ridge. */
export interface SnowSurplus {
  /** which way the distance runs: along the frame lines (x) or across them (y), toward + or - */
  readonly axis: 'x' | 'y';
  readonly toward: 1 | -1;
  /** where the distance is nothing [in] */
  readonly zeroIn: number;
  /** ascending, none on another; the distance before the first and after the last is bare */
  readonly bands: readonly SnowBand[];
}

/** A triangle of snow, highest at its start. */
export const triangle = (peakPsf: number, widthIn: number): readonly SnowBand[] =>
  peakPsf > 0 && widthIn > 0 ? [{ fromIn: 0, toIn: widthIn, fromPsf: peakPsf, toPsf: 0 }] : [];

export const evenBand = (psf: number, widthIn: number): readonly SnowBand[] =>
  psf > 0 && widthIn > 0 ? [{ fromIn: 0, toIn: widthIn, fromPsf: psf, toPsf: psf }] : [];

const distance = ({ toward, zeroIn }: SnowSurplus, atIn: number): number => toward * (atIn - zeroIn);

/** Level y of a place along a rafter's slope from its eave. */
const yAt = (rafter: RafterGeometry, cos: number, slopeIn: number): number =>
  rafter.eaveYIn - rafter.downY * slopeIn * cos;

const cosOf = (rafter: { readonly slopeDeg: number }): number => Math.cos(radiansFromDegrees(rafter.slopeDeg));

/** Places along a rafter, from its eave up the slope, where its surplus jumps or bends; some may lie beyond it [in]. */
export function surplusCuts(surplus: SnowSurplus, rafter: RafterGeometry): readonly number[] {
  if (surplus.axis === 'x') return [];
  const cos = cosOf(rafter);
  return surplus.bands
    .flatMap((b) => [b.fromIn, b.toIn])
    .map((d) => ((rafter.eaveYIn - (surplus.zeroIn + surplus.toward * d)) * rafter.downY) / cos);
}

/**
 * Surplus at both ends of a part of a rafter that is cut at `surplusCuts`. Where it runs along the frame lines the rafter
 * takes the mean over the strip that it carries.
 * @returns [psf] of horizontal area
 */
export function surplusOnPart(surplus: SnowSurplus, rafter: RafterGeometry, part: RafterPart): AtEnds {
  if (surplus.axis === 'x') return even(surplusOnStrip(surplus, rafter));
  const cos = cosOf(rafter);
  const [low, high] = [part.fromIn, part.toIn].map((s) => distance(surplus, yAt(rafter, cos, s)));
  const middle = (low! + high!) / 2;
  const band = surplus.bands.find((b) => middle > b.fromIn && middle < b.toIn);
  return band ? { low: weightAt(band, low!), high: weightAt(band, high!) } : even(0);
}

/** Mean of a surplus that runs along the frame lines over the strip that a rafter carries [psf]. */
export const surplusOnStrip = (surplus: SnowSurplus, rafter: RafterGeometry): number =>
  surplusMean(surplus, rafter.tributaryFromXIn, rafter.tributaryToXIn);

/**
 * Surplus that a purlin carries on its strip of the slope: the mean across it; where the surplus runs along the purlin, the
 * greatest on the whole length (own rule, safe side).
 * @returns [psf] of horizontal area
 */
export function surplusOnPurlin(surplus: SnowSurplus, purlin: PurlinGeometry, rafter: RafterGeometry): number {
  if (surplus.axis === 'x') return greatestBetween(surplus, purlin.fromXIn, purlin.toXIn);
  const cos = cosOf(rafter);
  return surplusMean(
    surplus,
    yAt(rafter, cos, purlin.tributaryFromIn),
    yAt(rafter, cos, purlin.tributaryFromIn + purlin.tributaryWidthIn),
  );
}

const weightAt = ({ fromIn, toIn, fromPsf, toPsf }: SnowBand, atIn: number): number =>
  fromPsf + ((toPsf - fromPsf) * (atIn - fromIn)) / (toIn - fromIn);

/** The parts of bands that lie between two places on the plan, with their weights at both ends. */
function between(surplus: SnowSurplus, aIn: number, bIn: number): readonly SnowBand[] {
  const [from, to] = [distance(surplus, aIn), distance(surplus, bIn)].sort((a, b) => a - b);
  return surplus.bands.flatMap((band) => {
    const fromIn = Math.max(from!, band.fromIn);
    const toIn = Math.min(to!, band.toIn);
    return toIn > fromIn ? [{ fromIn, toIn, fromPsf: weightAt(band, fromIn), toPsf: weightAt(band, toIn) }] : [];
  });
}

/** Mean between two places on the plan [psf]. */
function surplusMean(surplus: SnowSurplus, aIn: number, bIn: number): number {
  const area = between(surplus, aIn, bIn).reduce(
    (sum, b) => sum + ((b.fromPsf + b.toPsf) / 2) * (b.toIn - b.fromIn),
    0,
  );
  return area / Math.abs(bIn - aIn);
}

const greatestBetween = (surplus: SnowSurplus, aIn: number, bIn: number): number =>
  Math.max(0, ...between(surplus, aIn, bIn).flatMap((b) => [b.fromPsf, b.toPsf]));
