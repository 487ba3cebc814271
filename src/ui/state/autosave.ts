import type { StoreApi } from 'zustand/vanilla';
import { textOf, type Doors } from './doors.ts';
import type { Drafts } from './open-work.ts';
import { failed } from './saving.ts';
import type { Shelf, ShelfRecord } from './shelf.ts';
import type { Kept, Workbench } from './workbench.ts';

export interface AutosaveParts {
  readonly workbench: StoreApi<Workbench>;
  readonly shelf: Shelf;
  readonly doors: Doors;
  readonly now: () => number;
  /** how long typing must rest before it is written [ms] */
  readonly restMs: number;
}

/** A record that is not written yet, and the counter that must lie under its id on the device. */
export interface Pending {
  readonly id: string;
  readonly record: ShelfRecord;
  readonly expected: number;
}

export interface Autosave {
  /** What the next write would put on the device; null when everything lies there. */
  readonly pending: () => Pending | null;
  /** Writes what is not written yet, at once: before the page is hidden or another project is opened. */
  readonly flush: () => Promise<void>;
  readonly stop: () => void;
}

const draftsToKeep = (drafts: Drafts): ShelfRecord['drafts'] =>
  Object.fromEntries(Object.entries(drafts).map(([path, { said: _said, ...draft }]) => [path, draft]));

type State = Pick<Workbench, 'project' | 'drafts' | 'kept'>;
const unkept = ({ project, drafts, kept }: State): Kept | null =>
  project && (project !== kept?.project || drafts !== kept.drafts) ? { project, drafts } : null;

/**
 * Keeps the open project and the unfinished typing on this device, a moment after each change. One write at a time; a
 * record that another tab raised is never written over.
 */
export function startAutosave({ workbench, shelf, doors, now, restMs }: AutosaveParts): Autosave {
  let timer: ReturnType<typeof setTimeout> | undefined;
  let writing: Promise<void> = Promise.resolve();

  const pending = (): Pending | null => {
    const { counter, saving } = workbench.getState();
    const toKeep = unkept(workbench.getState());
    if (!toKeep || saving.kind === 'elsewhere') return null;
    const { project, drafts } = toKeep;
    const record: ShelfRecord = {
      counter: counter + 1,
      savedAt: now(),
      name: project.title.name,
      text: textOf(doors, project),
      drafts: draftsToKeep(drafts),
    };
    return { id: project.title.id, record, expected: counter };
  };

  const write = async (): Promise<void> => {
    // the order of the format is worth waiting for; where it cannot be had, the project is kept all the same
    if (unkept(workbench.getState()) && !doors.program()) await doors.whenThere().catch(() => null);
    const { act, project, drafts } = workbench.getState();
    const next = pending();
    if (!next || !project) return;
    try {
      const answer = await shelf.write(next.id, next.record, next.expected);
      if (workbench.getState().project?.title.id !== next.id) return; // another project was opened meanwhile
      if (answer === 'elsewhere') act.setSaving({ kind: 'elsewhere' });
      else act.setKept({ project, drafts }, next.record.counter);
    } catch (error) {
      act.setSaving(failed(error));
    }
  };

  const flush = (): Promise<void> => {
    clearTimeout(timer);
    writing = writing.then(write);
    return writing;
  };

  const stop = workbench.subscribe((state, before) => {
    const { project, drafts, kept, saving, act } = state;
    if (project === before.project && drafts === before.drafts && kept === before.kept) return;
    if (saving.kind === 'elsewhere') return;
    clearTimeout(timer);
    if (!unkept(state)) {
      // taken back before it was written: what is on the screen lies on the device
      if (project && saving.kind === 'saving') act.setSaving({ kind: 'saved' });
      return;
    }
    if (saving.kind !== 'saving') act.setSaving({ kind: 'saving' });
    timer = setTimeout(() => void flush(), restMs);
  });
  return { flush, pending, stop };
}
