import { parseArgs } from 'node:util';
import { say } from '../data/words/say.ts';
import { evaluate } from '../engine/evaluate.ts';
import { explain } from '../engine/explain.ts';
import type { Evaluation } from '../engine/evaluation.ts';
import type { Fault } from '../engine/message.ts';
import type { Project } from '../engine/project/model.ts';
import { parseProject } from '../engine/project/parse.ts';
import { jsonReport } from './json-report.ts';
import { plainReport } from './plain-report.ts';
import { stepsReport } from './steps-report.ts';

/** What the command says and how it ends. */
export interface Outcome {
  readonly exit: 0 | 1 | 2 | 3 | 4;
  readonly out: string;
  readonly err: string;
}

const USAGE = 'usage: npm run --silent evaluate -- FILE [--json] [--steps KEY [--combination ID]]';

/**
 * The whole command, apart from reading the file and writing the answer.
 * Ends with 0 when every check passes, 1 when at least one fails, 3 when none fails but something is not given or
 * outside the method, 2 when file or words on the line are refused, 4 when the engine broke a promise of its own.
 * @param words what stands on the line after the command
 * @param read  text of a file, or the reason why it cannot be read
 */
export function answerCommand(
  words: readonly string[],
  read: (file: string) => { readonly text: string } | { readonly reason: string },
): Outcome {
  const asked = askedFor(words);
  if ('refused' in asked) return refused(`${asked.refused}\n${USAGE}`);
  const file = read(asked.file);
  if ('reason' in file) return refused(`${asked.file} cannot be read: ${file.reason}`);
  const parsed = parseProject(file.text);
  if (!parsed.ok) return refused(faultLines(asked.file, parsed.faults));
  const repaired = (parsed.repaired ?? []).map((each) => say(each)).join('\n');
  const answer = evaluate(parsed.project);
  if (!answer.ok) return { ...refused(faultLines(asked.file, answer.faults)), exit: exitOfFaults(answer.faults) };
  const done = (out: string): Outcome => ({ exit: exitOf(answer.evaluation), out, err: repaired });
  if (asked.steps !== null) return stepsOf(parsed.project, answer.evaluation, asked.steps, asked.combination, done);
  return done((asked.json ? jsonReport : plainReport)(parsed.project, answer.evaluation));
}

interface Asked {
  readonly file: string;
  readonly json: boolean;
  readonly steps: string | null;
  readonly combination: string | undefined;
}

function askedFor(words: readonly string[]): Asked | { readonly refused: string } {
  try {
    const { values, positionals } = parseArgs({
      args: [...words],
      allowPositionals: true,
      options: { json: { type: 'boolean' }, steps: { type: 'string' }, combination: { type: 'string' } },
    });
    const [file, ...more] = positionals;
    if (file === undefined || more.length > 0) return { refused: 'Name one project file.' };
    if (values.json && values.steps !== undefined) return { refused: 'Choose --json or --steps, not both.' };
    if (values.combination !== undefined && values.steps === undefined)
      return { refused: '--combination belongs to --steps.' };
    return { file, json: values.json ?? false, steps: values.steps ?? null, combination: values.combination };
  } catch (error) {
    return { refused: error instanceof Error ? error.message : String(error) };
  }
}

function stepsOf(
  project: Project,
  evaluation: Evaluation,
  key: string,
  combination: string | undefined,
  done: (out: string) => Outcome,
): Outcome {
  const row = evaluation.checks.find((c) => c.key === key);
  if (!row) return refused(`${say({ code: 'noSuchCheck', values: { key } })} The plain output lists the keys.`);
  const explained = explain(project, key, combination);
  return explained.ok ? done(stepsReport(row, explained.steps, combination)) : refused(say(explained.reason));
}

const refused = (err: string): Outcome => ({ exit: 2, out: '', err });

function exitOf({ counts }: Evaluation): Outcome['exit'] {
  if (counts.fail > 0) return 1;
  return counts.notGiven > 0 || counts.outside > 0 ? 3 : 0;
}

const exitOfFaults = (faults: readonly Fault[]): Outcome['exit'] =>
  faults.some((f) => f.code === 'engineFault') ? 4 : 2;

const faultLines = (file: string, faults: readonly Fault[]): string =>
  [`${file} is refused:`, ...faults.map((f) => `  ${f.path === '' ? 'the file' : f.path}: ${say(f)}`)].join('\n');
