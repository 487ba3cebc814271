import type { Pending } from './autosave.ts';
import type { Shelf } from './shelf.ts';

const KEY = 'log-shelter-workbench/last-moment';

/** The little of a browser's storage that is needed here; it answers at once, also while the page is being left. */
type QuickStorage = Pick<Storage, 'getItem' | 'setItem' | 'removeItem'>;

/** Lays down what is not written yet while the page is being left: the database would not answer in time. */
export function keepLastMoment(storage: QuickStorage, pending: Pending | null): void {
  if (!pending) return;
  try {
    storage.setItem(KEY, JSON.stringify(pending));
  } catch {
    // full or forbidden: the database's own refusal was told while there was time to act
  }
}

/** Brings it to the shelf at the next visit, unless it reached the shelf after all or another tab saved since. */
export async function bringLastMoment(storage: QuickStorage, shelf: Pick<Shelf, 'write'>): Promise<void> {
  try {
    const text = storage.getItem(KEY);
    if (text === null) return;
    const { id, record, expected }: Pending = JSON.parse(text);
    await shelf.write(id, record, expected);
    storage.removeItem(KEY);
  } catch {
    // nothing can be read or written here: the first save tells it
  }
}
