import type { Evaluation } from '../../engine/evaluation.ts';
import { explain, explainPressures, explainValues } from '../../engine/explain.ts';
import type { Message } from '../../engine/message.ts';
import type { ValueSymbol } from '../../engine/material/values.ts';
import type { Step } from '../../engine/note.ts';
import type { Project } from '../../engine/project/model.ts';

/** Every step that the calculation prints, as the engine told it. */
export interface Told {
  readonly pressures: Readonly<Record<string, readonly Step[]>>;
  readonly values: ReadonlyMap<string, readonly (readonly [ValueSymbol, readonly Step[]])[]>;
  /** by key of the check; a message where the engine cannot tell it */
  readonly checks: ReadonlyMap<string, readonly Step[] | Message>;
}

export interface Progress {
  readonly done: number;
  readonly of: number;
}

const SYMBOLS: readonly ValueSymbol[] = ['Fb', 'Fv', 'Fcp', 'Fc', 'Ft', 'E', 'Emin'];

/**
 * Asks the engine for the steps, one check at a time. Each is some work, so after each one the hand goes back to the page.
 * @param rest  comes back when the page has had its turn
 * @returns null where `isWanted` said no in between
 */
export async function tellSteps(
  project: Project,
  evaluation: Pick<Evaluation, 'logs'>,
  keys: readonly string[],
  { rest, report, isWanted }: Listener,
): Promise<Told | null> {
  const checks = new Map<string, readonly Step[] | Message>();
  const values = new Map<string, readonly (readonly [ValueSymbol, readonly Step[]])[]>();
  report({ done: 0, of: keys.length });
  await rest();
  const pressures = explainPressures(project) ?? {};
  for (const { logId } of evaluation.logs) {
    await rest();
    if (!isWanted()) return null;
    const stepsOf = explainValues(project, logId);
    if (stepsOf)
      values.set(
        logId,
        SYMBOLS.map((symbol) => [symbol, stepsOf(symbol)] as const),
      );
  }
  await rest();
  for (const key of keys) {
    await rest();
    if (!isWanted()) return null;
    const answer = explain(project, key);
    checks.set(key, answer.ok ? answer.steps : answer.reason);
    report({ done: checks.size, of: keys.length });
  }
  return { pressures, values, checks };
}

export interface Listener {
  readonly rest: () => Promise<void>;
  readonly report: (progress: Progress) => void;
  readonly isWanted: () => boolean;
}

/** Lets the page paint and take keys before the next piece of work. */
export const untilNextTurn = (): Promise<void> =>
  new Promise((resolve) => {
    setTimeout(resolve, 0);
  });
