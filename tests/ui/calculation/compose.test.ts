import { describe, expect, it } from 'vitest';
import { CALCULATION_WORDS } from '../../../src/data/words/calculation.ts';
import { isWorse } from '../../../src/engine/check.ts';
import { explain } from '../../../src/engine/explain.ts';
import { composeCalculation } from '../../../src/ui/calculation/compose.ts';
import { governingRows } from '../../../src/ui/calculation/governing.ts';
import { tellSteps, type Told } from '../../../src/ui/calculation/tell-steps.ts';
import type { Block, Heading } from '../../../src/ui/paper/blocks.ts';
import { pieceNames } from '../../../src/ui/sheet/piece-names.ts';
import { openedExample, type Opened } from './opened.ts';

const { project, evaluation } = openedExample('lean-to');
const names = pieceNames(project, evaluation);
const governing = governingRows(evaluation, names);
const atOnce = { rest: () => Promise.resolve(), report: () => undefined, isWanted: () => true };

/** A few keys stand for all: the whole is printed by the browser test. */
async function toldOf({ project: asked, evaluation: judged }: Opened, keys: readonly string[]): Promise<Told> {
  const told = await tellSteps(asked, judged, keys, atOnce);
  if (!told) throw new Error('nothing was told');
  return told;
}
const some = governing.filter((_, i) => i % 12 === 0).map(({ row }) => row.key);
const blocks: readonly Block[] = composeCalculation(
  project,
  evaluation,
  await toldOf({ project, evaluation }, some),
  'feet',
);
const headings = blocks.filter((block): block is Heading => block.kind === 'heading');

describe('what governs', () => {
  it('is every rule once for every group of alike members, and no alike row is worse', () => {
    const groupOf = (row: (typeof governing)[number]['row']): string =>
      row.memberId === 'site' ? row.key : `${row.ruleId} of ${names.pieceOf(row.memberId).words}`;
    const chosen = new Map(governing.map(({ row }) => [groupOf(row), row]));
    expect(chosen.size).toBe(governing.length);
    for (const row of evaluation.checks) {
      const worst = chosen.get(groupOf(row));
      expect(worst && isWorse(row, worst)).toBe(false);
    }
    expect(governing.reduce((sum, { alike }) => sum + alike, 0)).toBe(evaluation.checks.length);
  });
});

describe('the whole calculation', () => {
  it('has every section in the order in which it is read, each heading with an id of its own', () => {
    const sections = headings.filter(({ level }) => level === 3).map(({ words }) => words);
    const all: readonly string[] = Object.values(CALCULATION_WORDS.sections);
    expect(sections).toEqual(all.filter((words) => sections.includes(words)));
    expect(sections).toContain(CALCULATION_WORDS.sections.sources);
    expect(new Set(headings.map(({ id }) => id)).size).toBe(headings.length);
  });

  it('tells every governing check under a heading of its own, and points to it from the index', () => {
    const printed = blocks.flatMap((block) => (block.kind === 'text' && block.checkKey ? [block.checkKey] : []));
    expect(printed.toSorted()).toEqual(governing.map(({ row }) => row.key).toSorted());
    const index = blocks.find((b) => b.kind === 'table' && b.label === CALCULATION_WORDS.sections.index);
    const targets = index?.kind === 'table' ? index.rows.map(({ cells }) => cells.at(-1)?.[0]?.pageOf) : [];
    expect(targets).toHaveLength(governing.length);
    for (const target of targets) expect(headings.map(({ id }) => id)).toContain(target);
  });

  it('numbers its steps in the order of the pages, and no number comes from a step further down', () => {
    const rows = blocks.flatMap((block) => (block.kind === 'table' ? block.rows : []));
    const steps = rows.filter(({ step }) => step !== undefined);
    expect(steps.map(({ step }) => step)).toEqual(steps.map((_, i) => i + 1));
    for (const { step, cells } of steps) {
      for (const { text } of cells[2] ?? []) {
        const from = /\(step (\d+)\)$/.exec(text)?.[1];
        expect(Number(from ?? 0)).toBeLessThan(step ?? 0);
      }
    }
  });

  it('prints way by way what a ledger brings to its wall, each with its combination', () => {
    const table = blocks.find((block) => block.kind === 'table' && block.columns[0]?.head === 'way');
    const rows = table?.kind === 'table' ? table.rows.map(({ cells }) => cells.map((cell) => cell[0]?.text ?? '')) : [];
    const [report] = evaluation.ledgers;
    expect(rows.map(([way, onFoot]) => [way, onFoot])).toEqual(
      report!.forces.map(({ way, plf }) => [way, `${plf.toFixed(1)} lb/ft`]),
    );
    expect(rows[0]?.[3]).toContain('Dead and snow');
  });

  it('lists every source that a clause on its pages points into', () => {
    const tables = blocks.filter((block) => block.kind === 'table');
    const sources = tables.at(-1)?.rows.map(({ cells }) => cells[0]?.[0]?.text ?? '') ?? [];
    const clauses = tables.flatMap(({ columns, rows }) => {
      const at = columns.findIndex(({ head }) => head === 'clause');
      return at < 1 ? [] : rows.map(({ cells }) => cells[at]?.[0]?.text ?? '');
    });
    expect(clauses.length).toBeGreaterThan(50);
    for (const clause of clauses.filter((words) => words !== '')) {
      expect([clause, sources.some((source) => clause.startsWith(source))]).toEqual([clause, true]);
    }
  });

  it('says of a row without a number that none is computed', () => {
    const bare = governing.find(({ row }) => row.ratio === null && row.demand === null);
    const said = blocks.find((block) => block.kind === 'text' && block.checkKey === bare?.row.key);
    expect(said?.kind === 'text' && said.words).toContain(CALCULATION_WORDS.noSteps);
  });
});

describe('telling the steps', () => {
  it('says why where the shelter cannot be put together, check by check, and does not throw', async () => {
    const lost = { ...project, members: project.members.map((member) => ({ ...member, group: 'gone' })) };
    const told = await tellSteps(lost, evaluation, some.slice(0, 2), atOnce);
    const door = explain(lost, some[0]!);
    expect(door.ok).toBe(false);
    const codes = [...told!.checks.values()].map((answer) => ('code' in answer ? answer.code : ''));
    expect(codes).toEqual(Array.from({ length: 2 }, () => (door.ok ? '' : door.reason.code)));
  });

  it('gives the hand back after every check and says how far it is', async () => {
    const done: number[] = [];
    let rests = 0;
    const keys = some.slice(0, 3);
    await tellSteps(project, evaluation, keys, {
      rest: () => Promise.resolve(void rests++),
      report: (progress) => void done.push(progress.done),
      isWanted: () => true,
    });
    expect(done).toEqual([0, 1, 2, 3]);
    expect(rests).toBe(2 + evaluation.logs.length + keys.length);
  });

  it('stops as soon as nobody wants it', async () => {
    let asked = 0;
    const told = await tellSteps(project, evaluation, some, {
      rest: () => Promise.resolve(),
      report: () => void asked++,
      isWanted: () => asked < 3,
    });
    expect(told).toBeNull();
    expect(asked).toBe(3);
  });
});
