import * as fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { showField } from '../../../src/ui/units/field-kind.ts';
import { readField } from '../../../src/ui/units/read-field.ts';
import { readLength } from '../../../src/ui/units/read-length.ts';
import { showLength } from '../../../src/ui/units/show-length.ts';

describe('showLength', () => {
  it.each([
    [162.5, {}, '13 ft 6 1/2 in'],
    [162.5, { style: 'marks' as const }, `13' 6 1/2"`],
    [84, { style: 'marks' as const }, `7' 0"`],
    [84, {}, '7 ft'],
    [18, {}, '18 in'],
    [0.625, {}, '5/8 in'],
    [0, {}, '0 in'],
    [12.5, { feetFrom: 'never' as const }, '12 1/2 in'],
    [23.99, {}, '2 ft'],
    [-6, {}, '−6 in'],
    [-0.01, {}, '0 in'],
    [6.4375, { nearest: 16 as const }, '6 7/16 in'],
  ])('shows %d in as %j', (length, how, text) => {
    expect(showLength(length, 'feet', how)).toBe(text);
  });

  it('shows metric to the millimetre', () => {
    expect(showLength(25.125, 'metric')).toBe('638 mm');
    expect(showLength(4100 / 25.4, 'metric')).toBe('4.100 m');
    expect(showLength(60, 'metric', { feetFrom: 'never' })).toBe('1524 mm');
  });

  it('is read back as the same sixteenth, in both styles', () => {
    fc.assert(
      fc.property(fc.integer({ min: -96000, max: 96000 }), fc.constantFrom('words', 'marks'), (sixteenths, style) => {
        const reading = readLength(showLength(sixteenths / 16, 'feet', { nearest: 16, style }), 'in');
        expect(reading.ok && reading.value).toBe(sixteenths / 16);
      }),
    );
  });

  it('is read back within half a millimetre in metric', () => {
    fc.assert(
      fc.property(fc.double({ min: -6000, max: 6000, noNaN: true }), (length) => {
        const reading = readField('length', showField('length', length, 'metric'), 'metric');
        expect(reading.ok && Math.abs(Number(reading.value) - length)).toBeLessThanOrEqual(0.5 / 25.4 + 1e-9);
      }),
    );
  });
});
