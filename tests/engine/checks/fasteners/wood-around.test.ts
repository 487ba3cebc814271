import { describe, expect, it } from 'vitest';
import { STEELS } from '../../../../src/data/fasteners/steel.ts';
import { shearAtFasteners, type HungSection } from '../../../../src/engine/checks/fasteners/bolt-near-end.ts';
import { groupActionFactor, type FastenerRow } from '../../../../src/engine/checks/fasteners/group-action.ts';
import { strapPull, type Strap } from '../../../../src/engine/checks/fasteners/steel-strap.ts';
import { groupTearOut, netArea, netSectionPull, rowTearOut } from '../../../../src/engine/checks/fasteners/tear-out.ts';
import { MisuseError } from '../../../../src/engine/errors.ts';
import { redoFaults } from '../redo-step.ts';

const ROW: FastenerRow = {
  nominalIn: 0.5,
  count: 3,
  spacingIn: 2,
  main: { EPsi: 1_200_000, areaIn2: 50 },
  side: { EPsi: 1_200_000, areaIn2: 10 },
  sideMaterial: 'wood',
};

describe('group action (NDS 11.3.6)', () => {
  it('shares the load as springs in a row do (elastic solution of three equal springs)', () => {
    // Independent of the printed equation: slip of each fastener times gamma is its load; the pieces stretch between them.
    // With r1, r2, r3 the loads: slip2 - slip1 = s (r1 / EAm - (R - r1) / EAs) and so on; the most loaded one is at its limit.
    const gamma = 180_000 * 0.5 ** 1.5;
    const [EAm, EAs, s] = [1.2e6 * 50, 1.2e6 * 10, 2];
    // Unknown r1, r2, r3 with sum 1: two conditions of fit, solved by elimination.
    const a = gamma * s * (1 / EAm + 1 / EAs);
    const b = gamma * s * (1 / EAs);
    // r2 = r1 + a r1 - b ; r3 = r2 + a (r1 + r2) - b
    // sum: r1 + r2 + r3 = 1 with r2 = r1 (1 + a) - b and r3 = r2 (1 + a) + a r1 - b
    const c2 = 1 + a;
    const c3 = (1 + a) ** 2 + a;
    const d3 = -b * (1 + a) - b;
    const r1 = (1 + b - d3) / (1 + c2 + c3);
    const loads = [r1, r1 * c2 - b, r1 * c3 + d3];
    expect(loads.reduce((sum, r) => sum + r, 0)).toBeCloseTo(1, 12);
    expect(groupActionFactor(ROW)).toBeCloseTo(1 / (3 * Math.max(...loads)), 9);
  });

  it('is 1 for one fastener and for shanks thinner than 1/4 in.', () => {
    expect(groupActionFactor({ ...ROW, count: 1 })).toBe(1);
    expect(groupActionFactor({ ...ROW, nominalIn: 0.19 })).toBe(1);
  });

  it('never grows with more fasteners or a wider spacing', () => {
    const byCount = [1, 2, 3, 4, 6, 10].map((count) => groupActionFactor({ ...ROW, count }));
    expect([...byCount].sort((a, b) => b - a)).toEqual(byCount);
    const bySpacing = [1.5, 2, 4, 8].map((spacingIn) => groupActionFactor({ ...ROW, spacingIn }));
    expect([...bySpacing].sort((a, b) => b - a)).toEqual(bySpacing);
  });

  it('writes steps that another calculator redoes and refuses half a fastener', () => {
    expect(redoFaults((note) => groupActionFactor(ROW, note))).toEqual([]);
    expect(redoFaults((note) => groupActionFactor({ ...ROW, count: 1 }, note))).toEqual([]);
    expect(() => groupActionFactor({ ...ROW, count: 1.5 })).toThrow(MisuseError);
  });
});

describe('wood that tears around a group (NDS Appendix E, from memory)', () => {
  const row = { count: 3, thicknessIn: 3.5, criticalIn: 4 };

  it('net section by hand: 3-1/2 by 9-1/2 in. less two holes of 9/16 in., Ft 575 psi', () => {
    const hole = { diameterIn: 0.5625, lengthIn: 3.5 };
    // 33.25 - 2 x 1.96875 = 29.3125 in2; x 575 = 16,854.7 lb
    expect(netArea(33.25, [hole, hole])).toBeCloseTo(29.3125, 10);
    expect(netSectionPull(575, netArea(33.25, [hole, hole]))).toBeCloseTo(16_854.6875, 6);
    expect(() => netArea(3.5, [hole, hole])).toThrow(MisuseError);
  });

  it('row by hand: three bolts, 3-1/2 in. of wood, 4 in. apart, Fv 180 psi x 1.6', () => {
    // two planes of shear, each t x s x n at half of the peak: 3 x 288 x 3.5 x 4 = 12,096 lb
    expect(rowTearOut(288, row)).toBeCloseTo(2 * (288 / 2) * (3 * 3.5 * 4), 9);
    expect(rowTearOut(288, row)).toBeCloseTo(12_096, 9);
  });

  it('group by hand: two such rows with 7 in2 between them, Ft 920 psi', () => {
    expect(groupTearOut(288, 920, { first: row, last: row }, 7)).toBeCloseTo(12_096 + 920 * 7, 9);
    // one row alone, nothing between: the row itself
    expect(groupTearOut(288, 920, { first: row, last: row }, 0)).toBeCloseTo(rowTearOut(288, row), 9);
  });

  it('writes steps that another calculator redoes', () => {
    expect(redoFaults((note) => netArea(33.25, [{ diameterIn: 0.5, lengthIn: 3 }], note))).toEqual([]);
    expect(redoFaults((note) => netSectionPull(575, 29, note))).toEqual([]);
    expect(redoFaults((note) => groupTearOut(288, 920, { first: row, last: row }, 7, note))).toEqual([]);
    expect(() => rowTearOut(288, { ...row, criticalIn: 0 })).toThrow(MisuseError);
  });
});

describe('shear of a stick that hangs on fasteners (NDS 3.4.3.3, from memory)', () => {
  const SAWN: HungSection = { shape: 'rectangular', depthIn: 9.25, breadthIn: 1.5, lostIn: 3.25, toEndIn: 10 };

  it('by hand: 2x10, 6 in. left on the loaded side, Fv 180 psi', () => {
    // within 5 d: 2/3 x 180 x 1.5 x 6 x (6 / 9.25)^2 = 454.4 lb; beyond it 1080 lb
    expect(shearAtFasteners(180, SAWN)).toBeCloseTo((1080 * 36) / 85.5625, 9);
    expect(shearAtFasteners(180, { ...SAWN, toEndIn: 46.25 })).toBeCloseTo(1080, 9);
  });

  it('of a round log counts the segment that is left (circle less its segment, by integral)', () => {
    const log: HungSection = { ...SAWN, shape: 'round', depthIn: 10, breadthIn: 10, lostIn: 3 };
    let area = 0;
    for (let i = 0; i < 200_000; i += 1) {
      const z = -5 + (7 * (i + 0.5)) / 200_000;
      area += 2 * Math.sqrt(25 - z * z) * (7 / 200_000);
    }
    expect(shearAtFasteners(150, log) / ((2 / 3) * 150 * area * 0.7 ** 2)).toBeCloseTo(1, 6);
    expect(redoFaults((note) => shearAtFasteners(150, log, note))).toEqual([]);
  });

  it('less depth left never carries more, and none left is refused', () => {
    const values = [0.5, 1, 3, 6, 9].map((lostIn) => shearAtFasteners(180, { ...SAWN, lostIn }));
    expect([...values].sort((a, b) => b - a)).toEqual(values);
    expect(() => shearAtFasteners(180, { ...SAWN, lostIn: 9.25 })).toThrow(MisuseError);
    expect(redoFaults((note) => shearAtFasteners(180, SAWN, note))).toEqual([]);
  });
});

describe('steel strap (AISI S100 D2, D3, from memory)', () => {
  const STRAP: Strap = { widthIn: 1.25, thicknessIn: 0.0356, steel: STEELS.strap, fastenerIn: 0.148, abreast: 1 };

  it('by hand: 1-1/4 in. of 20 gage, grade 33, one 10d nail abreast', () => {
    // gross 0.0356 x 1.25 x 33000 / 1.67 = 879.3 lb; net 0.0356 x (1.25 - 0.17925) x 45000 / 2 = 857.7 lb
    expect(strapPull(STRAP)).toEqual({ ok: true, pullLb: expect.closeTo(857.671, 3) });
  });

  it('without holes yields whole', () => {
    expect(strapPull({ ...STRAP, abreast: 0 })).toEqual({ ok: true, pullLb: expect.closeTo(879.3, 1) });
  });

  it('refuses holes that take the whole strap, and writes steps that another calculator redoes', () => {
    const answer = strapPull({ ...STRAP, abreast: 7 });
    expect(answer.ok ? 'ok' : answer.reason.code).toBe('strapHolesTakeAll');
    expect(redoFaults((note) => strapPull(STRAP, note))).toEqual([]);
    expect(() => strapPull({ ...STRAP, abreast: 0.5 })).toThrow(MisuseError);
  });
});
