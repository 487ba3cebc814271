import type { LineGeometry, Shelter } from '../geometry/shelter.ts';
import { message } from '../message.ts';
import type { Project } from '../project/model.ts';
import { insteadOf } from '../project/instead.ts';
import { emptyLineCase, type LineCase, type LineLoads, type LoadCase } from './cases.ts';
import { deadPieces, totalDown } from './dead-pieces.ts';
import type { Earthquake } from './earthquake.ts';
import type { LineSetting } from './line-setting.ts';
import { hungForEver, ownLive, ownLiveDuration } from './own-live.ts';
import { opposedWindReactions, plumbReactions, squareLoads, windReactions } from './rafter-reactions.ts';
import type { RoofCase, RunOf } from './roof-cases.ts';
import { alternatePatterns, partialPatterns } from './site/patterns.ts';
import { reducedRoofLive } from './site/roof-live.ts';
import type { SitePressures } from './site/site-pressures.ts';
import { patternFactor, stretchesOf } from './stretches.ts';
import { alongForces, inertiaCase, NOTIONAL_SHARE } from './sway.ts';
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

  const live = roofLiveOf(context, site);
  const cases: LoadCase[] = [];
  const lineCases: LineCase[] = [];
  const add = (loadCase: LoadCase, points: LineCase['points']): void => {
    cases.push(loadCase);
    lineCases.push({ ...emptyLineCase(loadCase.id), points });
  };

  const sway = alongForces(project, shelter, line, posts, braces, site);
  const alongLb: Record<string, number> = {};
  const addRoof = (c: RoofCase, id: string, points: LineCase['points']): void => {
    if (c.windAlong === 0) return add({ ...c, id }, points);
    alongLb[id] = c.windAlong * sway.totalLb;
    cases.push({ ...c, id });
    lineCases.push({
      ...emptyLineCase(id),
      points: [...points, ...sway.atSeats(c.windAlong)],
      onPosts: sway.onPosts(c.windAlong),
      onBraces: sway.onBraces(c.windAlong),
    });
  };
  for (const c of roof) {
    const points = pointsOf(context, c);
    addRoof(c, c.id, points);
    const opposed = c.kind === 'wind' ? opposedPoints(context, c) : [];
    if (opposed.some((p) => p.downLb !== 0)) addRoof(c, `${c.id}-opposed`, opposed);
    if (c.spansPattern === 'snow') {
      for (const p of partialPatterns(stretches.length)) {
        add(
          {
            id: `snow-along-${p.id}`,
            kind: 'snow',
            words: message('caseSnowAlong', { pattern: p.id }),
            swaysAlong: false,
          },
          points.map((point) => ({
            ...point,
            downLb: point.downLb * patternFactor(stretches, p.factors, point.xIn),
          })),
        );
      }
    }
  }

  const livePoints = pointsOf(context, { pressure: () => ({ plumbPsf: live.psf, squarePsf: 0 }) });
  add({ id: 'roof-live', kind: 'roofLive', words: message('caseRoofLive'), swaysAlong: false }, livePoints);
  if (live.psf < live.unreducedPsf) {
    for (const p of alternatePatterns(stretches.length)) {
      add(
        {
          id: `roof-live-${p.id}`,
          kind: 'roofLive',
          words: message('caseRoofLivePattern', { pattern: p.id }),
          swaysAlong: false,
        },
        livePoints.map((point) => ({
          ...point,
          downLb: point.downLb * patternFactor(stretches, p.factors, point.xIn),
        })),
      );
    }
  }

  const dead = deadPieces(context);
  const own = ownLive(context);
  if (own) {
    cases.push({
      id: 'own-live',
      kind: 'ownLive',
      words: message('caseOwnLive'),
      swaysAlong: false,
      duration: ownLiveDuration(context),
    });
    lineCases.push(own);
  }
  const heavyLb = totalDown(
    dead.map((d) => d.heavy),
    posts,
    braces,
  );
  const push = earthquake
    ? earthquakePush(context, earthquake, heavyLb)
    : { kind: 'notional' as const, forceLb: NOTIONAL_SHARE * heavyLb };
  for (const toward of [1, -1] as const) {
    const { loadCase, lineCase } = inertiaCase(posts, push, toward);
    cases.push(loadCase);
    lineCases.push(lineCase);
    alongLb[loadCase.id] = toward * push.forceLb;
  }
  return {
    loads: { lineId: line.id, dead, cases: lineCases, alongLb, deadLb: heavyLb, inertiaLb: push.forceLb },
    cases,
    roofLivePsf: live.psf,
  };
}

/** On the line's own weight, what hangs there for ever and the snow on its own area that moves with the roof. */
function earthquakePush(c: LineSetting, earthquake: Earthquake, heavyLb: number) {
  const { pushShare, verticalShare, movingSnowPsf } = earthquake;
  const snow = pointsOf(c, { pressure: () => ({ plumbPsf: movingSnowPsf, squarePsf: 0 }) });
  const snowLb = snow.reduce((sum, p) => sum + p.downLb, 0);
  return { kind: 'seismic' as const, forceLb: pushShare * (heavyLb + hungForEver(c) + snowLb), verticalShare };
}

/** Where the holder of the level part is open: the reactions of the other sign that it may also give (steep roofs). */
function opposedPoints(c: LineSetting, roofCase: Pick<RoofCase, 'pressure'>): LineCase['points'] {
  return c.rafters.map((rafter) => {
    const run = c.runOf(rafter);
    const { horizontalHeldBy } = c.project.roofPlanes.find((p) => p.id === rafter.plane)!;
    const pressure = (i: number) => roofCase.pressure(rafter, run.parts[i]!);
    const loads = squareLoads(run, rafter.tributaryWidthIn, pressure, 'squarePsf');
    const found = horizontalHeldBy === 'worse' ? opposedWindReactions(run, loads) : [];
    return { xIn: rafter.xIn, alongLb: 0, downLb: found.find((r) => r.line === c.line.id)?.downLb ?? 0 };
  });
}

/** Rafter reactions of a case on this line, as point loads at the rafters. */
function pointsOf(c: LineSetting, roofCase: Pick<RoofCase, 'pressure'>): LineCase['points'] {
  return c.rafters.map((rafter) => {
    const run = c.runOf(rafter);
    const plane = c.project.roofPlanes.find((p) => p.id === rafter.plane)!;
    const pressure = (i: number) => roofCase.pressure(rafter, run.parts[i]!);
    const onPlumb = plumbReactions(run, squareLoads(run, rafter.tributaryWidthIn, pressure, 'plumbPsf'));
    const onSquare = windReactions(
      run,
      squareLoads(run, rafter.tributaryWidthIn, pressure, 'squarePsf'),
      plane.horizontalHeldBy,
    );
    const here = (r: { readonly line: string; readonly downLb: number }) => (r.line === c.line.id ? r.downLb : 0);
    return { xIn: rafter.xIn, alongLb: 0, downLb: [...onPlumb, ...onSquare].reduce((sum, r) => sum + here(r), 0) };
  });
}

/** Roof live on the line's own area: what one pound per square foot brings to it, shared by its spans. */
function roofLiveOf(c: LineSetting, site: SitePressures): { readonly psf: number; readonly unreducedPsf: number } {
  const unreducedPsf = site.figures.unreducedRoofLive.value ?? 0;
  const typed = insteadOf(c.project, 'roofLiveReducedPsf', c.line.id);
  if (typed) return { psf: typed.value, unreducedPsf };
  const perPsf = pointsOf(c, { pressure: () => ({ plumbPsf: 1, squarePsf: 0 }) }).reduce((sum, p) => sum + p.downLb, 0);
  const spans = Math.max(1, c.stretches.filter((s) => s.kind === 'span').length);
  const risePer12 = Math.min(...c.shelter.planes.map((p) => p.risePer12));
  return {
    psf: reducedRoofLive({ tributaryAreaFt2: perPsf / spans, risePer12, countyPsf: c.project.site.roofLivePsf.value }),
    unreducedPsf,
  };
}
