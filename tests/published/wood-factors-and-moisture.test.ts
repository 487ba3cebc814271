import { describe, expect, it } from 'vitest';
import { DRYING_AND_DECAY, type DecayClass } from '../../src/data/wood/drying-and-decay.ts';
import { FLAT_USE, REPETITIVE, SIZE_FACTORS, WET_SERVICE } from '../../src/data/wood/lumber-factors.ts';
import { LUMBER_GROUPS } from '../../src/data/wood/lumber-groups.ts';
import { GREEN_MOISTURE } from '../../src/data/wood/moisture.ts';
import { ROUND_TIMBER } from '../../src/data/wood/round-timber.ts';
import { CLEAR_WOOD } from '../../src/data/wood/species.ts';
import { DIVISORS, GRAIN_RATIOS, GREATEST_RATIOS, SHEAR_RATIO } from '../../src/data/wood/strength-ratios.ts';
import { AVERAGE_COV, SURVEYED } from '../../src/data/wood/variability.ts';
import drying from './wood-drying-and-decay.json' with { type: 'json' };
import moisture from './wood-green-moisture.json' with { type: 'json' };
import round from './wood-round-timber.json' with { type: 'json' };
import factors from './wood-sawn-factors.json' with { type: 'json' };
import ratios from './wood-strength-ratios.json' with { type: 'json' };
import surveyed from './wood-surveyed.json' with { type: 'json' };

const isListed = (species: string): boolean => CLEAR_WOOD.some(({ name }) => name === species);

describe('round timber', () => {
  it.each(round.rows)('NDS Supplement (2012 to 2018, from memory): $row', (row) => {
    const ours = ROUND_TIMBER.rows.find(({ name }) => name === row.in.name);
    // piles and poles of one name have one set of values: the pole row stands for both
    expect(ours).toMatchObject({ ...row.out, EminPsi: row.carriedEminPsi ?? row.out.EminPsi });
    expect(ours?.isDoubtful).toBe(row.doubtful ?? false);
    expect(ours?.EminPsi ?? 0).toBeLessThanOrEqual(row.out.EminPsi ?? 0);
    expect(ours?.species.every(isListed)).toBe(true);
  });

  it('no pole row was dropped or added', () => {
    expect(ROUND_TIMBER.rows.length).toBe(round.rows.filter((row) => row.in.table === '6B').length);
  });
});

const WORDS: Readonly<Record<DecayClass, string>> = {
  exceptional: 'exceptionally resistant',
  resistant: 'resistant or very resistant',
  moderate: 'moderately resistant',
  slight: 'slightly or nonresistant',
};

describe('moisture, drying and decay', () => {
  it.each(moisture.rows)('Wood Handbook Table 4-1 and NRS-38 (2009): green moisture of $row', ({ in: given, out }) => {
    const ours = GREEN_MOISTURE.find(({ species }) => species === given.species);
    expect({
      heartwoodPct: ours?.parts?.heartwoodPct ?? null,
      sapwoodPct: ours?.parts?.sapwoodPct ?? null,
      seen: ours?.parts?.seen ?? null,
      wholeTreePct: ours?.wholeTreePct ?? null,
    }).toEqual(out);
  });

  it.each(drying.rows)('Wood Handbook Table 4-3 and MO-312 Table 2-1: $row', ({ in: given, out }) => {
    const ours = DRYING_AND_DECAY.find(({ species }) => species === given.species);
    if (!ours) throw new Error(`${given.species} is missing`);
    const { shrinkage, decay } = ours;
    expect(
      shrinkage && {
        radialPct: shrinkage.radialPct,
        tangentialPct: shrinkage.tangentialPct,
        volumePct: shrinkage.volumePct,
        seen: shrinkage.seen,
      },
    ).toEqual(out.shrinkage);
    expect({ class: WORDS[decay.heartwood], seen: decay.seen }).toEqual(out.decay);
  });

  it('no species was dropped or added', () => {
    expect([GREEN_MOISTURE.length, DRYING_AND_DECAY.length]).toEqual([moisture.rows.length, drying.rows.length]);
    expect(GREEN_MOISTURE.every(({ species }) => isListed(species))).toBe(true);
    expect(DRYING_AND_DECAY.every(({ species }) => isListed(species))).toBe(true);
  });
});

describe('scatter and strength ratios', () => {
  const carried = surveyed.rows.filter((row) => !row.leftOut);

  it.each(carried)('ASTM D2555 (2006) Table 1: $row', ({ in: given, out }) => {
    expect(SURVEYED.find(({ species }) => species === given.species)).toMatchObject(out);
  });

  it('a surveyed species is left out only where the species table has no row of it', () => {
    expect(SURVEYED.length).toBe(carried.length);
    expect(surveyed.rows.filter((row) => row.leftOut).some((row) => isListed(row.in.species))).toBe(false);
  });

  it('Wood Handbook (2010) Table 5-6 and ASTM D2899 (2003): average scatter, and the grade factors of poles', () => {
    expect(AVERAGE_COV).toMatchObject({ bending: 0.16, compressionAlong: 0.18, shear: 0.14 });
    expect({ ...GREATEST_RATIOS, shear: SHEAR_RATIO }).toEqual({
      bending: ratios.poleGrade.bending,
      compression: ratios.poleGrade.compression,
      shear: ratios.poleGrade.shear,
    });
  });

  it.each(ratios.slope)(
    'ASTM D245 Table 1 (from memory): grain 1 in $oneIn',
    ({ oneIn, bendingPct, compressionPct }) => {
      const ours = GRAIN_RATIOS.rows.find((row) => row.oneIn === oneIn);
      expect([ours?.bending, ours?.compression]).toEqual([bendingPct / 100, compressionPct / 100]);
    },
  );

  it('ASTM D245 Table 8 (from memory): divisors of softwoods and hardwoods', () => {
    expect(GRAIN_RATIOS.rows.length).toBe(ratios.slope.length);
    expect(DIVISORS).toMatchObject(ratios.divisors);
  });
});

describe('factors of sawn lumber', () => {
  it.each(factors.size)('NDS Supplement Table 4A size factor, $row', ({ in: given, out }) => {
    expect(SIZE_FACTORS.rows.find((row) => row.upToNominalIn === given.nominalWidthIn)).toMatchObject(out);
  });

  it.each(factors.flatUse)('NDS Supplement Table 4A flat use (from memory), $row', ({ in: given, out }) => {
    const ours = FLAT_USE.rows.find((row) => row.upToNominalIn === given.nominalWidthIn);
    // 4 in. thick and 2 or 3 in. wide is not tabulated: such a stick lies on its wide face only as 3x4
    expect([ours?.thin, out.thick === null ? null : ours?.thick]).toEqual([out.thin, out.thick]);
  });

  it.each(factors.wetService)('Merritt, Table 10.6: wet service of $row', ({ in: given, out }) => {
    expect(WET_SERVICE[given.size === 'dimension' ? 'dimension' : 'timber']).toEqual(out);
  });

  it.each(factors.gravity)('Wood Structural Design Data (1992): gravity of $row', (row) => {
    const ours = LUMBER_GROUPS.find(({ name }) => name === row.in.group);
    expect(ours?.specificGravity ?? null).toBe(row.leftOut ? null : row.out.specificGravity);
  });

  it('NDS 4.3.9: three alike at 24 in. or closer gain 1.15; no row of a factor table was dropped or added', () => {
    expect(REPETITIVE).toMatchObject(factors.repetitive);
    expect([SIZE_FACTORS.rows.length, FLAT_USE.rows.length]).toEqual([factors.size.length, factors.flatUse.length]);
    const known = factors.gravity.filter((row) => !row.leftOut).map((row) => row.in.group);
    // Douglas Fir-South stands in the same list
    expect(LUMBER_GROUPS.map(({ name }) => name).toSorted()).toEqual(known.toSorted());
  });
});
