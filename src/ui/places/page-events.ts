import { useEffect } from 'react';
import type { Opening } from '../state/opening.ts';
import { acts } from '../state/use-workbench.ts';

/** Ctrl+Z and Ctrl+Shift+Z (or Ctrl+Y) anywhere on the page; a field takes back its own unfinished typing first. */
export function useUndoKeys(): void {
  useEffect(() => {
    const onKeyDown = (event: KeyboardEvent): void => {
      if (!(event.ctrlKey || event.metaKey) || event.altKey) return;
      const key = event.key.toLowerCase();
      if (key !== 'z' && key !== 'y') return;
      event.preventDefault();
      if (key === 'y' || event.shiftKey) acts().redo();
      else acts().undo();
    };
    addEventListener('keydown', onKeyDown);
    return () => removeEventListener('keydown', onKeyDown);
  }, []);
}

/** A project file dropped anywhere on the page is opened. */
export function useFileDrop(opening: Opening): void {
  useEffect(() => {
    const onDragOver = (event: DragEvent): void => {
      if (event.dataTransfer?.types.includes('Files')) event.preventDefault();
    };
    const onDrop = (event: DragEvent): void => {
      const file = event.dataTransfer?.files[0];
      if (!file) return;
      event.preventDefault();
      void file.text().then((text) => opening.openText(text, file.name));
    };
    addEventListener('dragover', onDragOver);
    addEventListener('drop', onDrop);
    return () => {
      removeEventListener('dragover', onDragOver);
      removeEventListener('drop', onDrop);
    };
  }, [opening]);
}
