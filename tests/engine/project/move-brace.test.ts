import { describe, expect, it } from 'vitest';
import { MisuseError } from '../../../src/engine/errors.ts';
import { moveBrace } from '../../../src/engine/project/edits/move-brace.ts';
import { setAt } from '../../../src/engine/project/edits/set-at.ts';
import { parseProject } from '../../../src/engine/project/parse.ts';
import { membersOf, traitsOf } from '../../../src/engine/project/traits.ts';
import type { Project } from '../../../src/engine/project/model.ts';
import { bracedShedText, soundProject } from '../../support/files.ts';

const shed = soundProject(bracedShedText());
const legs = (project: Project): readonly (readonly [string, number, number])[] =>
  membersOf(project, 'brace').map((brace) => {
    const { runIn, dropIn } = traitsOf(project, brace);
    return [brace.id, runIn, dropIn];
  });
/** In the demo the first three are like their group; the fourth has a run and a drop of its own. */
const like = (runIn: number, dropIn: number) => ['brace-1', 'brace-2', 'brace-3'].map((id) => [id, runIn, dropIn]);

describe('moveBrace', () => {
  it('of a brace like its group moves every brace that is like it', () => {
    const moved = moveBrace(shed, 'brace-1', 33, 35);
    expect(legs(moved)).toEqual([...like(33, 35), ...legs(shed).slice(3)]);
    expect(moved.members).toBe(shed.members);
    expect(parseProject(moved)).toMatchObject({ ok: true });
  });

  it('of a brace with legs of its own moves it alone', () => {
    const moved = moveBrace(shed, 'brace-4', 27, 34);
    expect(legs(moved)).toEqual([...legs(shed).slice(0, 3), ['brace-4', 27, 34]]);
    expect(parseProject(moved)).toMatchObject({ ok: true });
  });

  it('of a brace with only a run of its own moves that run alone, and the drop of all that are like it', () => {
    const own = setAt(shed, 'members[brace-1].own.runIn', 26);
    const [, ...others] = like(30, 35);
    const moved = moveBrace(own, 'brace-1', 27, 35);
    expect(legs(moved)).toEqual([['brace-1', 27, 35], ...others, ...legs(shed).slice(3)]);
    expect(parseProject(moved)).toMatchObject({ ok: true });
  });

  it('of no brace, or to no place, is misuse', () => {
    expect(() => moveBrace(shed, 'post-1', 30, 30)).toThrow(MisuseError);
    expect(() => moveBrace(shed, 'brace-1', Number.NaN, 30)).toThrow(MisuseError);
  });
});
