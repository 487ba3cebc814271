import type { MessageCode } from '../../data/words/en.ts';
import { message, type Fault, type Message } from '../../engine/message.ts';
import type { Project } from '../../engine/project/model.ts';
import { kindOfPath, showField, type FieldKind } from '../units/field-kind.ts';
import type { UnitSystem } from '../units/system.ts';
import type { Program } from './doors.ts';
import {
  changed,
  gestureTakenBack,
  withDraft,
  withDrafts,
  without,
  type Draft,
  type MeasuredFrom,
  type OpenWork,
} from './open-work.ts';
import { leadsSomewhere, valueAt } from './value-at.ts';

export interface Typing {
  readonly path: string;
  readonly text: string;
  readonly kind?: FieldKind | undefined;
  readonly from?: MeasuredFrom | undefined;
  /** what the undo entry says; the field's own label */
  readonly name?: string | undefined;
}

/**
 * A text typed into the field of a path: set in the project when it can be read and the whole stays sound; otherwise kept
 * as a draft with the sentence that says why, while the last valid project stays.
 */
export function typedInto(program: Program, work: OpenWork, typing: Typing, system: UnitSystem): OpenWork {
  const { path, text, from } = typing;
  if (!leadsSomewhere(work.project, path)) return work; // its member was taken away while the field was still open
  const kind = typing.kind ?? kindOfPath(path);
  const name = gestureName(typing);
  const keep = (said: Message): OpenWork => {
    // what the same typing passed through (9 on the way to 900) was no entry: what stood before it holds
    const before = work.gesture === name ? gestureTakenBack(program, work) : work;
    return withDraft(before, path, { text, kind, name, from, said });
  };

  if (text.trim() === '') return emptied(program, work, { path, kind, name }, keep, system);
  const reading = program.readField(kind, text, system);
  if (!reading.ok) return keep(reading.message);
  const value = stored(reading.value, from);
  const result = changed(program, work, {
    name,
    perform: (project) => withReading(program, project, path, value, reading.read),
    undo: 'with-next',
  });
  return result.ok
    ? withoutDraft(result.work, path)
    : keep(sentenceFor(result.faults, { path, kind, value: reading.value, from }, system));
}

/** Typed before entries can be read: kept as a draft, and typed again as soon as they can. */
export function typedTooEarly(work: OpenWork, typing: Typing): OpenWork {
  const { path, text, from } = typing;
  if (!leadsSomewhere(work.project, path)) return work;
  const said = message('fieldWaits', { got: text });
  const draft = { text, kind: typing.kind ?? kindOfPath(path), name: gestureName(typing), from, said };
  return withDraft(work, path, draft);
}

const stored = (value: number | string, from: MeasuredFrom | undefined): number | string =>
  from && typeof value === 'number' ? from.zeroIn + from.sign * value : value;

/** The undo entry of one field: keystrokes of the same field join until it is left. */
export const gestureName = ({ path, name }: Pick<Typing, 'path' | 'name'>): string => name ?? path;

/** An emptied field: no text, not given, or left out, whichever the project allows there first. */
function emptied(
  program: Program,
  work: OpenWork,
  field: { readonly path: string; readonly kind: FieldKind; readonly name: string },
  keep: (said: Message) => OpenWork,
  system: UnitSystem,
): OpenWork {
  const nothing: readonly unknown[] = field.kind === 'text' ? ['', null, undefined] : [null, undefined];
  for (const value of nothing) {
    const result = changed(program, work, {
      name: field.name,
      perform: (project) =>
        valueAt(project, field.path) === value ? project : program.setAt(project, field.path, value),
      undo: 'with-next',
    });
    if (result.ok) return withoutDraft(result.work, field.path);
  }
  const reading = program.readField(field.kind, '', system);
  return keep(reading.ok ? message('fieldEmpty', { example: 'a few words' }) : reading.message);
}

function withReading(
  program: Program,
  project: Project,
  path: string,
  value: number | string,
  read: 'diameter' | 'girth' | undefined,
): Project {
  const next = valueAt(project, path) === value ? project : program.setAt(project, path, value);
  // a station remembers that it was measured round the log: that is what will be measured again
  const readPath = /\.stations\[[^\]]+\]\.diameterIn$/.test(path) ? path.replace(/diameterIn$/, 'read') : null;
  const known = readPath === null ? undefined : valueAt(next, readPath);
  if (readPath === null || read === undefined || read === (known ?? 'diameter')) return next;
  return program.setAt(next, readPath, read);
}

/** Limits of a number, said of a field in the units that the person reads. */
const LIMITS: Readonly<Partial<Record<MessageCode, readonly [MessageCode, 'most' | 'least']>>> = {
  tooBig: ['fieldTooMuch', 'most'],
  tooSmall: ['fieldTooLittle', 'least'],
  notAbove: ['fieldNotAbove', 'least'],
};

/** The fault of this very field if there is one, else the first: the sentence that stands under the field. */
function sentenceFor(
  faults: readonly Fault[],
  typed: {
    readonly path: string;
    readonly kind: FieldKind;
    readonly value: unknown;
    readonly from: MeasuredFrom | undefined;
  },
  system: UnitSystem,
): Message {
  const { path, kind, value, from } = typed;
  const its = faults.find((each) => each.path === path);
  // the limit of a place means nothing to a person who typed a length
  if (from) return its ?? faults[0] ?? message('notFinite');
  const [code, name] = (its && LIMITS[its.code]) ?? [];
  if (!its || !code || !name) return its ?? faults[0] ?? message('notFinite');
  const shown = (amount: unknown): string => showField(kind, Number(amount), system);
  return message(code, { got: shown(value), limit: shown(its.values[name]) });
}

/** Drops the unfinished text of a field; the project's value shows again. */
export const withoutDraft = (work: OpenWork, path: string): OpenWork => withDrafts(work, without(work.drafts, path));

/**
 * Drafts from an earlier visit, or from before entries could be read, typed again: each finds its own sentence, or is
 * accepted if it fits by now.
 */
export const withDraftsTyped = (
  type: (work: OpenWork, typing: Typing) => OpenWork,
  work: OpenWork,
  drafts: Readonly<Record<string, Omit<Draft, 'said'>>>,
): OpenWork =>
  Object.entries(drafts).reduce(
    (so, [path, { text, kind, name, from }]) => type(so, { path, text, kind, name, from }),
    work,
  );
