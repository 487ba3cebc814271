import { describe, expect, it } from 'vitest';
import { placeShelter } from '../../../src/engine/geometry/place-shelter.ts';
import { rowsAcross } from '../../../src/engine/geometry/rows.ts';
import { solidsAcross } from '../../../src/engine/loads/solids-across.ts';
import type { Project } from '../../../src/engine/project/model.ts';
import { plainShed, WEIGHT, type Measures } from '../../support/plain-shed.ts';
import { tiedShed } from '../../support/tied-shed.ts';
import { loadBench } from '../frame/line-bench.ts';
import { acrossBench } from './row-bench.ts';

const rowsOf = (project: Project) => rowsAcross(placeShelter(project).shelter);

describe('rows across the lines', () => {
  it('are the posts that ties join, in order across; what no tie joins stands by its x', () => {
    expect(rowsOf(tiedShed()).map((row) => [row.id, row.label, row.ties.length, row.braces.length])).toEqual([
      ['row:post-0-0', 'row A1 B1', 1, 2],
      ['row:post-0-1', 'row A2 B2', 1, 2],
    ]);
    expect(rowsOf(plainShed()).map((row) => [row.label, row.ties.length])).toEqual([
      ['row A1 B1', 0],
      ['row A2 B2', 0],
    ]);
  });

  it('part where posts do not stand square across from one another', () => {
    const plain = plainShed();
    const apart = plain.members.map((m) => (m.role === 'post' && m.line === 'line-1' ? { ...m, xIn: m.xIn + 9 } : m));
    expect(rowsOf({ ...plain, members: apart }).map((row) => row.label)).toEqual([
      'row A1',
      'row B1',
      'row A2',
      'row B2',
    ]);
  });

  it('of three lines are one row where the ties follow one another', () => {
    const three: Partial<Measures> = { lineYsIn: [0, 84, 168], bearing: { line: 0, of: 'bearing', zIn: 150 } };
    const tied = tiedShed({ at: [0], bracesAt: [] }, three);
    const tie = tied.members.find((m) => m.role === 'tie')!;
    const more = { ...tie, id: 'tie-more', fromPost: 'post-1-0', toPost: 'post-2-0' };
    const rows = rowsOf({ ...tied, members: [...tied.members, more] });
    expect(rows.map((row) => [row.label, row.ties.map((t) => t.id)])).toEqual([
      ['row A1 B1 C1', ['tie-0', 'tie-more']],
      ['row A2 B2 C2', []],
    ]);
  });
});

describe('what runs across', () => {
  // half of an even tie of 8 in. over 120 in. to each post, a brace of 5 in. whole to its own
  it('weighs on the posts that it joins', () => {
    const tied = loadBench(tiedShed()).loading.loads.deadLb;
    const bare = loadBench(plainShed()).loading.loads.deadLb;
    const area = (d: number): number => (Math.PI * d * d) / 4;
    const brace = placeShelter(tiedShed()).shelter.braces.find((b) => b.id === 'across-0-near')!;
    const each = (WEIGHT.heavy / 1728) * ((area(8) * 120) / 2 + area(5) * brace.lengthIn);
    expect(tied - bare).toBeCloseTo(2 * each, 6);
  });

  it('is met by the wind across end on: a brace by its height', () => {
    const { givens } = acrossBench(tiedShed({}, { bracesAt: [] }));
    const solids = solidsAcross(givens.shelter, givens.site);
    const braces = givens.shelter.braces.map((b) => (5 * (b.topPoint.zIn - b.postPoint.zIn)) / 144);
    const met = solids.filter((s) => Math.abs(s.areaFt2 - braces[0]!) < 1e-9);
    expect(met).toHaveLength(4);
  });
});
