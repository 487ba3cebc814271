import { useId, useState, type ChangeEvent } from 'react';
import { acts, present, say, useWorkbench } from '../state/use-workbench.ts';
import { valueAt } from '../state/value-at.ts';
import { groupBy } from '../sheet/group-by.ts';
import { FieldNote } from './field-note.tsx';

export interface Choice {
  /** what is stored; compared by what it holds, so an object is a choice too */
  readonly value: unknown;
  readonly words: string;
  /** heading of a long list under which it stands; choices of one heading follow each other */
  readonly group?: string;
}
export interface ChoiceProps {
  readonly path: string;
  readonly label: string;
  readonly choices: readonly Choice[];
}

const same = (a: unknown, b: unknown): boolean => JSON.stringify(a) === JSON.stringify(b);
const NOT_AMONG_THEM = '';

function useChoice({ path, label, choices }: ChoiceProps) {
  const id = useId();
  const value = useWorkbench(({ project }) => (project ? valueAt(project, path) : undefined));
  const isNotYet = useWorkbench(({ project }) => project?.notYetYours.includes(path) ?? false);
  const [refusal, setRefusal] = useState<string | null>(null);
  const chosen = choices.findIndex((choice) => same(choice.value, value));
  const onChange = (event: ChangeEvent<HTMLSelectElement>): void => {
    const choice = choices[Number(event.currentTarget.value)];
    if (!choice) return;
    const accepted = acts().choose(path, choice.value, label);
    const fault = present().refusedChange?.faults[0];
    setRefusal(accepted || !fault ? null : say(fault));
  };
  const options = (
    <>
      {chosen < 0 && (
        <option value={NOT_AMONG_THEM} disabled>
          not given
        </option>
      )}
      {groupBy(
        choices.map((choice, i) => ({ ...choice, i })),
        ({ group }) => group ?? '',
      ).map((alike) => {
        const list = alike.map(({ words, i }) => (
          <option key={words} value={i}>
            {words}
          </option>
        ));
        const group = alike[0]?.group;
        return group === undefined ? (
          list
        ) : (
          <optgroup key={group} label={group}>
            {list}
          </optgroup>
        );
      })}
    </>
  );
  return {
    id,
    noteId: `${id}note`,
    isNotYet,
    refusal,
    options,
    box: {
      id,
      'data-path': path,
      value: chosen < 0 ? NOT_AMONG_THEM : String(chosen),
      onChange,
      'aria-describedby': `${id}note`,
      'aria-invalid': refusal === null ? undefined : true,
    },
  };
}

/** A choice inside a sentence: blue and dotted like every other thing that is yours. */
export function YoursChoice(props: ChoiceProps) {
  const { box, options, noteId, refusal, isNotYet } = useChoice(props);
  return (
    <span className="yours-field">
      <select
        {...box}
        className={isNotYet ? 'yours not-yet' : 'yours'}
        aria-label={isNotYet ? `${props.label}; not yet yours` : props.label}
      >
        {options}
      </select>
      <FieldNote id={noteId} fault={refusal} echo={null} floats={false} />
    </span>
  );
}
