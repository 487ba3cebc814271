import type { StoreApi } from 'zustand/vanilla';
import type { Project } from '../../engine/project/model.ts';
import type { Drafts } from './open-work.ts';
import { failed } from './saving.ts';
import type { Shelf, ShelfRecord } from './shelf.ts';
import type { Kept, Workbench } from './workbench.ts';

export interface AutosaveParts {
  readonly workbench: StoreApi<Workbench>;
  readonly shelf: Shelf;
  readonly saveText: (project: Project) => string;
  readonly now: () => number;
  /** how long typing must rest before it is written [ms] */
  readonly restMs: number;
}

export interface Autosave {
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
export function startAutosave({ workbench, shelf, saveText, now, restMs }: AutosaveParts): Autosave {
  let timer: ReturnType<typeof setTimeout> | undefined;
  let writing: Promise<void> = Promise.resolve();

  const write = async (): Promise<void> => {
    const { counter, saving, act } = workbench.getState();
    const toKeep = unkept(workbench.getState());
    if (!toKeep || saving.kind === 'elsewhere') return;
    const { project, drafts } = toKeep;
    const record: ShelfRecord = {
      counter: counter + 1,
      savedAt: now(),
      name: project.title.name,
      text: saveText(project),
      drafts: draftsToKeep(drafts),
    };
    try {
      const answer = await shelf.write(project.title.id, record, counter);
      if (workbench.getState().project?.title.id !== project.title.id) return; // another project was opened meanwhile
      if (answer === 'elsewhere') act.setSaving({ kind: 'elsewhere' });
      else act.setKept(toKeep, record.counter);
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
    if (state.project === before.project && state.drafts === before.drafts) return;
    if (!unkept(state) || state.saving.kind === 'elsewhere') return;
    if (state.saving.kind !== 'saving') state.act.setSaving({ kind: 'saving' });
    clearTimeout(timer);
    timer = setTimeout(() => void flush(), restMs);
  });
  return { flush, stop };
}
