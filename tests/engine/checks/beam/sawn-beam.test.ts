import { describe, expect, it } from 'vitest';
import type { Project, SawnStock } from '../../../../src/engine/project/model.ts';
import { exampleText, soundProject } from '../../../support/files.ts';
import { evaluated, off, rowOf } from '../../whole/whole.ts';

const shed = soundProject(exampleText('firewood-shed'));

/** The shed with a sawn beam on its high line, home-sawn larch. */
const withBeam = (breadthIn: number, depthIn: number): Project => {
  const stock: SawnStock = {
    kind: 'sawn',
    breadthIn,
    depthIn,
    lay: 'edge',
    plies: 1,
    species: 'Western larch',
    grade: null,
    use: 'wet',
  };
  return {
    ...shed,
    members: shed.members.map((m) => (m.id === 'beam-high' && m.role === 'beam' ? { ...m, own: { stock } } : m)),
  };
};

/** NDS 3.3.3 as printed, with the effective length le. */
function printedCL(le: number, b: number, d: number, Emin: number, FbStar: number): number {
  const a = (1.2 * Emin) / ((le * d) / (b * b)) / FbStar;
  return (1 + a) / 1.9 - Math.sqrt(((1 + a) / 1.9) ** 2 - a / 0.95);
}

// Derived larch, not graded: Fb = (7700 - 1.645 x 0.16 x 7700) x 0.40 x 0.82 / 2.1; Emin = 0.3653 x 0.8 x 1.46e6, down
const FB = ((1 - 1.645 * 0.16) * 7700 * 0.4 * 0.82) / 2.1;
const EMIN = 420_000;
const allowed = (project: Project, stretch: string): { readonly value: number; readonly CD: number } => {
  const row = rowOf(evaluated(project), `beam.bending/beam-high/${stretch}`);
  const CD = row.combinationId.startsWith('3-snow') ? 1.15 : 1.6;
  return { value: row.capacity!.value, CD };
};

describe('a sawn beam deeper than wide', () => {
  it('[beam.bending] loses CL of NDS 3.3.3 over the whole span between posts', () => {
    const { value, CD } = allowed(withBeam(3.5, 11.25), 'post-1~post-2');
    // lu / d = 156 / 11.25 = 13.9: le = 1.63 lu + 3 d
    const CL = printedCL(1.63 * 156 + 3 * 11.25, 3.5, 11.25, EMIN, FB * CD);
    expect(off(value, FB * CD * CL)).toBeLessThan(1e-9);
    expect(CL).toBeLessThan(0.98);
  });

  it('[beam.bending] loses CL of a cantilever loaded at its tip past the last post', () => {
    const { value, CD } = allowed(withBeam(3.5, 11.25), 'post-2~plus');
    // lu / d = 30 / 11.25 = 2.7: le = 1.87 lu
    expect(off(value, FB * CD * printedCL(1.87 * 30, 3.5, 11.25, EMIN, FB * CD))).toBeLessThan(1e-9);
  });

  it('[beam.bending] loses nothing where it is as wide as deep (3.3.3.1)', () => {
    const { value, CD } = allowed(withBeam(11.25, 11.25), 'post-1~post-2');
    expect(off(value, FB * CD)).toBeLessThan(1e-9);
  });

  it('[beam.bending] is outside the method with a slenderness ratio over 50 (3.3.3.7)', () => {
    // sqrt((1.63 x 156 + 48) x 16 / 1.3^2) = 53
    const row = rowOf(evaluated(withBeam(1.3, 16)), 'beam.bending/beam-high/post-1~post-2');
    expect(row.status).not.toBe('pass');
    expect(row.reason?.code).toBe('rollsOver');
  });
});
