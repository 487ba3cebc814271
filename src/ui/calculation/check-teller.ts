import { assemble } from '../../engine/assemble.ts';
import type { CheckSource } from '../../engine/checks/check-source.ts';
import { guarded } from '../../engine/guarded.ts';
import { message, type Fault, type Message } from '../../engine/message.ts';
import type { Step } from '../../engine/note.ts';
import type { Project } from '../../engine/project/model.ts';

/** The steps of a check in the combination that governs it, or why they cannot be told. */
export type TellCheck = (key: string) => readonly Step[] | Message;

/**
 * The shelter put together once, to be asked about many checks: `explain` puts it together anew for each, which is right
 * for one and much too slow for all. As that door it never throws.
 */
export function checkTeller(project: Project): TellCheck {
  const ready = guarded(() => {
    const assembled = assemble(project);
    return 'faults' in assembled
      ? { ok: false as const, faults: assembled.faults }
      : { ok: true as const, sources: assembled.sources };
  });
  if (!ready.ok) return () => firstOf(ready.faults);
  return (key) => {
    const told = guarded(() => ({ ok: true as const, steps: stepsIn(ready.sources, key) }));
    return told.ok ? (told.steps ?? message('noSuchCheck', { key })) : firstOf(told.faults);
  };
}

function stepsIn(sources: readonly CheckSource[], key: string): readonly Step[] | null {
  for (const source of sources) {
    const steps = source.explain(key);
    if (steps) return steps;
  }
  return null;
}

const firstOf = (faults: readonly Fault[]): Message => faults[0] ?? message('engineFault', { detail: '' });
