import { useEffect, useId, useRef, useState, type KeyboardEvent } from 'react';
import { acts, say, useWorkbench } from '../state/use-workbench.ts';
import type { MeasuredFrom } from '../state/open-work.ts';
import { valueAt } from '../state/value-at.ts';
import { kindOfPath, showField, type FieldKind } from '../units/field-kind.ts';
import { keysFor, unitWords } from '../units/unit-words.ts';

const AFTER_THE_CLICK_MS = 250;

export interface FieldProps {
  /** path by id, for example `members[post-2].xIn` */
  readonly path: string;
  /** what is asked, for a label or for those who hear the page */
  readonly label: string;
  /** taken from the path's unit where it is left out */
  readonly kind?: FieldKind;
  /** the length is shown from another place than it is stored from */
  readonly from?: MeasuredFrom | undefined;
  /** another spelling of the stored value, for a drawing */
  readonly shownAs?: string | undefined;
}

/** Everything a text box needs to be a field of the project: its text, its handlers, what stands under it. */
export function useField({ path, label, kind: given, from, shownAs }: FieldProps) {
  const kind = given ?? kindOfPath(path);
  const id = useId();
  const system = useWorkbench((state) => state.system);
  const draft = useWorkbench((state) => state.drafts[path]);
  const value = useWorkbench(({ project }) => (project ? valueAt(project, path) : undefined));
  const isNotYet = useWorkbench(({ project }) => project?.notYetYours.includes(path) ?? false);
  /** the text as typed since the field was entered; null while the stored value shows */
  const [typed, setTyped] = useState<string | null>(null);
  const [entered, setEntered] = useState(false);
  const untouched = useRef('');
  const leaving = useRef<ReturnType<typeof setTimeout>>(undefined);

  useEffect(() => () => clearTimeout(leaving.current), []);

  const amount = from && typeof value === 'number' ? from.sign * (value - from.zeroIn) : value;
  const shown = shownAs ?? showField(kind, amount, system);
  const text = typed ?? draft?.text ?? shown;

  const type = (next: string): void => {
    setTyped(next);
    // typed back to what stood there: the stored number returns as it was, not as its rounded text
    if (next === untouched.current) acts().abandon({ path, name: label });
    else acts().typeInto({ path, text: next, kind, name: label, from });
  };
  const rest = (): void => {
    acts().settle();
    setTyped(null);
  };
  const onKeyDown = (event: KeyboardEvent<HTMLInputElement>): void => {
    if (event.key === 'Enter') {
      rest();
      untouched.current = shown;
      event.currentTarget.select();
    } else if (event.key === 'z' && (event.ctrlKey || event.metaKey)) {
      // unfinished typing is taken back first; without any, the page undoes the last change
      if (draft) {
        event.preventDefault();
        event.stopPropagation();
        acts().abandon({ path, name: label });
      }
      setTyped(null);
    } else if (event.key === 'Escape' && (typed !== null || draft)) {
      event.stopPropagation(); // the first Escape belongs to the field, the next to what surrounds it
      acts().abandon({ path, name: label });
      setTyped(null);
    }
  };

  return {
    kind,
    text,
    fault: draft ? say(draft.said) : null,
    /** what a text that differs from its usual spelling was read as */
    echo: typed !== null && !draft && kind !== 'text' && shown !== '' && shown !== typed.trim() ? shown : null,
    entered,
    /** nobody has touched this value of a new shelter yet */
    isNotYet,
    keys: keysFor(kind, system),
    type,
    ids: { box: id, hint: `${id}hint`, note: `${id}note` },
    hint: isNotYet ? `${unitWords(kind, system)}; not yet yours` : unitWords(kind, system),
    box: {
      id,
      'data-path': path,
      value: text,
      type: 'text',
      inputMode: kind === 'text' ? 'text' : 'decimal',
      autoComplete: 'off',
      spellCheck: kind === 'text',
      'aria-invalid': draft ? true : undefined,
      'aria-describedby': entered || draft ? `${id}hint ${id}note` : `${id}hint`,
      onChange: (event: { readonly currentTarget: HTMLInputElement }) => type(event.currentTarget.value),
      onFocus: (event: { readonly currentTarget: HTMLInputElement }) => {
        clearTimeout(leaving.current);
        setEntered(true);
        untouched.current = shown;
        event.currentTarget.select();
      },
      onBlur: () => {
        // the note stops floating only when the click that left the field has found its target
        leaving.current = setTimeout(() => setEntered(false), AFTER_THE_CLICK_MS);
        rest();
      },
      onKeyDown,
    } as const,
  };
}
