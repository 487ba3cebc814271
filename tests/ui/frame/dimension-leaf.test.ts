import { expect, it } from 'vitest';
import { leafOfDimension } from '../../../src/ui/frame/dimension-leaf.ts';
import { exampleText, soundProject } from '../../support/files.ts';

const project = soundProject(exampleText('firewood-shed'));

it('a brace’s leg is written with the brace where it has its own, else with all braces', () => {
  expect(leafOfDimension(project, 'members[brace-4].runIn', 28, 1)?.path).toBe('members[brace-4].own.runIn');
  expect(leafOfDimension(project, 'members[brace-1].runIn', 30, 1)?.path).toBe('groups[braces].runIn');
});

it('the height of a line that follows is written to the line that carries one', () => {
  const leaf = leafOfDimension(project, 'supportLines[line-low].height.zIn', 80, 1);
  expect(leaf).toEqual({ path: 'supportLines[line-high].height.zIn', from: { zeroIn: 114 - 80, sign: 1 } });
});

it('a length that grows toward smaller places counts backward', () => {
  const leaf = leafOfDimension(project, 'members[beam-high].fromXIn', 30, -1);
  expect(leaf).toEqual({ path: 'members[beam-high].fromXIn', from: { zeroIn: 0, sign: -1 } });
});

it('nothing that is not given can be changed on the drawing', () => {
  expect(leafOfDimension(project, 'members[nobody].xIn', 30, 1)).toBeNull();
});
