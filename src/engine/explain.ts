import { assembledOf } from './assembled.ts';
import { givensOf, type Prepared } from './givens.ts';
import type { Shelter } from './geometry/shelter.ts';
import { guarded } from './guarded.ts';
import { olderWindSpeed, type OlderSpeedAnswer } from './loads/site/older-wind-speed.ts';
import { topographicFactor, type Hill } from './loads/site/topography.ts';
import { message, type Fault, type Message } from './message.ts';
import { pressureSteps } from './load-report.ts';
import type { DesignValues } from './material/values.ts';
import { strengthRatio } from './material/strength-ratio.ts';
import { stepsOf, type Step } from './note.ts';
import type { Log, Project } from './project/model.ts';
import { sectionOfMember } from './section-of-member.ts';

export type ExplainAnswer =
  { readonly ok: true; readonly steps: readonly Step[] } | { readonly ok: false; readonly reason: Message };

/**
 * The steps of one check in one combination (the governing one when none is named), made by the formulas that judged it.
 */
export function explain(project: Project, key: string, combinationId?: string): ExplainAnswer {
  const answer = guarded<ExplainAnswer | { readonly ok: false; readonly faults: readonly Fault[] }>(() => {
    const assembled = assembledOf(project);
    if ('faults' in assembled) return { ok: false, faults: assembled.faults };
    for (const source of assembled.sources) {
      const steps = source.explain(key, combinationId);
      if (steps) return { ok: true, steps };
    }
    return { ok: false, reason: message('noSuchCheck', { key }) };
  });
  if (answer.ok || 'reason' in answer) return answer;
  return { ok: false, reason: answer.faults[0] ?? message('engineFault', { detail: '' }) };
}

/** How each number in the load report came about, by its name; null where the shelter cannot be placed. */
export const explainPressures = (project: Project): ReturnType<typeof pressureSteps> | null =>
  fromGivens(project, ({ shelter, site }) => pressureSteps(project, shelter, site));

/** How the design values of a log that is in use came about; null where it has none. */
export const explainValues = (project: Project, logId: string): DesignValues['steps'] | null =>
  fromGivens(project, ({ materials }) => {
    const answer = materials.ofLog(logId);
    return answer?.ok ? answer.values.steps : null;
  });

/** What knots and slope of grain leave of a log's strength, with the steps; null where the log is past the method. */
export function explainStrengthRatio(
  log: Log,
): { readonly bending: readonly Step[]; readonly compression: readonly Step[] } | null {
  const answer = guarded(() => {
    const ratio = strengthRatio(log);
    const { ratios } = ratio.ok ? ratio : { ratios: null };
    return {
      ok: true as const,
      told: ratios && { bending: ratios.bendingSteps(), compression: ratios.compressionSteps() },
    };
  });
  return answer.ok ? answer.told : null;
}

/** How the section modulus of a round member at a place comes about; none where it has no wood. */
export function explainSection(project: Project, shelter: Shelter, memberId: string, atIn: number): readonly Step[] {
  const here = sectionOfMember(project, shelter, memberId, atIn);
  return here ? stepsOf((note) => here.section.tell(note)).steps : [];
}

/** The topographic factor of a hill with its steps; null while a length of it is missing or makes no hill. */
export function explainHill(hill: Hill): { readonly value: number; readonly steps: readonly Step[] } | null {
  const answer = guarded(() => ({ ok: true as const, told: stepsOf((note) => topographicFactor(hill, note)) }));
  return answer.ok ? answer.told : null;
}

/** An older code's wind speed in today's terms with its steps; null while it is no speed. */
export function explainOlderSpeed(
  fastestMileMph: number,
): { readonly value: OlderSpeedAnswer; readonly steps: readonly Step[] } | null {
  const answer = guarded(() => ({ ok: true as const, told: stepsOf((note) => olderWindSpeed(fastestMileMph, note)) }));
  return answer.ok ? answer.told : null;
}

function fromGivens<A>(project: Project, ask: (givens: Prepared) => A): A | null {
  const answer = guarded(() => {
    const givens = givensOf(project);
    return { ok: true as const, told: 'faults' in givens ? null : ask(givens) };
  });
  return answer.ok ? answer.told : null;
}
