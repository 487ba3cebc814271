import type { StoreApi } from 'zustand/vanilla';
import { message } from '../../engine/message.ts';
import type { Project } from '../../engine/project/model.ts';
import type { ParseAnswer } from '../../engine/project/parse.ts';
import { textOf, type Doors } from './doors.ts';
import { failed, reasonOf } from './saving.ts';
import type { OnShelf, Shelf, ShelfRecord } from './shelf.ts';
import type { Arrival, Refusal, Workbench } from './workbench.ts';

export interface OpeningParts {
  readonly workbench: StoreApi<Workbench>;
  readonly shelf: Shelf;
  readonly doors: Doors;
  /** a part of this page and proved sound with it; its figures are prepared, so they need not wait for the program */
  readonly demo: () => Project;
  readonly fetchText: (address: string) => Promise<string>;
  readonly flush: () => Promise<void>;
  readonly now: () => number;
  /** asks whether what could not be kept may be given up */
  readonly mayLose: () => boolean;
  /** short and new at every call, for the ids of copies */
  readonly newId: () => string;
}

export interface Opening {
  /** First sight of the page: where the person left off, else the demo. */
  readonly boot: () => Promise<void>;
  readonly openText: (text: string, name: string) => Promise<boolean>;
  readonly openProject: (project: Project) => Promise<boolean>;
  readonly openExample: (file: string) => Promise<boolean>;
  readonly openShelved: (id: string) => Promise<boolean>;
  readonly onShelf: () => Promise<readonly OnShelf[]>;
  /** Another tab saved this project in between: go on with a copy of what is on this screen. */
  readonly keepCopy: () => void;
  /** ... or take what the other tab saved. */
  readonly takeOther: () => Promise<void>;
}

type Unread = Pick<Refusal, 'faults'> & { readonly ok: false };

const renamed = (project: Project, suffix: string, words: string): Project => ({
  ...project,
  title: {
    ...project.title,
    id: `${project.title.id.slice(0, 59 - suffix.length)}.${suffix}`,
    name: `${project.title.name.slice(0, 100)} (${words})`,
  },
});

/** Storage that refuses to read is as good as empty; the failure is told at the first save. */
const orNull = async <T>(reading: Promise<T | null>): Promise<T | null> => reading.catch(() => null);

/** Everything that puts another project on the screen. A refused file changes nothing; what it would displace is kept. */
export function createOpening(parts: OpeningParts): Opening {
  const { workbench, shelf, doors, demo, fetchText, flush, now, mayLose, newId } = parts;
  const act = () => workbench.getState().act;

  /** A record with other contents under the same id is laid aside under an id of its own before it is written over. */
  const keepEarlier = async (project: Project): Promise<Arrival> => {
    const earlier = await orNull(shelf.read(project.title.id));
    if (!earlier) return {};
    const { counter, drafts } = earlier;
    const { parse, saveText } = await doors.whenThere();
    if (earlier.text === saveText(project)) return { counter, drafts, onShelf: true };
    const parsed = parse(earlier.text);
    const suffix = newId();
    const copy = parsed.ok ? renamed(parsed.project, suffix, 'earlier') : null;
    const [id, name] = copy ? [copy.title.id, copy.title.name] : [`${project.title.id}.${suffix}`, earlier.name];
    await shelf.write(id, { ...earlier, counter: 1, name, text: copy ? saveText(copy) : earlier.text }, 0);
    return { counter, notice: `The state of this project that was on this device is kept as “${name}”.` };
  };

  /** Before another project takes the screen: what is on it lies on the device, or the person gave it up. */
  const cleared = async (): Promise<boolean> => {
    await flush();
    const { project, drafts, saving } = workbench.getState();
    if (project && saving.kind === 'elsewhere') {
      const copy = renamed(project, newId(), 'copy');
      const record = { counter: 1, savedAt: now(), name: copy.title.name, text: textOf(doors, copy), drafts };
      await shelf.write(copy.title.id, record, 0).catch((error: unknown) => act().setSaving(failed(error)));
    }
    return workbench.getState().saving.kind !== 'failed' || mayLose();
  };

  const openProject = async (project: Project): Promise<boolean> => {
    if (!(await cleared())) return false;
    // if the earlier state cannot be laid aside, the counter stays 0 and autosave will not write over it
    act().adopt(project, await keepEarlier(project).catch(() => ({})));
    return true;
  };

  /** The project that a text holds, or everything that is wrong with it. */
  const read = async (text: string): Promise<ParseAnswer | Unread> => {
    try {
      return (await doors.whenThere()).parse(text);
    } catch (error) {
      return { ok: false, faults: [message('programNotFetched', { detail: reasonOf(error) })] };
    }
  };

  const openText = async (text: string, name: string): Promise<boolean> => {
    const parsed = await read(text);
    if (parsed.ok) return openProject(parsed.project);
    act().refuse({ name, faults: parsed.faults });
    return false;
  };

  const openRecord = async ({ text, name, counter, drafts }: ShelfRecord): Promise<Refusal | null> => {
    const parsed = await read(text);
    if (!parsed.ok) return { name, faults: parsed.faults };
    act().adopt(parsed.project, { counter, drafts, onShelf: true });
    return null;
  };

  const openShelved = async (id: string): Promise<boolean> => (await cleared()) && readShelved(id);

  const readShelved = async (id: string): Promise<boolean> => {
    const record = await orNull(shelf.read(id));
    const refusal = record ? await openRecord(record) : { name: id, faults: [message('shelfHasNot')] };
    if (refusal) act().refuse(refusal);
    return refusal === null;
  };

  const openExample = async (file: string): Promise<boolean> => {
    try {
      return await openText(await fetchText(`./examples/${file}`), file);
    } catch (error) {
      act().refuse({ name: file, faults: [message('exampleNotFetched', { detail: reasonOf(error) })] });
      return false;
    }
  };

  return {
    openProject,
    openText,
    openExample,
    openShelved,
    onShelf: () => shelf.list(),
    boot: async () => {
      const view = await orNull(shelf.readView());
      if (view) act().setSystem(view.system);
      const record = view?.lastId ? await orNull(shelf.read(view.lastId)) : null;
      const refusal = record && (await openRecord(record));
      if (record && !refusal) return;
      await openProject(demo());
      if (refusal) act().refuse(refusal);
    },
    keepCopy: () => {
      const { project, drafts } = workbench.getState();
      if (project) act().adopt(renamed(project, newId(), 'copy'), { counter: 0, drafts });
    },
    takeOther: async () => {
      const { project } = workbench.getState();
      if (project) await readShelved(project.title.id);
    },
  };
}
