import { describe, expect, it } from 'vitest';
import { SNOW_THRESHOLDS } from '../../../src/data/loads/snow-thresholds.ts';
import type { RoofForm } from '../../../src/data/loads/free-roof-main.ts';
import type { Prepared } from '../../../src/engine/givens.ts';
import type { Shelter } from '../../../src/engine/geometry/shelter.ts';
import { ridgeSnow } from '../../../src/engine/loads/ridge-snow.ts';
import { beside, onLines, prepared, project, snowCaseOf, total } from './snow-support.ts';

const PG = 71;
const GAMMA = 0.13 * PG + 14;
const gable = prepared(beside(project('gable'), null, PG));
const [minus, plus] = gable.shelter.planes.toSorted((a, b) => a.downY - b.downY);

const unbalanced = ({ roof }: Prepared): readonly string[] =>
  roof.filter((c) => c.id.startsWith('snow-unbalanced')).map((c) => c.id);

/** The gable with every rafter a sawn stick of one section, which makes it simple and prismatic. */
const SAWN = {
  kind: 'sawn',
  breadthIn: 3.5,
  depthIn: 7.25,
  lay: 'edge',
  plies: 1,
  species: 'Western larch',
  grade: null,
  use: 'wet',
} as const;
const sawn = (shelter: Shelter): Shelter => ({
  ...shelter,
  rafters: shelter.rafters.map((r) => ({ ...r, stick: SAWN })),
});
const poles = (shelter: Shelter): Shelter => ({
  ...shelter,
  rafters: shelter.rafters.map((r) => ({
    ...r,
    stick: {
      kind: 'round',
      logId: 'pole',
      woodId: 'wood',
      profile: [0, 200].map((atIn) => ({ atIn, diameterIn: 6 })),
      buttAt: 'start',
      flatIn: 0,
    } as const,
  })),
});
const SNOW = { groundSnowPsf: PG, is: 1, ce: 1, slopedPsf: 60, balancedPsf: 60 };
const answer = (shelter: Shelter, form: RoofForm | null = 'pitched') => ridgeSnow(shelter, form, SNOW);
const withPlanes = (shelter: Shelter, change: Partial<Shelter['planes'][number]>): Shelter => ({
  ...shelter,
  planes: shelter.planes.map((p) => ({ ...p, ...change })),
});

describe('snow carried over the ridge of a gable', () => {
  it('[ASCE 7-16 7.6.1] comes from both sides, each a case of its own', () => {
    expect(new Set(unbalanced(gable))).toEqual(new Set(gable.shelter.planes.map((p) => `snow-unbalanced-${p.id}`)));
  });

  it('[ASCE 7-16 7.6.1] on a narrow gable of sawn rafters is the ground snow on one side and none on the other', () => {
    for (const c of answer(sawn(gable.shelter)).cases) {
      const lee = gable.shelter.planes.find((p) => c.id.endsWith(p.id))!;
      const there = gable.shelter.planes.map((p) => c.evenPsf(p.id));
      expect(there).toEqual(gable.shelter.planes.map((p) => (p.id === lee.id ? PG : 0)));
      expect(c.surplus).toBeNull();
    }
  });

  // hd with lu = 20 ft: 0.43 x 20^(1/3) x 3 - 1.5; strip hd γ / √S, S = 12 / rise, over 8 √S hd / 3 from the ridge
  it('[ASCE 7-16 7.6.1] on poles, which taper, is 0.3 of it on one side and all with a strip beside the ridge', () => {
    const hd = 0.43 * Math.cbrt(20) * 3 - 1.5;
    const S = 12 / plus!.risePer12;
    const [c] = answer(poles(gable.shelter)).cases.filter(({ id }) => id.endsWith(plus!.id));
    expect(c!.evenPsf(plus!.id)).toBe(60);
    expect(c!.evenPsf(minus!.id)).toBeCloseTo(18, 12);
    expect(c!.surplus!.zeroIn).toBe(plus!.highYIn);
    expect(c!.surplus!.toward).toBe(1);
    expect(c!.surplus!.bands).toHaveLength(1);
    const [band] = c!.surplus!.bands;
    expect(band!.fromPsf).toBeCloseTo((hd * GAMMA) / Math.sqrt(S), 9);
    expect(band!.toPsf).toBe(band!.fromPsf);
    expect(band!.toIn).toBeCloseTo(((8 * Math.sqrt(S) * hd) / 3) * 12, 9);
  });

  it('[ASCE 7-16 7.6.1] counts as narrow up to 20 ft from eave to ridge', () => {
    expect(SNOW_THRESHOLDS.narrowGable.at).toBe(20);
    const isNarrow = (runIn: number): boolean =>
      answer(withPlanes(sawn(gable.shelter), { runIn })).cases.every((c) => c.surplus === null);
    expect([240, 240.001].map(isNarrow)).toEqual([true, false]);
  });

  it('[ASCE 7-16 7.6.1, 7.5.1] is asked from 1/2 to 7 in 12, and says why it is left out; partial snow only below', () => {
    const asked = [0.49, 0.5, 7, 7.01].map((risePer12) => {
      const { cases, isPartialAcross, leftOut } = answer(withPlanes(sawn(gable.shelter), { risePer12 }));
      return [cases.length, isPartialAcross, leftOut.map(({ code }) => code).join()];
    });
    expect(asked).toEqual([
      [0, true, 'unbalancedBySlope'],
      [2, false, 'partialFromRidgeToEave'],
      [2, false, 'partialFromRidgeToEave'],
      [0, false, 'unbalancedBySlope'],
    ]);
    expect(answer(gable.shelter, 'monoslope').leftOut.map(({ code }) => code)).toEqual(['unbalancedWithoutRidge']);
    expect(answer(gable.shelter, null).cases).toEqual([]);
  });

  it('lies on the lines whole, and from the other side in the mirror', () => {
    const sums = gable.shelter.planes.map((lee) => {
      const c = snowCaseOf(gable, `snow-unbalanced-${lee.id}`);
      return { lee, lines: onLines(gable, c) };
    });
    const width = gable.shelter.planAlongIn;
    for (const { lee, lines } of sums) {
      const uneven = gable.site.uneven.cases.find((c) => c.id.endsWith(lee.id))!;
      const even = gable.shelter.planes.reduce((sum, p) => sum + (uneven.evenPsf(p.id) * p.runIn * width) / 144, 0);
      const strip = (uneven.surplus?.bands ?? []).reduce(
        (sum, b) => sum + (b.fromPsf * Math.min(b.toIn, lee.runIn) * width) / 144,
        0,
      );
      expect(total(lines)).toBeCloseTo(even + strip, 4);
    }
    const eaveOf = (i: number) => sums[i]!.lines[sums[i]!.lee.onLines.at(-1)!]!;
    const sameRun = Math.abs(minus!.runIn - plus!.runIn) < 1e-9;
    expect(sameRun).toBe(true);
    expect(eaveOf(0)).toBeCloseTo(eaveOf(1), 4);
  });
});
