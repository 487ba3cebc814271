import { describe, expect, it } from 'vitest';
import { fillIn } from '../../../src/data/words/fill-in.ts';

// 1 in. = 25.4 mm exactly (NIST SP 811)
describe('a sentence with its blanks filled', () => {
  it.each([
    [3.4375, '3 7/16 in', '87 mm'],
    [14.13116502261475, '14 1/8 in', '359 mm'],
    [12, '12 in', '305 mm'],
    [0.5, '1/2 in', '12.7 mm'],
    // below an inch and between two marks it is a size of steel, or one that was typed: as it is
    [0.45, '0.45 in', '11.4 mm'],
    [0.01794, '0.0179 in', '0.456 mm'],
    [-2.25, '−2 1/4 in', '−57 mm'],
    [0, '0 in', '0 mm'],
  ])('tells %d in as it is cut', (sizeIn, feet, metric) => {
    expect(fillIn('It is {sizeIn} in long.', { sizeIn })).toBe(`It is ${feet} long.`);
    expect(fillIn('It is {sizeIn} in long.', { sizeIn }, 'metric')).toBe(`It is ${metric} long.`);
  });

  it('rounds what is needed up and what is allowed down, so that doing as it says is enough', () => {
    const sentence = 'at least {leastIn} in, at most {mostIn} in';
    expect(fillIn(sentence, { leastIn: 0.6846, mostIn: 14.1311 })).toBe('at least 11/16 in, at most 14 1/8 in');
    expect(fillIn(sentence, { leastIn: 10.01, mostIn: 10.06 })).toBe('at least 10 1/16 in, at most 10 in');
    expect(fillIn(sentence, { leastIn: 10.01, mostIn: 10.06 }, 'metric')).toBe('at least 255 mm, at most 255 mm');
    // a mark of the rule stays that mark whatever floating point makes of it
    expect(fillIn(sentence, { leastIn: 0.1 + 0.2 + 0.2, mostIn: 0.5 - 1e-12 })).toBe('at least 1/2 in, at most 1/2 in');
  });

  it('tells both ends of a stretch in one unit', () => {
    const sentence = 'from {fromXIn} to {toXIn} in';
    expect(fillIn(sentence, { fromXIn: -12.5, toXIn: 156 })).toBe('from −12 1/2 to 156 in');
    expect(fillIn(sentence, { fromXIn: -12.5, toXIn: 156 }, 'metric')).toBe('from −318 mm to 3962 mm');
  });

  // NIST SP 811: 1 ft = 0.3048 m, 1 lbf = 4.4482216 N, 1 lbf/ft = 14.59390 N/m, 1 psi = 6894.757 Pa, 1 psf = 47.88026 Pa
  it('tells heights, forces and pressures in metric with their units, to the decimals of a table', () => {
    const sentence = '{stepFt} ft, {pullLb} lb, {downPlf} lb/ft, {limitPsi} psi, {snowPsf} psf';
    const values = { stepFt: 10, pullLb: 1000, downPlf: 100, limitPsi: 1000, snowPsf: 40 };
    expect(fillIn(sentence, values)).toBe('10 ft, 1000 lb, 100 lb/ft, 1000 psi, 40 psf');
    expect(fillIn(sentence, values, 'metric')).toBe('3.05 m, 4.45 kN, 1.459 kN/m, 6.89 MPa, 1.915 kPa');
    expect(fillIn('{pullLb} lb and {otherLb} lb', { pullLb: 'no' }, 'metric')).toBe('no lb and {otherLb} lb');
  });

  it('rounds up what more is needed and down what is allowed at most in metric too', () => {
    // 100 lbf = 0.44482 kN; 1100 psi = 7.58423 MPa
    expect(fillIn('{moreLb} lb more, {limitPsi} psi', { moreLb: 100, limitPsi: 1100 }, 'metric')).toBe(
      '0.45 kN more, 7.58 MPa',
    );
    expect(fillIn('{limitLb} lb', { limitLb: 102 }, 'metric')).toBe('0.45 kN');
  });

  it('leaves words, whole numbers and a rise in twelve, and shortens other numbers to three digits', () => {
    expect(fillIn('{name}: {count} rows, {rise} in 12, ratio {ratio}, {lb} lb', {
      name: 'A1',
      count: 12345,
      rise: 0.25,
      ratio: 1.23456,
      lb: 1234.5678,
    })).toBe('A1: 12345 rows, 0.25 in 12, ratio 1.23, 1235 lb'); // prettier-ignore
    expect(fillIn('{unknown} in {otherIn} in', {})).toBe('{unknown} in {otherIn} in');
  });
});
