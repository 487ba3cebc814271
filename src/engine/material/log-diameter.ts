import type { Log } from '../project/model.ts';

/** Wood diameters of a log, bark off; null where the bark is on and nobody gave its thickness. */
const barkOff = (log: Log): number | null => {
  if (log.bark === 'off') return 0;
  return log.barkIn === undefined ? null : 2 * log.barkIn;
};

/** Largest wood diameter at any station, the larger of two callipers [in]. Bark of unknown thickness counts as wood. */
export function largestDiameterOf(log: Log): number {
  const bark = barkOff(log) ?? 0;
  return Math.max(...log.stations.map((s) => Math.max(s.diameterIn, s.acrossIn ?? 0))) - bark;
}

/**
 * Wood diameter where knots are judged: at the place given, else at the thinnest station (safe side).
 * @returns the smaller of two callipers [in]; null when it is not known or nothing is left under the bark
 */
export function diameterAtKnots(log: Log, fromButtIn: number | undefined): number | null {
  const bark = barkOff(log);
  if (bark === null) return null;
  const thin = log.stations.map((s) => ({
    atIn: s.fromButtIn,
    diameterIn: Math.min(s.diameterIn, s.acrossIn ?? s.diameterIn) - bark,
  }));
  const thinnest = Math.min(...thin.map((s) => s.diameterIn));
  const there = fromButtIn === undefined ? null : between(thin, fromButtIn);
  const diameter = there ?? thinnest;
  return diameter > 0 ? diameter : null;
}

/** Straight between the two stations around a place; null outside them: nothing is extrapolated. */
function between(stations: readonly { atIn: number; diameterIn: number }[], atIn: number): number | null {
  for (let i = 1; i < stations.length; i++) {
    const a = stations[i - 1]!;
    const b = stations[i]!;
    if (atIn < a.atIn || atIn > b.atIn) continue;
    if (b.atIn === a.atIn) return Math.min(a.diameterIn, b.diameterIn);
    return a.diameterIn + ((atIn - a.atIn) / (b.atIn - a.atIn)) * (b.diameterIn - a.diameterIn);
  }
  return null;
}
