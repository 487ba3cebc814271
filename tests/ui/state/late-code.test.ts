import { beforeEach, describe, expect, it } from 'vitest';
import type { StoreApi } from 'zustand/vanilla';
import { setAt } from '../../../src/engine/project/edits/set-at.ts';
import { saveText } from '../../../src/engine/project/save-text.ts';
import { startAutosave } from '../../../src/ui/state/autosave.ts';
import { lateDoors, textOf, type Doors, type Program } from '../../../src/ui/state/doors.ts';
import { createOpening } from '../../../src/ui/state/opening.ts';
import { valueAt } from '../../../src/ui/state/value-at.ts';
import { createWorkbench, type Workbench } from '../../../src/ui/state/workbench.ts';
import { memoryShelf, smallProject, testEngine } from './support.ts';

const POST = 'members[post-2].xIn';
const PREPARED = 99;

let doors: Doors;
let workbench: StoreApi<Workbench>;
let asked: number;
let arrive: () => Promise<void>;
let fail: () => Promise<void>;
const state = (): Workbench => workbench.getState();
const at = (path: string): unknown => valueAt(state().project ?? smallProject(), path);
const type = (path: string, text: string): void => state().act.typeInto({ path, text });
const rest = async (): Promise<void> => new Promise((resolve) => setTimeout(resolve));

/** Figures of the demo alone, told from the engine's own by their counts. */
const prepared: Doors['prepared'] = (project) => {
  const answer = testEngine.evaluate(project);
  if (!answer.ok || JSON.stringify(project) !== JSON.stringify(smallProject())) return null;
  return { ok: true, evaluation: { ...answer.evaluation, departures: PREPARED } };
};

/** A page whose program comes when the test says so. */
beforeEach(() => {
  asked = 0;
  doors = lateDoors(prepared, () => {
    asked += 1;
    return new Promise<Program>((resolve, reject) => {
      arrive = () => (resolve(testEngine), rest());
      fail = () => (reject(new Error('no network')), rest());
    });
  });
  workbench = createWorkbench(doors);
});
const opening = (shelf = memoryShelf()) =>
  createOpening({
    workbench,
    shelf,
    doors,
    demo: smallProject,
    fetchText: async () => saveText(smallProject()),
    flush: async () => undefined,
    now: () => 1,
    mayLose: () => true,
    newId: () => 'copy',
  });

describe('before the program has come', () => {
  it('the demo stands with the figures prepared for it, and nothing was asked for', async () => {
    await opening().boot();
    expect(state().evaluation).toMatchObject({ fingerprint: 'Small', departures: PREPARED });
    expect(asked).toBe(0);
  });

  it('whoever waits for the program finds the figures of the engine itself, and nothing else is changed', async () => {
    await opening().boot();
    const { project } = state();
    const seen: unknown[] = [];
    void doors.whenThere().then(() => seen.push(state().evaluation?.departures));
    await arrive();
    expect(seen).toEqual([0]);
    expect(state().project).toBe(project);
    expect(state()).toMatchObject({ done: [], drafts: {}, stale: false });
  });

  it('a project without prepared figures is not shown, nor a copy of the demo: they wait for their turn', async () => {
    const { boot, openProject, keepCopy } = opening();
    await boot();
    keepCopy();
    await openProject(setAt(smallProject(), 'title.name', 'Template'));
    expect(state().project?.title.name).toBe('Small');
    expect(asked).toBe(1);
    const names: unknown[] = [];
    workbench.subscribe(({ project }, before) => project !== before.project && names.push(project?.title.name));
    await arrive();
    expect(names).toEqual(['Small (copy)', 'Template']);
    expect(state().evaluation).toMatchObject({ fingerprint: 'Template', departures: 0 });
  });

  it('typing that is dropped leaves the project as it stood', async () => {
    await opening().boot();
    type(POST, '11 ft');
    state().act.abandon({ path: POST });
    await arrive();
    expect(at(POST)).toBe(144);
    expect(state()).toMatchObject({ drafts: {}, done: [] });
  });

  it('what is typed is kept as a draft, and is read as soon as it can be, as one undo entry', async () => {
    await opening().boot();
    type(POST, '11');
    type(POST, '11 f');
    expect(state().drafts[POST]).toMatchObject({ text: '11 f', said: { code: 'fieldWaits' } });
    expect(state().stale).toBe(true);
    expect(at(POST)).toBe(144);
    type(POST, '11 ft');
    await arrive();
    expect(at(POST)).toBe(132);
    expect(state().drafts).toEqual({});
    type(POST, '11 ft 6 in');
    state().act.settle();
    expect(state().done).toHaveLength(1);
    state().act.undo();
    expect(at(POST)).toBe(144);
  });

  it('what is typed wrongly finds its own sentence then', async () => {
    await opening().boot();
    type(POST, '11 chairs');
    await arrive();
    expect(state().drafts[POST]?.said.code).toBe('fieldUnitUnknown');
  });

  it('a drag waits for its turn and is one undo entry', async () => {
    await opening().boot();
    const move = (xIn: number): boolean =>
      state().act.perform({ name: 'move', perform: (project) => setAt(project, POST, xIn), undo: 'with-next' });
    move(143);
    move(142);
    state().act.settle();
    move(141);
    state().act.settle();
    expect(at(POST)).toBe(144);
    await arrive();
    expect(at(POST)).toBe(141);
    expect(state().done).toHaveLength(2);
    state().act.undo();
    expect(at(POST)).toBe(142);
  });

  it('a drag that was taken back leaves nothing', async () => {
    await opening().boot();
    state().act.perform({ name: 'move', perform: (project) => setAt(project, POST, 120), undo: 'with-next' });
    state().act.cancelGesture();
    await arrive();
    expect(at(POST)).toBe(144);
    expect(state().done).toHaveLength(0);
  });

  it('no file is looked at: a bad one is refused, a sound one opened, when it has come', async () => {
    const { boot, openText } = opening();
    await boot();
    const bad = openText('{"formatVersion": 1}', 'bad.shelter.json');
    const other = openText(saveText(setAt(smallProject(), 'title.name', 'Other')), 'other.shelter.json');
    await rest();
    expect(state().refusal).toBeNull();
    expect(state().project?.title.name).toBe('Small');
    await arrive();
    expect(await bad).toBe(false);
    expect(await other).toBe(true);
    expect(state().project?.title.name).toBe('Other');
  });

  it('a project that lies on this device is not shown', async () => {
    const shelf = memoryShelf();
    shelf.records.set('small', { counter: 3, savedAt: 1, name: 'Mine', drafts: {}, text: saveText(smallProject()) });
    await shelf.writeView({ lastId: 'small', system: 'feet' });
    const booting = opening(shelf).boot();
    await rest();
    expect(state().project).toBeNull();
    expect(asked).toBe(1);
    await arrive();
    await booting;
    expect(state()).toMatchObject({ counter: 3, saving: { kind: 'saved' } });
  });
});

describe('when the program cannot be fetched', () => {
  it('the first view stands with the reason, until it was asked for again and has come', async () => {
    await opening().boot();
    state().act.askForProgram();
    await fail();
    expect(state().missing).toEqual({ code: 'programNotFetched', values: { detail: 'no network' } });
    expect(state().evaluation?.departures).toBe(PREPARED);
    state().act.askForProgram();
    expect(state().missing).toBeNull();
    await fail();
    expect(state().missing).not.toBeNull();
    state().act.askForProgram();
    await arrive();
    expect(state().missing).toBeNull();
    expect(state().evaluation?.departures).toBe(0);
    expect(asked).toBe(3);
    state().act.askForProgram();
    expect(asked).toBe(3);
  });

  it('what was typed stays, the reason is told, and the next key asks again', async () => {
    await opening().boot();
    type(POST, '11 ft');
    await fail();
    expect(state().missing?.values).toEqual({ detail: 'no network' });
    expect(state().drafts[POST]?.text).toBe('11 ft');
    type(POST, '11 ft 3 in');
    expect(asked).toBe(2);
    await arrive();
    expect(at(POST)).toBe(135);
  });

  it('a file is refused with the reason, and what is on the screen stays', async () => {
    const { boot, openText } = opening();
    await boot();
    const answer = openText(saveText(smallProject()), 'small.shelter.json');
    await fail();
    expect(await answer).toBe(false);
    expect(state().refusal?.faults).toEqual([{ code: 'programNotFetched', values: { detail: 'no network' } }]);
    expect(state().project?.title.name).toBe('Small');
  });

  it('a project that lies on this device gives way to the demo, and the reason stays to be read', async () => {
    const shelf = memoryShelf();
    shelf.records.set('mine', { counter: 3, savedAt: 1, name: 'Mine', drafts: {}, text: saveText(smallProject()) });
    await shelf.writeView({ lastId: 'mine', system: 'feet' });
    const booting = opening(shelf).boot();
    await rest();
    await fail();
    await booting;
    expect(state().project?.title.name).toBe('Small');
    expect(state().refusal).toMatchObject({ name: 'Mine', faults: [{ code: 'programNotFetched' }] });
    expect(shelf.records.get('mine')?.counter).toBe(3);
  });

  it('the project and the typing are kept on the device all the same, as a file that can be read', async () => {
    const shelf = memoryShelf();
    const autosave = startAutosave({ workbench, shelf, doors, now: () => 1, restMs: 1e9 });
    await opening(shelf).boot();
    type(POST, '11 ft');
    expect(autosave.pending()?.record.drafts[POST]?.text).toBe('11 ft');
    const flushed = autosave.flush();
    await fail();
    await flushed;
    autosave.stop();
    const { text, drafts } = shelf.records.get('small')!;
    expect(testEngine.parse(text)).toEqual({ ok: true, project: smallProject() });
    expect(drafts[POST]?.text).toBe('11 ft');
    expect(textOf({ ...doors, program: () => testEngine }, smallProject())).toBe(saveText(smallProject()));
  });
});
