import * as fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { readLength, type BareUnit } from '../../../src/ui/units/read-length.ts';

const lengthOf = (text: string, bare: BareUnit = 'in'): number => {
  const reading = readLength(text, bare);
  if (!reading.ok) throw new Error(`${text}: ${reading.message.code}`);
  return reading.value;
};
const refusalOf = (text: string, bare: BareUnit = 'in'): string => {
  const reading = readLength(text, bare);
  if (reading.ok) throw new Error(`${text} was read as ${reading.value}`);
  return reading.message.code;
};

describe('readLength', () => {
  // inch = 25.4 mm exactly: international yard and pound agreement, 1959
  it.each([
    [`13' 6-1/2"`, 162.5],
    [`13'-6 1/2"`, 162.5],
    [`13'6½"`, 162.5],
    [`13′ 6 1⁄2″`, 162.5],
    ['13 ft 6 in', 162],
    ['13ft6in', 162],
    ['13 feet 6 inches', 162],
    [`13' 6`, 162],
    ['13.5 ft', 162],
    ['13 ft. 6 in.', 162],
    ['6 1/2', 6.5],
    ['6-1/2', 6.5],
    ['5/8', 0.625],
    ['25 1/8 in', 25.125],
    ['4.1 m', 4100 / 25.4],
    ['340 mm', 340 / 25.4],
    ['34 cm', 340 / 25.4],
    ['1,200 mm', 1200 / 25.4],
    ['-6 in', -6],
    ['−6 in', -6],
    ['0', 0],
  ])('reads %s as a builder means it', (text, inches) => {
    expect(lengthOf(text)).toBeCloseTo(inches, 12);
  });

  it('gives a bare number the unit in which the field shows its value', () => {
    expect(lengthOf('340', 'mm')).toBeCloseTo(340 / 25.4, 12);
    expect(lengthOf('4.1', 'm')).toBeCloseTo(4100 / 25.4, 12);
    expect(lengthOf('13', 'in')).toBe(13);
  });

  it.each(['girth 28 in', '28 in girth', '28 in around', 'girth 28'])('turns %s into a diameter', (text) => {
    // circumference of a circle over pi
    expect(lengthOf(text)).toBeCloseTo(28 / Math.PI, 12);
    const reading = readLength(text, 'in');
    expect(reading.ok && reading.read).toBe('girth');
  });

  it.each([
    ['', 'fieldEmpty'],
    ['tall', 'fieldNotRead'],
    ['4,1 m', 'fieldComma'],
    ['6 1/0', 'fieldZeroBelow'],
    ['6 9/8', 'fieldFractionTooLarge'],
    ['13 6', 'fieldWhichIsFeet'],
    ['13 6 in', 'fieldWhichIsFeet'],
    ['13 ft 14 in', 'fieldInchesPastFoot'],
    ['13.5 ft 6 in', 'fieldFeetAndFraction'],
    ['6 in 13 ft', 'fieldNotRead'],
    ['12 ft 6 in 3', 'fieldNotRead'],
    ['3 psf', 'fieldUnitUnknown'],
    ['sqrt(4)', 'fieldNotRead'],
    ['2+2', 'fieldNotRead'],
    ['1e999', 'fieldUnitUnknown'],
    ['9'.repeat(400), 'fieldTooLarge'],
  ])('refuses %j with a reason', (text, code) => {
    expect(refusalOf(text)).toBe(code);
  });

  it('offers the sum when inches pass a foot', () => {
    const reading = readLength('13 ft 14 1/2 in', 'in');
    expect(reading.ok ? '' : reading.message.values['suggestion']).toBe('14 ft 2.5 in');
  });

  it('never throws and never answers with a number that is not finite', () => {
    fc.assert(
      fc.property(fc.oneof(fc.string({ maxLength: 30 }), fc.stringMatching(/^[0-9 '"/.ftinm-]{0,14}$/)), (text) => {
        const reading = readLength(text, 'in');
        expect(reading.ok ? Number.isFinite(reading.value) : reading.message.code !== undefined).toBe(true);
      }),
      { numRuns: 500 },
    );
  });
});
