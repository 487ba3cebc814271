import type { Doors } from './doors.ts';

export interface Turns {
  /** Done at once when every door is there, else as soon as they are, in the order in which it was asked for. */
  readonly inTurn: (job: () => void) => void;
  /** Something waits that is not a job: `first` is to be called when the doors are there. */
  readonly comeBack: () => void;
}

/**
 * What a person does while the code of the project file is on its way waits for its turn. `first` runs before the jobs;
 * `failed` tells that the code could not be fetched, and everything goes on waiting.
 */
export function takeTurns(doors: Doors, first: () => void, failed: (error: unknown) => void): Turns {
  let waiting: readonly (() => void)[] = [];
  const comeBack = (): void => {
    if (!doors.all()) void doors.whenAll().then(catchUp, failed);
  };
  const catchUp = (): void => {
    first();
    const jobs = waiting;
    waiting = [];
    for (const job of jobs) job();
  };
  return {
    comeBack,
    inTurn: (job) => {
      if (doors.all()) return job();
      waiting = [...waiting, job];
      comeBack();
    },
  };
}
