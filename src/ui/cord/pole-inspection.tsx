import { POLE_INSPECTION } from '../../data/wood/pole-inspection.ts';
import type { PoleItem } from '../../data/wood/pole-items.ts';
import { setAt } from '../../engine/project/edits/set-at.ts';
import type { WoodBasis } from '../../engine/project/model.ts';
import { Yours } from '../fields/yours.tsx';
import { acts } from '../state/use-workbench.ts';

interface PoleInspectionProps {
  readonly basis: Extract<WoodBasis, { kind: 'poles' }>;
  /** where the basis is stored */
  readonly path: string;
  readonly of: string;
}

/** The list that is ticked beside the logs before published pole values may stand for them. */
export function PoleInspection({ basis, path, of }: PoleInspectionProps) {
  const tick = (id: PoleItem, isTicked: boolean): void => {
    const ticked = basis.ticked.filter((other) => other !== id).concat(isTicked ? [id] : []);
    acts().perform({ name: 'inspection of poles', perform: (p) => setAt(p, `${path}.ticked`, ticked), undo: 'now' });
  };
  return (
    <fieldset className="inspection">
      <legend>Seen on every log of this wood</legend>
      {POLE_INSPECTION.map(({ id, words, seen }) => (
        <label key={id}>
          <input
            type="checkbox"
            checked={basis.ticked.includes(id)}
            onChange={({ currentTarget }) => tick(id, currentTarget.checked)}
          />{' '}
          {words}
          {seen === 'memory' && <span className="quiet"> (limit not compared with the printed edition)</span>}
        </label>
      ))}
      <p className="sentence">
        Inspected by <Yours path={`${path}.by`} label={`${of}: who inspected the poles`} kind="text" /> on{' '}
        <Yours path={`${path}.date`} label={`${of}: day of the inspection`} kind="text" />.
      </p>
    </fieldset>
  );
}
