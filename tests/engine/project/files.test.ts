import { describe, expect, it } from 'vitest';
import { projectJsonSchema } from '../../../src/engine/project/json-schema.ts';
import { filledIn, migrated } from '../../../src/engine/project/migrations.ts';
import { parseProject } from '../../../src/engine/project/parse.ts';
import { saveText } from '../../../src/engine/project/save-text.ts';
import { EXAMPLES, everythingGivenText, exampleText, jsonSchemaText, soundProject } from '../../support/files.ts';

describe('example files', () => {
  const FILES: readonly (readonly [string, string])[] = [
    ...EXAMPLES.map((name) => [name, exampleText(name)] as const),
    ['everything-given', everythingGivenText()],
  ];
  it.each(FILES)('%s is sound, and written just as the workbench saves it', (_, text) => {
    const answer = parseProject(text);
    expect(answer).toMatchObject({ ok: true });
    expect(answer).not.toHaveProperty('repaired');
    expect(saveText(soundProject(text))).toBe(text);
  });

  it('the fixture rates every joint in all four parts and leaves no site value to a guess', () => {
    const { joints, site } = soundProject(everythingGivenText());
    const parts = joints.defaults.flatMap(({ capacity }) =>
      capacity?.kind === 'rated' ? Object.values(capacity.parts) : [null],
    );
    expect(parts).toHaveLength(14 * 4);
    expect(parts).not.toContain(null);
    expect(JSON.stringify(site)).not.toMatch(/"guess"|"value":null/);
  });
});

describe('saving', () => {
  const shed = soundProject(exampleText('firewood-shed'));
  it('does not depend on the order in which fields were set', () => {
    const { title, ...rest } = shed;
    expect(saveText({ ...rest, title })).toBe(saveText(shed));
  });

  it('keeps lines short enough to read and puts a small element on one line', () => {
    const lines = saveText(shed).split('\n');
    expect(Math.max(...lines.map((line) => line.length))).toBeLessThanOrEqual(125);
    expect(lines.filter((line) => line.includes('"id": "rafter-3"'))).toEqual([expect.stringContaining('"xIn": 20.5')]);
  });

  it('a change of one number is a change of one line', () => {
    const members = shed.members.map((m) => (m.id === 'post-2' && m.role === 'post' ? { ...m, xIn: 150 } : m));
    const [before, after] = [saveText(shed).split('\n'), saveText({ ...shed, members }).split('\n')];
    expect(after.filter((line, i) => line !== before[i])).toHaveLength(1);
  });

  it('reads a file that begins with a byte order mark', () => {
    expect(parseProject(`\uFEFF${exampleText('lean-to')}`).ok).toBe(true);
  });
});

describe('older versions', () => {
  const steps = {
    1: (raw: object) => ({ ...raw, second: true }),
    2: (raw: object) => ({ ...raw, third: true }),
  };
  it('are carried over one step after another, and the person is told', () => {
    expect(migrated({ formatVersion: 1 }, 1, steps, 3)).toEqual({
      raw: { formatVersion: 3, second: true, third: true },
      repaired: [{ code: 'migrated', values: { from: 1, to: 3 } }],
    });
  });

  it('the newest version is left alone', () => {
    const raw = { formatVersion: 3 };
    expect(migrated(raw, 3, steps, 3)).toEqual({ raw, repaired: [] });
  });

  it('what is there is never filled in', () => {
    const whole = { cuts: 1, ownLoads: 1, instead: 1, asBuilt: 1, trees: 1, pieces: 1, notYetYours: 1, extras: 1 };
    expect(filledIn(whole)).toEqual({ raw: whole, repaired: [] });
  });
});

describe('JSON Schema', () => {
  it('public/shelter.schema.json is what the schema prints; when the format changes, write projectJsonSchema() there', () => {
    expect(JSON.parse(jsonSchemaText())).toEqual(JSON.parse(JSON.stringify(projectJsonSchema())));
  });
});
