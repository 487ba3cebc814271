import { FramePlace } from './frame/frame-place.tsx';
import { late } from './late.tsx';
import { CrashPage } from './places/crash-page.tsx';
import { Header } from './places/header.tsx';
import { Notices } from './places/notices.tsx';
import { useFileDrop, useUndoKeys } from './places/page-events.ts';
import { usePlace, type PlaceId } from './places/place.ts';
import { RefusalDialog } from './places/refusal.tsx';
import type { Opening } from './state/opening.ts';
import { useWorkbench, withProgram } from './state/use-workbench.ts';

const ComingPlace = late(async () => (await import('./places/coming.tsx')).ComingPlace);
const SheetPlace = late(async () => (await withProgram(import('./sheet/sheet-place.tsx'))).SheetPlace);

export function App({ opening }: { readonly opening: Opening }) {
  return (
    <CrashPage>
      <Shell opening={opening} />
    </CrashPage>
  );
}

function Shell({ opening }: { readonly opening: Opening }) {
  const place = usePlace();
  const isOpen = useWorkbench(({ project }) => project !== null);
  useUndoKeys();
  useFileDrop(opening);
  return (
    <>
      <a className="skip" href="#place" onClick={skipToPlace}>
        Skip to the work
      </a>
      <Header place={place} opening={opening} />
      <main id="place" tabIndex={-1} className="place">
        <Notices opening={opening} />
        {isOpen && <Place place={place} />}
      </main>
      <RefusalDialog />
    </>
  );
}

/** The address keeps the place, so the skip moves the focus by hand. */
function skipToPlace(event: { preventDefault: () => void }): void {
  event.preventDefault();
  document.getElementById('place')?.focus();
}

function Place({ place }: { readonly place: PlaceId }) {
  if (place === 'frame') return <FramePlace />;
  if (place === 'check-sheet') return <SheetPlace />;
  return <ComingPlace place={place} />;
}
