import type { MeasureKind } from '../units/measures.ts';
import { FieldNote } from './field-note.tsx';
import { KeyRow } from './key-row.tsx';
import { useField, type FieldProps } from './use-field.ts';

/** A field with its label above, what it takes beside the label, and its note below. */
function LabelledField(props: FieldProps) {
  const field = useField(props);
  const { box, ids } = field;
  return (
    <div className="field">
      <label htmlFor={ids.box}>{props.label}</label>
      <span id={ids.hint} className="field-hint">
        {field.hint}
      </span>
      <input {...box} placeholder="not given" />
      <FieldNote id={ids.note} fault={field.fault} echo={field.echo} floats={false} />
      {field.entered && field.keys.length > 0 && <KeyRow boxId={ids.box} keys={field.keys} onType={field.type} />}
    </div>
  );
}

/** A length, a diameter (also by its girth) or a roof pitch, in what a builder writes. */
export function LengthField(props: FieldProps & { readonly kind?: 'length' | 'diameter' | 'feet' | 'risePer12' }) {
  return <LabelledField {...props} />;
}

/** A number with its unit: load, force, stress, speed, angle, share, count. */
export function NumberField(props: FieldProps & { readonly kind?: MeasureKind | 'share' | 'grainSlope' }) {
  return <LabelledField {...props} />;
}

export function TextField({ path, label }: Omit<FieldProps, 'kind'>) {
  return <LabelledField path={path} label={label} kind="text" />;
}
