import type { EvaluateAnswer } from '../../engine/evaluation.ts';
import type { Message } from '../../engine/message.ts';
import type { Project } from '../../engine/project/model.ts';
import type { ParseAnswer } from '../../engine/project/parse.ts';
import type { FieldKind } from '../units/field-kind.ts';
import type { FieldReading } from '../units/read-field.ts';
import type { UnitSystem } from '../units/system.ts';

/** Judging, reading, changing and writing a project, as the screen needs it; a test hands in its own. */
export interface Program {
  readonly evaluate: (project: Project) => EvaluateAnswer;
  readonly parse: (input: unknown) => ParseAnswer;
  /** what a person typed into a field of a kind */
  readonly readField: (kind: FieldKind, text: string, system: UnitSystem) => FieldReading;
  /** one field laid over, by path; `undefined` takes an optional field away */
  readonly setAt: (project: Project, path: string, value: unknown) => Project;
  readonly saveText: (project: Project) => string;
  /** the sentence of anything that the engine has to say */
  readonly say: (said: Message, sizes: UnitSystem) => string;
}

/**
 * The program is large and comes after the first paint. Until then only a project whose figures were prepared can be
 * shown. Whatever else comes from outside, and every change, waits: there is no other way in.
 */
export interface Doors {
  /** what the engine said of this very project while the page was built; null of any other */
  readonly prepared: (project: Project) => EvaluateAnswer | null;
  /** null while it is on its way */
  readonly program: () => Program | null;
  /** the program as soon as it is there; rejects when it could not be fetched, and fetches anew when asked again */
  readonly whenThere: () => Promise<Program>;
  /** `act` is called once: when the program has come, before anybody who waits for it goes on */
  readonly onArrival: (act: (program: Program) => void) => void;
}

export function lateDoors(prepared: Doors['prepared'], fetchProgram: () => Promise<Program>): Doors {
  let program: Program | null = null;
  let coming: Promise<Program> | null = null;
  const toCall: ((program: Program) => void)[] = [];
  const fetched = async (): Promise<Program> => {
    const come = await fetchProgram().catch((error: unknown) => {
      coming = null;
      throw error;
    });
    program = come;
    for (const act of toCall) act(come);
    return come;
  };
  return {
    prepared,
    program: () => program,
    whenThere: () => (coming ??= fetched()),
    onArrival: (act) => void toCall.push(act),
  };
}

/** The project as it is kept: in the order of the format, or as it stands while that is not known. Both read alike. */
export const textOf = (doors: Doors, project: Project): string =>
  doors.program()?.saveText(project) ?? JSON.stringify(project);
