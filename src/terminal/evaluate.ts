import { readFileSync } from 'node:fs';
import process from 'node:process';
import { answerCommand } from './command.ts';

/** The terminal door: one saved file in, figures out; the number it ends with says how the shelter stands. */
const { exit, out, err } = answerCommand(process.argv.slice(2), (file) => {
  try {
    return { text: readFileSync(file, 'utf8') };
  } catch (error) {
    return { reason: error instanceof Error ? error.message : String(error) };
  }
});
if (err !== '') process.stderr.write(`${err}\n`);
if (out !== '') process.stdout.write(`${out}\n`);
process.exitCode = exit;
