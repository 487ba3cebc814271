import * as fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { cutToFit, wrapToFit } from '../../../src/ui/sheet/fit-text.ts';
import { lineWidth } from '../../../src/ui/sheet/type-width.ts';

const texts = fc.oneof(
  fc.string({ maxLength: 200 }),
  fc.constantFrom('W'.repeat(120), '森'.repeat(60), 'a '.repeat(90)),
);
const widths = fc.double({ min: 20, max: 400, noNaN: true });

describe('texts fitted to their place', () => {
  it('no line is wider than its place, and there are no more than asked for', () => {
    fc.assert(
      fc.property(texts, widths, fc.integer({ min: 1, max: 6 }), (text, width, most) => {
        const lines = wrapToFit(text, width, 8, most);
        expect(lines.length).toBeLessThanOrEqual(most);
        for (const line of lines) expect(lineWidth(line, 8)).toBeLessThanOrEqual(width);
      }),
      { seed: 20261125, numRuns: 300 },
    );
  });

  it('nothing is lost where there are lines enough', () => {
    fc.assert(
      fc.property(texts, widths, (text, width) => {
        const bare = (s: string): string => s.replace(/\s/g, '');
        expect(bare(wrapToFit(text, width, 8, 500).join(''))).toBe(bare(text));
      }),
      { seed: 20261126, numRuns: 300 },
    );
  });

  it('a text that fits is left as it is, one that does not ends in an ellipsis', () => {
    expect(cutToFit('beam A', 60, 8)).toBe('beam A');
    expect(cutToFit('W'.repeat(120), 60, 8)).toMatch(/^W+…$/);
  });
});
