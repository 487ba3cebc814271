import { describe, expect, test } from 'vitest';
import { explain } from '../../../../src/engine/explain.ts';
import type { CheckRow } from '../../../../src/engine/evaluation.ts';
import type { Project } from '../../../../src/engine/project/model.ts';
import { exampleText, soundProject } from '../../../support/files.ts';
import { evaluated, rowOf } from '../../whole/whole.ts';

const gable = soundProject(exampleText('gable'));
const evaluation = evaluated(gable);

/** Demand of a joint's row in one combination: its share of the rating times the rating [lb]. */
function forceIn(row: CheckRow, combinationId: string): number {
  const i = row.ratios.labels.findIndex((label) => label === `${combinationId}|`);
  return row.ratios.values[i]!;
}
const combinationsOf = (row: CheckRow): readonly string[] =>
  row.ratios.labels.map((label) => label.slice(0, label.indexOf('|')));

/** Hardest rafter tie of each slope over a line in one combination, by the rafters' own rows [lb]. */
function hardestTies(rule: 'rafter.tie' | 'rafter.tieAcross', line: string, combinationId: string): readonly number[] {
  return evaluation.shelter.planes
    .filter(({ onLines }) => onLines.includes(line))
    .map(({ id }) => {
      const ids = evaluation.shelter.rafters.filter((r) => r.plane === id).map((r) => r.id);
      const rows = evaluation.checks.filter(
        (c) => c.ruleId === rule && ids.includes(c.memberId) && c.place.name === line,
      );
      return Math.max(...rows.map((row) => forceIn(row, combinationId) * row.capacity!.value));
    });
}

describe('a ridge strip', () => {
  test.each([
    ['strip.tie', 'rafter.tie'],
    ['strip.across', 'rafter.tieAcross'],
  ] as const)('[%s] answers for the hardest rafter of both slopes, an eave strip for its own', (ofStrip, ofRafter) => {
    for (const line of ['line-ridge', 'line-yard']) {
      const row = rowOf(evaluation, `${ofStrip}/${line}/whole`);
      for (const combinationId of combinationsOf(row)) {
        const expected = hardestTies(ofRafter, line, combinationId).reduce((sum, v) => sum + v, 0);
        expect(forceIn(row, combinationId) * row.capacity!.value).toBeCloseTo(expected, 6);
      }
    }
    expect(
      hardestTies(ofRafter, 'line-ridge', combinationsOf(rowOf(evaluation, `${ofStrip}/line-ridge/whole`))[0]!),
    ).toHaveLength(2);
  });

  test('[strip.tie] names both rafters in its step and adds what they pull', () => {
    const { key } = rowOf(evaluation, 'strip.tie/line-ridge/whole');
    const answer = explain(gable, key);
    if (!answer.ok) throw new Error('no steps');
    const step = answer.steps.find(({ formula }) => formula === 'T1 + T2')!;
    expect(step.words).toMatch(/rafter B\d+ and rafter C\d+/);
    expect(step.result.value).toBeCloseTo(
      step.put.reduce((sum, { value }) => sum + Number(value), 0),
      9,
    );
  });
});

describe('a rafter that ends over the ridge', () => {
  const seat = (line: string): CheckRow => {
    const rows = evaluation.checks.filter((c) => c.ruleId === 'rafter.seat' && c.place.name === line);
    return rows.reduce((a, b) => ((b.ratio ?? 0) > (a.ratio ?? 0) ? b : a));
  };
  const contactOf = (project: Project, row: CheckRow): number => {
    const answer = explain(project, row.key);
    if (!answer.ok) throw new Error('no steps');
    return answer.steps.find(({ symbol }) => symbol === 'A')!.result.value;
  };

  test('[rafter.seat] bears on the half of a 3-1/2 in. strip before its end; at the eave on what its cut leaves', () => {
    expect(contactOf(gable, seat('line-ridge'))).toBeCloseTo(2 * 1.75, 9);
    // a plumb cut of 3/4 in. at 3 in 12 is 3 in. long
    expect(contactOf(gable, seat('line-yard'))).toBeCloseTo(2 * 3, 9);
  });
});
