import { useId, useState } from 'react';
import { say } from '../../data/words/say.ts';
import { FieldNote } from '../fields/field-note.tsx';
import { Yours } from '../fields/yours.tsx';
import { acts, present, useWorkbench } from '../state/use-workbench.ts';
import { valueAt } from '../state/value-at.ts';
import { isSameSize, sizeInWords, type ListedSize } from './hardware-sizes.ts';

const OTHER = 'other';
const NONE = 'none';

interface SizeProps {
  readonly path: string;
  readonly label: string;
}

/** A small size of steel that is typed, shown in decimals where the tables print decimals. */
export function TypedSize({ path, label }: SizeProps) {
  const system = useWorkbench((state) => state.system);
  const sizeIn = useSize(path);
  const shown = sizeIn === null ? {} : { shownAs: sizeInWords(sizeIn, system) };
  return <Yours path={path} label={label} kind="length" {...shown} />;
}

interface ListedProps extends SizeProps {
  readonly listed: readonly ListedSize[];
  /** what stands for leaving it out, where that is allowed */
  readonly without?: string;
}

/** A size from the list of its kind, or another one, typed. */
export function ListedLength({ path, label, listed, without }: ListedProps) {
  const id = useId();
  const sizeIn = useSize(path);
  const hasDraft = useWorkbench(({ drafts }) => drafts[path] !== undefined);
  const [isTyped, setTyped] = useState(false);
  const [refusal, setRefusal] = useState<string | null>(null);
  const found = listed.findIndex(({ valueIn }) => sizeIn !== null && isSameSize(valueIn, sizeIn));
  const isOther = isTyped || hasDraft || (sizeIn !== null && found < 0);
  const choose = (chosen: string): void => {
    setTyped(chosen === OTHER);
    if (chosen === OTHER) return;
    const accepted = acts().choose(path, chosen === NONE ? undefined : listed[Number(chosen)]?.valueIn, label);
    const fault = present().refusedChange?.faults[0];
    setRefusal(accepted || !fault ? null : say(fault));
  };
  return (
    <>
      <span className="yours-field">
        <select
          className="yours"
          aria-label={label}
          aria-describedby={`${id}note`}
          aria-invalid={refusal === null ? undefined : true}
          value={isOther ? OTHER : found < 0 ? NONE : String(found)}
          onChange={({ currentTarget }) => choose(currentTarget.value)}
        >
          {without !== undefined && <option value={NONE}>{without}</option>}
          {listed.map(({ words }, i) => (
            <option key={words} value={i}>
              {words}
            </option>
          ))}
          <option value={OTHER}>another size</option>
        </select>
        <FieldNote id={`${id}note`} fault={refusal} echo={null} floats={false} />
      </span>
      {isOther && (
        <>
          {' '}
          <TypedSize path={path} label={`${label}, typed`} />
        </>
      )}
    </>
  );
}

const useSize = (path: string): number | null =>
  useWorkbench(({ project }) => {
    const value = project ? valueAt(project, path) : undefined;
    return typeof value === 'number' ? value : null;
  });
