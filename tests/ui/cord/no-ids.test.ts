import { describe, expect, it } from 'vitest';
import type { CheckRow, Evaluation } from '../../../src/engine/evaluation.ts';
import { evaluate } from '../../../src/engine/evaluate.ts';
import { explain } from '../../../src/engine/explain.ts';
import type { Message } from '../../../src/engine/message.ts';
import type { Put, Step } from '../../../src/engine/note.ts';
import type { Project } from '../../../src/engine/project/model.ts';
import { parseProject } from '../../../src/engine/project/parse.ts';
import { setAt } from '../../../src/engine/project/edits/set-at.ts';
import { combinationInWords } from '../../../src/ui/cord/combination.ts';
import { whatComesDown } from '../../../src/ui/cord/comes-down.ts';
import { linksOf } from '../../../src/ui/cord/links.ts';
import { namesOf, placeInWords, type Names } from '../../../src/ui/cord/places.ts';
import { reasonInWords } from '../../../src/ui/cord/reason.ts';
import { stepWords } from '../../../src/ui/cord/step-words.ts';
import { pieceNames } from '../../../src/ui/sheet/piece-names.ts';
import { EXAMPLES, everythingGivenText, exampleText, soundProject } from '../../support/files.ts';

const PROJECTS: readonly (readonly [string, Project])[] = [
  ...EXAMPLES.map((name) => [name, soundProject(exampleText(name))] as const),
  ['everything given', soundProject(everythingGivenText())],
];

/** Ids that cannot be words of the language: with a hyphen or a digit. */
const idsOf = (project: Project): readonly string[] =>
  [...JSON.stringify(project).matchAll(/"id":"([^"]+)"/g)].flatMap(([, id]) =>
    id !== undefined && /[-\d]/.test(id) ? [id] : [],
  );
const leaksIn = (sentences: readonly string[], ids: readonly string[]): readonly string[] =>
  sentences.filter((said) => ids.some((id) => new RegExp(`(?<![\\w-])${id}(?![\\w-])`).test(said)));

function evaluated(project: Project): Evaluation {
  const answer = evaluate(project);
  if (!answer.ok) throw new Error(JSON.stringify(answer.faults));
  return answer.evaluation;
}

/** The same with the pieces of every group made of nothing, the site blank, no joint rated and no knot read. */
const bare = (project: Project): Project => ({
  ...project,
  groups: project.groups.map((group) => ('stock' in group ? { ...group, stock: null } : group)),
  site: {
    ...project.site,
    groundSnowPsf: { ...project.site.groundSnowPsf, value: null },
    windMph: { ...project.site.windMph, value: null },
  },
  joints: { defaults: [], own: [] },
});
const unread = (project: Project): Project => ({
  ...project,
  logs: project.logs.map((log) => ({ ...log, seen: null })),
});

function saidOfRows({ checks, loads }: Evaluation, names: Names): readonly string[] {
  return checks.flatMap((row) => [
    names.get(row.memberId) ?? '',
    placeInWords(row, names, 'feet'),
    row.reason ? reasonInWords(row.reason, names, 'feet') : '',
    combinationInWords(loads, row),
  ]);
}

const stepsSaid = (steps: readonly Step[]): readonly string[] =>
  steps.flatMap((step) => [step.words, ...step.put.flatMap((put: Put) => [put.words, ...stepsSaid(put.from ?? [])])]);

/** One row of each rule: its steps use the same words everywhere. */
const oneOfEach = (checks: readonly CheckRow[]): readonly CheckRow[] => [
  ...new Map(checks.filter(({ ratio }) => ratio !== null).map((row) => [row.ruleId, row])).values(),
];

describe.each(PROJECTS)('a person who reads %s sees labels, never an id of the file,', (_, project) => {
  const ids = idsOf(project);

  it.each([
    ['as it is', project],
    ['with nothing given', bare(project)],
    ['with no log looked at', unread(project)],
  ])('in rows, reasons and assumptions %s', (_case, asked) => {
    const evaluation = evaluated(asked);
    const names = namesOf(evaluation);
    const said = saidOfRows(evaluation, names);
    expect(said.filter((each) => each !== '').length).toBeGreaterThan(10);
    expect(leaksIn(said, ids)).toEqual([]);
    const { sayOf } = pieceNames(asked, evaluation);
    expect(leaksIn(evaluation.assumptions.map(sayOf), ids)).toEqual([]);
  });

  it('in what comes down and in steps', () => {
    const evaluation = evaluated(project);
    const names = namesOf(evaluation);
    const told = { evaluation, names, system: 'feet' } as const;
    expect(
      leaksIn(
        linksOf(evaluation).flatMap((link) => whatComesDown(link, told)),
        ids,
      ),
    ).toEqual([]);
    const inWords = stepWords(evaluation);
    const steps = oneOfEach(evaluation.checks).flatMap(({ key }) => {
      const answer = explain(project, key);
      return answer.ok ? stepsSaid(answer.steps) : [];
    });
    expect(steps.length).toBeGreaterThan(20);
    expect(leaksIn(steps.map(inWords), ids)).toEqual([]);
  });

  it('in the sentence that refuses a change', () => {
    const names = namesOf(evaluated(project));
    const refused = project.members.flatMap(({ id, role }): readonly Message[] => {
      const changed = parseProject({ ...project, members: project.members.filter((each) => each.id !== id) });
      const moved = role === 'post' ? parseProject(setAt(project, `members[${id}].xIn`, 999)) : changed;
      return [changed, moved].flatMap((answer) => (answer.ok ? [] : answer.faults));
    });
    expect(
      leaksIn(
        refused.map((fault) => reasonInWords(fault, names, 'feet')),
        ids,
      ),
    ).toEqual([]);
  });
});
