import * as fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import type { Project } from '../../../src/engine/project/model.ts';
import { parseProject } from '../../../src/engine/project/parse.ts';
import { saveText } from '../../../src/engine/project/save-text.ts';
import { randomProject } from '../../support/random-project.ts';

const postsOf = (project: Project) => project.members.filter(({ role }) => role === 'post').length;

describe('random projects', () => {
  it('every random project is sound, and comes back from its own file as it was', () => {
    fc.assert(
      fc.property(randomProject(), (project) => {
        expect(parseProject(saveText(project))).toEqual({ ok: true, project });
      }),
      { seed: 2026, numRuns: 150 },
    );
  });

  it('they reach from two posts to eighteen and hold every kind of stock', () => {
    const projects = fc.sample(randomProject(), { seed: 7, numRuns: 150 });
    const counts = projects.map(postsOf);
    const kinds = projects.flatMap(({ groups }) => groups.map(({ stock }) => stock?.kind ?? 'none'));
    expect([Math.min(...counts), Math.max(...counts)]).toEqual([2, 18]);
    expect([...new Set(kinds)].sort()).toEqual(['log', 'none', 'sawn', 'typed']);
  });
});
