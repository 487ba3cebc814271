import { useId, useState, type ReactNode } from 'react';
import type { Project } from '../../engine/project/model.ts';
import { FieldNote } from '../fields/field-note.tsx';
import { Yours } from '../fields/yours.tsx';
import { acts, present, say, useWorkbench } from '../state/use-workbench.ts';
import { valueAt } from '../state/value-at.ts';
import { isSameSize, sizeInWords, type ListedSize } from './hardware-sizes.ts';

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
  /** the project with a listed size, or with none, where more than the size follows from it */
  readonly take?: (project: Project, sizeIn: number | undefined) => Project;
}

/** A size from the list of its kind, or another one, typed. */
export function ListedLength({ path, label, listed, without, take }: ListedProps) {
  const sizeIn = useSize(path);
  const choose = (valueIn: number | undefined): boolean =>
    take
      ? acts().perform({ name: label, perform: (project) => take(project, valueIn), undo: 'now' })
      : acts().choose(path, valueIn, label);
  const options = listed.map(({ valueIn, words }) => ({
    words,
    isIt: sizeIn !== null && isSameSize(valueIn, sizeIn),
    take: () => choose(valueIn),
  }));
  const none = { words: without ?? '', isIt: sizeIn === null, take: () => choose(undefined) };
  return (
    <OfferedSize label={label} typedPaths={[path]} options={without === undefined ? options : [none, ...options]}>
      <TypedSize path={path} label={`${label}, typed`} />
    </OfferedSize>
  );
}

interface Offer {
  readonly words: string;
  readonly isIt: boolean;
  /** false when it was refused */
  readonly take: () => boolean;
}

interface OfferedSizeProps {
  readonly label: string;
  readonly options: readonly Offer[];
  /** fields of the size that is typed instead */
  readonly typedPaths: readonly string[];
  readonly children: ReactNode;
}

/** Sizes to choose from, and one more choice that brings the fields to type another. */
export function OfferedSize({ label, options, typedPaths, children }: OfferedSizeProps) {
  const id = useId();
  const hasDraft = useWorkbench(({ drafts }) => typedPaths.some((path) => drafts[path] !== undefined));
  const [isTyped, setTyped] = useState(false);
  const [refusal, setRefusal] = useState<string | null>(null);
  const chosen = options.findIndex(({ isIt }) => isIt);
  const isOther = isTyped || hasDraft || chosen < 0;
  const choose = (at: number): void => {
    const option = options[at];
    setTyped(!option);
    const accepted = option?.take() ?? true;
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
          value={isOther ? options.length : chosen}
          onChange={({ currentTarget }) => choose(Number(currentTarget.value))}
        >
          {options.map(({ words }, i) => (
            <option key={words} value={i}>
              {words}
            </option>
          ))}
          <option value={options.length}>another size</option>
        </select>
        <FieldNote id={`${id}note`} fault={refusal} echo={null} floats={false} />
      </span>
      {isOther && <> {children}</>}
    </>
  );
}

const useSize = (path: string): number | null =>
  useWorkbench(({ project }) => {
    const value = project ? valueAt(project, path) : undefined;
    return typeof value === 'number' ? value : null;
  });
