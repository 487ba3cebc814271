import { MODEL_WORDS } from '../../engine/checks/frame-rows.ts';
import type { BuckledLine } from '../../engine/frame/buckled-shape.ts';
import type { Evaluation } from '../../engine/evaluation.ts';
import { combinationInWords } from '../cord/combination.ts';
import { lowerCase } from '../cord/letter-case.ts';
import type { LaidOver } from '../drawing/picture-options.ts';
import type { Sketch } from '../drawing/sketch.ts';

/** The farthest move is drawn as so many thicknesses of text. */
const REACH_IN_TEXTS = 4;

const shapeOf = (evaluation: Evaluation, lineId: string): BuckledLine | null =>
  evaluation.lines.find((line) => line.lineId === lineId)?.buckled ?? null;

/** Times as they are drawn and said: rounded down, one never sees more room than there is. */
const timesWords = (factor: number): string => (Math.floor(factor * 10) / 10).toFixed(1);

/** On a front view: the line as it would give way, dashed, beside the line as it stands; null where nothing presses on it. */
export function buckledFront(evaluation: Evaluation, lineId: string): LaidOver | null {
  const shape = shapeOf(evaluation, lineId);
  if (!shape) return null;
  return {
    above: 0,
    left: REACH_IN_TEXTS,
    right: REACH_IN_TEXTS,
    title: 'how it would give way',
    description: `At ${timesWords(shape.factor)} times the loads of one combination.`,
    draw: (sketch) => shape.members.forEach((member) => drawMember(sketch, member)),
  };
}

function drawMember(sketch: Sketch, { points }: BuckledLine['members'][number]): void {
  const { view } = sketch;
  const reach = REACH_IN_TEXTS * view.paper.textSize;
  const moved = points.map(({ xIn, zIn, moveX, moveZ }) => {
    const at = view.at(xIn, zIn);
    return { x: at.x + reach * moveX, y: at.y - reach * moveZ };
  });
  sketch.line(moved, 'whole-line', { givesWay: true });
}

/** What the dashed lines mean, and what they do not. */
export function BuckledWords({ evaluation, lineId }: { readonly evaluation: Evaluation; readonly lineId: string }) {
  const shape = shapeOf(evaluation, lineId);
  if (!shape) return <p className="quiet">Nothing presses on this line.</p>;
  const { combinationId, braceModel } = shape;
  const scenario = MODEL_WORDS[braceModel];
  const loads = lowerCase(combinationInWords(evaluation.loads, { combinationId, scenario }));
  return (
    <p className="silhouette-words">
      Dash and dot: how this line would give way first, were the loads of one combination ({loads}) to grow{' '}
      {timesWords(shape.factor)} times. Only the shape is drawn, not how far it moves today; what the loads add to the
      sway is counted in the figures.
    </p>
  );
}
