import type { EvaluateAnswer } from '../../engine/evaluation.ts';
import type { Message } from '../../engine/message.ts';
import type { Project } from '../../engine/project/model.ts';
import type { ParseAnswer } from '../../engine/project/parse.ts';
import type { FieldKind } from '../units/field-kind.ts';
import type { FieldReading } from '../units/read-field.ts';
import type { UnitSystem } from '../units/system.ts';

/** Reading, changing and writing a project: what needs the schema of the file and the words for its faults, both large. */
export interface ProjectCode {
  readonly parse: (input: unknown) => ParseAnswer;
  /** what a person typed into a field of a kind */
  readonly readField: (kind: FieldKind, text: string, system: UnitSystem) => FieldReading;
  /** one field laid over, by path; `undefined` takes an optional field away */
  readonly setAt: (project: Project, path: string, value: unknown) => Project;
  readonly saveText: (project: Project) => string;
  /** the sentence of anything that the engine has to say */
  readonly say: (said: Message) => string;
}

/** The engine as the screen needs it; a test hands in its own. */
export interface EngineDoors extends ProjectCode {
  readonly evaluate: (project: Project) => EvaluateAnswer;
}

/**
 * Figures need `evaluate` alone and stand first; the code of the project file comes after them. Whatever comes from
 * outside, and every change, waits for it: there is no other way in.
 */
export interface Doors extends Pick<EngineDoors, 'evaluate'> {
  /** every door; null while the code of the project file is on its way */
  readonly all: () => EngineDoors | null;
  /** every door as soon as it is there; rejects when the code could not be fetched, and fetches anew when asked again */
  readonly whenAll: () => Promise<EngineDoors>;
}

export function lateDoors(evaluate: EngineDoors['evaluate'], fetchCode: () => Promise<ProjectCode>): Doors {
  let all: EngineDoors | null = null;
  let coming: Promise<EngineDoors> | null = null;
  const fetchAll = async (): Promise<EngineDoors> => {
    try {
      all = { ...(await fetchCode()), evaluate };
      return all;
    } catch (error) {
      coming = null;
      throw error;
    }
  };
  return { evaluate, all: () => all, whenAll: () => (coming ??= fetchAll()) };
}

/** The project as it is kept: in the order of the format, or as it stands while that is not known. Both read alike. */
export const textOf = (doors: Doors, project: Project): string =>
  doors.all()?.saveText(project) ?? JSON.stringify(project);
