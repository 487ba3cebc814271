import * as fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import type { RafterPart } from '../../../src/engine/loads/rafter-run.ts';
import { neighbourSnow } from '../../../src/engine/loads/neighbour-snow.ts';
import { surplusOnPart } from '../../../src/engine/loads/snow-surplus.ts';
import type { EvenSnow } from '../../../src/engine/loads/uneven-snow.ts';
import { beside, prepared, project, type Neighbour } from './snow-support.ts';

const shed = project('firewood-shed');
const { shelter } = prepared(beside(shed, {}, 50));
const rafter = shelter.rafters[0]!;

/** Snow of an open roof with Ce 1, Ct 1.2 and no slope worth naming. */
const snowAt = (groundSnowPsf: number): EvenSnow => ({
  groundSnowPsf,
  is: 1,
  ce: 1,
  slopedPsf: 0.84 * groundSnowPsf,
  balancedPsf: 0.84 * groundSnowPsf,
});

/** The most that any case brings to one place, a hair wide, by its share of the way up the rafter [psf]. */
function most(change: Partial<Neighbour>, snow: EvenSnow, share: number): number {
  const { cases } = neighbourSnow(beside(shed, change, snow.groundSnowPsf), shelter, snow);
  const at = (share * rafter.runIn) / Math.cos((rafter.slopeDeg * Math.PI) / 180);
  const part: RafterPart = { fromIn: at - 1e-7, toIn: at + 1e-7, segment: 0, onHighHalf: share > 0.5 };
  return Math.max(
    snow.balancedPsf,
    ...cases.map((c) => c.evenPsf('any') + (c.surplus ? surplusOnPart(c.surplus, rafter, part).low : 0)),
  );
}

const grows = (lower: number, higher: number): boolean => higher >= lower - 1e-6 * Math.max(1, lower);
const range = (min: number, max: number) => fc.double({ min, max, noNaN: true });
/** Gaps well on this side of their thresholds: none, and 3 ft beside steps of more than 3 ft. */
const places = fc.record({ gapFt: fc.constantFrom(0, 3), stepFt: range(3.5, 15), share: range(0.01, 0.99) });

describe('between the thresholds of the standard', () => {
  it('more ground snow never gives less anywhere on the roof', () => {
    fc.assert(
      fc.property(
        places,
        range(5, 120),
        range(0.1, 60),
        range(10, 200),
        ({ gapFt, stepFt, share }, pg, more, upper) => {
          const change = { gapFt, stepFt, upperLengthFt: upper, slidesThisWay: true } as const;
          expect(grows(most(change, snowAt(pg), share), most(change, snowAt(pg + more), share))).toBe(true);
        },
      ),
      { seed: 771, numRuns: 400 },
    );
  });

  it('a higher roof that is longer, or slopes from farther away, never gives less', () => {
    fc.assert(
      fc.property(places, range(5, 120), range(10, 200), range(0.1, 100), (place, pg, length, more) => {
        const { gapFt, stepFt, share } = place;
        const of = (ft: number) =>
          most({ gapFt, stepFt, upperLengthFt: ft, eaveToRidgeFt: ft, slidesThisWay: true }, snowAt(pg), share);
        expect(grows(of(length), of(length + more))).toBe(true);
      }),
      { seed: 772, numRuns: 300 },
    );
  });

  it('a higher step never brings less to the edge beside it', () => {
    fc.assert(
      fc.property(range(5, 120), range(10, 200), range(0.5, 15), range(0.1, 10), (pg, upperLengthFt, stepFt, more) => {
        const of = (ft: number) => most({ stepFt: ft, upperLengthFt }, snowAt(pg), edgeShare);
        expect(grows(of(stepFt), of(stepFt + more))).toBe(true);
      }),
      { seed: 773, numRuns: 300 },
    );
  });
});

/** A thumb's breadth from the edge beside the step, which lies at the lower y. */
const edgeShare = rafter.downY === 1 ? 0.9999 : 0.0001;
