import { describe, expect, it } from 'vitest';
import type { LoadOnGrain } from '../../../../src/data/fasteners/placement.ts';
import { geometryFactor, type FastenerPlace } from '../../../../src/engine/checks/fasteners/placement.ts';
import { MisuseError } from '../../../../src/engine/errors.ts';
import { stepsOf } from '../../../../src/engine/note.ts';
import { redoFaults } from '../redo-step.ts';

/** 1/2 in. bolts at full distances for every load: 7 D to the end, 4 D to the edges and in the row. */
const FULL: FastenerPlace = {
  nominalIn: 0.5,
  isHardwood: false,
  isPrebored: false,
  loads: ['towardEnd'],
  endIn: 3.5,
  loadedEdgeIn: 2,
  unloadedEdgeIn: 2,
  inRowIn: 2,
  rowsApartIn: null,
  outerRowsIn: null,
  hasOnePlate: false,
  slenderness: 4,
};
const asked = (change: Partial<FastenerPlace>) => geometryFactor({ ...FULL, ...change });
const codeOf = (change: Partial<FastenerPlace>) => {
  const answer = asked(change);
  return answer.ok ? 'ok' : answer.reason.code;
};

describe('geometry factor (NDS 12.5.1, Tables 12.5.1A to D, from memory)', () => {
  it.each([
    ['toward the end at 7 D', { endIn: 3.5 }, 1],
    ['toward the end at 5 D', { endIn: 2.5 }, 5 / 7],
    ['toward the end at 3.5 D', { endIn: 1.75 }, 0.5],
    ['toward the end at 5 D in hardwood', { endIn: 2.5, isHardwood: true }, 1],
    ['toward the end at 2.5 D in hardwood', { endIn: 1.25, isHardwood: true }, 0.5],
    ['away from the end at 4 D', { loads: ['awayFromEnd'], endIn: 2 }, 1],
    ['away from the end at 2 D', { loads: ['awayFromEnd'], endIn: 1 }, 0.5],
    ['across at 3 D', { loads: ['across'], endIn: 1.5 }, 0.75],
    ['both ways the harder one counts', { loads: ['awayFromEnd', 'towardEnd'], endIn: 2 }, 4 / 7],
    ['3 D in the row', { inRowIn: 1.5 }, 0.75],
    ['3 D in a row across the grain', { loads: ['across'], inRowIn: 1.5 }, 1],
    ['the least of end and row, not their product', { endIn: 2.5, inRowIn: 1.5 }, 5 / 7],
    ['farther than full gains nothing', { endIn: 10, inRowIn: 8 }, 1],
    ['a single fastener', { inRowIn: null }, 1],
  ] satisfies [string, Partial<FastenerPlace>, number][])('%s', (_what, change, Cdelta) => {
    expect(asked(change)).toEqual({ ok: true, Cdelta: expect.closeTo(Cdelta, 12) });
  });

  it.each([
    ['under 3.5 D to the end', { endIn: 1.74 }, 'fastenerNearEnd'],
    ['under 1.5 D to an edge along the grain', { unloadedEdgeIn: 0.74 }, 'fastenerNearEdge'],
    ['1.5 D to the edges along the grain', { loadedEdgeIn: 0.75, unloadedEdgeIn: 0.75 }, 'ok'],
    ['under 4 D to the loaded edge', { loads: ['across'], loadedEdgeIn: 1.99 }, 'fastenerNearLoadedEdge'],
    ['1.5 D to the unloaded edge', { loads: ['across'], unloadedEdgeIn: 0.75 }, 'ok'],
    ['under 3 D in the row', { inRowIn: 1.49 }, 'fastenersNearInRow'],
    ['under 1.5 D between rows', { rowsApartIn: 0.74 }, 'fastenerRowsNear'],
    ['1.5 D between rows', { rowsApartIn: 0.75 }, 'ok'],
    ['rows loaded across, stout: 2.5 D', { loads: ['across'], slenderness: 2, rowsApartIn: 1.25 }, 'ok'],
    // (5 l + 10 D) / 8 with l = 4 D is 3.75 D
    ['rows loaded across, l/D 4: 3.75 D', { loads: ['across'], slenderness: 4, rowsApartIn: 1.875 }, 'ok'],
    ['rows loaded across, l/D 4, less', { loads: ['across'], slenderness: 4, rowsApartIn: 1.87 }, 'fastenerRowsNear'],
    ['rows loaded across, l/D 9: 5 D', { loads: ['across'], slenderness: 9, rowsApartIn: 2.5 }, 'ok'],
    ['rows loaded across, l/D 9, less', { loads: ['across'], slenderness: 9, rowsApartIn: 2.49 }, 'fastenerRowsNear'],
    ['slender, rows 5 in. apart, edge 2 in.', { slenderness: 7, rowsApartIn: 5 }, 'fastenerSlenderNearEdge'],
    ['slender, rows 4 in. apart, edge 2 in.', { slenderness: 7, rowsApartIn: 4 }, 'ok'],
    ['rows over 5 in. apart on one plate', { outerRowsIn: 5.1, hasOnePlate: true }, 'fastenerRowsApart'],
    ['rows over 5 in. apart on plates of their own', { outerRowsIn: 5.1 }, 'ok'],
  ] satisfies [string, Partial<FastenerPlace>, string][])('%s: %s', (_what, change, code) => {
    expect(codeOf(change)).toBe(code);
  });

  it('says what was found and what is wanted', () => {
    expect(asked({ endIn: 1.5 })).toEqual({
      ok: false,
      reason: { code: 'fastenerNearEnd', values: { gotIn: 1.5, leastIn: 1.75, diameters: 3.5 } },
    });
  });

  it('between half and full never falls as the distance grows', () => {
    for (const load of ['towardEnd', 'awayFromEnd', 'across'] satisfies LoadOnGrain[]) {
      const factors = [1.75, 2, 2.5, 3, 3.5, 4].map((endIn) => asked({ loads: [load], endIn }));
      const values = factors.map((answer) => (answer.ok ? answer.Cdelta : NaN));
      expect([...values].sort((a, b) => a - b)).toEqual(values);
      expect(Math.min(...values)).toBeGreaterThanOrEqual(0.5);
    }
  });

  it('writes steps that another calculator redoes, one for each distance', () => {
    const place = { ...FULL, loads: ['towardEnd', 'across'], endIn: 2.5 } as const;
    expect(redoFaults((note) => geometryFactor(place, note))).toEqual([]);
    expect(stepsOf((note) => geometryFactor(place, note)).steps).toHaveLength(5);
    expect(redoFaults((note) => geometryFactor({ ...FULL, nominalIn: 0.131, endIn: 3 }, note))).toEqual([]);
  });

  it('refuses distances that are none', () => {
    expect(() => asked({ endIn: -1 })).toThrow(MisuseError);
    expect(() => asked({ nominalIn: 0 })).toThrow(MisuseError);
  });
});

describe('a lag screw that is only pulled (NDS Table 12.5.1E, from memory)', () => {
  const PULLED: Partial<FastenerPlace> = { loads: [], endIn: 2, loadedEdgeIn: 0.75, unloadedEdgeIn: 0.75, inRowIn: 2 };

  it.each([
    ['4 D to the end, 1.5 D to the edges, 4 D in the row', {}, 'ok'],
    ['under 4 D to the end', { endIn: 1.99 }, 'fastenerNearEnd'],
    ['under 1.5 D to an edge', { loadedEdgeIn: 0.74 }, 'fastenerNearEdge'],
    ['under 4 D in the row', { inRowIn: 1.99 }, 'fastenersNearInRow'],
    ['under 4 D between rows', { rowsApartIn: 1.99 }, 'fastenerRowsNear'],
  ] satisfies [string, Partial<FastenerPlace>, string][])('%s: %s', (_what, change, code) => {
    expect(codeOf({ ...PULLED, ...change })).toBe(code);
  });

  it('has no geometry factor', () => {
    expect(asked(PULLED)).toEqual({ ok: true, Cdelta: 1 });
    expect(redoFaults((note) => geometryFactor({ ...FULL, ...PULLED }, note))).toEqual([]);
  });
});

describe('shanks thinner than 1/4 in. (distances of the NDS commentary, from memory, kept as an own rule)', () => {
  const NAIL: Partial<FastenerPlace> = {
    nominalIn: 0.1,
    loadedEdgeIn: 0.25,
    unloadedEdgeIn: 0.25,
    endIn: 1.5,
    inRowIn: 1.5,
  };

  it.each([
    ['driven, 15 D to the end and in the row', {}, 'ok'],
    ['driven, under 15 D to the end', { endIn: 1.49 }, 'fastenerNearEnd'],
    ['prebored, 10 D to the end', { endIn: 1, inRowIn: 1, isPrebored: true }, 'ok'],
    ['driven, loaded away from the end: 10 D', { loads: ['awayFromEnd'], endIn: 1 }, 'ok'],
    ['under 2.5 D to the edge', { unloadedEdgeIn: 0.24 }, 'fastenerNearEdge'],
    ['in a row across the grain: 10 D', { loads: ['across'], inRowIn: 1 }, 'ok'],
    ['driven rows under 5 D apart', { rowsApartIn: 0.49 }, 'fastenerRowsNear'],
    ['prebored rows 3 D apart', { rowsApartIn: 0.3, isPrebored: true }, 'ok'],
  ] satisfies [string, Partial<FastenerPlace>, string][])('%s: %s', (_what, change, code) => {
    expect(codeOf({ ...NAIL, ...change })).toBe(code);
  });

  it('have no geometry factor', () => {
    expect(asked({ ...NAIL, endIn: 1.6 })).toEqual({ ok: true, Cdelta: 1 });
  });
});
