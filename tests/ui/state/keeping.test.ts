import { afterEach, beforeEach, describe, expect, it } from 'vitest';
import type { StoreApi } from 'zustand/vanilla';
import { setAt } from '../../../src/engine/project/edits/set-at.ts';
import { saveText } from '../../../src/engine/project/save-text.ts';
import { startAutosave, type Autosave } from '../../../src/ui/state/autosave.ts';
import { bringLastMoment, keepLastMoment } from '../../../src/ui/state/last-moment.ts';
import { createOpening, type Opening } from '../../../src/ui/state/opening.ts';
import { createWorkbench, type Workbench } from '../../../src/ui/state/workbench.ts';
import { memoryShelf, smallProject, testDoors } from './support.ts';

type Tab = { readonly workbench: StoreApi<Workbench>; readonly autosave: Autosave; readonly opening: Opening };

let shelf: ReturnType<typeof memoryShelf>;
let tabs: Tab[];
let mayLose = true;
let ids = 0;

/** A page on the one shelf of the device; nothing is written until `flush`. */
function openTab(): Tab {
  const workbench = createWorkbench(testDoors);
  const autosave = startAutosave({ workbench, shelf, doors: testDoors, now: () => 1, restMs: 1e9 });
  const opening = createOpening({
    workbench,
    shelf,
    doors: testDoors,
    demo: smallProject,
    flush: autosave.flush,
    now: () => 1,
    mayLose: () => mayLose,
    newId: () => `copy${(ids += 1)}`,
    fetchText: async () => {
      throw new Error('404 Not Found');
    },
  });
  const tab = { workbench, autosave, opening };
  tabs.push(tab);
  return tab;
}
const rename = (tab: Tab, text: string): void => tab.workbench.getState().act.typeInto({ path: 'title.name', text });
const nameIn = (tab: Tab): string | undefined => tab.workbench.getState().project?.title.name;

beforeEach(() => {
  shelf = memoryShelf();
  tabs = [];
  mayLose = true;
});
afterEach(() => {
  for (const tab of tabs) {
    tab.autosave.stop();
    void tab.autosave.flush(); // clears the timer
  }
});

describe('autosave', () => {
  it('opens the demo on the first visit, and what was open on the next, with its unfinished typing', async () => {
    const first = openTab();
    await first.opening.boot();
    expect(nameIn(first)).toBe('Small');
    rename(first, 'Woodshed');
    first.workbench.getState().act.typeInto({ path: 'members[post-2].xIn', text: '11 chairs' });
    await first.autosave.flush();
    expect(first.workbench.getState().saving.kind).toBe('saved');
    await shelf.writeView({ lastId: 'small', system: 'metric' });

    const second = openTab();
    await second.opening.boot();
    expect(nameIn(second)).toBe('Woodshed');
    expect(second.workbench.getState().system).toBe('metric');
    expect(second.workbench.getState().drafts['members[post-2].xIn']?.text).toBe('11 chairs');
    expect(second.workbench.getState().stale).toBe(true);
  });

  it('raises the counter at every save, and does not save what nobody changed', async () => {
    const tab = openTab();
    await tab.opening.boot();
    await tab.autosave.flush();
    rename(tab, 'Woodshed');
    await tab.autosave.flush();
    expect(shelf.records.get('small')?.counter).toBe(2);
    await tab.autosave.flush();
    expect(shelf.records.get('small')?.counter).toBe(2);
  });

  it('is done when a change is taken back before it was written, or while it is being written', async () => {
    const tab = openTab();
    await tab.opening.boot();
    await tab.autosave.flush();
    const { act } = tab.workbench.getState();
    const drag = (): boolean =>
      act.perform({
        name: 'drag',
        perform: (project) => setAt(project, 'members[post-2].xIn', 140),
        undo: 'with-next',
      });
    drag();
    expect(tab.workbench.getState().saving.kind).toBe('saving');
    act.cancelGesture();
    expect(tab.workbench.getState().saving.kind).toBe('saved');

    drag();
    const writing = tab.autosave.flush();
    await Promise.resolve(); // the write has begun with the dragged post
    act.cancelGesture();
    await writing;
    expect(tab.workbench.getState().saving.kind).toBe('saving');
    await tab.autosave.flush();
    expect(tab.workbench.getState().saving.kind).toBe('saved');
    expect(JSON.parse(shelf.records.get('small')?.text ?? '')).toEqual(JSON.parse(saveText(smallProject())));
  });

  it('brings what was typed in the last moment to the device at the next visit, and writes over nothing newer', async () => {
    const storage = new Map<string, string>();
    const quick = {
      getItem: (key: string) => storage.get(key) ?? null,
      setItem: (key: string, text: string) => void storage.set(key, text),
      removeItem: (key: string) => void storage.delete(key),
    };
    const tab = openTab();
    await tab.opening.boot();
    await tab.autosave.flush();
    keepLastMoment(quick, tab.autosave.pending());
    expect(storage.size).toBe(0);
    rename(tab, 'Typed at the door');
    keepLastMoment(quick, tab.autosave.pending());
    const atTheDoor = new Map(storage);

    await bringLastMoment(quick, shelf);
    expect(shelf.records.get('small')).toMatchObject({ name: 'Typed at the door', counter: 2 });
    expect(storage.size).toBe(0);

    const other = openTab();
    await shelf.writeView({ lastId: 'small', system: 'feet' });
    await other.opening.boot();
    rename(other, 'Later');
    await other.autosave.flush();
    for (const [key, text] of atTheDoor) storage.set(key, text);
    await bringLastMoment(quick, shelf);
    expect(shelf.records.get('small')?.name).toBe('Later');
  });

  it('says so when storage refuses, and goes on', async () => {
    const tab = openTab();
    shelf.refuse = true;
    await tab.opening.boot();
    await tab.autosave.flush();
    expect(tab.workbench.getState().saving).toEqual({ kind: 'failed', why: 'quota exceeded' });
    shelf.refuse = false;
    rename(tab, 'Woodshed');
    await tab.autosave.flush();
    expect(tab.workbench.getState().saving.kind).toBe('saved');
  });
});

describe('opening another project while storage refuses', () => {
  it('asks first, and stays when the person will not lose the changes', async () => {
    const tab = openTab();
    await tab.opening.boot();
    shelf.refuse = true;
    mayLose = false;
    rename(tab, 'Woodshed');
    expect(await tab.opening.openText(saveText(smallProject()), 'small.shelter.json')).toBe(false);
    expect(nameIn(tab)).toBe('Woodshed');
    mayLose = true;
    expect(await tab.opening.openText(saveText(smallProject()), 'small.shelter.json')).toBe(true);
  });
});

describe('two tabs on one project', () => {
  let first: Tab;
  let second: Tab;
  beforeEach(async () => {
    first = openTab();
    await first.opening.boot();
    await first.autosave.flush();
    second = openTab();
    await second.opening.openShelved('small');
    rename(first, 'from the first tab');
    await first.autosave.flush();
    rename(second, 'from the second tab');
    await second.autosave.flush();
  });

  it('never write over each other silently', () => {
    expect(second.workbench.getState().saving.kind).toBe('elsewhere');
    expect(shelf.records.get('small')?.name).toBe('from the first tab');
    expect(nameIn(second)).toBe('from the second tab');
  });

  it('let the person keep a copy of what is on this screen', async () => {
    second.opening.keepCopy();
    await second.autosave.flush();
    expect(nameIn(second)).toBe('from the second tab (copy)');
    expect([...shelf.records.values()].map((record) => record.name).toSorted()).toEqual([
      'from the first tab',
      'from the second tab (copy)',
    ]);
  });

  it('keep the copy by themselves when another project is opened meanwhile', async () => {
    const other = setAt(smallProject(), 'title.id', 'other');
    expect(await second.opening.openProject(other)).toBe(true);
    expect([...shelf.records.values()].map((record) => record.name)).toContain('from the second tab (copy)');
  });

  it('or take what the other one saved', async () => {
    await second.opening.takeOther();
    expect(nameIn(second)).toBe('from the first tab');
    expect(second.workbench.getState().saving.kind).toBe('saved');
  });
});

describe('opening a file', () => {
  it.each([
    ['not JSON', 'once upon a time'],
    ['cut off', saveText(smallProject()).slice(0, 900)],
    ['from a newer program', JSON.stringify({ ...smallProject(), formatVersion: 99 })],
    ['with an impossible field', saveText(setAt(smallProject(), 'members[post-2].xIn', -5000))],
  ])('refuses one that is %s with every fault, and loses nothing', async (_, text) => {
    const tab = openTab();
    await tab.opening.boot();
    rename(tab, 'Woodshed');
    const before = tab.workbench.getState();
    expect(await tab.opening.openText(text, 'bad.shelter.json')).toBe(false);
    const after = tab.workbench.getState();
    expect(after.refusal?.name).toBe('bad.shelter.json');
    expect(after.refusal?.faults.length).toBeGreaterThan(0);
    expect(after.project).toBe(before.project);
    expect(after.done).toBe(before.done);
  });

  it('keeps the state that lies on the device under the same id, beside it', async () => {
    const tab = openTab();
    await tab.opening.boot();
    rename(tab, 'Woodshed');
    await tab.opening.openText(saveText(smallProject()), 'small.shelter.json');
    await tab.autosave.flush();
    expect(nameIn(tab)).toBe('Small');
    expect(tab.workbench.getState().saving.kind).toBe('saved');
    expect([...shelf.records.values()].map((record) => record.name)).toEqual(['Small', 'Woodshed (earlier)']);
    expect(tab.workbench.getState().notice).toContain('Woodshed (earlier)');
  });

  it('says that an example could not be fetched', async () => {
    const tab = openTab();
    expect(await tab.opening.openExample('none.shelter.json')).toBe(false);
    expect(tab.workbench.getState().refusal?.faults[0]?.code).toBe('exampleNotFetched');
  });
});
