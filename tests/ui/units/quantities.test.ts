import * as fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { quantity } from '../../../src/engine/units.ts';
import { kindOfPath, showField } from '../../../src/ui/units/field-kind.ts';
import { readField } from '../../../src/ui/units/read-field.ts';
import { loadOtherUnits } from '../../../src/ui/units/other-units.ts';
import { showQuantity, showRatio } from '../../../src/ui/units/show-quantity.ts';

const valueOf = (...given: Parameters<typeof readField>): number => {
  const reading = readField(...given);
  if (!reading.ok) throw new Error(`${given[1]}: ${reading.message.code}`);
  return Number(reading.value);
};
const refusalOf = (...given: Parameters<typeof readField>): string => {
  const reading = readField(...given);
  if (reading.ok) throw new Error(`${given[1]} was read as ${reading.value}`);
  return reading.message.code;
};

describe('metric', () => {
  // NIST Special Publication 811 (2008), appendix B.8 conversion factors
  it.each([
    ['psf', '1 kPa', 1 / 0.04788026],
    ['lb', '1 kN', 1000 / 4.448222],
    ['psi', '1 MPa', 1 / 0.006894757],
    ['plf', '1 kN/m', 1 / 0.0145939],
    ['mph', '1 m/s', 1 / 0.44704],
    ['mph', '100 km/h', 100 / 1.609344],
    ['pcf', '1 kN/m3', 1 / 0.1570875],
    ['feet', '1 m', 1 / 0.3048],
  ] as const)('reads %s from %s by the published factor', (kind, text, expected) => {
    expect(valueOf(kind, text, 'metric') / expected).toBeCloseTo(1, 6);
  });

  it('shows quantities by the same published factors', () => {
    expect(showQuantity(quantity(1000, 'lb'), 'metric')).toBe('4.45 kN');
    expect(showQuantity(quantity(1274, 'psi'), 'metric')).toBe('8.78 MPa');
    expect(showQuantity(quantity(55, 'psf'), 'metric')).toBe('2.633 kPa');
    expect(showQuantity(quantity(100, 'lb·in'), 'metric')).toBe('0.011 kN·m');
    expect(showQuantity(quantity(1, 'in3'), 'metric')).toBe('16 cm³');
  });

  // half of the last figure shown, turned back by the factors above
  const HALF_STEP = { psf: 0.0005 / 0.04788, lb: 0.0005 / 0.004448, psi: 0.0005 / 0.0068947, mph: 0.05 / 0.44704 };
  it('reads back what it shows, within half of the last figure shown', () => {
    fc.assert(
      fc.property(
        fc.constantFrom('psf', 'lb', 'psi', 'mph'),
        fc.double({ min: 0, max: 9000, noNaN: true }),
        (kind, value) => {
          const back = valueOf(kind, showField(kind, value, 'metric'), 'metric');
          expect(Math.abs(back - value)).toBeLessThanOrEqual(HALF_STEP[kind] * 1.001);
        },
      ),
    );
  });
});

describe('showQuantity', () => {
  it.each([
    [1274.4, 'psi', '1,274 psi'],
    [-0.4, 'lb', '−0.4 lb'],
    [0, 'lb', '0 lb'],
    [45, 'deg', '45.0°'],
    [0.64, '1', '0.640'],
    [Number.NaN, 'psi', ''],
  ] as const)('shows %d %s as %s', (value, unit, text) => {
    expect(showQuantity(quantity(value, unit), 'feet')).toBe(text);
  });
});

describe('showRatio', () => {
  it.each([
    [1, '1.00'],
    [1 + 1e-12, '1.01'],
    [0.9951, '1.00'],
    [1.1, '1.10'],
    [0.29, '0.29'],
    [0, '0.00'],
    [0.0001, '0.01'],
  ])('shows %d as %s', (ratio, text) => {
    expect(showRatio(ratio)).toBe(text);
  });

  it('never shows less than the ratio, never a hundredth too much, and 1.00 or less only for a pass', () => {
    fc.assert(
      fc.property(fc.double({ min: 0, max: 50, noNaN: true }), (ratio) => {
        const shown = Number(showRatio(ratio));
        expect(shown).toBeGreaterThanOrEqual(ratio);
        expect(shown - ratio).toBeLessThan(0.01 + 1e-9);
        expect(shown <= 1).toBe(ratio <= 1);
      }),
    );
  });
});

describe('slopes and shares', () => {
  it.each([
    ['risePer12', '3:12', 3],
    ['risePer12', '3 in 12', 3],
    ['risePer12', '3/12', 3],
    ['risePer12', '1:4', 3],
    ['risePer12', '3 1/2', 3.5],
    ['risePer12', '25 %', 3],
    ['risePer12', '45°', 12],
    ['grainSlope', '1 in 14', 14],
    ['grainSlope', '1:14', 14],
    ['grainSlope', '14', 14],
    ['share', '60 %', 0.6],
    ['share', '0.6', 0.6],
    ['share', '60', 0.6],
  ] as const)('reads %s from %s', (kind, text, value) => {
    expect(valueOf(kind, text, 'feet')).toBeCloseTo(value, 12);
  });

  it.each([
    ['risePer12', '90°', 'fieldNotRead'],
    ['risePer12', '3:0', 'fieldNotRead'],
    ['grainSlope', '0 in 14', 'fieldNotRead'],
    ['share', '10°', 'fieldNotRead'],
    ['count', '2.5', 'fieldWhole'],
    ['number', '3 ft', 'fieldUnitWrong'],
    ['length', 'girth 28 in', 'fieldGirthHere'],
    ['psf', '', 'fieldEmpty'],
    ['lb', '3 psf', 'fieldUnitUnknown'],
  ] as const)('refuses in %s the text %j', (kind, text, code) => {
    expect(refusalOf(kind, text, 'feet')).toBe(code);
  });
});

describe('kindOfPath', () => {
  it.each([
    ['members[post-2].xIn', 'length'],
    ['site.groundSnowPsf.value', 'psf'],
    ['site.soil.lateralPsfPerFt.value', 'psfPerFt'],
    ['logs[log-1].stations[0].diameterIn', 'diameter'],
    ['logs[log-1].seen.grainSlope1In', 'grainSlope'],
    ['roofPlanes[plane].risePer12', 'risePer12'],
    ['title.name', 'text'],
    ['site.altitudeFt.value', 'feet'],
  ])('%s is read as %s: stored names carry their unit', (path, kind) => {
    expect(kindOfPath(path)).toBe(kind);
  });
});

describe('units beyond our own tables', () => {
  it('are known once the larger table is loaded, and measure only what the field asks', async () => {
    expect(refusalOf('length', '2 yards', 'feet')).toBe('fieldUnitUnknown');
    await loadOtherUnits();
    expect(valueOf('length', '2 yards', 'feet')).toBeCloseTo(72, 9); // a yard is three feet
    expect(valueOf('lb', '10 kgf', 'feet')).toBeCloseTo(22.0462262, 6); // NIST SP 811: 1 kgf = 9.80665 N
    expect(refusalOf('length', '2 gallons', 'feet')).toBe('fieldUnitUnknown');
  });

  it.each(['createUnit("x") in', '2 sqrt(4) in', 'import in', '2 yards; 3'])(
    'are never evaluated: %s',
    async (text) => {
      await loadOtherUnits();
      expect(readField('length', text, 'feet').ok).toBe(false);
    },
  );
});
