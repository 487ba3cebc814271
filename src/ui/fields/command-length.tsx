import { useId, useState } from 'react';
import { message, type Message } from '../../engine/message.ts';
import { EngineError } from '../../engine/errors.ts';
import type { Project } from '../../engine/project/model.ts';
import { acts, present, say, useWorkbench } from '../state/use-workbench.ts';
import { showField } from '../units/field-kind.ts';
import { readField, readGirth } from '../units/read-field.ts';
import { unitWords } from '../units/unit-words.ts';
import { FieldNote } from './field-note.tsx';

interface CommandLengthProps {
  readonly label: string;
  readonly valueIn: number;
  /** a girth stays in inches, as the tape says it */
  readonly of?: 'length' | 'girth';
  readonly perform: (project: Project, lengthIn: number) => Project;
}

/** A length that rewrites several pieces: carried out when it is entered, not at each key (2 is on the way to 24). */
export function CommandLength({ label, valueIn, of = 'length', perform }: CommandLengthProps) {
  const id = useId();
  const system = useWorkbench((state) => state.system);
  const [typed, setTyped] = useState<string | null>(null);
  const [said, setSaid] = useState<Message | null>(null);
  const shown = showField(of === 'girth' ? 'diameter' : 'length', valueIn, system);

  const enter = (): void => {
    if (typed === null || typed.trim() === shown) {
      setTyped(null);
      setSaid(null);
      return;
    }
    const refusal = carriedOut({ label, of, perform }, typed);
    setSaid(refusal);
    if (!refusal) setTyped(null);
  };
  return (
    <span className="yours-field">
      <input
        className="yours"
        type="text"
        inputMode="decimal"
        autoComplete="off"
        aria-label={label}
        aria-describedby={said ? `${id}hint ${id}note` : `${id}hint`}
        aria-invalid={said ? true : undefined}
        value={typed ?? shown}
        size={Math.max(2, (typed ?? shown).length)}
        onFocus={({ currentTarget }) => currentTarget.select()}
        onChange={({ currentTarget }) => setTyped(currentTarget.value)}
        onBlur={enter}
        onKeyDown={(event) => {
          if (event.key === 'Enter') enter();
          const isUndo = event.key === 'z' && (event.ctrlKey || event.metaKey);
          if ((event.key === 'Escape' || isUndo) && typed !== null) {
            event.preventDefault();
            event.stopPropagation();
            setTyped(null);
            setSaid(null);
          }
        }}
      />
      <span id={`${id}hint`} className="unseen">
        {unitWords('length', system)}; entered with Enter
      </span>
      {said && <FieldNote id={`${id}note`} fault={say(said)} echo={null} floats={false} />}
    </span>
  );
}

type Asked = Required<Pick<CommandLengthProps, 'label' | 'of' | 'perform'>>;

function carriedOut({ label, of, perform }: Asked, text: string): Message | null {
  const reading = of === 'girth' ? readGirth(text, present().system) : readField('length', text, present().system);
  if (!reading.ok) return reading.message;
  const lengthIn = Number(reading.value);
  try {
    const command = { name: label, perform: (project: Project) => perform(project, lengthIn), undo: 'now' } as const;
    if (acts().perform(command)) return null;
    return present().refusedChange?.faults[0] ?? message('notFinite');
  } catch (error) {
    // the edit refuses what it cannot do (no spacing below zero, not a thousand rafters)
    if (error instanceof EngineError) return message('fieldNotRead', { got: text.trim(), example: '24 in' });
    throw error;
  }
}
