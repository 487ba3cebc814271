import { describe, expect, it } from 'vitest';
import { cutsOfMember, placeInFile, placeOnMember } from '../../../src/engine/cuts-of-member.ts';
import { placeShelter } from '../../../src/engine/geometry/place-shelter.ts';
import { addCut, removeCut } from '../../../src/engine/project/edits/cuts.ts';
import { exampleText, soundProject } from '../../support/files.ts';
import { tiedShed } from '../../support/tied-shed.ts';

const demo = soundProject(exampleText('firewood-shed'));

describe('a cut by hand', () => {
  it('comes with an id of its own, and goes again', () => {
    const [one] = demo.members;
    const cut = addCut(addCut(demo, one!.id, 10), one!.id, 20);
    expect(cut.cuts.map(({ id, centreIn }) => [id, centreIn])).toEqual([
      ['cut-1', 10],
      ['cut-2', 20],
    ]);
    const left = removeCut(cut, 'cut-1');
    expect(left.cuts.map(({ id }) => id)).toEqual(['cut-2']);
    expect(addCut(left, one!.id, 30).cuts.map(({ id }) => id)).toEqual(['cut-2', 'cut-1']);
    expect(removeCut(addCut(demo, one!.id, 10), 'cut-1')).toEqual(demo);
  });

  it('is refused on what is no member, at no place, and where there is none to remove', () => {
    expect(() => addCut(demo, 'nobody', 10)).toThrow('a member of the project');
    expect(() => addCut(demo, demo.members[0]!.id, NaN)).toThrow('a finite number');
    expect(() => removeCut(demo, 'cut-1')).toThrow('a cut of the project');
  });

  it('lies where it was put on every kind of member, counted from its start', () => {
    const project = tiedShed();
    const { shelter } = placeShelter(project);
    for (const role of ['beam', 'post', 'brace', 'rafter', 'purlin', 'tie']) {
      const id = project.members.find((member) => member.role === role)!.id;
      const cut = addCut(project, id, placeInFile(shelter, id, 11));
      const byHand = cutsOfMember(cut, placeShelter(cut).shelter, id).find(({ madeBy }) => madeBy === 'hand');
      expect(byHand?.atIn).toBeCloseTo(11, 9);
      expect(placeOnMember(shelter, id, placeInFile(shelter, id, 3.25))).toBeCloseTo(3.25, 9);
    }
  });
});
