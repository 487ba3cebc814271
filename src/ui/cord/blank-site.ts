import type { CheckRow, Evaluation } from '../../engine/evaluation.ts';
import type { Message } from '../../engine/message.ts';

/** A value of the site that nobody has given, and how many rows name it as what they wait for. */
export interface BlankSiteValue {
  readonly path: string;
  readonly rows: number;
}

/** Blank values of the ground, which are asked for where a pier stands. */
const GROUND: Readonly<Partial<Record<Message['code'], string>>> = {
  soilNotGiven: 'site.soil.bearingPsf',
  frostDepthNotGiven: 'site.frostDepthIn',
};

const isBlank = ({ ruleId, reason }: CheckRow): boolean =>
  ruleId === 'site.value' && reason !== undefined && reason.code !== 'guessedValue';

export const hasBlankSite = ({ checks }: Pick<Evaluation, 'checks'>): boolean => checks.some(isBlank);

/** What the site lacks, first what most rows wait for. A row names the first value that it lacks. */
export function blankSiteValues({ checks }: Pick<Evaluation, 'checks'>): readonly BlankSiteValue[] {
  const pathOf = new Map<string, string>(Object.entries(GROUND));
  for (const row of checks) if (isBlank(row) && row.reason) pathOf.set(row.reason.code, row.place.name);
  const counts = new Map<string, number>();
  for (const { status, reason } of checks) {
    const path = status === 'notGiven' && reason ? pathOf.get(reason.code) : undefined;
    if (path !== undefined) counts.set(path, (counts.get(path) ?? 0) + 1);
  }
  return [...counts].map(([path, rows]) => ({ path, rows })).toSorted((a, b) => b.rows - a.rows);
}
