import { readFileSync } from 'node:fs';
import { evaluate } from '../../src/engine/evaluate.ts';
import { parseProject } from '../../src/engine/project/parse.ts';
import { spreadOf, type Spread } from './spread.ts';

const WARM_UP = 60;
const RUNS = 200;

/** Time of one whole evaluation of a file, warm: as it is while a person types. */
export function evaluationTime(path: string): Spread {
  const parsed = parseProject(readFileSync(path, 'utf8'));
  if (!parsed.ok) throw new Error(`${path} is refused`);
  const once = (): number => {
    const start = performance.now();
    evaluate(parsed.project);
    return performance.now() - start;
  };
  for (let i = 0; i < WARM_UP; i++) once();
  return spreadOf(Array.from({ length: RUNS }, once));
}
