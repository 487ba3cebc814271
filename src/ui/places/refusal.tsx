import { useEffect, useRef } from 'react';
import { acts, useWorkbench } from '../state/use-workbench.ts';
import { FaultList } from './notices.tsx';

/** A file that cannot be opened, with everything that is wrong with it. Shown after an action, so it may take the focus. */
export function RefusalDialog() {
  const refusal = useWorkbench((state) => state.refusal);
  const dialog = useRef<HTMLDialogElement>(null);
  useEffect(() => {
    if (refusal) dialog.current?.showModal();
    else dialog.current?.close();
  }, [refusal]);
  return (
    <dialog ref={dialog} className="page-dialog" aria-labelledby="refusal-title" onClose={() => acts().refuse(null)}>
      <h2 id="refusal-title">{refusal?.name} was not opened</h2>
      <p>What is on the screen stays as it is.</p>
      {refusal && <FaultList faults={refusal.faults} />}
      <form method="dialog">
        <button type="submit" className="tool">
          go back
        </button>
      </form>
    </dialog>
  );
}
