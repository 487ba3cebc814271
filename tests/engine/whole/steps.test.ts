import * as fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { RULES } from '../../../src/data/rules.ts';
import { evaluate } from '../../../src/engine/evaluate.ts';
import { explain } from '../../../src/engine/explain.ts';
import type { CheckRow } from '../../../src/engine/evaluation.ts';
import type { Step } from '../../../src/engine/note.ts';
import type { Project } from '../../../src/engine/project/model.ts';
import type { Quantity } from '../../../src/engine/units.ts';
import { EXAMPLES, everythingGivenText, exampleText, soundProject } from '../../support/files.ts';
import { fastenedShed } from '../../support/fastened-shed.ts';
import { tiedShed } from '../../support/tied-shed.ts';
import { standingProject } from './standing-project.ts';
import { evaluated, off, rowOf, PATIENCE_MS, runs } from './whole.ts';

const SAME = 1e-12;
/** Limits that a clause states as a bare number: an interaction of one, a slenderness of fifty. */
const STATED = [1, 50];
/** Rows that no load decides end in one step; what was put in stands in the sentence or the file. */
const NO_STEPS_BEFORE: readonly string[] = [
  'pier.frost',
  'pier.pad',
  'pier.width',
  'frame.balance',
  'sway.transverse',
  'sheet.span',
  'sway.alongRated',
  'sway.acrossRated',
];

const same = (a: number, b: number): boolean => a === b || off(Math.abs(a), Math.abs(b)) <= SAME;
/** A force may be told with its sign; the demand is how large it is. */
const isTold = (steps: readonly Step[], { value, unit }: Quantity): boolean =>
  steps.some((s) => s.result.unit === unit && same(s.result.value, value));

/** What is wrong with the steps of a row in a combination, by the numbers that the row was judged with. */
function stepFaults(project: Project, row: CheckRow): readonly string[] {
  const answer = explain(project, row.key);
  if (!answer.ok) return [`${row.key}: no steps`];
  const { steps } = answer;
  const last = steps.at(-1);
  const faults: string[] = [];
  if (last?.result.value !== row.ratio) faults.push(`ends with ${last?.result.value}, not ${row.ratio}`);
  if (last?.put[0]?.value !== row.demand!.value) faults.push('another demand');
  if (last?.put[1]?.value !== row.capacity!.value) faults.push('another capacity');
  if (NO_STEPS_BEFORE.includes(row.ruleId)) return faults.map((f) => `${row.key}: ${f}`);
  if (!isTold(steps.slice(0, -1), row.demand!)) faults.push(`demand ${row.demand!.value} is not told`);
  const isStated = row.capacity!.unit === '1' && STATED.includes(row.capacity!.value);
  if (!isStated && !isTold(steps.slice(0, -1), row.capacity!))
    faults.push(`capacity ${row.capacity!.value} is not told`);
  return faults.map((f) => `${row.key}: ${f}`);
}

/** One judged row of every rule, the one nearest to its limit. */
function worstOfEachRule(rows: readonly CheckRow[]): readonly CheckRow[] {
  return Object.keys(RULES).flatMap((ruleId) => {
    const judged = rows.filter((r) => r.ruleId === ruleId && r.capacity !== null && r.ratio !== null);
    return judged.length > 0 ? [judged.reduce((a, b) => (b.ratio! > a.ratio! ? b : a))] : [];
  });
}

/** Rows of the joints that `fastenedShed` holds by fasteners. */
const FASTENED =
  /^(sheet\.(uplift|slide)|purlin\.(tie|slide|together)|strip\.|brace\.(tie|shoulder)|beam\.tie|post\.foot)/;

describe('explain', () => {
  const files: readonly (readonly [string, string])[] = [
    ...EXAMPLES.map((name) => [name, exampleText(name)] as const),
    ['everything-given', everythingGivenText()],
  ];

  it.each(files)(
    'tells how every rule of %s was judged, to the very numbers of its row',
    (_, text) => {
      const project = soundProject(text);
      const rows = worstOfEachRule(evaluated(project).checks);
      expect(rows.length).toBeGreaterThan(20);
      expect(rows.flatMap((row) => stepFaults(project, row))).toEqual([]);
    },
    PATIENCE_MS,
  );

  it(
    'tells the same of joints that fasteners hold',
    () => {
      const project = fastenedShed();
      const rows = evaluated(project).checks.filter((c) => FASTENED.test(c.key) && c.capacity !== null);
      const rules = new Set<string>(rows.map((row) => row.ruleId));
      expect(rules.size).toBeGreaterThan(12);
      // straps, lag screws aslant and a post base among them
      expect(['beam.tie', 'brace.tie', 'brace.shoulder', 'post.footAlong'].filter((rule) => !rules.has(rule))).toEqual(
        [],
      );
      expect(worstOfEachRule(rows).flatMap((row) => stepFaults(project, row))).toEqual([]);
    },
    PATIENCE_MS,
  );

  it(
    'tells the same of a shed that frames hold across',
    () => {
      const project = tiedShed();
      expect(worstOfEachRule(evaluated(project).checks).flatMap((row) => stepFaults(project, row))).toEqual([]);
    },
    PATIENCE_MS,
  );

  it(
    'tells the same of random shelters',
    () => {
      fc.assert(
        fc.property(standingProject(), (project) => {
          const answer = evaluate(project);
          if (!answer.ok) return;
          expect(worstOfEachRule(answer.evaluation.checks).flatMap((row) => stepFaults(project, row))).toEqual([]);
        }),
        { seed: 11, numRuns: runs(1, 40), endOnFailure: true },
      );
    },
    PATIENCE_MS,
  );

  it('tells a combination that does not govern, with the ratio that the row lists for it', () => {
    const project = soundProject(exampleText('firewood-shed'));
    const row = rowOf(evaluated(project), 'beam.bending/beam-high/post-1~post-2');
    const combination = '3-snow+snow';
    expect(row.combinationId).not.toBe(combination);
    const listed = row.ratios.labels.flatMap((label, i) =>
      label.startsWith(`${combination}|`) ? [row.ratios.values[i]!] : [],
    );
    const answer = explain(project, row.key, combination);
    expect(answer.ok && answer.steps.at(-1)!.result.value).toBe(Math.max(...listed));
  });

  it('answers a key or a combination that is not there with a reason', () => {
    const project = soundProject(exampleText('firewood-shed'));
    const none = { ok: false, reason: { code: 'noSuchCheck' } };
    expect(explain(project, 'beam.bending/nobody/whole')).toMatchObject(none);
    expect(explain(project, 'beam.bending/beam-high/post-1~post-2', 'no such combination')).toMatchObject(none);
  });
});
