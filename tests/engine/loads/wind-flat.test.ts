import { describe, expect, it } from 'vitest';
import type { PlaneGeometry, Shelter } from '../../../src/engine/geometry/shelter.ts';
import { givensOf } from '../../../src/engine/givens.ts';
import { atEnds } from '../../../src/engine/loads/rafter-reactions.ts';
import { windCases } from '../../../src/engine/loads/wind-cases.ts';
import { fromWindwardEdge } from '../../../src/engine/loads/wind-places.ts';
import { exampleText, soundProject } from '../../support/files.ts';

const answer = givensOf(soundProject(exampleText('gable')));
if ('faults' in answer) throw new Error(JSON.stringify(answer.faults));
const { shelter, site } = answer;

/** The gable example laid nearly flat and low: both slopes of `slopeDeg`, the roof `heightIn` above ground. */
const laidDown = (slopeDeg: number, heightIn: number): Shelter => ({
  ...shelter,
  meanRoofHeightIn: heightIn,
  planes: shelter.planes.map((p): PlaneGeometry => ({ ...p, slopeDeg })),
  rafters: shelter.rafters.map((r) => ({ ...r, slopeDeg })),
});
const flatIds = (of: Shelter): readonly string[] =>
  windCases(site, of, 'pitched')
    .map((c) => c.id)
    .filter((id) => id.startsWith('wind-flat-'));

// ASCE 7-16 note to Fig. 27.3-4, read in BNBC Fig. 6.2.18d note 5: under 5 degrees and h/L under 0.25 the bands of wind
// along the ridge serve across as well. It speaks of single slopes; under 7.5 degrees a pitched roof takes their figure, so
// here it takes their note as well (own rule, safe side).
describe('wind across a long flat gable', () => {
  const across = shelter.planAcrossIn;

  it('takes the bands too, only below 5 degrees and only below h/L of 0.25', () => {
    expect(flatIds(laidDown(4.99, 0.249 * across)).length).toBe(4 * site.flows.length);
    expect(flatIds(laidDown(5, 0.249 * across))).toEqual([]);
    expect(flatIds(laidDown(4.99, 0.25 * across))).toEqual([]);
  });

  it('counts distances from the eave that the wind meets, over the ridge and on', () => {
    const flat = laidDown(0, 40);
    const [near, far] = [-1, 1].map((downY) => flat.rafters.find((r) => r.downY === downY)!);
    const half = across / 2;
    // the covering reaches past the rafters' ends alike on both sides
    const past = fromWindwardEdge(flat, 1, near!, { fromIn: 0, toIn: 1 });
    expect(past).toBeGreaterThanOrEqual(0);
    expect(fromWindwardEdge(flat, 1, near!, { fromIn: 20, toIn: 30 })).toBeCloseTo(past + 20, 9);
    expect(fromWindwardEdge(flat, 1, far!, { fromIn: 20, toIn: 30 })).toBeCloseTo(2 * half - past - 30, 9);
    expect(fromWindwardEdge(flat, -1, far!, { fromIn: 20, toIn: 30 })).toBeCloseTo(past + 20, 9);
  });

  // Fig. 27.3-7, case A, clear: -0.8 within h of the windward edge, -0.6 to 2h, -0.3 beyond.
  it('lifts hardest at the windward eave and least at the leeward one', () => {
    const flat = laidDown(0, 40);
    const found = windCases(site, flat, 'pitched').find((c) => c.id === 'wind-flat-0-A-clear')!;
    const qG = site.figures.velocityPressure.value! * 0.85;
    const [near, far] = [-1, 1].map((downY) => flat.rafters.find((r) => r.downY === downY)!);
    const psf = (rafter: (typeof flat.rafters)[number], fromIn: number): number =>
      atEnds(found.pressure(rafter, { fromIn, toIn: fromIn + 5, segment: 0, onHighHalf: false }).squarePsf).low;
    expect(psf(near!, 10)).toBeCloseTo(-0.8 * qG, 9);
    expect(psf(near!, 60)).toBeCloseTo(-0.6 * qG, 9);
    expect(psf(far!, 10)).toBeCloseTo(-0.3 * qG, 9);
  });
});
