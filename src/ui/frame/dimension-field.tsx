import type { RenderDimension } from '../drawing/PictureView.tsx';
import { Yours } from '../fields/yours.tsx';
import { useOpenProject, useWorkbench } from '../state/use-workbench.ts';
import { leafOfDimension } from './dimension-leaf.ts';
import { SHOWS } from './show.ts';

interface DimensionFieldProps {
  readonly path: string;
  readonly valueIn: number;
  readonly sign: 1 | -1;
  readonly text: string;
}

function DimensionField({ path, valueIn, sign, text }: DimensionFieldProps) {
  const project = useOpenProject();
  const system = useWorkbench((state) => state.system);
  const leaf = leafOfDimension(project, path, valueIn, sign);
  const shown = SHOWS[system].length(valueIn);
  if (!leaf) return <span className="fixed-length">{text}</span>;
  return (
    <span>
      <Yours path={leaf.path} label={labelOf(path)} kind="length" from={leaf.from} shownAs={shown} />
      <span className="after-length">{text.startsWith(shown) ? text.slice(shown.length) : ''}</span>
    </span>
  );
}

const LABELS: readonly (readonly [RegExp, string])[] = [
  [/\.fromXIn$|\.toXIn$/, 'Beam past the last post'],
  [/^members\[.*\.xIn$/, 'Post to post'],
  [/\.zIn$/, 'Height of the seat above the ground'],
  [/\.runIn$/, 'Brace, run along the beam'],
  [/\.dropIn$/, 'Brace, drop down the post'],
  [/\.yIn$/, 'Line to line'],
  [/\.highOverhangIn$/, 'Overhang at the high edge'],
  [/\.lowOverhangIn$/, 'Overhang at the low edge'],
];
const labelOf = (path: string): string => LABELS.find(([pattern]) => pattern.test(path))?.[1] ?? 'Length';

/** A length on the drawing is edited where it stands. */
export const renderDimension: RenderDimension = (path, valueIn, { sign, text }) => (
  <DimensionField path={path} valueIn={valueIn} sign={sign} text={text} />
);
