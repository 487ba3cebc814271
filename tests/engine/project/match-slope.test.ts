import { describe, expect, it } from 'vitest';
import { isUnlikeAcross, matchSlope } from '../../../src/engine/project/edits/match-slope.ts';
import { gableTemplate } from '../../../src/engine/project/templates/gable.ts';
import { shedTemplate } from '../../../src/engine/project/templates/shed.ts';
import { countedIds } from '../../support/ids.ts';

const gable = gableTemplate(countedIds());
const [first, second] = gable.roofPlanes;
const steeper = { ...first!, risePer12: 5, toXIn: 180 };
const uneven = { ...gable, roofPlanes: [steeper, second!] };

describe('the other slope of a gable', () => {
  it('becomes as steep and as long as the one that was changed, and nothing else of it changes', () => {
    const even = matchSlope(uneven, steeper.id);
    expect(even.roofPlanes).toEqual([steeper, { ...second!, risePer12: 5, toXIn: 180 }]);
    expect({ ...even, roofPlanes: gable.roofPlanes }).toEqual(gable);
  });

  it('is unlike only while pitch or ends differ, and a single slope never is', () => {
    expect(uneven.roofPlanes.map((plane) => isUnlikeAcross(uneven, plane))).toEqual([true, true]);
    expect(gable.roofPlanes.map((plane) => isUnlikeAcross(gable, plane))).toEqual([false, false]);
    const shed = shedTemplate(countedIds());
    expect(isUnlikeAcross(shed, shed.roofPlanes[0]!)).toBe(false);
  });
});
