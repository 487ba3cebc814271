import type { BraceGeometry, LineGeometry, PostGeometry, RafterGeometry, Shelter } from '../geometry/shelter.ts';
import { message } from '../message.ts';
import type { Project } from '../project/model.ts';
import { plf } from '../units.ts';
import { emptyLineCase, type DeadPiece, type LineCase, type LineLoads, type LoadCase } from './cases.ts';
import { plumbReactions, squareLoads, windReactions } from './rafter-reactions.ts';
import type { RoofCase, RunOf } from './roof-cases.ts';
import { rafterOwnWeight, surfaceWeight } from './roof-weights.ts';
import { alternatePatterns, partialPatterns } from './site/patterns.ts';
import { reducedRoofLive } from './site/roof-live.ts';
import { alongForces, notionalCase } from './sway.ts';
import type { SitePressures } from './site/site-pressures.ts';
import { weightAlong, wholeWeight, type MemberWeights, type TwoWeights } from './weights.ts';

export interface LineLoading {
  readonly loads: LineLoads;
  /** every case that reaches the line, its own span patterns included */
  readonly cases: readonly LoadCase[];
  readonly roofLivePsf: number;
}

/** A stretch of a line between posts or beyond the last one, with a stable name. */
export interface Stretch {
  readonly name: string;
  readonly kind: 'overhang' | 'span';
  readonly fromXIn: number;
  readonly toXIn: number;
}

export function stretchesOf(line: LineGeometry, posts: readonly PostGeometry[]): readonly Stretch[] {
  const marks = [
    { name: 'minus', xIn: line.fromXIn },
    ...posts.map((p) => ({ name: p.id, xIn: p.xIn })),
    { name: 'plus', xIn: line.toXIn },
  ];
  return marks.slice(1).flatMap((to, i): Stretch[] => {
    const from = marks[i]!;
    if (to.xIn - from.xIn < 1e-6) return [];
    const kind = from.name === 'minus' || to.name === 'plus' ? 'overhang' : 'span';
    return [{ name: `${from.name}~${to.name}`, kind, fromXIn: from.xIn, toXIn: to.xIn }];
  });
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

  const alongLb: Record<string, number> = {};
  for (const c of roof) {
    const points = pointsOf(context, c);
    if (c.windAlong === 0) add(c, points);
    else {
      const sway = alongForces(project, shelter, line, posts, braces, site);
      alongLb[c.id] = c.windAlong * sway.totalLb;
      cases.push(c);
      lineCases.push({
        ...emptyLineCase(c.id),
        points: [...points, ...sway.atSeats(c.windAlong)],
        onPosts: sway.onPosts(c.windAlong),
        onBraces: sway.onBraces(c.windAlong),
      });
    }
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
            downLb: point.downLb * (p.factors[stretchAt(stretches, point.xIn)] ?? 1),
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
          downLb: point.downLb * (p.factors[stretchAt(stretches, point.xIn)] ?? 1),
        })),
      );
    }
  }

  const dead = deadPieces(context);
  const own = ownLive(context);
  if (own) {
    cases.push({ id: 'own-live', kind: 'ownLive', words: message('caseOwnLive'), swaysAlong: false });
    lineCases.push(own);
  }
  const heavyLb = totalDown(
    dead.map((d) => d.heavy),
    posts,
    braces,
  );
  for (const toward of [1, -1] as const) {
    const notional = notionalCase(posts, heavyLb, toward);
    cases.push(notional.loadCase);
    lineCases.push(notional.lineCase);
    alongLb[notional.loadCase.id] = toward * notional.forceLb;
  }
  return { loads: { lineId: line.id, dead, cases: lineCases, alongLb, deadLb: heavyLb }, cases, roofLivePsf: live.psf };
}

interface Context {
  readonly project: Project;
  readonly shelter: Shelter;
  readonly line: LineGeometry;
  readonly posts: readonly PostGeometry[];
  readonly braces: readonly BraceGeometry[];
  readonly rafters: readonly RafterGeometry[];
  readonly stretches: readonly Stretch[];
  readonly runOf: RunOf;
  readonly weights: MemberWeights;
}

/** Rafter reactions of a case on this line, as point loads at the rafters. */
function pointsOf(c: Context, roofCase: Pick<RoofCase, 'pressure'>): LineCase['points'] {
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

function stretchAt(stretches: readonly Stretch[], xIn: number): number {
  const i = stretches.findIndex((s) => xIn < s.toXIn - 1e-9);
  return i < 0 ? stretches.length - 1 : i;
}

/** Roof live on the line's own area: what one pound per square foot brings to it, shared by its spans. */
function roofLiveOf(c: Context, site: SitePressures): { readonly psf: number; readonly unreducedPsf: number } {
  const unreducedPsf = site.figures.unreducedRoofLive.value ?? 0;
  const typed = c.project.instead.find((i) => i.what === 'roofLiveReducedPsf' && (i.of === null || i.of === c.line.id));
  if (typed) return { psf: typed.value, unreducedPsf };
  const perPsf = pointsOf(c, { pressure: () => ({ plumbPsf: 1, squarePsf: 0 }) }).reduce((sum, p) => sum + p.downLb, 0);
  const spans = Math.max(1, c.stretches.filter((s) => s.kind === 'span').length);
  const risePer12 = Math.min(...c.shelter.planes.map((p) => p.risePer12));
  return {
    psf: reducedRoofLive({ tributaryAreaFt2: perPsf / spans, risePer12, countyPsf: c.project.site.roofLivePsf.value }),
    unreducedPsf,
  };
}

/** Dead load by stretch of beam (rafters, strip, the beam itself), then posts and braces as one more piece. */
function deadPieces(c: Context): readonly DeadPiece[] {
  const roof = c.rafters.map((rafter) => ({ xIn: rafter.xIn, ...deadReaction(c, rafter) }));
  const strip = stripWeight(c);
  const pieces = c.stretches.map((stretch, i): DeadPiece => {
    const inside = roof.filter((r) => stretchAt(c.stretches, r.xIn) === i);
    const beams = beamProfile(c, stretch, strip);
    const side = (weight: keyof TwoWeights): LineCase => ({
      ...emptyLineCase(`dead-${weight}-${stretch.name}`),
      points: inside.map((r) => ({ xIn: r.xIn, downLb: r[weight], alongLb: 0 })),
      onBeam: beams.map((b) => ({ xIn: b.xIn, downLbPerIn: b[weight] })),
    });
    return { piece: stretch.name, heavy: side('heavy'), light: side('light') };
  });
  const uprights = (weight: keyof TwoWeights): LineCase => ({
    ...emptyLineCase(`dead-${weight}-posts`),
    onPosts: c.posts.map((post) => {
      const at = c.weights.of(post.id);
      const foot = at(Math.max(0, post.footZIn - post.woodFromZIn))[weight];
      const top = at(post.lengthIn)[weight];
      return { postId: post.id, footDownLbPerIn: foot, topDownLbPerIn: top, alongLbPerIn: 0 };
    }),
    onBraces: c.braces.map((b) => ({ braceId: b.id, downLb: braceWeight(c, b)[weight], alongLb: 0 })),
  });
  return [...pieces, { piece: 'posts', heavy: uprights('heavy'), light: uprights('light') }];
}

function deadReaction(c: Context, rafter: RafterGeometry): TwoWeights {
  const run = c.runOf(rafter);
  const plane = c.shelter.planes.find((p) => p.id === rafter.plane)!;
  const surface = surfaceWeight(c.project, plane, c.shelter.purlins, c.weights);
  const own = rafterOwnWeight(c.project, rafter, run, c.weights);
  const side = (weight: keyof TwoWeights): number => {
    // plumb weight per inch of slope; its part square to the slope is what the run was solved for
    const loads = own.map((w) => ((surface[weight] * rafter.tributaryWidthIn) / 144 + w[weight]) * run.cos);
    return plumbReactions(run, loads).reduce((sum, r) => (r.line === c.line.id ? sum + r.downLb : sum), 0);
  };
  return { heavy: side('heavy'), light: side('light') };
}

function stripWeight(c: Context): TwoWeights {
  const typedHeavy = c.project.instead.find((i) => i.what === 'stripHeavyPlf' && i.of === c.line.id);
  const typedLight = c.project.instead.find((i) => i.what === 'stripLightPlf' && i.of === c.line.id);
  const line = c.project.supportLines.find((l) => l.id === c.line.id)!;
  const stock = line.kind === 'frame' ? (line.strip?.stock ?? null) : null;
  const stick =
    stock?.kind === 'sawn'
      ? {
          kind: 'sawn' as const,
          breadthIn: stock.breadthIn,
          depthIn: stock.depthIn * stock.plies,
          lay: stock.lay,
          plies: stock.plies,
          species: stock.species,
          grade: stock.grade,
          use: stock.use,
        }
      : stock?.kind === 'typed'
        ? stock
        : null;
  const along = stick ? weightAlong(c.project, stick) : null;
  const weight = along?.ok ? along.at(0) : { heavy: 0, light: 0 };
  return {
    heavy: typedHeavy ? plf(typedHeavy.value) / 12 : weight.heavy,
    light: typedLight ? plf(typedLight.value) / 12 : weight.light,
  };
}

const PROFILE_STEP_IN = 12;

/** Weight per inch of beam and strip over a stretch, with points close enough for the taper. */
function beamProfile(
  c: Context,
  stretch: Stretch,
  strip: TwoWeights,
): readonly ({ readonly xIn: number } & TwoWeights)[] {
  const n = Math.max(1, Math.ceil((stretch.toXIn - stretch.fromXIn) / PROFILE_STEP_IN));
  return Array.from({ length: n + 1 }, (_, i) => {
    const xIn = stretch.fromXIn + ((stretch.toXIn - stretch.fromXIn) * i) / n;
    const beam = c.shelter.beams.find(
      (b) =>
        b.line === c.line.id &&
        b.fromXIn - 1e-6 <= xIn &&
        xIn <= b.toXIn + 1e-6 &&
        (b.toXIn > stretch.fromXIn + 1e-6 || i === 0),
    );
    const own = beam ? c.weights.of(beam.id)(xIn - beam.fromXIn) : { heavy: 0, light: 0 };
    return { xIn, heavy: own.heavy + strip.heavy, light: own.light + strip.light };
  });
}

function braceWeight(c: Context, brace: BraceGeometry): TwoWeights {
  const typed = c.project.instead.find((i) => i.what === 'braceWeightPlf' && (i.of === null || i.of === brace.id));
  if (typed) return { heavy: (typed.value * brace.lengthIn) / 12, light: (typed.value * brace.lengthIn) / 12 };
  return wholeWeight(c.weights.of(brace.id), brace.lengthIn);
}

/** Loads the person hangs on the line (points and stretches, downward, live). */
function ownLive(c: Context): LineCase | null {
  const points = c.project.ownLoads.flatMap((own) => {
    if (own.kind !== 'live' || own.direction !== 'down') return [];
    if (own.where.on === 'line' && own.where.line === c.line.id)
      return [{ xIn: own.where.xIn, downLb: own.where.lb, alongLb: 0 }];
    if (own.where.on === 'stretch' && own.where.line === c.line.id)
      return spreadPoints(own.where.fromXIn, own.where.toXIn, own.where.plf);
    return [];
  });
  return points.length > 0 ? { ...emptyLineCase('own-live'), points } : null;
}

/** A stretch of load as points no farther apart than a foot: what hangs on rafters and hooks anyway. */
function spreadPoints(fromXIn: number, toXIn: number, plfLoad: number): LineCase['points'] {
  const n = Math.max(1, Math.ceil((toXIn - fromXIn) / 12));
  const each = (plfLoad * (toXIn - fromXIn)) / 12 / n;
  return Array.from({ length: n }, (_, i) => ({
    xIn: fromXIn + ((toXIn - fromXIn) * (i + 0.5)) / n,
    downLb: each,
    alongLb: 0,
  }));
}

/** All dead load of the line [lb]. */
function totalDown(
  cases: readonly LineCase[],
  posts: readonly PostGeometry[],
  braces: readonly BraceGeometry[],
): number {
  const height = new Map(posts.map((p) => [p.id, p.axisZIn - p.footZIn]));
  return cases.reduce((sum, c) => {
    const points = c.points.reduce((s, p) => s + p.downLb, 0);
    const beam = c.onBeam
      .slice(1)
      .reduce((s, b, i) => s + ((b.downLbPerIn + c.onBeam[i]!.downLbPerIn) / 2) * (b.xIn - c.onBeam[i]!.xIn), 0);
    const up = c.onPosts.reduce(
      (s, p) => s + ((p.footDownLbPerIn + p.topDownLbPerIn) / 2) * (height.get(p.postId) ?? 0),
      0,
    );
    const knee = braces.length > 0 ? c.onBraces.reduce((s, b) => s + b.downLb, 0) : 0;
    return sum + points + beam + up + knee;
  }, 0);
}
