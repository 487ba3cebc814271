import type { EvaluateAnswer, Evaluation } from '../../engine/evaluation.ts';
import type { Fault, Message } from '../../engine/message.ts';
import type { Project } from '../../engine/project/model.ts';
import type { FieldKind } from '../units/field-kind.ts';
import type { Program } from './doors.ts';
import { leadsSomewhere } from './value-at.ts';

type Engine = Pick<Program, 'evaluate'>;

/** A length that is shown from another place than it is stored from: stored = zeroIn + sign × shown. */
export interface MeasuredFrom {
  readonly zeroIn: number;
  readonly sign: 1 | -1;
}

/** Unfinished typing: the text as it stands in the field and what is wrong with it. */
export interface Draft {
  readonly text: string;
  readonly kind: FieldKind;
  readonly from?: MeasuredFrom | undefined;
  /** the field's label */
  readonly name: string;
  readonly said: Message;
}
export type Drafts = Readonly<Record<string, Draft>>;

/** A change of the project. `with-next`: the next command of the same name belongs to the same undo entry. */
export interface Command {
  readonly name: string;
  readonly perform: (project: Project, setAt: Program['setAt']) => Project;
  readonly undo: 'now' | 'with-next';
}

interface UndoEntry {
  readonly name: string;
  /** the project before the change (in `done`), or before it was undone (in `undone`) */
  readonly project: Project;
}

/** One open project with everything that was derived from it or typed beside it. */
export interface OpenWork {
  /** last valid */
  readonly project: Project;
  readonly evaluation: Evaluation | null;
  /** why there is no evaluation of the project as it was opened */
  readonly faults: readonly Fault[];
  readonly drafts: Drafts;
  /** figures and drawing come from the last valid entry, something typed is not in them */
  readonly stale: boolean;
  readonly done: readonly UndoEntry[];
  readonly undone: readonly UndoEntry[];
  /** name of the command whose undo entry still takes more, null between gestures */
  readonly gesture: string | null;
}

const MOST_UNDO_ENTRIES = 200;

export function openWork(project: Project, answer: EvaluateAnswer): OpenWork {
  return {
    ...withFigures(project, answer),
    drafts: {},
    stale: false,
    done: [],
    undone: [],
    gesture: null,
  };
}

const withFigures = (project: Project, answer: EvaluateAnswer) =>
  answer.ok
    ? { project, evaluation: answer.evaluation, faults: [] }
    : { project, evaluation: null, faults: answer.faults };

const evaluated = ({ evaluate }: Engine, project: Project) => withFigures(project, evaluate(project));

/** The same work with figures by the engine itself. */
export const evaluatedAnew = (engine: Engine, work: OpenWork): OpenWork => ({
  ...work,
  ...evaluated(engine, work.project),
});

export type Changed =
  { readonly ok: true; readonly work: OpenWork } | { readonly ok: false; readonly faults: readonly Fault[] };

/**
 * Carries a command out when the result is sound and can be evaluated; otherwise the faults, and the work stays.
 * A project that was opened without figures takes every sound change, else nobody could mend it.
 */
export function changed(program: Program, work: OpenWork, command: Command): Changed {
  const next = command.perform(work.project, program.setAt);
  if (next === work.project) return { ok: true, work: withGesture(work, command) };
  const parsed = program.parse(next);
  if (!parsed.ok) return parsed;
  const result = evaluated(program, next);
  if (result.evaluation === null && work.evaluation !== null) return { ok: false, faults: result.faults };
  const joins = work.gesture === command.name;
  const done = joins ? work.done : [...work.done, { name: command.name, project: work.project }];
  return {
    ok: true,
    work: withGesture({ ...work, ...result, done: done.slice(-MOST_UNDO_ENTRIES), undone: [] }, command),
  };
}

const withGesture = (work: OpenWork, command: Command): OpenWork => ({
  ...work,
  gesture: command.undo === 'with-next' ? command.name : null,
});

export function withDrafts(work: OpenWork, drafts: Drafts): OpenWork {
  return { ...work, drafts, stale: Object.keys(drafts).length > 0 };
}

/** Drafts stand in the order in which they were typed. */
export function lastDraft(drafts: Drafts): (Draft & { readonly path: string }) | null {
  const [path, draft] = Object.entries(drafts).at(-1) ?? [];
  return path === undefined || draft === undefined ? null : { path, ...draft };
}

export const without = (drafts: Drafts, path: string): Drafts =>
  Object.fromEntries(Object.entries(drafts).filter(([key]) => key !== path));

export const withDraft = (work: OpenWork, path: string, draft: Draft): OpenWork =>
  withDrafts(work, { ...without(work.drafts, path), [path]: draft });

/** Only the drafts whose field still exists. */
const withStandingDrafts = (work: OpenWork): OpenWork =>
  withDrafts(
    work,
    Object.fromEntries(Object.entries(work.drafts).filter(([path]) => leadsSomewhere(work.project, path))),
  );

/** A refused entry is the first thing that a person means to take back, the one typed last before the others. */
export function undone(engine: Engine, work: OpenWork): OpenWork {
  const refused = lastDraft(work.drafts);
  if (refused) return withDrafts(work, without(work.drafts, refused.path));
  const last = work.done.at(-1);
  if (!last) return work;
  return withStandingDrafts({
    ...work,
    ...evaluated(engine, last.project),
    done: work.done.slice(0, -1),
    undone: [...work.undone, { name: last.name, project: work.project }],
    gesture: null,
  });
}

export function redone(engine: Engine, work: OpenWork): OpenWork {
  const next = work.undone.at(-1);
  if (!next) return work;
  return withStandingDrafts({
    ...work,
    ...evaluated(engine, next.project),
    done: [...work.done, { name: next.name, project: work.project }],
    undone: work.undone.slice(0, -1),
    gesture: null,
  });
}

/** Takes back a gesture that is still going on, as if it had never begun: Escape while dragging or typing. */
export function gestureTakenBack(engine: Engine, work: OpenWork): OpenWork {
  const last = work.done.at(-1);
  if (work.gesture === null || !last || last.name !== work.gesture) return { ...work, gesture: null };
  return { ...work, ...evaluated(engine, last.project), done: work.done.slice(0, -1), gesture: null };
}
