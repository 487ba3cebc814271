import { describe, expect, it } from 'vitest';
import { z } from 'zod';
import { SOIL_CLASSES } from '../../src/data/loads/soil.ts';
import { peakBelowGround } from '../../src/engine/checks/ground/below-ground.ts';
import { bagsFor, concreteVolume } from '../../src/engine/checks/ground/concrete.ts';
import { lateralBearingAtThird, requiredEmbedment } from '../../src/engine/checks/ground/embedded-post.ts';
import { baseFriction, sideBearing } from '../../src/engine/checks/ground/sliding.ts';
import { soilPressure } from '../../src/engine/checks/ground/soil-pressure.ts';
import { fixtureOf } from '../engine/loads/site/published.ts';
import bagsPrinted from './concrete-bags.json' with { type: 'json' };
import eccentricPrinted from './round-eccentric.json' with { type: 'json' };
import polePrinted from './pole-embedment.json' with { type: 'json' };

const poles = fixtureOf(
  z.strictObject({ forceLb: z.number(), heightFt: z.number(), lateralPsfPerFt: z.number(), widthFt: z.number() }),
  z.strictObject({ depthFt: z.number(), S1Psf: z.number() }),
).parse(polePrinted);
const eccentric = fixtureOf(z.strictObject({ eOverR: z.number() }), z.strictObject({ ratio: z.number() })).parse(
  eccentricPrinted,
);
const bags = fixtureOf(
  z.strictObject({ acrossIn: z.number(), depthIn: z.number() }),
  z.strictObject({ volumeFt3: z.number(), bagsOf80Lb: z.number() }),
).parse(bagsPrinted);

const pole = (forceLb: number, heightFt: number, lateralPsfPerFt: number, widthFt: number): number =>
  requiredEmbedment({
    forceLb,
    momentLbIn: forceLb * heightFt * 12,
    lateralPsfPerFt,
    widthIn: widthFt * 12,
    doubled: false,
  });

describe('a pole that the ground alone holds', () => {
  // proof [pier.sideways]: printed - pole foundation worked by equation 18-1: 5.02 ft (ASCE Press 2006, Figure 16-1)
  it.each(poles.rows)('[pier.sideways] needs the depth of the worked figure, $row', ({ in: given, out }) => {
    const d = pole(given.forceLb, given.heightFt, given.lateralPsfPerFt, given.widthFt);
    expect(Math.abs(d - out.depthFt)).toBeLessThanOrEqual(poles.tolerance.abs);
    expect(Math.round(lateralBearingAtThird(given.lateralPsfPerFt, d, false))).toBe(out.S1Psf);
  });

  // IBC equation 18-1 with h = 0: d = A, A = 2.34 P / (s d / 3 x b), so that d2 = 7.02 P / (s b)
  it.each([
    [1000, 150, 1.5],
    [2500, 100, 2],
    [400, 200, 0.75],
  ])('[pier.sideways] pushed at the ground, %d lb on %d psf per ft, needs sqrt(7.02 P / (s b))', (P, s, b) => {
    expect(pole(P, 0, s, b)).toBeCloseTo(Math.sqrt((7.02 * P) / (s * b)), 6);
  });

  // Past 12 ft the pressure is that of 12 ft: S1 = 4 s, and equation 18-1 is read straight.
  it('[pier.sideways] deeper than 12 ft, the pressure grows no more', () => {
    const A = (2.34 * 9000) / (4 * 100 * 1.5);
    const d = (A / 2) * (1 + Math.sqrt(1 + (4.36 * 10) / A));
    expect(d).toBeGreaterThan(12);
    expect(pole(9000, 10, 100, 1.5)).toBeCloseTo(d, 6);
  });
});

describe('pressure under a round base', () => {
  // proof [pier.bearing]: printed - greatest over mean stress of a circle without tension (Hicks, Table 3.4)
  it.each(eccentric.rows)('[pier.bearing] over its mean is as printed at $row', ({ in: { eOverR }, out }) => {
    const mean = 1000;
    const N = mean * Math.PI;
    const ratio = soilPressure({ shape: 'round', acrossIn: 24 }, N, N * eOverR * 12) / mean;
    expect(Math.abs(ratio - out.ratio)).toBeLessThanOrEqual(eccentric.tolerance.abs);
  });
});

describe('sliding by the presumptive table', () => {
  const classOf = (key: string) => SOIL_CLASSES.find((each) => each.key === key)!;

  // proof [pier.sliding]: closed-form - friction times dead load, cohesion at most half of it, the triangle beside the pier
  it('[pier.sliding] gravel rubs with 0.35 of the dead load, sand with 0.25', () => {
    expect(baseFriction(classOf('gravel'), 2000, 576)).toBeCloseTo(700, 9);
    expect(baseFriction(classOf('sand'), 2000, 576)).toBeCloseTo(500, 9);
  });

  // IBC Table 1806.2: 130 psf on the area; 1806.3.2 (from memory): at most half of the dead load
  it('[pier.sliding] clay sticks with 130 psf of its base, at most with half of the dead load', () => {
    expect(baseFriction(classOf('clay'), 2000, 576)).toBeCloseTo(520, 9);
    expect(baseFriction(classOf('clay'), 800, 576)).toBeCloseTo(400, 9);
    expect(baseFriction(classOf('soft'), 2000, 576)).toBe(0);
  });

  it('[pier.sliding] 150 psf per ft press on 4 ft of a 1.5 ft pier with 1800 lb, and no deeper than 12 ft', () => {
    expect(sideBearing(150, 4, 18)).toBeCloseTo(1800, 9);
    expect(sideBearing(150, 20, 18)).toBeCloseTo(sideBearing(150, 12, 18), 9);
  });
});

describe('a post bent below the ground', () => {
  // An engineers' exchange on the code's equation (1999): soil presses in a parabola that ends at 0.68 of the depth, with its
  // resultant at 0.34; all of that in one place would bend the post with P (h + 0.34 d).
  // proof [post.belowGround]: second-source - pressure of an engineers' exchange on the pole equation: never above P (h + 0.34 d)
  it.each([2, 5, 10])('[post.belowGround] pushed %d ft above the ground bends less than P (h + 0.34 d)', (h) => {
    const d = 60;
    const { momentLbIn, depthIn } = peakBelowGround(500, 500 * h * 12, d);
    expect(momentLbIn).toBeLessThan(500 * (h * 12 + 0.34 * d));
    expect(momentLbIn).toBeGreaterThan(500 * h * 12);
    expect(depthIn).toBeLessThan(0.42 * d);
  });
});

describe('concrete in bags', () => {
  it.each(bags.rows)('a hole of $row takes as many bags as printed', ({ in: { acrossIn, depthIn }, out }) => {
    const volume = concreteVolume(
      {
        kind: 'pier',
        standOffIn: 1,
        hardware: null,
        shaft: { shape: 'round', acrossIn, lengthIn: depthIn },
        pad: null,
        concretePcf: 145,
        fixity: { along: 'pinned', across: 'pinned' },
      },
      0,
    );
    expect(Math.abs(volume - out.volumeFt3)).toBeLessThanOrEqual(bags.tolerance.abs);
    expect(bagsFor(volume).find(({ lb }) => lb === 80)?.count).toBe(out.bagsOf80Lb);
  });

  // common practice: concrete of dry mix and a tenth of its weight in water weighs about 145 lb/ft3
  it('a bag makes about as much concrete as its mix and water weigh', () => {
    for (const { lb, count } of bagsFor(1000)) expect((count * lb * 1.09) / 1000 / 145).toBeCloseTo(1, 1);
  });
});
