import type { Doors, Program } from './doors.ts';

export interface Turns {
  /** Done at once when the program is there, else as soon as it is, in the order in which it was asked for. */
  readonly inTurn: (job: (program: Program) => void) => void;
  /** Asks for the program, if it is not there. */
  readonly ask: () => void;
}

/**
 * What a person does while the program is on its way waits for its turn. `first` runs before the jobs; `failed` tells that
 * the program could not be fetched, and everything goes on waiting.
 */
export function takeTurns(doors: Doors, first: (program: Program) => void, failed: (error: unknown) => void): Turns {
  let waiting: readonly ((program: Program) => void)[] = [];
  doors.onArrival((program) => {
    first(program);
    const jobs = waiting;
    waiting = [];
    for (const job of jobs) job(program);
  });
  const ask = (): void => {
    if (!doors.program()) void doors.whenThere().catch(failed);
  };
  return {
    ask,
    inTurn: (job) => {
      const program = doors.program();
      if (program) return job(program);
      waiting = [...waiting, job];
      ask();
    },
  };
}
