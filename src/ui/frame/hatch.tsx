import { useMemo } from 'react';
import type { ForceOverlay } from '../drawing/force-diagram.ts';
import type { Evaluation } from '../../engine/evaluation.ts';
import { useWorkbench } from '../state/use-workbench.ts';
import { showLength } from '../units/show-length.ts';
import { showQuantity } from '../units/show-quantity.ts';
import { look, useFrameView, type Hatched } from './frame-view.ts';

const KINDS: readonly { readonly kind: Hatched; readonly words: string }[] = [
  { kind: 'none', words: 'nothing' },
  { kind: 'moment', words: 'bending' },
  { kind: 'shear', words: 'shear' },
  { kind: 'sag', words: 'sag' },
  { kind: 'buckling', words: 'buckling' },
];
const NAMES = { moment: 'moment', shear: 'shear', sag: 'sag after years' } as const;
const UNITS = { moment: 'lb·in', shear: 'lb', sag: 'in' } as const;

/** What is drawn on the logs of a front view: forces and sag hatched, the worst of all combinations at each place. */
export function HatchChoice() {
  const hatched = useFrameView((state) => state.hatched);
  return (
    <fieldset className="hatch-choice chooser">
      <legend>Drawn on the logs</legend>
      {KINDS.map(({ kind, words }) => (
        <label key={kind} className={kind === hatched ? 'chosen' : undefined}>
          <input
            type="radio"
            className="unseen"
            name="hatched"
            checked={kind === hatched}
            onChange={() => look({ hatched: kind })}
          />
          {words}
        </label>
      ))}
    </fieldset>
  );
}

export function useOverlay(evaluation: Evaluation, lineId: string): ForceOverlay | null {
  const hatched = useFrameView((state) => state.hatched);
  const system = useWorkbench((state) => state.system);
  return useMemo(() => {
    const line = evaluation.lines.find((each) => each.lineId === lineId);
    if (hatched === 'none' || hatched === 'buckling' || !line) return null;
    return {
      kind: hatched,
      members: line.members,
      show: (value, atIn) =>
        `${NAMES[hatched]} ${showQuantity({ value, unit: UNITS[hatched] }, system)}, ${showLength(atIn, system)} along`,
    };
  }, [evaluation, lineId, hatched, system]);
}
