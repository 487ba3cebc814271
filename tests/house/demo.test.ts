import { describe, expect, it } from 'vitest';
import { parseProject } from '../../src/engine/project/parse.ts';
import { saveText } from '../../src/engine/project/save-text.ts';
import { exampleText } from '../support/files.ts';

describe('the demo', () => {
  it('is shown before the code that reads files has come: so it must be what that code makes of it', () => {
    const text = exampleText('firewood-shed');
    expect(parseProject(text)).toStrictEqual({ ok: true, project: JSON.parse(text) });
  });

  it('guesses nothing of its site, and has the snow and the frost from the department', () => {
    const answer = parseProject(exampleText('firewood-shed'));
    if (!answer.ok) throw new Error('not sound');
    const { site, code } = answer.project;
    const given = [code, site, site.soil ?? {}].flatMap((part) =>
      Object.values(part).flatMap((v: unknown) => (typeof v === 'object' && v && 'givenBy' in v ? [v.givenBy] : [])),
    );
    expect(given.length).toBeGreaterThan(10);
    expect(given).not.toContain('guess');
    expect([site.groundSnowPsf.givenBy, site.frostDepthIn.givenBy]).toEqual(['department', 'department']);
  });

  it('is written as it would be saved', () => {
    const text = exampleText('firewood-shed');
    const answer = parseProject(text);
    expect(answer.ok ? saveText(answer.project) : '').toBe(text);
  });
});
