import type { LineGeometry, Shelter } from '../geometry/shelter.ts';
import { isHeldByFrames } from '../project/lateral.ts';
import type { Project } from '../project/model.ts';
import { insteadOf } from '../project/instead.ts';
import { emptyLineCase, type LineArrival, type LineCase, type LineLoads, type LoadCase } from './cases.ts';
import { deadPieces, totalDown } from './dead-pieces.ts';
import type { Earthquake } from './earthquake.ts';
import { inertiaAcrossCase, inertiaCase, NOTIONAL_SHARE } from './inertia.ts';
import { arriving, bearingsOf, type Bearing } from './line-bearing.ts';
import type { LineSetting } from './line-setting.ts';
import { hungForEver, ownArrivals, ownDeadPieces } from './own-on-line.ts';
import type { RoofCase, RunOf } from './roof-cases.ts';
import { roofOnLine, type RoofLive } from './roof-on-line.ts';
import { reducedRoofLive } from './site/roof-live.ts';
import type { SitePressures } from './site/site-pressures.ts';
import { stretchesOf } from './stretches.ts';
import { alongForces, type SwayForces } from './sway.ts';
import type { MemberWeights } from './weights.ts';

export interface LineLoading {
  readonly loads: LineLoads;
  /** every case that reaches the line, its own span patterns included */
  readonly cases: readonly LoadCase[];
  readonly roofLivePsf: number;
}

/** Everything that comes down on one frame line, case by case, through the rafters' own analysis. */
export function lineLoads(
  project: Project,
  shelter: Shelter,
  line: LineGeometry,
  site: SitePressures,
  roof: readonly RoofCase[],
  runOf: RunOf,
  weights: MemberWeights,
  earthquake: Earthquake | null,
): LineLoading {
  const posts = shelter.posts.filter((p) => p.line === line.id).sort((a, b) => a.xIn - b.xIn);
  const braces = shelter.braces.filter((b) => b.plane === 'along' && posts.some((p) => p.id === b.postId));
  const rafters = shelter.rafters.filter((r) => r.supports.some((s) => s.line === line.id));
  const stretches = stretchesOf(line, posts);
  const context = { project, shelter, line, posts, braces, rafters, stretches, runOf, weights };

  const bearings = bearingsOf(context);
  const live = roofLiveOf(context, bearings, site);
  const sway = alongForces(project, shelter, line, posts, braces, site);
  const ofRoof = roofOnLine(roof, stretches, live).flatMap((c): readonly LineArrival[] => {
    const { points, opposed } = arriving(bearings, c);
    return [roofArrival(c, c.id, points, sway), ...(opposed ? [roofArrival(c, `${c.id}-opposed`, opposed, sway)] : [])];
  });
  const dead = [...deadPieces(context), ...ownDeadPieces(context)];
  const heavyLb = totalDown(
    dead.map((d) => d.heavy),
    posts,
    braces,
  );
  const push = earthquake
    ? earthquakePush(context, bearings, earthquake, heavyLb)
    : { kind: 'notional' as const, forceLb: NOTIONAL_SHARE * heavyLb };
  const arrivals: readonly LineArrival[] = [
    ...ofRoof,
    ...ownArrivals(context, ofRoof),
    ...([1, -1] as const).map((toward) => inertiaCase(posts, push, toward)),
    ...(isHeldByFrames(project.lateral.across)
      ? ([1, -1] as const).map((toward) => inertiaAcrossCase(push, toward))
      : []),
  ];
  return {
    loads: {
      lineId: line.id,
      dead,
      cases: arrivals.map((a) => a.lineCase),
      alongLb: Object.fromEntries(arrivals.filter((a) => a.loadCase.swaysAlong).map((a) => [a.loadCase.id, a.alongLb])),
      deadLb: heavyLb,
      inertiaLb: push.forceLb,
    },
    cases: arrivals.map((a) => a.loadCase),
    roofLivePsf: live.psf,
  };
}

/** A case of the roof on the line; wind along it also meets what is solid. */
function roofArrival(c: RoofCase, id: string, points: LineCase['points'], sway: SwayForces): LineArrival {
  if (c.windAlong === 0) {
    const loadCase = { ...c, id, ...(c.kind === 'wind' ? { pushAcross: c.id } : {}) };
    return { loadCase, lineCase: { ...emptyLineCase(id), points }, alongLb: 0 };
  }
  const lineCase = {
    ...emptyLineCase(id),
    points: [...points, ...sway.atSeats(c.windAlong)],
    onPosts: sway.onPosts(c.windAlong),
    onBraces: sway.onBraces(c.windAlong),
  };
  return { loadCase: { ...c, id }, lineCase, alongLb: c.windAlong * sway.totalLb };
}

/** On the line's own weight, what hangs there for ever and the snow on its own area that moves with the roof. */
function earthquakePush(c: LineSetting, bearings: readonly Bearing[], earthquake: Earthquake, heavyLb: number) {
  const { pushShare, verticalShare, movingSnowPsf } = earthquake;
  const snowLb = movingSnowPsf * perPsfOf(bearings);
  return { kind: 'seismic' as const, forceLb: pushShare * (heavyLb + hungForEver(c) + snowLb), verticalShare };
}

/** What one pound per square foot of level roof brings to a line: the area that it carries [ft2]. */
const perPsfOf = (bearings: readonly Bearing[]): number =>
  arriving(bearings, { pressure: () => ({ plumbPsf: 1, squarePsf: 0 }) }).points.reduce((sum, p) => sum + p.downLb, 0);

/** Roof live on the line's own area: what one pound per square foot brings to it, shared by its spans. */
function roofLiveOf(c: LineSetting, bearings: readonly Bearing[], site: SitePressures): RoofLive {
  const unreducedPsf = site.figures.unreducedRoofLive.value ?? 0;
  const typed = insteadOf(c.project, 'roofLiveReducedPsf', c.line.id);
  if (typed) return { psf: typed.value, unreducedPsf };
  const perPsf = perPsfOf(bearings);
  const spans = Math.max(1, c.stretches.filter((s) => s.kind === 'span').length);
  const risePer12 = Math.min(...c.shelter.planes.map((p) => p.risePer12));
  return {
    psf: reducedRoofLive({ tributaryAreaFt2: perPsf / spans, risePer12, countyPsf: c.project.site.roofLivePsf.value }),
    unreducedPsf,
  };
}
