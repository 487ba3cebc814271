import { useId, useState, type RefObject } from 'react';
import { say } from '../../data/words/say.ts';
import type { NewId, Project } from '../../engine/project/model.ts';
import { pacedShelter, type Paces } from '../../engine/project/templates/paced.ts';
import { FieldNote } from '../fields/field-note.tsx';
import { KeyRow } from '../fields/key-row.tsx';
import { useWorkbench } from '../state/use-workbench.ts';
import { showField } from '../units/field-kind.ts';
import { readField } from '../units/read-field.ts';
import { keysFor, unitWords } from '../units/unit-words.ts';

interface PaceOutProps {
  readonly dialog: RefObject<HTMLDialogElement | null>;
  readonly newProject: (build: (newId: NewId) => Project) => void;
}

/** What is asked, in the order in which it is walked. */
const LENGTHS = [
  { field: 'postsApartIn', words: 'From the first post to the second, along the eave', startIn: 144 },
  { field: 'linesApartIn', words: null, startIn: 96 },
  { field: 'dripPastIn', words: 'From the posts out to the drip line', startIn: 18 },
] as const;
/** What stands across the lines is another thing for each form. */
const FORMS = [
  { form: 'shed', words: 'free, one slope', across: 'From there across to the next line of posts' },
  { form: 'gable', words: 'free, two slopes', across: 'From the posts at the eave across to those under the ridge' },
  { form: 'leanTo', words: 'against a wall', across: 'From the wall across to the posts' },
] as const;
type PacedField = (typeof LENGTHS)[number]['field'];

/** Start your own by pacing it out: five answers, the rest is taken from an example and marked as not yet yours. */
export function PaceOut({ dialog, newProject }: PaceOutProps) {
  const system = useWorkbench((state) => state.system);
  const id = useId();
  const [form, setForm] = useState<Paces['form']>('shed');
  const [texts, setTexts] = useState<Readonly<Partial<Record<PacedField, string>>>>({});
  const readings = LENGTHS.map(({ field, startIn }) => {
    const text = texts[field] ?? showField('length', startIn, system);
    return { field, text, reading: readField('length', text, system) };
  });
  const lengthOf = (field: PacedField): number | null => {
    const found = readings.find((each) => each.field === field)?.reading;
    return found?.ok && Number(found.value) >= (field === 'dripPastIn' ? 0 : 24) ? Number(found.value) : null;
  };
  const [postsApartIn, linesApartIn, dripPastIn] = LENGTHS.map(({ field }) => lengthOf(field));
  const start = (): void => {
    if (typeof postsApartIn !== 'number' || typeof linesApartIn !== 'number' || typeof dripPastIn !== 'number') return;
    dialog.current?.close();
    newProject((newId) => pacedShelter({ form, postsApartIn, linesApartIn, dripPastIn }, newId));
  };
  const across = FORMS.find((each) => each.form === form)?.across ?? '';
  const isReady = [postsApartIn, linesApartIn, dripPastIn].every((each) => typeof each === 'number');
  return (
    <dialog ref={dialog} className="page-dialog" aria-labelledby={`${id}title`}>
      <div className="dialog-head">
        <h2 id={`${id}title`}>A shelter of your own, paced out</h2>
        <form method="dialog">
          <button type="submit" className="tool">
            close
          </button>
        </form>
      </div>
      <p>Stand where the first post will be and drive a stake: that is the mark that everything is measured from.</p>
      <fieldset className="chooser">
        <legend>The shelter stands</legend>
        {FORMS.map((each) => (
          <label key={each.form} className={each.form === form ? 'chosen' : undefined}>
            <input
              type="radio"
              className="unseen"
              name={`${id}form`}
              checked={each.form === form}
              onChange={() => setForm(each.form)}
            />
            {each.words}
          </label>
        ))}
      </fieldset>
      {LENGTHS.map(({ field, words }) => (
        <PacedLength
          key={field}
          words={words ?? across}
          text={readings.find((each) => each.field === field)?.text ?? ''}
          isTooShort={lengthOf(field) === null}
          onType={(text) => setTexts({ ...texts, [field]: text })}
        />
      ))}
      <p className="quiet">
        Logs, rafters, pitch, covering and piers are taken from an example and marked as not yet yours until you touch
        them. What the site asks is not given until you ask the building department.
      </p>
      <p>
        <button type="button" className="tool" disabled={!isReady} onClick={start}>
          draw it
        </button>
      </p>
    </dialog>
  );
}

interface PacedLengthProps {
  readonly words: string;
  readonly text: string;
  readonly isTooShort: boolean;
  readonly onType: (text: string) => void;
}

function PacedLength({ words, text, isTooShort, onType }: PacedLengthProps) {
  const id = useId();
  const system = useWorkbench((state) => state.system);
  const [entered, setEntered] = useState(false);
  const reading = readField('length', text, system);
  const fault = !reading.ok ? say(reading.message) : isTooShort ? 'Two feet (600 mm) or more, please.' : null;
  return (
    <div className="field">
      <label htmlFor={id}>{words}</label>
      <span id={`${id}hint`} className="field-hint">
        {unitWords('length', system)}
      </span>
      <input
        id={id}
        type="text"
        inputMode="decimal"
        autoComplete="off"
        value={text}
        aria-describedby={`${id}hint ${id}note`}
        aria-invalid={fault !== null ? true : undefined}
        onChange={({ currentTarget }) => onType(currentTarget.value)}
        onFocus={({ currentTarget }) => {
          setEntered(true);
          currentTarget.select();
        }}
        onBlur={() => setEntered(false)}
      />
      <FieldNote id={`${id}note`} fault={fault} echo={null} floats={false} />
      {entered && <KeyRow boxId={id} keys={keysFor('length', system)} onType={onType} />}
    </div>
  );
}
