import { describe, expect, it } from 'vitest';
import { CLEAR_WOOD } from '../../../src/data/wood/species.ts';
import { GREEN_MOISTURE } from '../../../src/data/wood/moisture.ts';
import { sawnWeight } from '../../../src/engine/material/sawn-weight.ts';
import type { WeightAnswer } from '../../../src/engine/material/values.ts';
import { woodWeight } from '../../../src/engine/material/wood-weight.ts';
import { aStick, aWood } from './samples.ts';

const weightIn = (answer: WeightAnswer) => {
  if (!answer.ok) throw new Error(answer.reason.code);
  return answer.weight;
};
const reasonIn = (answer: WeightAnswer): string => (answer.ok ? 'none' : answer.reason.code);

describe('weight of logs', () => {
  it('a larch log: whole-tree moisture from 10 in. on, sapwood moisture below', () => {
    // hand: 62.4 x 0.48 x 1.6025 and x 2.19; light 62.4 x 0.48 x 1.12
    expect(weightIn(woodWeight(aWood(), 10)).heavyPcf).toBeCloseTo(48.0, 1);
    expect(weightIn(woodWeight(aWood(), 9.99)).heavyPcf).toBeCloseTo(65.6, 1);
    expect(weightIn(woodWeight(aWood(), 9.99)).lightPcf).toBeCloseTo(33.55, 2);
  });

  const LISTED = CLEAR_WOOD.flatMap((species) =>
    [6, 14].flatMap((diameter) => {
      const answer = woodWeight(aWood(species.name), diameter);
      return answer.ok ? [{ species, diameter, weight: answer.weight }] : [];
    }),
  );

  it('most species have a weight, thick or thin', () => {
    expect(LISTED.length).toBeGreaterThan(60);
  });

  it.each(LISTED)(
    '$species.name, $diameter in., weighs no more than its cells full of water',
    ({ species, weight }) => {
      // closed form: the substance of wood weighs 1.54 times water; the rest of the green volume is voids
      const full = 62.4 * (1 + (species.green.specificGravity * 0.54) / 1.54);
      expect(weight.heavyPcf).toBeLessThanOrEqual(full + 1e-9);
      expect(weight.lightPcf).toBeLessThan(weight.heavyPcf);
    },
  );

  it('a thin log is never taken lighter than a thick one of its species', () => {
    for (const { species, weight } of LISTED.filter(({ diameter }) => diameter === 6)) {
      const thick = weightIn(woodWeight(aWood(species.name), 14));
      expect(weight.heavyPcf).toBeGreaterThanOrEqual(thick.heavyPcf);
    }
  });

  it('without a listed moisture it asks for the weight', () => {
    expect(reasonIn(woodWeight(aWood('Ironbark'), 12))).toBe('woodWeightUnknown');
    expect(reasonIn(woodWeight(aWood('Atlantic white-cedar'), 12))).toBe('woodWeightUnknown');
    expect(reasonIn(woodWeight(aWood('Jack pine'), 8))).toBe('woodSapwoodUnknown');
    expect(reasonIn(woodWeight(aWood('Jack pine'), 12))).toBe('none');
  });

  it('typed weights are taken as typed', () => {
    const wood = { ...aWood('Ironbark'), weight: { by: 'typed', heavyPcf: 60, lightPcf: 40 } as const };
    expect(weightIn(woodWeight(wood, 8))).toMatchObject({ heavyPcf: 60, lightPcf: 40 });
  });

  it('each species has one row of moisture at most, and each row a species', () => {
    const names = GREEN_MOISTURE.map(({ species }) => species);
    expect(new Set(names).size).toBe(names.length);
    expect(names.toSorted()).toEqual(CLEAR_WOOD.map(({ name }) => name).toSorted());
  });
});

describe('weight of sawn sticks', () => {
  it('a group weighs as its heaviest member for gravity and its lightest for uplift', () => {
    const group = weightIn(sawnWeight(aStick({ use: 'wet' })));
    const larch = weightIn(sawnWeight(aStick({ use: 'wet', species: 'Western larch' })));
    const fir = weightIn(sawnWeight(aStick({ use: 'wet', species: 'Douglas-fir, Coast' })));
    expect(group.heavyPcf).toBe(larch.heavyPcf);
    expect(group.lightPcf).toBe(fir.lightPcf);
  });

  it('wet use is weighed with sapwood, as a log under 10 in.; without a figure for it as a thicker log', () => {
    // hand: 62.4 x 0.48 x 2.19
    expect(weightIn(sawnWeight(aStick({ use: 'wet', species: 'Western larch' }))).heavyPcf).toBeCloseTo(65.6, 1);
    const pine = weightIn(sawnWeight(aStick({ use: 'wet', species: 'Jack pine' })));
    expect(pine.heavyPcf).toBe(weightIn(woodWeight(aWood('Jack pine'), 12)).heavyPcf);
  });

  it('dry use is weighed at 19 %', () => {
    // hand: 62.4 x 0.48 x 1.19
    expect(weightIn(sawnWeight(aStick({ species: 'Western larch' }))).heavyPcf).toBeCloseTo(35.64, 2);
  });

  it('an unknown name asks for the weight', () => {
    expect(reasonIn(sawnWeight(aStick({ species: 'Ironbark' })))).toBe('woodWeightUnknown');
  });
});
