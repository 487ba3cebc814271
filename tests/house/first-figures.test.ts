import { mkdtempSync, rmSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { pathToFileURL } from 'node:url';
import { build } from 'vite';
import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import { evaluate } from '../../src/engine/evaluate.ts';
import type { Evaluation } from '../../src/engine/evaluation.ts';
import { setAt } from '../../src/engine/project/edits/set-at.ts';
import type { Project } from '../../src/engine/project/model.ts';
import type * as DemoFigures from '../../src/ui/state/demo-figures.prepared.ts';
import { preparedAnswer } from '../../src/ui/state/first-figures.ts';
import { exampleText, soundProject } from '../support/files.ts';

const outDir = mkdtempSync(join(tmpdir(), 'first-figures-'));
afterAll(() => rmSync(outDir, { recursive: true }));

const demo = soundProject(exampleText('firewood-shed'));
/** what the built page carries */
let text = '';
let modules: readonly string[] = [];

beforeAll(async () => {
  const built = await build({
    logLevel: 'silent',
    build: {
      ssr: true,
      outDir,
      copyPublicDir: false,
      rolldownOptions: {
        input: { figures: 'src/ui/state/demo-figures.prepared.ts' },
        output: { entryFileNames: '[name].mjs' },
      },
    },
  });
  if (!('output' in built)) throw new Error('one output was asked for');
  modules = built.output.flatMap((chunk) => (chunk.type === 'chunk' ? chunk.moduleIds : []));
  const address = pathToFileURL(join(outDir, 'figures.mjs')).href;
  const come: typeof DemoFigures = await import(/* @vite-ignore */ address);
  text = come.demoFigures;
});

function shown(project: Project): Evaluation {
  const answer = preparedAnswer(text, project);
  if (!answer?.ok) throw new Error('figures expected');
  return answer.evaluation;
}

function judged(project: Project): Evaluation {
  const answer = evaluate(project);
  if (!answer.ok) throw new Error('figures expected');
  return answer.evaluation;
}

describe('the figures that the built page shows first', () => {
  it('are those of the engine for the demo, to the last digit, without its long lists', () => {
    const { checks, lines, sections, rows: frames, ...rest } = judged(demo);
    expect(checks.length).toBeGreaterThan(100);
    expect(Math.min(lines.length, sections.length, frames.length)).toBeGreaterThan(0);
    const expected = { ...rest, checks: checks.map(({ ratios: _ratios, ...row }) => row) };
    const { checks: shownChecks, lines: noLines, sections: noSections, rows: noFrames, ...figures } = shown(demo);
    const ours = { ...figures, checks: shownChecks.map(({ ratios: _ratios, ...row }) => row) };
    // as text, a number is the shortest that reads as that number and no other
    expect(ours).toEqual(JSON.parse(JSON.stringify(expected)));
    expect([...noLines, ...noSections, ...noFrames]).toEqual([]);
    expect(shownChecks.flatMap(({ ratios }) => [...ratios.values])).toEqual([]);
  });

  it('were made while the page was built: nothing of the engine travels with them', () => {
    expect(modules).toHaveLength(1);
  });

  it('are handed out for no other project, program or data', () => {
    expect(preparedAnswer(text, setAt(demo, 'site.groundSnowPsf.value', 56))).toBeNull();
    for (const version of ['programVersion', 'dataVersion']) {
      const older = JSON.stringify({ ...JSON.parse(text), [version]: 'older' });
      expect(preparedAnswer(older, demo)).toBeNull();
    }
  });
});
