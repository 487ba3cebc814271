import { describe, expect, it } from 'vitest';
import { setAt } from '../../../src/engine/project/edits/set-at.ts';
import { writePath, type Step } from '../../../src/engine/project/paths.ts';
import { inputBlocks } from '../../../src/ui/calculation/inputs.ts';
import { pieceNames } from '../../../src/ui/sheet/piece-names.ts';
import { everythingGivenText, exampleText, soundProject } from '../../support/files.ts';
import { figuresFor, openedExample } from './opened.ts';

/** Not inputs of the figures: what it is called, what the screen keeps beside it, names of things. */
const NOT_PRINTED = new Set(['formatVersion', 'title', 'trees', 'pieces', 'notYetYours', 'extras']);

/** Every value at the end of a path. */
function leaves(value: unknown, path: readonly Step[] = []): readonly (readonly [readonly Step[], unknown])[] {
  if (typeof value !== 'object' || value === null) return [[path, value]];
  const entries: readonly (readonly [Step, unknown])[] = Array.isArray(value)
    ? value.map((item: unknown, i) => [i, item] as const)
    : Object.entries(value);
  return entries
    .filter(([key]) => key !== 'id' && !(path.length === 0 && NOT_PRINTED.has(String(key))))
    .flatMap(([key, item]) => leaves(item, [...path, key]));
}

/** Something else of the same sort; null where it is not known of which sort it is. */
function another(value: unknown): unknown {
  if (typeof value === 'number') return value + 3;
  if (typeof value === 'string') return `${value}x`;
  return typeof value === 'boolean' ? !value : null;
}

const FILES = [
  ['firewood-shed', () => exampleText('firewood-shed')],
  ['everything-given', everythingGivenText],
] as const;

describe('the inputs of the calculation', () => {
  for (const [name, textOf] of FILES) {
    it(`print every value of the file: changing any one changes what is printed (${name})`, () => {
      const { project, evaluation } = figuresFor(soundProject(textOf()));
      const names = pieceNames(project, evaluation);
      const printed = JSON.stringify(inputBlocks(project, names, 'feet'));
      const found = leaves(project).filter(([, value]) => another(value) !== null);
      expect(found.length).toBeGreaterThan(200);
      const unseen = found.flatMap(([steps, value]) => {
        const path = writePath(project, steps);
        const changed = setAt(project, path, another(value));
        return JSON.stringify(inputBlocks(changed, names, 'feet')) === printed ? [path] : [];
      });
      expect(unseen).toEqual([]);
    });
  }

  it('tell of a value of the site who gave it and when', () => {
    const { project, evaluation } = openedExample('firewood-shed');
    const blocks = inputBlocks(project, pieceNames(project, evaluation), 'feet');
    const rows = blocks.flatMap((block) => (block.kind === 'table' ? block.rows : []));
    const cellsOf = (what: string) =>
      rows.find(({ cells }) => cells[0]?.[0]?.text === what)?.cells.map((c) => c[0]?.text);
    expect(cellsOf('ground snow')).toEqual(['ground snow', '55 psf', 'department, 2026-03-02']);
    expect(cellsOf('exposure to wind')).toEqual(['exposure to wind', 'B', 'owner, 2026-03-01']);
    expect(cellsOf('frost depth')).toEqual(['frost depth', `3' 0"`, 'department, 2026-03-02']);
  });

  it('show no id of the file to the reader of the paper', () => {
    for (const name of ['firewood-shed', 'lean-to', 'gable'] as const) {
      const { project, evaluation } = openedExample(name);
      const printed = JSON.stringify(
        inputBlocks(project, pieceNames(project, evaluation), 'feet').map((block) => ({ ...block, id: '' })),
      );
      const ids = [...project.supportLines, ...project.members, ...project.logs, ...project.groups].map(({ id }) => id);
      // an id that is a word of the language (ledger, purlins) cannot be told from the word
      const known = ids.filter((id) => /[-\d]/.test(id) && new RegExp(`\\b${id}\\b`).test(printed));
      expect([name, known]).toEqual([name, []]);
    }
  });

  it('keep every row well below the height of a page, however much is written down', () => {
    const { project, evaluation } = openedExample('firewood-shed');
    const log = project.logs[0]!;
    const stations = Array.from({ length: 40 }, (_, i) => ({ fromButtIn: i * 7.3, diameterIn: 12.77 - i / 100 }));
    const long = { ...project, logs: [{ ...log, stations }, ...project.logs.slice(1)] };
    const rows = inputBlocks(long, pieceNames(project, evaluation), 'feet').flatMap((b) =>
      b.kind === 'table' ? b.rows : [],
    );
    const most = Math.max(...rows.map(({ cells }) => cells[1]?.[0]?.text.length ?? 0));
    expect(most).toBeLessThanOrEqual(800);
  });
});
