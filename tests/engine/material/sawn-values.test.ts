import * as fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { nominalSize } from '../../../src/engine/material/lumber-size.ts';
import { repetitiveFactor } from '../../../src/engine/material/repetitive-factor.ts';
import { sawnValues } from '../../../src/engine/material/sawn-values.ts';
import { aStick, frozen, refusalIn, toldIn, valuesIn } from './samples.ts';

const values = (changes: Parameters<typeof aStick>[0]) => valuesIn(sawnValues(aStick(changes)));

describe('graded sticks', () => {
  it('a rough full 2x8 and a dressed one are one nominal size, 9 in. deep counts as 10', () => {
    expect([1.5, 2, 3.5, 4, 5.5, 7.25, 8, 9, 9.25, 11.25, 12, 13, 20].map(nominalSize)).toEqual([
      2, 2, 4, 4, 6, 8, 8, 10, 10, 12, 12, 14, 14,
    ]);
    expect(values({ breadthIn: 2, depthIn: 8 }).FbPsi).toBe(values({}).FbPsi);
  });

  it('pieces 4 in. thick have their own size factor in bending', () => {
    // Table 4A adjustment factors as printed by a grading agency: 8 in. wide, 1.2 thin and 1.3 thick
    expect(values({ breadthIn: 3.5 }).FbPsi / values({}).FbPsi).toBeCloseTo(1.3 / 1.2, 12);
  });

  it('flat use: a 2x4 purlin gains 1.1 in bending (Table 4A, from memory)', () => {
    const flat = values({ breadthIn: 3.5, depthIn: 1.5, lay: 'flat' });
    expect(flat.FbPsi).toBeCloseTo(1000 * 1.5 * 1.1, 9);
    expect(flat.FvPsi).toBe(180);
  });

  it('two plies count as two sticks side by side, not as one thick one', () => {
    expect(values({ breadthIn: 3, plies: 2 })).toMatchObject({ FbPsi: values({}).FbPsi });
    const flat = values({ breadthIn: 3.5, depthIn: 3, plies: 2, lay: 'flat' });
    expect(flat.FbPsi).toBe(values({ breadthIn: 3.5, depthIn: 1.5, lay: 'flat' }).FbPsi);
  });

  it('weak grades keep their bending value when wet, at or under 1150 psi with size', () => {
    // 2x12 No.2 Hem-Fir: 850 x 1.0 = 850; Fc 1300 x 1.0 loses a fifth
    const wet = values({ depthIn: 11.25, species: 'Hem-Fir', grade: 'No.2', use: 'wet' });
    expect(wet.FbPsi).toBe(850);
    expect(wet.FcPsi).toBeCloseTo(1300 * 0.8, 9);
    expect(wet.EPsi).toBeCloseTo(1_300_000 * 0.9, 6);
  });

  it('a timber is a beam when it is more than 2 in. wider than thick, else a post', () => {
    expect(values({ breadthIn: 5.5, depthIn: 9.5 }).FbPsi).toBe(1350);
    expect(values({ breadthIn: 5.5, depthIn: 7.5 }).FbPsi).toBe(1200);
  });

  it('a 6x14 timber keeps 0.9870 in bending (Missouri S&T wood course, problem 4.30)', () => {
    expect(values({ breadthIn: 5.5, depthIn: 13.5 }).FbPsi / 1350).toBeCloseTo(0.987, 4);
  });

  it('a beam laid on its wide face loses bending strength and stiffness (Table 4D, from memory)', () => {
    const flat = values({ breadthIn: 9.5, depthIn: 5.5, lay: 'flat' });
    expect(flat.FbPsi).toBeCloseTo(1350 * 0.74, 9);
    expect(flat.EPsi).toBeCloseTo(1_600_000 * 0.9, 6);
  });

  it('a species stands for the group on its stamp, and grades are read as people write them', () => {
    for (const grade of ['No.1', 'No. 1', '#1', 'no 1']) {
      expect(values({ species: 'western larch', grade }).FbPsi).toBe(values({}).FbPsi);
    }
    expect(values({ species: 'western larch' }).specificGravity).toBe(0.5);
    expect(values({ species: 'Spruce-Pine-Fir', grade: 'No.2' }).FbPsi).toBeCloseTo(875 * 1.2, 9);
    expect(values({ species: 'lodgepole pine', grade: 'No.2' }).FbPsi).toBeCloseTo(775 * 1.2, 9);
  });

  it('southern pine holds its size, except beyond 12 in.', () => {
    expect(values({ species: 'Southern Pine', grade: 'No.2', depthIn: 11.25 }).FbPsi).toBe(750);
    expect(values({ species: 'Southern Pine', grade: 'No.2', depthIn: 13.25 }).FbPsi).toBeCloseTo(675, 9);
  });

  it('what the tables do not hold is not given', () => {
    expect(refusalIn(sawnValues(aStick({ species: 'Ironbark' })))).toEqual(['notGiven', 'sawnSpeciesUnknown']);
    expect(refusalIn(sawnValues(aStick({ grade: 'Prime' })))).toEqual(['notGiven', 'sawnGradeUnknown']);
    expect(refusalIn(sawnValues(aStick({ breadthIn: 1.25 })))).toEqual(['notGiven', 'sawnTooThin']);
    expect(refusalIn(sawnValues(aStick({ breadthIn: 5.5, species: 'Southern Pine', grade: 'No.2' })))).toEqual([
      'notGiven',
      'sawnGradeUnknown',
    ]);
  });

  it('a wider stick never has a larger bending value, and wet use never helps', () => {
    const depth = fc.double({ min: 2, max: 16, noNaN: true });
    fc.assert(
      fc.property(depth, depth, fc.constantFrom('No.1', 'No.2', 'Select Structural'), (a, b, grade) => {
        const [less, more] = [Math.min(a, b), Math.max(a, b)];
        expect(values({ depthIn: more, grade }).FbPsi).toBeLessThanOrEqual(values({ depthIn: less, grade }).FbPsi);
        for (const key of ['FbPsi', 'FvPsi', 'FcPerpPsi', 'FcPsi', 'FtPsi', 'EPsi', 'EminPsi'] as const) {
          expect(values({ depthIn: a, grade, use: 'wet' })[key]).toBeLessThanOrEqual(
            values({ depthIn: a, grade })[key],
          );
        }
      }),
    );
  });

  it('leaves the stick as it was', () => {
    const stick = frozen(aStick());
    expect(toldIn(sawnValues(stick))).toEqual(toldIn(sawnValues(structuredClone(stick))));
  });
});

describe('home-sawn sticks', () => {
  const homeSawn = { species: 'Western larch', grade: null } as const;

  it('take the log formulas with the lowest ratios, size included, wet or dry alike', () => {
    // hand: 7700 x (1 - 1.645 x 0.16) x 0.40 x 0.82 / 2.1
    expect(values(homeSawn).FbPsi).toBeCloseTo(886.1, 1);
    expect(toldIn(sawnValues(aStick({ ...homeSawn, use: 'wet' })))).toEqual(toldIn(sawnValues(aStick(homeSawn))));
    expect(values(homeSawn).cautions.map(({ code }) => code)).toEqual(['sawnHomeSawnCaution']);
  });

  it('gain nothing on the flat and lose size beyond 12 in. deep', () => {
    expect(values({ ...homeSawn, breadthIn: 3.5, depthIn: 1.5, lay: 'flat' }).FbPsi).toBe(values(homeSawn).FbPsi);
    expect(values({ ...homeSawn, depthIn: 13.5 }).FbPsi / values(homeSawn).FbPsi).toBeCloseTo(0.987, 4);
  });

  it('need one species, not the name of a stamp', () => {
    expect(refusalIn(sawnValues(aStick({ grade: null })))).toEqual(['notGiven', 'sawnHomeSawnSpecies']);
  });
});

describe('the repetitive factor', () => {
  it('is 1.15 for three or more graded sticks at 24 in. or closer, else 1', () => {
    expect(repetitiveFactor(aStick(), 24, 3)).toBe(1.15);
    expect(repetitiveFactor(aStick(), 24.1, 3)).toBe(1);
    expect(repetitiveFactor(aStick(), 24, 2)).toBe(1);
    expect(repetitiveFactor(aStick(), null, 10)).toBe(1);
  });

  it('is 1 for home-sawn sticks, timbers and boards', () => {
    expect(repetitiveFactor(aStick({ grade: null }), 16, 10)).toBe(1);
    expect(repetitiveFactor(aStick({ breadthIn: 5.5 }), 16, 10)).toBe(1);
    expect(repetitiveFactor(aStick({ breadthIn: 1 }), 16, 10)).toBe(1);
  });
});
