interface FieldNoteProps {
  readonly id: string;
  readonly fault: string | null;
  readonly echo: string | null;
  /** while typing the note floats, so that the sentence does not jump at each key */
  readonly floats: boolean;
}

/** What stands under a field: why the text cannot be used, or as what it was read. Polite: it takes no focus. */
export function FieldNote({ id, fault, echo, floats }: FieldNoteProps) {
  const isSilent = fault === null && echo === null;
  return (
    <output id={id} className={`field-note${floats ? ' floats' : ''}`} hidden={isSilent}>
      {fault !== null && (
        <>
          <span className="unseen">Error: </span>
          {fault}
        </>
      )}
      {fault === null && echo !== null && <span className="quiet">read as {echo}</span>}
    </output>
  );
}
