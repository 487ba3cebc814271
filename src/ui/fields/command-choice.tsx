import { useId } from 'react';
import type { Project } from '../../engine/project/model.ts';
import { acts } from '../state/use-workbench.ts';

export interface CommandOption {
  readonly words: string;
  readonly perform: (project: Project) => Project;
}
interface CommandChoiceProps {
  readonly label: string;
  /** place of what holds now; -1 where nothing is given */
  readonly chosen: number;
  readonly options: readonly CommandOption[];
  /** what stands there while nothing is chosen */
  readonly unchosen?: string;
}

/** A choice in a sentence that changes more than one field, or a field whose alternatives are whole objects. */
export function CommandChoice({ label, chosen, options, unchosen = 'not given' }: CommandChoiceProps) {
  const id = useId();
  return (
    <span className="yours-field">
      <select
        id={id}
        className="yours"
        aria-label={label}
        value={String(chosen)}
        onChange={({ currentTarget }) => {
          const option = options[Number(currentTarget.value)];
          if (option) acts().perform({ name: label, perform: option.perform, undo: 'now' });
        }}
      >
        {chosen < 0 && (
          <option value="-1" disabled>
            {unchosen}
          </option>
        )}
        {options.map(({ words }, i) => (
          <option key={words} value={i}>
            {words}
          </option>
        ))}
      </select>
    </span>
  );
}

/** A word that changes the project. What is refused is told at the edge of the page. */
export function CommandButton({ words, name, perform }: CommandOption & { readonly name?: string }) {
  return (
    <button
      type="button"
      className="tool"
      onClick={() => acts().perform({ name: name ?? words, perform, undo: 'now' })}
    >
      {words}
    </button>
  );
}
