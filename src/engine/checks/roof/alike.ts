import { checkKey } from '../../check.ts';
import type { CheckRow } from '../../evaluation.ts';
import { checkSource, type CheckSource } from '../check-source.ts';
import type { Asked, CheckGroup } from '../site-of-check.ts';

/** Members in sets that are alike, in the order of their first. */
export function alikeSets<M>(members: readonly M[], likeness: (member: M) => unknown): readonly (readonly M[])[] {
  const sets = new Map<string, M[]>();
  for (const member of members) {
    const key = JSON.stringify(likeness(member));
    const set = sets.get(key);
    if (set) set.push(member);
    else sets.set(key, [member]);
  }
  return [...sets.values()];
}

/** A thousandth of an inch apart is alike. */
export const nearly = (lengthIn: number | null): number | null =>
  lengthIn === null ? null : Math.round(lengthIn * 1000);

/** Checks of the first of some alike members, told of each of them under its own name. */
export function alikeSource<R extends Asked>(group: CheckGroup<R>, memberIds: readonly string[]): CheckSource {
  const first = checkSource(group);
  /** The key under which the first of them knows a row of any. */
  const keyOfFirst = (key: string): string | null => {
    for (const site of group.sites)
      for (const memberId of memberIds)
        if (checkKey(site.ruleId, memberId, site.place) === key)
          return checkKey(site.ruleId, site.memberId, site.place);
    return null;
  };
  return {
    rows: () => {
      const rows = first.rows();
      return memberIds.flatMap((memberId) => rows.map((row) => renamed(row, memberId)));
    },
    explain: (key, combinationId) => {
      const known = keyOfFirst(key);
      return known === null ? null : first.explain(known, combinationId);
    },
    asked: (key) => {
      const known = keyOfFirst(key);
      return known === null ? null : (first.asked?.(known) ?? null);
    },
  };
}

const renamed = (row: CheckRow, memberId: string): CheckRow => ({
  ...row,
  memberId,
  key: checkKey(row.ruleId, memberId, row.place),
});
