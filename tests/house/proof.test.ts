import { describe, expect, it } from 'vitest';
import { countFromMemory, proofsIn } from '../../scripts/proof-scan.mjs';

describe('the count of proofs', () => {
  it('takes a comment with a test of that rule beside it', () => {
    const text = [
      '// proof [beam.bending]: printed - a table, row 3',
      "it('[beam.bending] matches a table', () => {});",
    ].join('\n');
    const { proofs, titled } = proofsIn(text, 'a.test.ts');
    expect(proofs).toEqual([
      { rule: 'beam.bending', kind: 'printed', words: 'a table, row 3', file: 'a.test.ts', hasTest: true },
    ]);
    expect(titled).toEqual(['beam.bending']);
  });

  it('does not take a comment without a test', () => {
    const text = "// proof [beam.bending]: closed-form - statics\nit('matches a table', () => {});";
    expect(proofsIn(text, 'a.test.ts').proofs.map(({ hasTest }) => hasTest)).toEqual([false]);
  });

  it('does not take a test title in a comment of another rule', () => {
    const text = "// proof [post.push]: printed - book\nit('[beam.bending] matches a table', () => {});";
    expect(proofsIn(text, 'a.test.ts').proofs[0]?.hasTest).toBe(false);
  });

  it('reads titles of tests over rows and with several rules', () => {
    const text = [
      "it.each(rows)('[post.push] agrees with %s', () => {});",
      'it(\n  "[beam.shear] [beam.bending] with what isn\'t easy", () => {});',
    ].join('\n');
    expect(proofsIn(text, 'a.test.ts').titled).toEqual(['post.push', 'beam.shear', 'beam.bending']);
  });

  it('counts every marked row once', () => {
    const row = { value: 1, seen: 'memory' };
    const data = { A: [row, { value: 2, seen: 'printed' }], B: { again: row, clause: { memory: true } } };
    expect(countFromMemory(data, new Set())).toBe(2);
  });
});
