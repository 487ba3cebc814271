import { createStore, type StoreApi } from 'zustand/vanilla';
import { message, type Fault, type Message } from '../../engine/message.ts';
import type { Project } from '../../engine/project/model.ts';
import type { UnitSystem } from '../units/system.ts';
import type { Doors } from './doors.ts';
import {
  changed,
  evaluatedAnew,
  gestureTakenBack,
  openWork,
  redone,
  undone,
  type Command,
  type OpenWork,
} from './open-work.ts';
import { reasonOf, type SaveState } from './saving.ts';
import type { ShelfRecord } from './shelf.ts';
import { takeTurns } from './turns.ts';
import { gestureName, typedInto, typedTooEarly, withDraftsTyped, withoutDraft, type Typing } from './typing.ts';

/** A file or a change that was refused, with everything that is wrong with it; the open project stays as it was. */
export interface Refusal {
  readonly name: string;
  readonly faults: readonly (Fault | Message)[];
}

export type Kept = Pick<OpenWork, 'project' | 'drafts'>;

/** How a project came: with unfinished typing, from a record on this device or not, with something to tell. */
export interface Arrival {
  readonly counter?: number;
  readonly onShelf?: boolean;
  readonly drafts?: ShelfRecord['drafts'];
  readonly notice?: string | undefined;
}

type Work = { [K in keyof OpenWork]: OpenWork[K] };

export interface Workbench extends Omit<Work, 'project'> {
  /** null until the first project is there */
  readonly project: Project | null;
  readonly system: UnitSystem;
  /** path of the field that is being typed into: its fault stands under it, not yet among the notices */
  readonly typingIn: string | null;
  readonly saving: SaveState;
  /** counter of the record on this device that the open project was read from or last saved to; 0 for none */
  readonly counter: number;
  /** what that record holds; null when nothing of the open project lies on this device */
  readonly kept: Kept | null;
  /** a file that could not be opened */
  readonly refusal: Refusal | null;
  /** the last command that was refused, until one is accepted */
  readonly refusedChange: Refusal | null;
  /** something to tell politely, for example that an earlier state was kept */
  readonly notice: string | null;
  /** why the program is not there, until it is asked for again */
  readonly missing: Message | null;
  readonly act: Acts;
}

export interface Acts {
  /** Opens a sound project in place of the present one; it waits for its turn where the program must judge it first. */
  readonly adopt: (project: Project, arrival?: Arrival) => void;
  /** Carries out a command, if need be a moment later; false (and `refusedChange`) when it would leave no sound shelter. */
  readonly perform: (command: Command) => boolean;
  /** Sets one field to a value that needs no reading: a choice, a yes or no. */
  readonly choose: (path: string, value: unknown, name: string) => boolean;
  /** Text typed into a field; kept as a draft when it cannot be used. */
  readonly typeInto: (typing: Typing) => void;
  /** Forgets unfinished typing in a field and takes back what the present gesture did there. */
  readonly abandon: (typing: Pick<Typing, 'path' | 'name'>) => void;
  /** Ends a gesture: the next keystroke or drag makes an undo entry of its own. */
  readonly settle: () => void;
  readonly cancelGesture: () => void;
  readonly undo: () => void;
  readonly redo: () => void;
  readonly setSystem: (system: UnitSystem) => void;
  readonly refuse: (refusal: Refusal | null) => void;
  readonly tell: (notice: string | null) => void;
  readonly setSaving: (saving: SaveState) => void;
  readonly setKept: (kept: Kept, counter: number) => void;
  /** Asks for the program, if it is not there: soon after the first paint, and again when it could not be fetched. */
  readonly askForProgram: () => void;
}

const NOTHING_OPEN = {
  project: null,
  evaluation: null,
  faults: [],
  drafts: {},
  stale: false,
  done: [],
  undone: [],
  gesture: null,
  typingIn: null,
  saving: { kind: 'unsaved' },
  counter: 0,
  kept: null,
  refusal: null,
  refusedChange: null,
  notice: null,
} as const;

/** The open part of the state, or null before the first project is there. */
function workOf(state: Workbench): OpenWork | null {
  const { project, evaluation, faults, drafts, stale, done, undone: undoneEntries, gesture } = state;
  return project && { project, evaluation, faults, drafts, stale, done, undone: undoneEntries, gesture };
}

/**
 * The one store behind the screen. It holds what a person opened and typed; every figure in it comes from the engine.
 * While the program is on its way the figures are those prepared with the page; what is typed then is kept as a draft, what
 * is done waits for its turn.
 */
export function createWorkbench(doors: Doors): StoreApi<Workbench> {
  return createStore<Workbench>((set, get) => {
    const withWork = (change: (work: OpenWork) => OpenWork): void => {
      const work = workOf(get());
      if (work) set(change(work));
    };
    const type = (work: OpenWork, typing: Typing): OpenWork => {
      const program = doors.program();
      return program ? typedInto(program, work, typing, get().system) : typedTooEarly(work, typing);
    };

    const { inTurn, ask } = takeTurns(
      doors,
      (program) => {
        set({ missing: null });
        withWork((work) => withDraftsTyped(type, evaluatedAnew(program, work), work.drafts));
        if (get().typingIn === null) set({ gesture: null });
      },
      (error) => set({ missing: message('programNotFetched', { detail: reasonOf(error) }) }),
    );
    const askForProgram = (): void => {
      set({ missing: null });
      ask();
    };

    const perform = (command: Command): boolean => {
      const program = doors.program();
      if (!program) {
        inTurn(() => void perform(command));
        return true;
      }
      const work = workOf(get());
      if (!work) return false;
      const result = changed(program, work, command);
      if (result.ok) set({ ...result.work, refusedChange: null });
      else set({ refusedChange: { name: command.name, faults: result.faults } });
      return result.ok;
    };
    const act: Acts = {
      adopt: (project, { counter = 0, onShelf = false, drafts = {}, notice } = {}) => {
        const answer = doors.program()?.evaluate(project) ?? doors.prepared(project);
        if (!answer) return inTurn(() => act.adopt(project, { counter, onShelf, drafts, notice }));
        const work = { ...withDraftsTyped(type, openWork(project, answer), drafts), gesture: null };
        set({
          ...NOTHING_OPEN,
          ...work,
          counter,
          notice: notice ?? null,
          ...(onShelf ? { saving: { kind: 'saved' }, kept: { project, drafts: work.drafts } } : {}),
        });
        if (work.stale) ask();
      },
      perform,
      choose: (path, value, name) =>
        perform({ name, perform: (project, setAt) => setAt(project, path, value), undo: 'now' }),
      typeInto: (typing) => {
        withWork((work) => type(work, typing));
        set({ typingIn: typing.path, refusedChange: null });
        ask();
      },
      abandon: (typing) => {
        const program = doors.program();
        withWork((work) => {
          const isGoingOn = program && work.gesture === gestureName(typing);
          return withoutDraft(isGoingOn ? gestureTakenBack(program, work) : work, typing.path);
        });
      },
      settle: () =>
        inTurn(() => {
          if (get().gesture !== null || get().typingIn !== null) set({ gesture: null, typingIn: null });
        }),
      cancelGesture: () => inTurn((program) => withWork((work) => gestureTakenBack(program, work))),
      undo: () => inTurn((program) => withWork((work) => undone(program, work))),
      redo: () => inTurn((program) => withWork((work) => redone(program, work))),
      setSystem: (system) => set({ system }),
      refuse: (refusal) => set({ refusal }),
      tell: (notice) => set({ notice }),
      setSaving: (saving) => set({ saving }),
      setKept: (kept, counter) => {
        const { project, drafts } = get();
        const isAll = kept.project === project && kept.drafts === drafts;
        set({ kept, counter, saving: { kind: isAll ? 'saved' : 'saving' } });
      },
      askForProgram,
    };
    return { ...NOTHING_OPEN, system: 'feet', missing: null, act };
  });
}
