import { readFileSync } from 'node:fs';
import * as fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { RULES } from '../../../src/data/rules.ts';
import { evaluate } from '../../../src/engine/evaluate.ts';
import type { Evaluation } from '../../../src/engine/evaluation.ts';
import { parseProject } from '../../../src/engine/project/parse.ts';
import type { Project } from '../../../src/engine/project/model.ts';
import { clauseWords } from '../../../src/ui/sheet/check-words.ts';
import { wrapToFit } from '../../../src/ui/sheet/fit-text.ts';
import { BODY, CELL_AIR, roomOn, SHEET_PAPERS } from '../../../src/ui/sheet/page-format.ts';
import { planSheet } from '../../../src/ui/sheet/plan-sheet.ts';
import type { SheetPlan } from '../../../src/ui/sheet/sheet-plan.ts';
import { randomProject } from '../../support/random-project.ts';

function opened(name: string): { readonly project: Project; readonly evaluation: Evaluation } {
  const parsed = parseProject(readFileSync(`public/examples/${name}.shelter.json`, 'utf8'));
  if (!parsed.ok) throw new Error(`${name} is refused`);
  const answer = evaluate(parsed.project);
  if (!answer.ok) throw new Error(`${name} has no figures`);
  return { project: parsed.project, evaluation: answer.evaluation };
}
const planOf = (name: string): SheetPlan => {
  const { project, evaluation } = opened(name);
  return planSheet(project, evaluation, SHEET_PAPERS.letter, 'feet');
};
const wordsOf = (plan: SheetPlan): string =>
  JSON.stringify([
    plan.head,
    plan.site,
    plan.posts,
    plan.sideTexts,
    plan.logs,
    plan.checks,
    plan.joints,
    plan.footTexts,
    plan.drawings.flat().map(({ caption, says }) => [caption, says]),
  ]);

describe('the plan of the one page', () => {
  it('never asks for more than the room of its paper, in feet or metres', () => {
    fc.assert(
      fc.property(
        randomProject(),
        fc.constantFrom('letter', 'a4'),
        fc.constantFrom('feet', 'metric'),
        (project, paper, system) => {
          const answer = evaluate(project);
          fc.pre(answer.ok);
          const plan = planSheet(project, answer.evaluation, SHEET_PAPERS[paper], system);
          expect(plan.height).toBeLessThanOrEqual(roomOn(SHEET_PAPERS[paper]).height);
        },
      ),
      { seed: 20261125, numRuns: 12 },
    );
  });

  it('keeps to the page when everything at once is as long as it can be', () => {
    fc.assert(
      fc.property(
        randomProject().filter((project) => project.supportLines.filter((l) => l.kind === 'frame').length > 2),
        (project) => {
          const full = atItsLongest(project);
          const answer = evaluate(full);
          fc.pre(answer.ok);
          for (const paper of [SHEET_PAPERS.letter, SHEET_PAPERS.a4]) {
            const plan = planSheet(full, answer.evaluation, paper, 'metric');
            expect(plan.drawings.flat().length).toBe(5);
            expect(plan.height).toBeLessThanOrEqual(roomOn(paper).height);
          }
        },
      ),
      { seed: 20261127, numRuns: process.env['LONG'] === '1' ? 100 : 6 },
    );
  });

  it.each(['firewood-shed', 'lean-to', 'undersized-shed'])('cuts no clause and no name of a piece of %s', (name) => {
    const { checks, logs, joints, posts } = planOf(name);
    const cells = [checks, logs, joints, posts].flatMap(({ columns, rows }) =>
      rows.flatMap((row) =>
        columns.flatMap(({ head }, i) =>
          ['clause', 'piece', 'log', 'joint: what holds it', 'at'].includes(head)
            ? [row.cells[i]?.join(' ') ?? '']
            : [],
        ),
      ),
    );
    expect(cells.length).toBeGreaterThan(10);
    expect(cells.filter((cell) => cell.includes('…'))).toEqual([]);
  });

  it('has room for the clause of every rule, whichever are printed', () => {
    const { columns } = planOf('firewood-shed').checks;
    const room = (columns.find(({ head }) => head === 'clause')?.width ?? 0) - CELL_AIR;
    const cut = Object.values(RULES).flatMap(({ clause }) => {
      const words = clauseWords({ clause });
      return wrapToFit(words, room, BODY.size, 3).join(' ').includes('…') ? [words] : [];
    });
    expect(cut).toEqual([]);
  });

  it('prints no check twice and only checks of the evaluation', () => {
    const { project, evaluation } = opened('undersized-shed');
    const plan = planSheet(project, evaluation, SHEET_PAPERS.a4, 'feet');
    const keys = [plan.checks, plan.joints, plan.posts].flatMap((t) => t.rows.map((r) => r.checkKey));
    expect(new Set(keys).size).toBe(keys.length);
    const known = new Set(evaluation.checks.map((c) => c.key));
    expect(keys.filter((key) => key === null || !known.has(key))).toEqual([]);
  });

  it('tells of another adopted edition before all failures', () => {
    const { project } = opened('undersized-shed');
    const loads = { ...project.code.loads, value: 'ASCE 7-22' as const };
    const newer = { ...project, code: { ...project.code, loads } };
    const answer = evaluate(newer);
    if (!answer.ok) throw new Error('it has no figures');
    const { head } = planSheet(newer, answer.evaluation, SHEET_PAPERS.letter, 'feet');
    expect(answer.evaluation.counts.fail).toBeGreaterThan(0);
    expect(head.complaints[0]!.join(' ')).toContain('ASCE 7-22 is not offered yet');
  });

  it('prints what drifts and slides onto the roof', () => {
    const said = planOf('snow-lean-to').site.rows.map(({ cells }) => cells.flat().join(' '));
    expect(said.filter((line) => /^(Drift at the higher roof|Snow slid off above) .*psf/.test(line))).toHaveLength(2);
  });

  it('tells failures at the head, worst first, and how many more there are', () => {
    const { head } = planOf('undersized-shed');
    expect(head.verdict.join(' ')).toMatch(
      /^Does not pass: \d+ checks fail, \d+ not given(, \d+ outside the method)?\.$/,
    );
    expect(head.complaints.length).toBeGreaterThan(0);
    expect(head.complaints[0]!.join(' ')).toMatch(/ratio \d+\.\d\d/);
    expect(head.more).toMatch(/^and \d+ more in the calculation$/);
  });

  it('draws lines that differ in height alone once, and says by how much; others each', () => {
    const alike = planOf('undersized-shed').drawings.flat();
    expect(alike.map((d) => d.view)).toEqual(['front', 'section', 'plan']);
    expect(alike[0]!.caption).toContain('line B alike');
    expect(
      planOf('firewood-shed')
        .drawings.flat()
        .map((d) => d.view),
    ).toEqual(['front', 'front', 'section', 'plan']);
  });

  it('says of a guess that the building department has to confirm it', () => {
    const { project } = opened('firewood-shed');
    const guessed: Project = {
      ...project,
      site: { ...project.site, groundSnowPsf: { value: 55, givenBy: 'guess', date: '2026-03-01' } },
    };
    const answer = evaluate(guessed);
    if (!answer.ok) throw new Error('no figures');
    const plan = planSheet(guessed, answer.evaluation, SHEET_PAPERS.letter, 'feet');
    const snow = plan.site.rows.find((row) => row.cells[0]!.join(' ') === 'Ground snow');
    expect(snow?.cells[2]!.join(' ')).toBe('to be confirmed by the building department');
    expect(plan.head.complaints.flat().join(' ')).toContain('Ground snow is still a guess');
  });

  it('shows no id of the file to the reader of the paper', () => {
    const { project } = opened('firewood-shed');
    const words = wordsOf({
      ...planOf('firewood-shed'),
      checks: withoutKeys('checks'),
      joints: withoutKeys('joints'),
      posts: withoutKeys('posts'),
    });
    const ids = [...project.members, ...project.supportLines, ...project.logs].map((m) => m.id);
    expect(ids.filter((id) => words.includes(id))).toEqual([]);
  });
});

/** Every site value a guess, every text of the title as long as allowed, no two lines with braces at the same place. */
function atItsLongest(project: Project): Project {
  const guess = <T>(given: T): T => ({ ...given, givenBy: 'guess', date: '2026-03-01' });
  const { site } = project;
  const wide = (n: number): string => 'W'.repeat(n);
  const frames = project.supportLines.filter((l) => l.kind === 'frame').map((l) => l.id);
  return {
    ...project,
    title: {
      ...project.title,
      name: wide(120),
      parcel: wide(120),
      preparedBy: wide(120),
      revision: { number: wide(20), date: '2026-03-01' },
    },
    code: {
      loads: guess(project.code.loads),
      wood: guess(project.code.wood),
      building: { ...guess(project.code.building), value: wide(120) },
    },
    site: {
      ...site,
      riskCategory: guess(site.riskCategory),
      groundSnowPsf: guess(site.groundSnowPsf),
      leastRoofSnowPsf: guess(site.leastRoofSnowPsf),
      roofLivePsf: guess(site.roofLivePsf),
      snowExposureCe: guess(site.snowExposureCe),
      snowThermalCt: guess(site.snowThermalCt),
      windMph: guess(site.windMph),
      exposure: guess(site.exposure),
      kzt: guess(site.kzt),
      frostDepthIn: guess(site.frostDepthIn),
      soil: {
        ...site.soil,
        bearingPsf: guess(site.soil.bearingPsf),
        lateralPsfPerFt: guess(site.soil.lateralPsfPerFt),
      },
    },
    members: project.members.map((m) =>
      m.role === 'beam'
        ? {
            ...m,
            toXIn:
              m.toXIn -
              (m.toXIn === Math.max(...project.members.flatMap((b) => (b.role === 'beam' ? [b.toXIn] : [])))
                ? frames.indexOf(m.line) / 8
                : 0),
          }
        : m,
    ),
    lateral: {
      along: [{ by: 'ratedWalls', lines: frames, ratedLb: 4000, givenBy: wide(120) }],
      across: [{ by: 'ratedWalls', lines: frames, ratedLb: 4000, givenBy: wide(120) }],
    },
  };
}

/** Keys of checks hold ids; they are not printed. */
function withoutKeys(name: 'checks' | 'joints' | 'posts'): SheetPlan['checks'] {
  const table = planOf('firewood-shed')[name];
  return { ...table, rows: table.rows.map((row) => ({ ...row, checkKey: null })) };
}
