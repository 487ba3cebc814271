import { useRef, useState } from 'react';
import { late } from '../late.tsx';

const HelpText = late(async () => (await import('./help-text.tsx')).HelpText);

/** How to read the page, on a leaf that lies over it. */
export function Help() {
  const dialog = useRef<HTMLDialogElement>(null);
  const [isAsked, setAsked] = useState(false);
  const open = (): void => {
    setAsked(true);
    dialog.current?.showModal();
  };
  return (
    <>
      <button type="button" className="tool" onClick={open}>
        help
      </button>
      <dialog ref={dialog} className="page-dialog" aria-labelledby="help-title">
        <div className="dialog-head">
          <h2 id="help-title">How to read this</h2>
          <form method="dialog">
            <button type="submit" className="tool">
              close
            </button>
          </form>
        </div>
        {isAsked && <HelpText />}
      </dialog>
    </>
  );
}
