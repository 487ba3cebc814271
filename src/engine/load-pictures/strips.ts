import type { RafterGeometry } from '../geometry/shelter.ts';
import { atEnds, type Pressure } from '../loads/rafter-reactions.ts';
import type { RafterPart } from '../loads/rafter-run.ts';
import type { RoofCase, RunOf } from '../loads/roof-cases.ts';
import type { LoadStrip } from './picture.ts';

/** Everything that a case puts on some rafters, each part of a rafter over the width of roof that it carries. */
export function stripsOfCase(
  pressure: RoofCase['pressure'],
  rafters: readonly RafterGeometry[],
  runOf: RunOf,
): readonly LoadStrip[] {
  const strips = rafters.flatMap((rafter) =>
    runOf(rafter).parts.flatMap((part) => {
      const { plumbPsf, squarePsf } = pressure(rafter, part);
      return [stripOn(rafter, part, plumbPsf, 'level'), stripOn(rafter, part, squarePsf, 'square')];
    }),
  );
  return joined(strips.filter(({ lowPsf, highPsf }) => lowPsf !== 0 || highPsf !== 0));
}

/** One part of a rafter under a pressure, as a strip of the roof. */
export function stripOn(
  rafter: RafterGeometry,
  { fromIn, toIn }: Pick<RafterPart, 'fromIn' | 'toIn'>,
  pressure: Pressure,
  acts: LoadStrip['acts'],
): LoadStrip {
  const { low, high } = atEnds(pressure);
  const { plane: planeId, tributaryFromXIn: fromXIn, tributaryToXIn: toXIn } = rafter;
  return { planeId, fromXIn, toXIn, fromIn, toIn, lowPsf: low, highPsf: high, acts };
}

/** Differences that are rounding and nothing else [in, psf]. */
const ROUNDING = 1e-9;
const same = (a: number, b: number): boolean => Math.abs(a - b) <= ROUNDING * Math.max(1, Math.abs(a), Math.abs(b));

/** Strips that go on straight become one: first up the slope, then from rafter to rafter. */
export const joined = (strips: readonly LoadStrip[]): readonly LoadStrip[] =>
  joinedBy(
    joinedBy(strips, goesOnUp, (a, b) => ({ ...a, toIn: b.toIn, highPsf: b.highPsf })),
    goesOnAlong,
    (a, b) => ({
      ...a,
      toXIn: b.toXIn,
    }),
  );

const isAlike = (a: LoadStrip, b: LoadStrip): boolean => a.planeId === b.planeId && a.acts === b.acts;
const steepness = (s: LoadStrip): number => (s.highPsf - s.lowPsf) / (s.toIn - s.fromIn);

const goesOnUp = (a: LoadStrip, b: LoadStrip): boolean =>
  isAlike(a, b) &&
  same(a.fromXIn, b.fromXIn) &&
  same(a.toXIn, b.toXIn) &&
  same(a.toIn, b.fromIn) &&
  same(a.highPsf, b.lowPsf) &&
  same(steepness(a), steepness(b));

const goesOnAlong = (a: LoadStrip, b: LoadStrip): boolean =>
  isAlike(a, b) &&
  same(a.toXIn, b.fromXIn) &&
  same(a.fromIn, b.fromIn) &&
  same(a.toIn, b.toIn) &&
  same(a.lowPsf, b.lowPsf) &&
  same(a.highPsf, b.highPsf);

function joinedBy(
  strips: readonly LoadStrip[],
  goesOn: (a: LoadStrip, b: LoadStrip) => boolean,
  join: (a: LoadStrip, b: LoadStrip) => LoadStrip,
): readonly LoadStrip[] {
  const done: LoadStrip[] = [];
  for (const strip of strips) {
    const i = done.findIndex((earlier) => goesOn(earlier, strip));
    if (i < 0) done.push(strip);
    else done[i] = join(done[i]!, strip);
  }
  return done;
}
