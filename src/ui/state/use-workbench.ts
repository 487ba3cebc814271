import { useStore } from 'zustand';
import demoText from '../../../public/examples/firewood-shed.shelter.json?raw';
import type { Evaluation } from '../../engine/evaluation.ts';
import type { Project } from '../../engine/project/model.ts';
import { MisuseError } from '../../engine/errors.ts';
import type { Message } from '../../engine/message.ts';
import { valuesInWords } from '../cord/naming.ts';
import { namesOf, type Names } from '../cord/places.ts';
import { startAutosave } from './autosave.ts';
import { demoFigures } from './demo-figures.prepared.ts';
import { lateDoors, textOf } from './doors.ts';
import { preparedAnswer } from './first-figures.ts';
import { bringLastMoment, keepLastMoment } from './last-moment.ts';
import { createOpening, type Opening } from './opening.ts';
import { sayIn } from './saying.ts';
import { deviceShelf, type Shelf, type View } from './shelf.ts';
import { createWorkbench, type Acts, type Workbench } from './workbench.ts';

const REST_MS = 350;
const doors = lateDoors(
  (project) => preparedAnswer(demoFigures, project),
  async () => (await import('./program.ts')).program,
);
const workbench = createWorkbench(doors);

/** What the screen reads from the one store. */
export const useWorkbench = <T>(select: (state: Workbench) => T): T => useStore(workbench, select);

/** Inside a place a project is always open; the shell shows no place before. */
export const useOpenProject = (): Project =>
  useWorkbench(({ project }) => {
    if (!project) throw new MisuseError('noProjectOpen', project, 'an open project');
    return project;
  });

/** What a person can do; the same functions for the whole visit, also outside of components. */
export const acts = (): Acts => workbench.getState().act;
export const present = (): Workbench => workbench.getState();

/**
 * Late code together with the program, for whatever reads lines, sections or ratios by combination: once the program is
 * there, the figures on the screen are its own and have these long lists.
 */
export async function withProgram<Code>(code: Promise<Code>): Promise<Code> {
  const [come] = await Promise.all([code, doors.whenThere()]);
  return come;
}

/** What everything is called, worked out once for an evaluation. */
const namesIn = new WeakMap<Evaluation, Names>();
function presentNames(): Names {
  const { evaluation } = present();
  if (!evaluation) return new Map();
  const names = namesIn.get(evaluation) ?? namesOf(evaluation);
  namesIn.set(evaluation, names);
  return names;
}

/** A message as it reads on the screen: people know labels, ids belong to the file. */
export const say = ({ code, values }: Message): string =>
  sayIn(doors, { code, values: valuesInWords(values, presentNames()) }, present().system);

/** The open project as the text of a file. */
export const openProjectText = (): string => {
  const { project } = present();
  return project ? textOf(doors, project) : '';
};

async function fetchText(address: string): Promise<string> {
  const response = await fetch(address);
  if (!response.ok) throw new Error(`${response.status} ${response.statusText}`);
  return response.text();
}

/** A short id that no other copy on this device has. */
export const newId = (): string => crypto.randomUUID().slice(0, 8);

function keepView(shelf: Shelf): void {
  const write = ({ project, system }: Workbench): void => {
    const view: View = { lastId: project?.title.id ?? null, system };
    shelf.writeView(view).catch(() => undefined); // only a convenience; the project's own failure to save is told
  };
  // a project that could not be read because the program did not come is still the one to go on with
  if (doors.program() || present().refusal === null) write(present());
  workbench.subscribe((state, before) => {
    if (state.project?.title.id !== before.project?.title.id || state.system !== before.system) write(state);
  });
}

/** As soon as what is to be seen now has been painted. */
const afterPaint = (act: () => void): void => void requestAnimationFrame(() => setTimeout(act, 0));

/** When the page is at rest; what does not come then is fetched when it is asked for. */
function whenAtRest(load: () => Promise<unknown>): void {
  const atRest = window.requestIdleCallback ?? ((call: () => void) => setTimeout(call, 2000));
  requestAnimationFrame(() => atRest(() => void load().catch(() => undefined)));
}

/**
 * Brings storage and store together and opens what was open last; once, at the start of the page.
 * @param bringTheRest  fetches what neither the first figures nor the program needed
 */
export function startWorkbench(bringTheRest: () => Promise<unknown>): Opening {
  const shelf = deviceShelf();
  const autosave = startAutosave({ workbench, shelf, doors, now: Date.now, restMs: REST_MS });
  const opening = createOpening({
    workbench,
    shelf,
    doors,
    demo: () => JSON.parse(demoText),
    fetchText,
    flush: autosave.flush,
    now: Date.now,
    mayLose: () => confirm('This project could not be saved on this device. Open another one and lose the changes?'),
    newId,
  });
  addEventListener('pagehide', () => {
    keepLastMoment(localStorage, autosave.pending());
    void autosave.flush();
  });
  document.addEventListener('visibilitychange', () => {
    if (document.visibilityState === 'hidden') void autosave.flush();
  });
  void bringLastMoment(localStorage, shelf)
    .then(opening.boot)
    .then(() => {
      keepView(shelf);
      afterPaint(acts().askForProgram);
    });
  doors.onArrival(() => whenAtRest(bringTheRest));
  return opening;
}
