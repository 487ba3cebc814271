import { createStore, entries, get, set, update } from 'idb-keyval';
import type { Draft } from './open-work.ts';
import type { UnitSystem } from '../units/system.ts';

/** One project as it lies on this device, with the unfinished typing beside it. */
export interface ShelfRecord {
  /** raised by one at every save; a number that another tab raised means that it saved in between */
  readonly counter: number;
  readonly savedAt: number;
  readonly name: string;
  /** the saved file, letter for letter */
  readonly text: string;
  readonly drafts: Readonly<Record<string, Omit<Draft, 'said'>>>;
}

/** What the screen looked like when the person left. */
export interface View {
  readonly lastId: string | null;
  readonly system: UnitSystem;
}

export interface OnShelf {
  readonly id: string;
  readonly name: string;
  readonly savedAt: number;
}

/** Where projects are kept between visits. Every function may reject: storage can be full, forbidden or gone. */
export interface Shelf {
  readonly read: (id: string) => Promise<ShelfRecord | null>;
  /** writes only over the record with the expected counter (0: nothing there yet); one transaction */
  readonly write: (id: string, record: ShelfRecord, expected: number) => Promise<'written' | 'elsewhere'>;
  readonly list: () => Promise<readonly OnShelf[]>;
  readonly readView: () => Promise<View | null>;
  readonly writeView: (view: View) => Promise<void>;
}

const PROJECT = 'project/';
const VIEW = 'view';

/** The shelf in the browser's own database on this device. */
export function deviceShelf(): Shelf {
  const store = createStore('log-shelter-workbench', 'shelf');
  return {
    read: async (id) => (await get<ShelfRecord>(PROJECT + id, store)) ?? null,
    write: async (id, record, expected) => {
      let answer: 'written' | 'elsewhere' = 'elsewhere';
      await update<ShelfRecord>(
        PROJECT + id,
        (old) => {
          if (old && old.counter !== expected) return old;
          answer = 'written';
          return record;
        },
        store,
      );
      return answer;
    },
    list: async () => {
      const all = await entries<string, ShelfRecord>(store);
      return all
        .filter(([key]) => key.startsWith(PROJECT))
        .map(([key, { name, savedAt }]) => ({ id: key.slice(PROJECT.length), name, savedAt }))
        .sort((a, b) => b.savedAt - a.savedAt);
    },
    readView: async () => (await get<View>(VIEW, store)) ?? null,
    writeView: (view) => set(VIEW, view, store),
  };
}
