import { describe, expect, it } from 'vitest';
import { columns, wrapped } from '../../src/terminal/columns.ts';
import { amount, figure, ratioText } from '../../src/terminal/figures.ts';
import { quantity } from '../../src/engine/units.ts';

describe('figures in the terminal', () => {
  it('a ratio is rounded up: what shows 1.00 is at most one', () => {
    expect([0, 0.001, 0.99, 0.9901, 1, 1.0000001, 1.284].map(ratioText)).toEqual([
      '0.00',
      '0.01',
      '0.99',
      '1.00',
      '1.00',
      '1.01',
      '1.29',
    ]);
    expect([null, NaN, Infinity].map(ratioText)).toEqual(['-', '-', '-']);
  });

  it('a number keeps six figures, grouped by thousands; none shows as a dash', () => {
    expect([1234567.8, 0.000012345678, -42, NaN].map(figure)).toEqual(['1,234,570', '0.0000123457', '-42', '-']);
    expect([amount(quantity(1534.142, 'psi')), amount(quantity(0.5, '1'))]).toEqual(['1,534.14 psi', '0.5']);
  });

  it('columns line up and end without blanks', () => {
    expect(
      columns(
        [
          ['a', '1', 'x'],
          ['bbb', '22', ''],
        ],
        ['left', 'right'],
      ),
    ).toEqual(['a     1  x', 'bbb  22']);
  });

  it('a long sentence breaks between words, indented', () => {
    expect(wrapped('one two three', 2, 9)).toEqual(['  one two', '  three']);
  });
});
