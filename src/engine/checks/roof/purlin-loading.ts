import type { RoofZone } from '../../../data/loads/free-roof-components.ts';
import type { PurlinGeometry } from '../../geometry/shelter.ts';
import type { Combination } from '../../loads/combination.ts';
import { combine, serviceCombinations } from '../../loads/combine.ts';
import { componentLive, componentWind, type ComponentWind } from '../../loads/component-cases.ts';
import { surfaceWeight } from '../../loads/roof-weights.ts';
import { snowCases } from '../../loads/snow-cases.ts';
import { areaClass } from '../../loads/site/components.ts';
import { wholeWeight, type TwoWeights } from '../../loads/weights.ts';
import { edgeWidthIn, reachesEave, zoneAt } from '../../loads/zones.ts';
import type { Step } from '../../note.ts';
import { feetFromInches, radiansFromDegrees } from '../../units.ts';
import { placedPlane, raftersOn, writtenPlane, type RoofCheckContext } from './context.ts';
import { ownOnPurlin, personOnPurlin } from './purlin-guests.ts';

export type PurlinStretchKind = 'span' | 'overhang';

/** Even load on a purlin in one case, per inch of its length [lb/in]. */
export interface PurlinCase {
  readonly id: string;
  readonly isWind: boolean;
  /** where it stands for what acts on a stretch of this kind alone */
  readonly on?: PurlinStretchKind;
  readonly psf: number;
  /** zone of the roof, of wind */
  readonly zone?: RoofZone;
  /** plumb, or square to the slope where it is wind */
  readonly load: number;
  readonly steps: () => readonly Step[];
}

/** All that acts on a purlin, and the gaps that it spans. */
export interface PurlinLoading {
  readonly purlin: PurlinGeometry;
  readonly cos: number;
  readonly sin: number;
  /** widest gap between rafters; 0 with a single rafter [in] */
  readonly spanIn: number;
  /** longer of the two ends beyond the outer rafters [in] */
  readonly overhangIn: number;
  /** plumb dead load per inch of purlin [lb/in] */
  readonly dead: TwoWeights;
  readonly cases: readonly PurlinCase[];
  readonly responses: readonly PurlinResponse[];
  readonly wind: ComponentWind;
}

/** One combination on a purlin: even load square to the slope and along it, down the slope + [lb/in]. */
export interface PurlinResponse {
  readonly combination: Combination;
  readonly square: number;
  readonly along: number;
  /** the kind of stretch that it is asked of; all where it is left out */
  readonly on?: PurlinStretchKind;
  /** dead load that counts, plumb [lb/in] */
  readonly dead: number;
}

/**
 * Loads of a purlin as a component. Plumb loads are resolved square to the slope and along it; the purlin carries both,
 * the sheet is not counted on to hold it along the slope (safe side).
 * @source ASCE7 chapters 3, 4, 7, 30 (7-16)
 */
export function purlinLoading(context: RoofCheckContext, purlin: PurlinGeometry): PurlinLoading {
  const { project, site, form } = context;
  const theta = radiansFromDegrees(purlin.slopeDeg);
  const cos = Math.cos(theta);
  const sin = Math.sin(theta);
  const width = purlin.tributaryWidthIn;
  const gaps = purlin.rafterXIn.slice(1).map((x, i) => x - purlin.rafterXIn[i]!);
  const spanIn = gaps.length > 0 ? Math.max(...gaps) : 0;
  const shortestIn = gaps.length > 0 ? Math.min(...gaps) : width;
  const first = purlin.rafterXIn[0]!;
  const last = purlin.rafterXIn[purlin.rafterXIn.length - 1]!;
  const overhangIn = Math.max(0, first - purlin.fromXIn, purlin.toXIn - last);

  const effectiveAreaFt2 = (shortestIn * Math.max(width, shortestIn / 3)) / 144;
  const wind = componentWind(
    site,
    form,
    purlin.slopeDeg,
    areaClass(effectiveAreaFt2, feetFromInches(edgeWidthIn(site))),
  );
  const zone = purlinZone(context, purlin);
  const plane = writtenPlane(context, purlin.plane);
  const live = componentLive(project, purlin.id, plane.risePer12, (shortestIn * width * cos) / 144, 1, 0);
  const onLevel = (psf: number): number => (psf * width * cos) / 144;
  const rafter = raftersOn(context, purlin.plane)[0]!;
  const snow = snowCases(site, 1);
  const cases: PurlinCase[] = [
    ...live.map((c) => ({ id: c.id, isWind: false, psf: c.psf[0]!, load: onLevel(c.psf[0]!), steps: c.steps })),
    ...snow.map((c) => {
      const psf = c.onPurlin(purlin, rafter);
      return { id: c.id, isWind: false, psf, load: onLevel(psf), steps: () => c.stepsOnPurlin(purlin, rafter) };
    }),
    ...(wind.ok ? wind.cases : []).map((c) => ({
      id: c.id,
      isWind: true,
      psf: c.psf[zone],
      zone,
      load: (c.psf[zone] * width) / 144,
      steps: () => c.steps(zone),
    })),
  ];
  const lengthsIn = { span: spanIn, overhang: overhangIn };
  const guests = [...personOnPurlin(lengthsIn, width * cos), ...ownOnPurlin(context, purlin, lengthsIn, cases)];
  cases.push(...guests.map((g) => g.onPurlin));
  const dead = purlinDead(context, purlin);
  const loadCases = [...live, ...snow, ...guests.map((g) => g.loadCase), ...(wind.ok ? wind.cases : [])];
  const combinations = [...combine(loadCases), ...serviceCombinations(loadCases, project.calculation.kcr)];
  return {
    purlin,
    cos,
    sin,
    spanIn,
    overhangIn,
    dead,
    cases,
    wind,
    responses: combinations.map((combination) => responseOf(combination, cases, dead, cos, sin)),
  };
}

/**
 * Zone of a purlin: it runs to the gable ends, where the wind is hardest, and is judged there over its whole length (own
 * rule, safe side: a wide gap in the middle may lie in a softer zone).
 */
export function purlinZone(context: RoofCheckContext, purlin: PurlinGeometry): RoofZone {
  const cos = Math.cos(radiansFromDegrees(purlin.slopeDeg));
  const [from, to] = [-0.5, 0.5].map((half) => (purlin.upSlopeIn + half * purlin.tributaryWidthIn) * cos);
  return zoneAt(true, reachesEave(placedPlane(context, purlin.plane), from!, to!, edgeWidthIn(context.site)));
}

function responseOf(
  combination: Combination,
  cases: readonly PurlinCase[],
  dead: TwoWeights,
  cos: number,
  sin: number,
): PurlinResponse {
  let plumb = 0;
  let wind = 0;
  const acting = combination.factors.map(({ caseId, factor }) => ({
    factor,
    found: cases.find((c) => c.id === caseId)!,
  }));
  const on = acting.find((a) => a.found.on)?.found.on;
  for (const { factor, found } of acting) {
    // what acts on stretches of the other kind alone
    if (found.on && found.on !== on) continue;
    if (found.isWind) wind += factor * found.load;
    else plumb += factor * found.load;
  }
  // every dead load of a purlin presses it down: it helps against lift and adds to all else
  const rule = combination.dead;
  const share = rule.weight === 'heavy' ? rule.factor * dead.heavy : wind < 0 ? rule.factor * dead.light : dead.heavy;
  return {
    combination,
    square: (plumb + share) * cos + wind,
    along: (plumb + share) * sin,
    dead: share,
    ...(on ? { on } : {}),
  };
}

/**
 * Covering over the purlin's width and the purlin itself, plumb per inch [lb/in]. A typed total that holds purlins or
 * rafters too counts in full downward and not at all against lift: how much of it hangs on the purlin is not known.
 */
function purlinDead(context: RoofCheckContext, purlin: PurlinGeometry): TwoWeights {
  const { dead } = writtenPlane(context, purlin.plane);
  const covering = surfaceWeight(context.project, placedPlane(context, purlin.plane), [], context.weights);
  const over = (psf: number): number => (psf * purlin.tributaryWidthIn) / 144;
  const includes: readonly string[] = dead.by === 'total' ? dead.includes : [];
  const lengthIn = purlin.toXIn - purlin.fromXIn;
  const whole = wholeWeight(context.weights.of(purlin.id), lengthIn);
  const own = includes.includes('purlins')
    ? { heavy: 0, light: 0 }
    : { heavy: whole.heavy / lengthIn, light: whole.light / lengthIn };
  const light = includes.length > 0 ? 0 : over(covering.light) + own.light;
  return { heavy: over(covering.heavy) + own.heavy, light };
}
