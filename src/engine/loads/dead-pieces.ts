import type { BraceGeometry, PostGeometry, RafterGeometry, TieGeometry } from '../geometry/shelter.ts';
import { stickOf } from '../geometry/sticks.ts';
import { message, type Message } from '../message.ts';
import { insteadOf } from '../project/instead.ts';
import type { Project } from '../project/model.ts';
import { INCHES_PER_FOOT, plf } from '../units.ts';
import { emptyLineCase, type DeadPiece, type LineCase } from './cases.ts';
import type { LineSetting } from './line-setting.ts';
import { plumbReactions } from './rafter-reactions.ts';
import { even } from './rafter-run.ts';
import { rafterOwnWeight, surfaceWeight } from './roof-weights.ts';
import { shareIn, type Stretch } from './stretches.ts';
import { weightAlong, wholeWeight, type MemberWeights, type TwoWeights } from './weights.ts';

/**
 * Dead load by stretch of beam (rafters, strip, the beam itself), then posts and braces as one more piece, with their part
 * of what runs across from them.
 */
export function deadPieces(c: LineSetting): readonly DeadPiece[] {
  const roof = c.rafters.map((rafter) => ({ xIn: rafter.xIn, ...deadReaction(c, rafter) }));
  const strip = stripWeight(c);
  const pieces = c.stretches.map((stretch, i): DeadPiece => {
    const inside = roof.flatMap((r) => {
      const share = shareIn(c.stretches, i, r.xIn);
      return share > 0 ? [{ xIn: r.xIn, heavy: share * r.heavy, light: share * r.light }] : [];
    });
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
      // spread up to the beam axis, where the frame ends; the wood itself ends at the seat, and only that holds down
      const share = weight === 'light' ? (post.seatZIn - post.footZIn) / (post.axisZIn - post.footZIn) : 1;
      const foot = share * at(Math.max(0, post.footZIn - post.woodFromZIn))[weight];
      const top = share * at(post.lengthIn)[weight];
      return { postId: post.id, footDownLbPerIn: foot, topDownLbPerIn: top, alongLbPerIn: 0 };
    }),
    onBraces: c.braces.map((b) => ({
      braceId: b.id,
      downLb: braceWeight(c.project, c.weights, b)[weight],
      alongLb: 0,
    })),
    atPosts: acrossFromPosts(c).map(({ postId, zIn, down }) => ({ postId, zIn, downLb: down[weight], alongLb: 0 })),
  });
  return [...pieces, { piece: 'posts', heavy: uprights('heavy'), light: uprights('light') }];
}

function deadReaction(c: LineSetting, rafter: RafterGeometry): TwoWeights {
  const run = c.runOf(rafter);
  const plane = c.shelter.planes.find((p) => p.id === rafter.plane)!;
  const surface = surfaceWeight(c.project, plane, c.shelter.purlins, c.weights);
  const own = rafterOwnWeight(c.project, rafter, run, c.weights);
  const side = (weight: keyof TwoWeights): number => {
    // plumb weight per inch of slope; its part square to the slope is what the run was solved for
    const loads = own.map((w) => even(((surface[weight] * rafter.tributaryWidthIn) / 144 + w[weight]) * run.cos));
    return plumbReactions(run, loads).reduce((sum, r) => (r.line === c.line.id ? sum + r.downLb : sum), 0);
  };
  return { heavy: side('heavy'), light: side('light') };
}

/** Weight of the strip of a line [lb/in]. */
export function stripWeight({ project, line }: Pick<LineSetting, 'project' | 'line'>): TwoWeights {
  const answer = weightOfStrip(project, line.id);
  const weight = answer.ok ? answer.at(0) : NOTHING;
  return {
    heavy: typedStrip(project, 'stripHeavyPlf', line.id) ?? weight.heavy,
    light: typedStrip(project, 'stripLightPlf', line.id) ?? weight.light,
  };
}

const NOTHING: TwoWeights = { heavy: 0, light: 0 };

/** Typed weight of a strip, for one line or for every line [lb/in]. */
function typedStrip(project: Project, what: 'stripHeavyPlf' | 'stripLightPlf', lineId: string): number | null {
  const typed = insteadOf(project, what, lineId);
  return typed ? plf(typed.value) / INCHES_PER_FOOT : null;
}

function weightOfStrip(project: Project, lineId: string): ReturnType<typeof weightAlong> {
  const line = project.supportLines.find((l) => l.id === lineId);
  const strip = line?.kind === 'frame' ? line.strip : null;
  if (!strip) return { ok: true, at: () => NOTHING };
  const stick = stickOf(project, strip.stock, 1);
  return stick
    ? weightAlong(project, stick)
    : { ok: false, reason: message('memberNotGiven', { member: `strip of ${lineId}` }) };
}

/** Why the weight of the strip on a line is not known; null when it is, is typed, or there is no strip. */
export function whyStripNotWeighed(project: Project, lineId: string, label: string): Message | null {
  const isTyped = (['stripHeavyPlf', 'stripLightPlf'] as const).every((what) => insteadOf(project, what, lineId));
  if (isTyped) return null;
  const answer = weightOfStrip(project, lineId);
  if (answer.ok) return null;
  return answer.reason.code === 'memberNotGiven'
    ? message('memberNotGiven', { member: `the strip of line ${label}` })
    : answer.reason;
}

const PROFILE_STEP_IN = 12;

/** Weight per inch of beam and strip over a stretch, with points close enough for the taper. */
function beamProfile(
  c: LineSetting,
  stretch: Stretch,
  strip: TwoWeights,
): readonly ({ readonly xIn: number } & TwoWeights)[] {
  const n = Math.max(1, Math.ceil((stretch.toXIn - stretch.fromXIn) / PROFILE_STEP_IN));
  return Array.from({ length: n + 1 }, (_, i) => {
    const xIn = stretch.fromXIn + ((stretch.toXIn - stretch.fromXIn) * i) / n;
    const beam = c.shelter.beams.find(
      (b) =>
        b.line === c.line.id && b.fromXIn - 1e-6 <= xIn && xIn <= b.toXIn + 1e-6 && b.toXIn > stretch.fromXIn + 1e-6,
    );
    const own = beam ? c.weights.of(beam.id)(xIn - beam.fromXIn) : { heavy: 0, light: 0 };
    return { xIn, heavy: own.heavy + strip.heavy, light: own.light + strip.light };
  });
}

/** Ties rest on the two posts that they join, a brace across hangs on its post whole. */
/** What runs across from the posts of a line and hangs on them: their part of each tie log, and whole braces [lb]. */
export function acrossFromPosts(
  c: Pick<LineSetting, 'project' | 'shelter' | 'posts' | 'weights'>,
): readonly { readonly postId: string; readonly zIn: number; readonly down: TwoWeights }[] {
  return c.posts.flatMap((post) => [
    ...c.shelter.ties
      .filter((tie) => tie.fromPostId === post.id || tie.toPostId === post.id)
      .map((tie) => ({ postId: post.id, zIn: tie.axisZIn, down: tieOnPost(c, tie, post) })),
    ...c.shelter.braces
      .filter((b) => b.plane === 'across' && b.postId === post.id)
      .map((b) => ({ postId: post.id, zIn: b.postPoint.zIn, down: braceWeight(c.project, c.weights, b) })),
  ]);
}

/** By the lever rule about the other post; an end that reaches past a post counts. */
function tieOnPost(c: Pick<LineSetting, 'shelter' | 'weights'>, tie: TieGeometry, post: PostGeometry): TwoWeights {
  const otherId = tie.fromPostId === post.id ? tie.toPostId : tie.fromPostId;
  const other = c.shelter.posts.find((p) => p.id === otherId)!;
  const weight = c.weights.of(tie.id);
  return wholeWeight((atIn) => {
    const share = (tie.fromYIn + atIn - other.yIn) / (post.yIn - other.yIn);
    const { heavy, light } = weight(atIn);
    return { heavy: share * heavy, light: share * light };
  }, tie.toYIn - tie.fromYIn);
}

/** Whole weight of a brace; a typed one is both heavy and light [lb]. */
export function braceWeight(project: Project, weights: MemberWeights, brace: BraceGeometry): TwoWeights {
  const typed = insteadOf(project, 'braceWeightPlf', brace.id);
  if (typed) return { heavy: (typed.value * brace.lengthIn) / 12, light: (typed.value * brace.lengthIn) / 12 };
  return wholeWeight(weights.of(brace.id), brace.lengthIn);
}

/** All dead load of the line [lb]. */
export function totalDown(
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
    const hung = c.atPosts.reduce((s, p) => s + p.downLb, 0);
    const knee = braces.length > 0 ? c.onBraces.reduce((s, b) => s + b.downLb, 0) : 0;
    return sum + points + beam + up + hung + knee;
  }, 0);
}
