import type { AreaClass, RoofZone } from '../../data/loads/free-roof-components.ts';
import type { Flow, RoofForm } from '../../data/loads/free-roof-main.ts';
import { message, type Message } from '../message.ts';
import { stepsOf, type Note, type Step } from '../note.ts';
import type { Project } from '../project/model.ts';
import { insteadOf } from '../project/instead.ts';
import type { LoadCase } from './cases.ts';
import { componentCoefficients, componentPressure } from './site/components.ts';
import { alternatePatterns } from './site/patterns.ts';
import { reducedRoofLive } from './site/roof-live.ts';
import type { SitePressures } from './site/site-pressures.ts';

/** Wind on one part of the roof by its own area: pressing and lifting, in each flow. */
export interface ComponentWindCase extends LoadCase {
  /** by zone, square to the slope, plus is down, strength level [psf] */
  readonly psf: Readonly<Record<RoofZone, number>>;
  readonly steps: (zone: RoofZone) => readonly Step[];
}

export type ComponentWind =
  | { readonly ok: true; readonly cases: readonly ComponentWindCase[] }
  | { readonly ok: false; readonly status: 'notGiven' | 'outside'; readonly reason: Message };

const ZONES = [1, 2, 3] as const satisfies readonly RoofZone[];

/**
 * Component wind on a part of the roof: sheet, purlin, rafter and their ties; never mixed with the main frame's.
 * @param area  class of the part's effective wind area
 * @source ASCE7 30.7 (7-16)
 */
export function componentWind(
  site: SitePressures,
  form: RoofForm | null,
  slopeDeg: number,
  area: AreaClass,
): ComponentWind {
  const q = site.figures.velocityPressure.value;
  if (form === null) return { ok: false, status: 'outside', reason: message('roofFormNotCovered') };
  if (q === null) return { ok: false, status: 'notGiven', reason: whyNoWind(site) };
  const pressures = (flow: Flow, zone: RoofZone, note?: Note) => {
    const coefficients = componentCoefficients(form, slopeDeg, area, zone, flow, note);
    if (!coefficients.ok) return coefficients;
    const given = { velocityPressurePsf: q, gustFactor: site.gustFactor };
    return { ok: true as const, ...componentPressure(given, coefficients, note) };
  };
  const cases: ComponentWindCase[] = [];
  for (const flow of site.flows) {
    const down = { 1: 0, 2: 0, 3: 0 };
    const up = { 1: 0, 2: 0, 3: 0 };
    for (const zone of ZONES) {
      const answer = pressures(flow, zone);
      if (!answer.ok) return { ok: false, status: 'outside', reason: answer.reason };
      down[zone] = answer.downPsf;
      up[zone] = answer.upPsf;
    }
    const steps = (zone: RoofZone): readonly Step[] => [
      ...site.figures.velocityPressure.steps(),
      ...site.figures.edgeWidth.steps(),
      ...stepsOf((note) => pressures(flow, zone, note)).steps,
    ];
    cases.push(
      windCase(`wind-down-${flow}`, message('caseWindDown', { flow }), down, steps),
      windCase(`wind-up-${flow}`, message('caseWindUp', { flow }), up, steps),
    );
  }
  return { ok: true, cases };
}

const windCase = (
  id: string,
  words: Message,
  psf: ComponentWindCase['psf'],
  steps: ComponentWindCase['steps'],
): ComponentWindCase => ({
  id,
  kind: 'wind',
  words,
  swaysAlong: false,
  psf,
  steps,
});

const WIND_FIELDS: ReadonlySet<string> = new Set(['site.windMph', 'site.exposure', 'site.kzt', 'site.ke']);

function whyNoWind(site: SitePressures): Message {
  return site.missing.find((fault) => WIND_FIELDS.has(fault.path)) ?? message('missingWindSpeed');
}

/** Roof live load on a part of the roof by its own area, whole and, where it is reduced, span by span. */
export interface ComponentLiveCase extends LoadCase {
  /** per segment of the member, of level area [psf] */
  readonly psf: readonly number[];
  readonly steps: () => readonly Step[];
}

/**
 * Roof live cases of a member.
 * @param memberId  whose typed load, if there is one, stands instead
 * @param tributaryAreaFt2  level area that one span of it carries [ft2]
 * @param segments  spans and overhangs of the member
 * @source ASCE7 4.8.2 and 4.8.1 (7-16)
 */
export function componentLive(
  project: Project,
  memberId: string,
  risePer12: number,
  tributaryAreaFt2: number,
  segments: number,
  unreducedPsf: number,
): readonly ComponentLiveCase[] {
  const typed = insteadOf(project, 'roofLiveReducedPsf', memberId);
  const givens = { tributaryAreaFt2, risePer12, countyPsf: project.site.roofLivePsf.value };
  const psf = typed?.value ?? reducedRoofLive(givens);
  const steps = (): readonly Step[] => (typed ? [] : stepsOf((note) => reducedRoofLive(givens, note)).steps);
  const live = (id: string, words: Message, factors: readonly number[]): ComponentLiveCase => ({
    id,
    kind: 'roofLive',
    words,
    swaysAlong: false,
    psf: factors.map((factor) => factor * psf),
    steps,
  });
  const whole = live('roof-live', message('caseRoofLive'), new Array<number>(segments).fill(1));
  if (psf >= unreducedPsf) return [whole];
  const patterns = alternatePatterns(segments).map((pattern) =>
    live(`roof-live-${pattern.id}`, message('caseRoofLivePattern', { pattern: pattern.id }), pattern.factors),
  );
  return [whole, ...patterns];
}
