import { useId } from 'react';
import type { Names } from './places.ts';

interface PieceChooserProps {
  readonly name: string;
  readonly ids: readonly string[];
  readonly chosen: string;
  readonly names: Names;
  readonly onChoose: (memberId: string) => void;
}

/** Which of several alike pieces the sentences below speak of. */
export function PieceChooser({ name, ids, chosen, names, onChoose }: PieceChooserProps) {
  const group = useId();
  if (ids.length < 2) return null;
  return (
    <fieldset className="chooser">
      <legend className="unseen">{name}</legend>
      {ids.map((id) => (
        <label key={id} className={id === chosen ? 'chosen' : undefined}>
          <input type="radio" className="unseen" name={group} checked={id === chosen} onChange={() => onChoose(id)} />
          {(names.get(id) ?? id).replace(/^\w+ (?=[A-Z])/, '')}
        </label>
      ))}
    </fieldset>
  );
}
