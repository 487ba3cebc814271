import { useState } from 'react';
import { SHEET_PAPERS, type PaperName } from './page-format.ts';
import { choosePaper, usePaper } from './paper-choice.ts';

interface PrintRowProps {
  /** what the button prints */
  readonly words: string;
  /** why it cannot be printed now; null when it can */
  readonly unfinished: string | null;
}

/** Which paper, and the button that prints; what is unfinished is not printed, and the row says so. */
export function PrintRow({ words, unfinished }: PrintRowProps) {
  const chosen = usePaper();
  const [refused, setRefused] = useState(false);
  const print = (): void => {
    setRefused(unfinished !== null);
    if (unfinished === null) window.print();
  };
  return (
    <>
      <div className="print-row">
        <fieldset className="units">
          <legend className="unseen">Paper</legend>
          {(Object.keys(SHEET_PAPERS) as PaperName[]).map((name) => (
            <label key={name} className={name === chosen ? 'chosen' : undefined}>
              <input
                type="radio"
                name="paper"
                className="unseen"
                checked={name === chosen}
                onChange={() => choosePaper(name)}
              />
              {SHEET_PAPERS[name].words}
            </label>
          ))}
        </fieldset>
        <button type="button" className="print" onClick={print}>
          {words}
        </button>
        <output className="marked">{refused && unfinished !== null ? 'Not printed.' : ''}</output>
      </div>
      {unfinished !== null && <p className="print-refusal">{unfinished}</p>}
    </>
  );
}
