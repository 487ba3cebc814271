import * as fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { CLEAR_WOOD } from '../../../src/data/wood/species.ts';
import { logValues } from '../../../src/engine/material/log-values.ts';
import { findSpecies } from '../../../src/engine/material/species.ts';
import { aLog, aSeen, aWood, frozen, refusalIn, toldIn, typedBasis, valuesIn } from './samples.ts';

const ofDiameter = (diameterIn: number) => aLog({ seen: null, stations: [{ fromButtIn: 0, diameterIn }] });
const fbOf = (diameterIn: number): number => valuesIn(logValues(ofDiameter(diameterIn), aWood())).FbPsi;

describe('derived values of a log', () => {
  it('a larch log that nobody looked at: four fifths of what ratio 0.50 gives, by hand', () => {
    const values = valuesIn(logValues(ofDiameter(12), aWood()));
    // hand: 7700 x (1 - 1.645 x 0.16) = 5673.4; x 0.40 x 0.82 / 2.1
    expect(values.FbPsi).toBeCloseTo(886.1, 1);
    // 870 x (1 - 1.645 x 0.14) x 0.50 / 2.1; 3760 x (1 - 1.645 x 0.18) x 0.56 / 1.9
    expect(values.FvPsi).toBeCloseTo(159.44, 2);
    expect(values.FcPsi).toBeCloseTo(780.07, 1);
    expect(values.FtPsi).toBeCloseTo(0.55 * values.FbPsi, 9);
    expect(values.EPsi).toBeCloseTo(1_460_000 * 0.8, 6);
    expect(values.EminPsi).toBe(420_000); // 0.3653 x 1,168,000 = 426,670
    expect(values.cForColumns).toBe(0.8);
    expect(values.specificGravity).toBe(0.48);
  });

  it('stiffness keeps 1.0, 0.9 or 0.8 of the mean by the strength ratio in bending', () => {
    const shareAt = (grainSlope1In: number, knots: readonly number[] = []) => {
      const seen = aSeen({ worstKnotIn: 0, grainSlope1In, knotsInWorstFootIn: knots });
      return valuesIn(logValues(aLog({ seen }), aWood())).EPsi / 1_460_000;
    };
    expect(shareAt(10)).toBeCloseTo(1, 12); // 0.61
    expect(shareAt(8)).toBeCloseTo(0.9, 12); // 0.53
    expect(shareAt(6)).toBeCloseTo(0.8, 12); // 0.40
  });

  it('size counts beyond 13.5 in., and the 16 in. log keeps 0.98163 of the thinner one', () => {
    expect(fbOf(13.5)).toBe(fbOf(6));
    // reference: (12 / (16 x sqrt(pi) / 2))^(1/9) = 0.98163, ninth root of NDS 4.3.6 on the square of equal area
    expect(fbOf(16) / fbOf(12)).toBeCloseTo(0.98163, 5);
  });

  it('the largest diameter anywhere on the log decides its size factor', () => {
    const stations = [
      { fromButtIn: 0, diameterIn: 14, acrossIn: 16 },
      { fromButtIn: 200, diameterIn: 9 },
    ];
    expect(valuesIn(logValues(aLog({ seen: null, stations }), aWood())).FbPsi).toBeCloseTo(fbOf(16), 9);
  });

  it('a thicker log never gains strength per square inch', () => {
    const diameter = fc.double({ min: 4, max: 40, noNaN: true });
    fc.assert(
      fc.property(diameter, diameter, (a, b) => {
        expect(fbOf(Math.max(a, b))).toBeLessThanOrEqual(fbOf(Math.min(a, b)));
      }),
    );
  });

  it('every listed species gives finite values above zero', () => {
    for (const species of CLEAR_WOOD) {
      const values = valuesIn(logValues(aLog({ seen: null }), aWood(species.name)));
      for (const value of [values.FbPsi, values.FvPsi, values.FcPerpPsi, values.FcPsi, values.FtPsi, values.EminPsi]) {
        expect(value).toBeGreaterThan(0);
        expect(Number.isFinite(value)).toBe(true);
      }
    }
  });

  it('says what to beware of', () => {
    const codes = (seen: Parameters<typeof aLog>[0]) =>
      valuesIn(logValues(aLog(seen), aWood())).cautions.map(({ code }) => code);
    expect(codes({ seen: aSeen({ date: '2026-05-02' }) })).toEqual(['woodCompressionCaution']);
    expect(codes({ seen: aSeen({ date: null }) })).toEqual(['woodCompressionCaution', 'logLookUnsigned']);
    expect(codes({ seen: aSeen({ by: '', date: '2026-05-02' }) })).toEqual([
      'woodCompressionCaution',
      'logLookUnsigned',
    ]);
    expect(codes({ seen: null })).toEqual(['woodCompressionCaution', 'logKnotsNotMeasured', 'logGrainNotRead']);
  });

  it('an unknown species is not given, a log past the method is outside', () => {
    expect(refusalIn(logValues(aLog(), aWood('Ironbark')))).toEqual(['notGiven', 'woodSpeciesUnknown']);
    expect(refusalIn(logValues(aLog({ seen: aSeen({ grainSlope1In: 5 }) }), aWood()))[0]).toBe('outside');
  });

  it('[log.limits] a check through an end is outside whoever gave the values', () => {
    const log = aLog({ seen: aSeen({ throughCheckAtEnd: true }) });
    for (const basis of [{ kind: 'derived' } as const, typedBasis()]) {
      expect(refusalIn(logValues(log, aWood('Western larch', basis)))).toEqual(['outside', 'logThroughCheck']);
    }
  });

  it('leaves log and wood as they were', () => {
    const log = frozen(aLog());
    const wood = frozen(aWood());
    expect(toldIn(logValues(log, wood))).toEqual(toldIn(logValues(structuredClone(log), structuredClone(wood))));
  });
});

describe('typed values', () => {
  it('published wet: every value as typed', () => {
    const values = valuesIn(logValues(aLog(), aWood('Western larch', typedBasis())));
    expect(values).toMatchObject({
      basis: 'typed',
      FbPsi: 1000,
      FvPsi: 100,
      FcPerpPsi: 400,
      FcPsi: 900,
      FtPsi: 550,
      EPsi: 1_200_000,
      EminPsi: 440_000,
      cForColumns: 0.8,
      strengthRatioBending: null,
    });
  });

  it('published dry: the wet factors of timbers, 0.67 across and 0.91 along, unless they are held already', () => {
    // Merritt, Building Design and Construction Handbook, Table 10.6: timbers 5x5 and larger
    const dry = valuesIn(logValues(aLog(), aWood('Western larch', typedBasis({ published: 'dry' }))));
    expect([dry.FbPsi, dry.FcPerpPsi, dry.FcPsi, dry.EPsi]).toEqual([1000, 400 * 0.67, 900 * 0.91, 1_200_000]);
    const held = typedBasis({ published: 'dry', factorsHeld: ['CM'] });
    expect(valuesIn(logValues(aLog(), aWood('Western larch', held))).FcPsi).toBe(900);
  });

  it('nobody named, nothing given', () => {
    for (const by of ['', ' ', 'x']) {
      expect(refusalIn(logValues(aLog(), aWood('Western larch', typedBasis({ by }))))).toEqual([
        'notGiven',
        'woodTypedByNobody',
      ]);
    }
  });

  it('poles and piles take 0.85 in the column formula', () => {
    expect(valuesIn(logValues(aLog(), aWood('Western larch', typedBasis({ asPoles: true })))).cForColumns).toBe(0.85);
  });

  it('a species that is not listed takes the lightest wood for fasteners and says so', () => {
    const values = valuesIn(logValues(aLog(), aWood('Ironbark', typedBasis())));
    expect(values.specificGravity).toBe(0.29);
    expect(values.cautions.map(({ code }) => code)).toEqual(['woodGravityAssumed']);
  });
});

describe('names of species', () => {
  it('capitals, hyphens and order of words do not matter; a bare genus is not guessed', () => {
    expect(findSpecies('western larch')?.name).toBe('Western larch');
    expect(findSpecies('coast douglas fir')?.name).toBe('Douglas-fir, Coast');
    expect(findSpecies('Douglas-fir')).toBe(null);
    expect(findSpecies('')).toBe(null);
  });

  it('no two listed species answer to one name', () => {
    for (const species of CLEAR_WOOD) expect(findSpecies(species.name)).toBe(species);
  });
});
