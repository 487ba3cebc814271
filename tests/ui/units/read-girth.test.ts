import { describe, expect, it } from 'vitest';
import { readField, readGirth } from '../../../src/ui/units/read-field.ts';

describe('a girth', () => {
  it.each([
    ['36', 'feet', 36],
    ['girth 36 in', 'feet', 36],
    ['3 ft 1/2 in', 'feet', 36.5],
    ['910', 'metric', 910 / 25.4],
    ['girth 910 mm', 'metric', 910 / 25.4],
    ['0.91', 'metric', 910 / 25.4],
  ] as const)('in the field of girths may be named or not: %s in %s', (text, system, girthIn) => {
    const reading = readGirth(text, system);
    expect(reading.ok && Number(reading.value)).toBeCloseTo(girthIn, 9);
  });

  it('in the field of diameters comes to the same log', () => {
    const [across, round] = [readField('diameter', 'girth 36 in', 'feet'), readGirth('girth 36 in', 'feet')];
    expect(across.ok && round.ok && Number(round.value) / Math.PI).toBeCloseTo(
      across.ok ? Number(across.value) : NaN,
      12,
    );
  });

  it('that is no length is refused with a girth as example', () => {
    const refusal = readGirth('stout', 'feet');
    expect(refusal.ok ? null : refusal.message.values['example']).toBe('36 in');
  });
});
