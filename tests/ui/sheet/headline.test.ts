import * as fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { headline } from '../../../src/ui/sheet/headline.ts';

const counts = fc.record({
  pass: fc.nat({ max: 400 }),
  fail: fc.nat({ max: 3 }),
  notGiven: fc.nat({ max: 3 }),
  outside: fc.nat({ max: 3 }),
});

describe('the verdict at the head of the sheet', () => {
  it('says that all pass only when nothing fails, nothing is missing and nothing is outside the method', () => {
    fc.assert(
      fc.property(counts, (n) => {
        const isAll = n.fail === 0 && n.notGiven === 0 && n.outside === 0 && n.pass > 0;
        expect(/^All \d+ checks? pass\.$/.test(headline(n))).toBe(isAll);
      }),
      { seed: 20261125, numRuns: 300 },
    );
  });

  it('names what fails before what is missing', () => {
    expect(headline({ pass: 3, fail: 1, notGiven: 2, outside: 1 })).toBe('Does not pass: 1 check fails.');
    expect(headline({ pass: 3, fail: 50, notGiven: 0, outside: 0 })).toBe('Does not pass: 50 checks fail.');
    expect(headline({ pass: 3, fail: 0, notGiven: 5, outside: 0 })).toBe('Not complete: 5 not given. No check fails.');
    expect(headline({ pass: 3, fail: 0, notGiven: 7, outside: 1 })).toBe(
      'Not complete: 7 not given, 1 outside the method. No check fails.',
    );
    expect(headline({ pass: 240, fail: 0, notGiven: 0, outside: 0 })).toBe('All 240 checks pass.');
  });

  it('does not call a shelter without a single check passed', () => {
    expect(headline({ pass: 0, fail: 0, notGiven: 0, outside: 0 })).toBe('Not complete: nothing is checked.');
  });
});
