import { FieldNote } from './field-note.tsx';
import { KeyRow } from './key-row.tsx';
import { useField, type FieldProps } from './use-field.ts';

/**
 * A quantity that is yours to change, edited where it stands in a sentence or beside a dimension line. It is a text box all
 * the time, dressed as the blue words of the sentence: what can be clicked can also be tabbed to, and nothing is swapped
 * under the reader. Enter keeps, Escape takes back.
 */
export function Yours(props: FieldProps) {
  const field = useField(props);
  const { box, ids } = field;
  return (
    <span className="yours-field">
      <input
        {...box}
        className={field.isNotYet ? 'yours not-yet' : 'yours'}
        aria-label={props.label}
        placeholder="not given"
        size={Math.max(2, field.text.length || 9)}
      />
      <span id={ids.hint} className="unseen">
        {field.hint}
      </span>
      {(field.entered || field.fault !== null) && (
        <FieldNote id={ids.note} fault={field.fault} echo={field.echo} floats={field.entered} />
      )}
      {field.entered && field.keys.length > 0 && <KeyRow boxId={ids.box} keys={field.keys} onType={field.type} />}
    </span>
  );
}
