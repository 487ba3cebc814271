import { describe, expect, test } from 'vitest';
import { influenceOf, type Brings } from '../../../../src/engine/checks/roof/rafter-influence.ts';
import { at } from '../../project/raw.ts';
import { analysedRafters, shedWith } from './roof.ts';

/** The example shed has overhangs on both sides, so that partial snow loads its segments unevenly. */
const heldBy = (horizontalHeldBy: string) =>
  analysedRafters(
    shedWith((raw) => {
      at(raw, 'roofPlanes', 'plane-1')['horizontalHeldBy'] = horizontalHeldBy;
    }),
  );

const mean = ({ low, high }: { readonly low: number; readonly high: number }): number => (low + high) / 2;

describe('a rafter in every combination', () => {
  test('[rafter.seat] plumb reactions add up to the plumb load (equilibrium)', () => {
    for (const { loading, responses } of heldBy('line-low')) {
      const { run, dead } = loading;
      const lengths = run.parts.map((p) => p.toIn - p.fromIn);
      for (const r of responses.filter((one) => one.combination.purpose === 'strength')) {
        if (r.combination.dead.weight === 'light') continue;
        const plumb = lengths.reduce((sum, l, i) => sum + ((mean(r.plumbLoads[i]!) + dead[i]!.heavy) / run.cos) * l, 0);
        const wind = lengths.reduce((sum, l, i) => sum + mean(r.windLoads[i]!) * l * run.cos, 0);
        const held = r.least.reduce((a, c) => a + c, 0);
        expect(held).toBeCloseTo(plumb + wind, 6);
        expect(r.greatest).toEqual(r.least);
      }
    }
  });

  test('[rafter.shear] jumps by the reaction at each support and is the slope of the moment between', () => {
    for (const { loading } of heldBy('worse')) {
      const { run, supportsAtIn } = loading;
      const { moments, shearsBefore, shearsAfter } = influenceOf(loading);
      run.parts.forEach(({ fromIn, toIn }, part) => {
        for (const end of ['low', 'high'] as const) {
          const V = (side: Brings, i: number): number => side[part]![end][i]!;
          run.stationsIn.forEach((atIn, i) => {
            const support = supportsAtIn.findIndex((s) => Math.abs(s - atIn) < 1e-6);
            const jump = support < 0 ? 0 : run.reactions[support]![part]![end];
            expect(V(shearsAfter, i) - V(shearsBefore, i)).toBeCloseTo(jump, 6);
            if (i === 0) return;
            const beforeIn = run.stationsIn[i - 1]!;
            // parts end at stations here: a straight load bends the shear into a parabola, of load w at the middle
            const isLoaded = (beforeIn + atIn) / 2 > fromIn && (beforeIn + atIn) / 2 < toIn;
            const perIn = isLoaded ? (end === 'low' ? -1 : 1) / (toIn - fromIn) : 0;
            const L = atIn - beforeIn;
            const meanShear = (V(shearsAfter, i - 1) + V(shearsBefore, i)) / 2;
            const gained = moments[part]![end][i]! - moments[part]![end][i - 1]!;
            expect(gained).toBeCloseTo(meanShear * L + (perIn * L ** 3) / 12, 4);
          });
        }
      });
    }
  });

  test('[rafter.tie] dead load that helps counts light x 0.6, what adds to the lift heavy (own rule)', () => {
    const all = heldBy('each-square');
    for (const { loading, responses } of all) {
      const { run, dead } = loading;
      for (const r of responses.filter((one) => one.combination.id.startsWith('7+wind-up'))) {
        const least = run.reactions.map((perPart) =>
          perPart.reduce((sum, { low, high }, i) => {
            const perUnit = low + high;
            const share = perUnit > 0 ? 0.6 * dead[i]!.light : dead[i]!.heavy;
            const wind = (r.windLoads[i]!.low * low + r.windLoads[i]!.high * high) * run.cos;
            return sum + wind + (share * perUnit) / run.cos;
          }, 0),
        );
        least.forEach((value, s) => expect(r.least[s]!).toBeCloseTo(value, 6));
      }
    }
  });
});
