import { ASD_COMBINATIONS, type LoadDuration, type VariableKind } from '../../data/loads/combinations.ts';
import { durationFactor } from '../checks/wood/duration.ts';
import { message } from '../message.ts';
import type { CaseKind, LoadCase } from './cases.ts';
import type { Combination } from './combination.ts';

/** Only these snow cases stand beside wind or live load: the balanced one, not partial, least or surcharge (2.4.1 exception). */
const COMPANION_SNOW: ReadonlySet<string> = new Set(['snow', 'own-snow', 'own-snow-span', 'own-snow-overhang']);
const COMPANION_LIVE: ReadonlySet<string> = new Set(['roof-live']);
const NOT_GRAVITY: ReadonlySet<CaseKind> = new Set<CaseKind>(['wind', 'notional', 'seismic']);
/** Without what the person hangs there these say no more than 1 and 3 do. */
const LED_BY_OWN_LIVE: ReadonlySet<string> = new Set(['2', '4-snow', '4-roofLive']);
/** Runs beside what there is of its companions: without snow too, but not alone, where 8 says more. */
const WITH_SOME_COMPANION = '9';

/**
 * All combinations of a set of cases, by allowable stress: every combination of the standard with every case of each
 * kind that it names. A combination whose leading kind has no case is left out.
 */
export function combine(cases: readonly LoadCase[]): readonly Combination[] {
  const byKind = (kind: VariableKind): readonly LoadCase[] => cases.filter((c) => c.kind === kind);
  const hasOwnLive = byKind('ownLive').length > 0;
  return ASD_COMBINATIONS.flatMap((rule): Combination[] => {
    const kinds = Object.entries(rule.factors) as readonly [VariableKind, number][];
    if (LED_BY_OWN_LIVE.has(rule.id) && !hasOwnLive) return [];
    const alone = kinds.length === 1;
    const choices = kinds.flatMap(([kind, factor]) => {
      if (kind === 'ownLive' && !hasOwnLive) return [];
      const found = byKind(kind).filter(
        (c) =>
          alone || (kind === 'snow' ? COMPANION_SNOW.has(c.id) : kind === 'roofLive' ? COMPANION_LIVE.has(c.id) : true),
      );
      if (rule.id === WITH_SOME_COMPANION && kind === 'snow' && found.length === 0) return [];
      return [found.map((loadCase) => ({ loadCase, factor }))];
    });
    // what hangs there may be gone on the day: beside other loads it must not help
    const without = choices.filter((found) => found.every((c) => c.loadCase.kind !== 'ownLive'));
    const isHungBeside = without.length < choices.length && !LED_BY_OWN_LIVE.has(rule.id);
    const sets = isHungBeside ? [choices, without] : [choices];
    const asked = rule.id === WITH_SOME_COMPANION ? sets.filter((set) => set.length > 1) : sets;
    return asked.flatMap(products).map((chosen) => {
      const duration = (alone ? chosen[0]?.loadCase.duration : undefined) ?? rule.duration;
      const vertical = chosen.reduce((sum, c) => sum + rule.vertical * (c.loadCase.verticalShare ?? 0), 0);
      return {
        purpose: 'strength' as const,
        id: [rule.id, ...chosen.map((c) => c.loadCase.id)].join('+'),
        words: message(rule.words),
        dead: { factor: rule.dead.factor + vertical, weight: rule.dead.weight },
        factors: chosen.map((c) => ({ caseId: c.loadCase.id, factor: c.factor })),
        duration,
        durationFactor: durationFactor(duration satisfies LoadDuration),
        gravityOnly: !chosen.some((c) => NOT_GRAVITY.has(c.loadCase.kind) || c.loadCase.swaysAlong),
        swaysAlong: chosen.some((c) => c.loadCase.swaysAlong),
      };
    });
  });
}

function products<T>(choices: readonly (readonly T[])[]): readonly (readonly T[])[] {
  return choices.reduce<readonly (readonly T[])[]>(
    (sets, next) => sets.flatMap((set) => next.map((item) => [...set, item])),
    [[]],
  );
}

/** Share of strength-level wind for sag. @source IBC Table 1604.3 note f, from memory */
const SERVICE_WIND = 0.42;

/**
 * What sag is asked of: each roof live, snow and wind case alone, and the creep of the dead load together with live or
 * snow, with what the person hangs there and without it. The line counts as held sideways: these are movements of the
 * roof, not of the frame.
 * @param kcr whole sag after years over the sag at once
 * @source NDS 3.5.2
 */
export function serviceCombinations(cases: readonly LoadCase[], kcr: number): readonly Combination[] {
  const base = { duration: 'permanent' as const, durationFactor: 1, swaysAlong: false };
  const years = (chosen: readonly LoadCase[]): Combination => ({
    ...base,
    purpose: 'sagLongTerm',
    id: ['years', ...chosen.map((c) => c.id)].join('+'),
    words: message('combinationYears'),
    dead: { factor: kcr - 1, weight: 'heavy' },
    // what hangs there for years creeps with the dead load: its sag at once and what creep adds
    factors: chosen.map((c) => ({ caseId: c.id, factor: c.kind === 'ownLive' ? kcr : 1 })),
    gravityOnly: true,
  });
  const hung = cases.filter((c) => c.kind === 'ownLive' && !c.swaysAlong);
  return cases.flatMap((c): Combination[] => {
    if (c.kind === 'notional' || c.kind === 'seismic' || c.swaysAlong || c.isAskedForSag === false) return [];
    const alone: Combination = {
      ...base,
      purpose: 'sag',
      id: `sag+${c.id}`,
      words: message('combinationSag'),
      dead: { factor: 0, weight: 'heavy' },
      factors: [{ caseId: c.id, factor: c.kind === 'wind' ? SERVICE_WIND : 1 }],
      gravityOnly: c.kind !== 'wind',
    };
    if (c.kind === 'wind') return [alone];
    const beside = c.kind === 'ownLive' ? [] : hung.map((own) => years([own, c]));
    return [alone, years([c]), ...beside];
  });
}

/** What creeps where nothing but its own wood weighs on a log: tie logs and their rows. @source NDS 3.5.2 */
export const deadOverTheYears = (kcr: number): Combination => ({
  purpose: 'sagLongTerm',
  id: 'years',
  words: message('combinationYears'),
  dead: { factor: kcr, weight: 'heavy' },
  factors: [],
  duration: 'permanent',
  durationFactor: 1,
  gravityOnly: true,
  swaysAlong: false,
});
