import type { RuleId } from '../../data/rules.ts';
import type { RoofForm } from '../../data/loads/free-roof-main.ts';
import { notGiven, outside, type Verdict } from '../check.ts';
import type { CheckRow } from '../evaluation.ts';
import type { SitePressures } from '../loads/site/site-pressures.ts';
import { message, type Message } from '../message.ts';

const SNOW_FIELDS: ReadonlySet<string> = new Set([
  'site.groundSnowPsf',
  'site.snowExposureCe',
  'site.snowThermalCt',
  'site.riskCategory',
]);
const WIND_FIELDS: ReadonlySet<string> = new Set(['site.windMph', 'site.exposure', 'site.kzt', 'site.ke']);

/** Rules of size: asked in a combination, decided by no load. */
const BY_SIZE: ReadonlySet<RuleId> = new Set<RuleId>([
  'beam.crook',
  'beam.upright',
  'post.slender',
  'brace.slender',
  'tie.slender',
  'post.housing',
]);
/** Rules decided by a greatest force of all combinations, which name none. */
const BY_GREATEST_FORCE: ReadonlySet<RuleId> = new Set<RuleId>([
  'sway.alongRated',
  'sway.acrossRated',
  'beam.tieAcross',
]);

/**
 * Why nothing that loads decide can pass yet: snow or wind of the site or what comes off a higher roof is not
 * known, or the method has no wind for this
 * roof. A guess counts as known.
 */
export function unknownLoads(
  { figures, missing, uneven, outside: beyond }: SitePressures,
  form: RoofForm | null,
): { readonly status: 'notGiven' | 'outside'; readonly reason: Message } | null {
  const blank = (fields: ReadonlySet<string>, otherwise: Message): Message =>
    missing.find((fault) => fields.has(fault.path)) ?? otherwise;
  if (figures.balancedSnow.value === null)
    return { status: 'notGiven', reason: blank(SNOW_FIELDS, message('missingGroundSnow')) };
  const [notMeasured] = uneven.notGiven;
  if (notMeasured) return { status: 'notGiven', reason: notMeasured };
  if (figures.velocityPressure.value === null)
    return { status: 'notGiven', reason: blank(WIND_FIELDS, message('missingWindSpeed')) };
  const noWind =
    form === null ? message('roofFormNotCovered') : beyond.find((o) => o.ruleId === 'site.roofForm')?.reason;
  return noWind ? { status: 'outside', reason: noWind } : null;
}

/** A pass under some of the loads is none: the row keeps its demand so far and says what is missing. */
export function heldBack(rows: readonly CheckRow[], unknown: ReturnType<typeof unknownLoads>): readonly CheckRow[] {
  if (!unknown) return rows;
  const reason = { code: unknown.reason.code, values: unknown.reason.values };
  return rows.map((row) => {
    const isByLoad = BY_GREATEST_FORCE.has(row.ruleId) || (row.combinationId !== '' && !BY_SIZE.has(row.ruleId));
    if (row.status !== 'pass' || !isByLoad) return row;
    const verdict: Verdict = unknown.status === 'notGiven' ? notGiven(reason, row.demand) : outside(reason, row.demand);
    return { ...row, ...verdict, spareIn: null, thins: null, spareLb: null };
  });
}
