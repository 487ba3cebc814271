import { describe, expect, it } from 'vitest';
import { OFFICE_QUESTIONS, START_WORDS } from '../../../src/data/words/start.ts';
import type { Project } from '../../../src/engine/project/model.ts';
import type { Block, Row } from '../../../src/ui/paper/blocks.ts';
import { signsOf } from '../../../src/ui/start/signs.ts';
import { sizesOf } from '../../../src/ui/start/sizes.ts';
import { startBlocks } from '../../../src/ui/start/start-blocks.ts';
import { valueAt } from '../../../src/ui/state/value-at.ts';
import { figuresFor, openedExample } from '../calculation/opened.ts';

const rowsOf = (blocks: readonly Block[], label: string): readonly Row[] =>
  blocks.flatMap((block) => (block.kind === 'table' && block.label === label ? block.rows : []));
const cells = (row: Row | undefined): readonly string[] => (row?.cells ?? []).map((cell) => cell[0]?.text ?? '');
const wordsOf = (blocks: readonly Block[]): string =>
  blocks.map((block) => (block.kind === 'text' ? block.words : '')).join(' ');

describe('what a department may count', () => {
  // by hand, from the file: covering 216 in. along, lines 108 in. apart with 18 in. past each; posts 156 by 108 in.
  it('is the plan of the covering and the rectangle of the posts: 18 x 12 ft and 13 x 9 ft', () => {
    const { evaluation } = openedExample('firewood-shed');
    const sizes = sizesOf(evaluation.shelter);
    expect(sizes.underRoofFt2).toBeCloseTo(18 * 12, 9);
    expect(sizes.insidePostsFt2).toBeCloseTo(13 * 9, 9);
    expect(sizes.isAttached).toBe(false);
  });

  // a gable of two slopes is covered once: 216 in. by 2 x 84 + 2 x 18 in.
  it('counts both slopes of a gable as one plan: 18 x 17 ft', () => {
    expect(sizesOf(openedExample('gable').evaluation.shelter).underRoofFt2).toBeCloseTo(18 * 17, 9);
  });

  it('reaches to the wall of a lean-to, which is attached', () => {
    const sizes = sizesOf(openedExample('lean-to').evaluation.shelter);
    expect(sizes.insidePostsFt2).toBeCloseTo(14 * 9, 9);
    expect(sizes.isAttached).toBe(true);
  });
});

describe('the page before the start', () => {
  it('sets both areas against 200 ft2 (IRC R105.2) and 120 ft2 (IBC 105.2), both from memory', () => {
    const { project, evaluation } = openedExample('firewood-shed');
    const [house, other] = rowsOf(startBlocks(project, evaluation, 'feet'), START_WORDS.permit);
    expect(cells(house).slice(1, 4)).toEqual(['200 ft²', '216 ft²: over', '117 ft²: not over']);
    expect(cells(other).slice(1, 4)).toEqual(['120 ft²', '216 ft²: over', '117 ft²: not over']);
    expect(cells(house)[4]).toMatch(/^IRC R105\.2.*†$/);
    expect(cells(other)[4]).toMatch(/^IBC 105\.2.*†$/);
  });

  it('says that what hangs on a building is not freed by its size', () => {
    const words = (name: 'lean-to' | 'gable'): string => {
      const { project, evaluation } = openedExample(name);
      return wordsOf(startBlocks(project, evaluation, 'feet'));
    };
    expect(words('lean-to')).toContain(START_WORDS.attached);
    expect(words('gable')).not.toContain(START_WORDS.attached);
  });

  it('asks only for fields that a project has, and leaves a blank until the department has answered', () => {
    const { project, evaluation } = openedExample('firewood-shed');
    for (const [path] of OFFICE_QUESTIONS) expect([path, valueAt(project, path)]).not.toEqual([path, undefined]);
    const guessed: Project = {
      ...project,
      site: {
        ...project.site,
        groundSnowPsf: { value: 60, givenBy: 'guess', date: null },
        windMph: { value: null, givenBy: 'department', date: null },
      },
    };
    const rows = rowsOf(startBlocks(guessed, evaluation, 'feet'), START_WORDS.questions);
    const of = (question: string) => cells(rows.find((row) => cells(row)[0] === question));
    expect(of('Ground snow here?')).toEqual([
      'Ground snow here?',
      '60 psf',
      'to be confirmed by the building department',
      START_WORDS.blank,
    ]);
    expect(of('Design wind speed, 3-second gust?').slice(1)).toEqual(['', '', START_WORDS.blank]);
    expect(of('Frost depth?').slice(1)).toEqual([`3' 0"`, 'department, 2026-03-02', '']);
  });
});

describe('signs that a designer is wanted', () => {
  const here = (project: Project): readonly string[] => {
    const opened = figuresFor(project);
    return signsOf(opened.project, opened.evaluation).flatMap(({ sign, isHere }) => (isHere === true ? [sign] : []));
  };
  const { project } = openedExample('firewood-shed');

  it('are told where the figures show them', () => {
    expect(here(project)).not.toContain('snow');
    const snowy = {
      ...project,
      site: { ...project.site, groundSnowPsf: { ...project.site.groundSnowPsf, value: 71 } },
    };
    expect(here(snowy)).toContain('snow');
    expect(here(openedExample('lean-to').project)).toContain('ledger');
    expect(here(openedExample('undersized-shed').project)).toContain('outside');
  });

  it('are never denied where only the owner can tell', () => {
    const { evaluation } = figuresFor(project);
    const denied = signsOf(project, evaluation).flatMap(({ sign, isHere }) => (isHere === false ? [sign] : []));
    for (const own of ['soil', 'people', 'earthquake', 'other']) expect(denied).not.toContain(own);
    const blank = {
      ...project,
      site: { ...project.site, groundSnowPsf: { ...project.site.groundSnowPsf, value: null } },
    };
    expect(signsOf(blank, evaluation).find(({ sign }) => sign === 'snow')?.isHere).toBeNull();
  });
});
