import { look } from '../frame/frame-view.ts';
import { useOpenProject } from '../state/use-workbench.ts';
import { logUnder } from '../cord/own.ts';

/** A word that draws the log of a piece by itself, in place of the views. */
export function LookAtLog({ memberId }: { readonly memberId: string }) {
  if (!logUnder(useOpenProject(), memberId)) return null;
  const open = (): void => {
    look({ logOf: memberId });
    requestAnimationFrame(() => document.querySelector('.drawing-sheet')?.scrollIntoView({ block: 'start' }));
  };
  return (
    <p>
      <button type="button" className="tool look-at-log" onClick={open}>
        look at this log
      </button>
    </p>
  );
}
