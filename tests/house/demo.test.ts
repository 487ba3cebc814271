import { describe, expect, it } from 'vitest';
import { parseProject } from '../../src/engine/project/parse.ts';
import { exampleText } from '../support/files.ts';

describe('the demo', () => {
  it('is shown before the code that reads files has come: so it must be what that code makes of it', () => {
    const text = exampleText('firewood-shed');
    expect(parseProject(text)).toStrictEqual({ ok: true, project: JSON.parse(text) });
  });
});
