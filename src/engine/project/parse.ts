import { type Fault, fault, type Message } from '../message.ts';
import { filledIn, migrated, NEWEST_FORMAT_VERSION, type Raw } from './migrations.ts';
import type { Project } from './model.ts';
import { plainDataFaults } from './plain-data.ts';
import { readProjectText } from './read-text.ts';
import { projectSchema } from './schema.ts';
import { shapeFaults } from './shape-faults.ts';
import { soundnessFaults } from './soundness.ts';

export type ParseAnswer =
  | { readonly ok: true; readonly project: Project; readonly repaired?: readonly Message[] }
  | { readonly ok: false; readonly faults: readonly Fault[] };

/**
 * The door for everything that claims to be a project: the text of a file, or an object from storage or the editor.
 * Total: never throws. Answers a sound project, or every fault that was found, each with its path.
 */
export function parseProject(input: unknown): ParseAnswer {
  try {
    if (typeof input !== 'string') return parseValue(input);
    const text = readProjectText(input);
    return text.ok ? parseValue(text.value) : { ok: false, faults: [text.fault] };
  } catch (error) {
    const detail = error instanceof Error ? error.message.slice(0, 120) : String(error);
    return { ok: false, faults: [fault('', 'cannotBeRead', { detail })] };
  }
}

function parseValue(value: unknown): ParseAnswer {
  if (!isRaw(value)) return { ok: false, faults: [fault('', 'notAnObject', { got: kindInWords(value) })] };
  const notPlain = plainDataFaults(value);
  if (notPlain.length > 0) return { ok: false, faults: notPlain };
  const version = versionFault(value);
  if (version) return { ok: false, faults: [version] };
  const carried = migrated(value, Number(value['formatVersion']));
  const filled = filledIn(carried.raw);
  const shaped = projectSchema.safeParse(filled.raw);
  if (!shaped.success) return { ok: false, faults: shapeFaults(filled.raw, shaped.error.issues) };
  const project: Project = shaped.data;
  const faults = soundnessFaults(project);
  if (faults.length > 0) return { ok: false, faults };
  const repaired = [...carried.repaired, ...filled.repaired];
  return repaired.length > 0 ? { ok: true, project, repaired } : { ok: true, project };
}

const isRaw = (value: unknown): value is Raw => typeof value === 'object' && value !== null && !Array.isArray(value);

const kindInWords = (value: unknown): string =>
  Array.isArray(value) ? 'a list' : value === null ? 'null' : `a single ${typeof value}`;

function versionFault(raw: Raw): Fault | null {
  const version = raw['formatVersion'];
  const newest = NEWEST_FORMAT_VERSION;
  if (version === undefined) return fault('formatVersion', 'versionMissing', { newest });
  if (typeof version !== 'number' || !Number.isInteger(version) || version < 1) {
    return fault('formatVersion', 'versionUnknown', { got: JSON.stringify(version).slice(0, 40), newest });
  }
  return version > newest ? fault('formatVersion', 'versionNewer', { got: version, newest }) : null;
}
