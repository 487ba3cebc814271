import { useId, useRef, useState } from 'react';
import { late } from '../late.tsx';
import type { Opening } from '../state/opening.ts';
import type { OnShelf } from '../state/shelf.ts';

const MenuList = late(async () => (await import('./menu-list.tsx')).MenuList);

/** Save, open, start anew: everything that concerns the project as a whole. */
export function ProjectMenu({ opening }: { readonly opening: Opening }) {
  const id = useId();
  const file = useRef<HTMLInputElement>(null);
  const [isAsked, setAsked] = useState(false);
  const [kept, setKept] = useState<readonly OnShelf[]>([]);

  return (
    <>
      <button type="button" className="tool" popoverTarget={id}>
        file
      </button>
      <input
        ref={file}
        type="file"
        hidden
        accept=".json,application/json"
        aria-label="Open a project file"
        onChange={async ({ currentTarget }) => {
          const chosen = currentTarget.files?.[0];
          if (chosen) await opening.openText(await chosen.text(), chosen.name);
          currentTarget.value = ''; // the same file can be chosen again after it was mended
        }}
      />
      <div
        id={id}
        popover="auto"
        className="menu"
        onBeforeToggle={({ newState }) => {
          if (newState !== 'open') return;
          setAsked(true);
          opening.onShelf().then(setKept, () => setKept([]));
        }}
      >
        {isAsked && <MenuList menu={id} opening={opening} kept={kept} onChooseFile={() => file.current?.click()} />}
      </div>
    </>
  );
}
