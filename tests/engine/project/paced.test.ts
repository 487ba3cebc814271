import { describe, expect, it } from 'vitest';
import { evaluate } from '../../../src/engine/evaluate.ts';
import { parseProject } from '../../../src/engine/project/parse.ts';
import { readPath } from '../../../src/engine/project/paths.ts';
import { pacedShelter, type Paces } from '../../../src/engine/project/templates/paced.ts';
import { countedIds } from '../../support/ids.ts';

const PACES: Paces = { form: 'shed', postsApartIn: 144, linesApartIn: 96, dripPastIn: 18 };

describe('a paced-out shelter', () => {
  it.each([
    PACES,
    { ...PACES, form: 'leanTo' as const },
    { ...PACES, form: 'gable' as const },
    { ...PACES, postsApartIn: 60, linesApartIn: 60, dripPastIn: 0 },
    { ...PACES, postsApartIn: 288, linesApartIn: 144, dripPastIn: 30 },
    { form: 'leanTo' as const, postsApartIn: 200.5, linesApartIn: 130.25, dripPastIn: 24 },
    { form: 'gable' as const, postsApartIn: 200.5, linesApartIn: 130.25, dripPastIn: 0 },
  ])('is sound and can be evaluated: %o', (paces) => {
    const project = pacedShelter(paces, countedIds());
    expect(parseProject(project)).toMatchObject({ ok: true });
    expect(evaluate(project)).toMatchObject({ ok: true });
  });

  it('stands where it was paced, its drip line as far out as was said', () => {
    const answer = evaluate(pacedShelter(PACES, countedIds()));
    if (!answer.ok) throw new Error('not placed');
    const { shelter } = answer.evaluation;
    expect(shelter.posts.map(({ xIn, yIn }) => [xIn, yIn])).toEqual([
      [0, 0],
      [144, 0],
      [0, 96],
      [144, 96],
    ]);
    expect(shelter.planAlongIn).toBe(144 + 2 * 18);
    expect(shelter.planAcrossIn).toBe(96 + 2 * 18);
  });

  it('of two slopes has its ridge half way between the eave lines, and no edge past the ridge', () => {
    const answer = evaluate(pacedShelter({ ...PACES, form: 'gable' }, countedIds()));
    if (!answer.ok) throw new Error('not placed');
    const { shelter } = answer.evaluation;
    expect(shelter.lines.map(({ yIn }) => yIn)).toEqual([0, 96, 192]);
    expect(shelter.planes.map(({ highYIn, lowYIn }) => [highYIn, lowYIn])).toEqual([
      [96, -18],
      [96, 210],
    ]);
  });

  it('marks what it took from the template, each mark leading to a field; the paces themselves are the person’s', () => {
    const project = pacedShelter(PACES, countedIds());
    expect(project.notYetYours.length).toBeGreaterThan(20);
    expect(project.notYetYours.filter((path) => readPath(project, path) === null)).toEqual([]);
    expect(project.notYetYours.some((path) => /\.xIn$|\.yIn$|OverhangIn$/.test(path))).toBe(false);
  });

  it('passes nothing of the site: nobody has been asked yet', () => {
    const answer = evaluate(pacedShelter(PACES, countedIds()));
    if (!answer.ok) throw new Error('not placed');
    expect(answer.evaluation.counts.notGiven).toBeGreaterThan(10);
  });
});
