import demoText from '../../../public/examples/firewood-shed.shelter.json?raw';
import { MisuseError } from '../../engine/errors.ts';
import { evaluate } from '../../engine/evaluate.ts';
import type { Evaluation } from '../../engine/evaluation.ts';
import type { FirstFigures } from './first-figures.ts';

/** Numbers that are not finite would arrive as something else. */
const onlyFinite = (name: string, value: unknown): unknown => {
  if (typeof value === 'number' && !Number.isFinite(value)) throw new MisuseError(name, value, 'a finite number');
  return value;
};

function firstFigures({ lines: _lines, sections: _sections, rows: _rows, checks, ...rest }: Evaluation): FirstFigures {
  return { ...rest, checks: checks.map(({ ratios: _ratios, ...row }) => row) };
}

const answer = evaluate(JSON.parse(demoText));
if (!answer.ok) throw new MisuseError('demo', answer.faults, 'a shelter that can be judged');

/** What the engine says of the demo, as the page carries it: this module runs while the page is built. */
export const demoFigures: string = JSON.stringify(firstFigures(answer.evaluation), onlyFinite);
