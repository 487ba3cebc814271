import type { LineReport, MemberEnvelope, PostReactions } from './evaluation.ts';
import { isStrength, postResponses, type LineCheckContext } from './checks/line-context.ts';
import { acrossPushAtFoot } from './checks/pier/across-push.ts';
import { beamStretches } from './checks/beam/beam-sections.ts';
import { pullShareOf, stressAt } from './checks/beam/bending.ts';
import { seatPushes } from './checks/beam/seat-pushes.ts';
import { footIndex, holdIndex, pushIndex, sectionsOf, type PostChain } from './frame/read-response.ts';
import type { Chain } from './frame/mesh-builder.ts';
import type { LineResponse } from './frame/line-frame.ts';
import type { BuckledLine } from './frame/buckled-shape.ts';
import { memberExtremes } from './member-extremes.ts';
import { once } from './once.ts';

/** What tells responses of one combination and brace model apart, where there are several. */
type WaysOf = (r: LineResponse) => readonly string[];

/**
 * What the drawing hatches and the sheet prints of one analysed line. The long lists, of every combination and of every
 * station, are made when they are first read: between two keystrokes mostly nobody reads them.
 */
export function lineReport(
  context: LineCheckContext,
  buckledOf: () => BuckledLine | null,
  waysOf: WaysOf = () => [],
): LineReport {
  const { frame, line } = context;
  const { layout, mesh } = frame;
  const strength = frame.responses.filter(isStrength);
  const hold = holdIndex(layout, mesh);
  const buckled = once(() => ({ shape: buckledOf() }));
  const members = once(() => envelopes(context, strength));
  const extremes = once(() => memberExtremes(context, strength));
  const seats = once(() => seatPushes(context));
  return {
    lineId: line.id,
    stands: frame.unheld.length === 0,
    reason: frame.unheld[0]?.reason ?? null,
    posts: mesh.posts.map((p) => reactionsOf(context, p, waysOf)),
    get members() {
      return members();
    },
    get extremes() {
      return extremes();
    },
    get seats() {
      return seats();
    },
    braces: mesh.braces.map((link, j) => ({
      braceId: link.brace.id,
      greatestPushLb: greatest(strength, (v) => v[pushIndex(layout, j)]!),
      greatestPullLb: greatest(strength, (v) => -v[pushIndex(layout, j)]!),
    })),
    get buckled() {
      return buckled().shape;
    },
    holdingLb: greatest(
      strength.filter((r) => r.held),
      (v) => Math.abs(v[hold]!),
    ),
  };
}

/** Greatest of a force over all responses, none less than zero. */
const greatest = (responses: readonly LineResponse[], force: (values: Float64Array) => number): number =>
  responses.reduce((most, r) => Math.max(most, force(r.values)), 0);

/** Worst of the brace models in every combination; each part on its own. */
function reactionsOf(context: LineCheckContext, chain: PostChain, waysOf: WaysOf): PostReactions {
  const foot = footIndex(context.frame.layout, chain);
  const responses = postResponses(context).filter(isStrength);
  const across = acrossPushAtFoot(context, chain);
  const byCombination = once(() =>
    Object.fromEntries(
      responses.map((r) => [
        [
          r.combination.id,
          r.braceModel,
          ...(r.letGo ? [`${r.letGo} let go`] : []),
          ...(r.across ? [r.across.way] : []),
          ...waysOf(r),
        ].join('|'),
        {
          verticalLb: r.values[foot + 1]!,
          alongLb: r.values[foot]!,
          momentLbIn: r.values[foot + 2]!,
          acrossLb: across?.(r).pushLb ?? null,
        },
      ]),
    ),
  );
  return {
    postId: chain.memberId,
    get byCombination() {
      return byCombination();
    },
    greatestDownLb: greatest(responses, (v) => v[foot + 1]!),
    greatestUpLb: greatest(responses, (v) => -v[foot + 1]!),
    greatestAlongLb: greatest(responses, (v) => Math.abs(v[foot]!)),
    greatestAcrossLb: across ? responses.reduce((most, r) => Math.max(most, across(r).pushLb), 0) : null,
  };
}

function envelopes(context: LineCheckContext, strength: readonly LineResponse[]): readonly MemberEnvelope[] {
  const { layout, mesh, responses } = context.frame;
  const forces = rangesOf(strength, layout.size);
  const moves = rangesOf(
    responses.filter((r) => r.combination.purpose === 'sagLongTerm'),
    layout.size,
  );
  return [...mesh.beams, ...mesh.posts].map((chain) => {
    const sections = sectionsOf(chain, layout);
    // a post is asked how far it bows sideways, a beam how far it sags
    const sagOf = (move: number): number =>
      chain.role === 'beam' ? -farthest(moves, move + 1) : farthest(moves, move);
    return {
      memberId: chain.memberId,
      atIn: sections.map((s) => s.atIn),
      axialMaxLb: sections.map((s) => forces.most[s.axial]!),
      axialMinLb: sections.map((s) => forces.least[s.axial]!),
      shearMaxLb: sections.map((s) => forces.most[s.shear]!),
      shearMinLb: sections.map((s) => forces.least[s.shear]!),
      momentMaxLbIn: sections.map((s) => forces.most[s.moment]!),
      momentMinLbIn: sections.map((s) => forces.least[s.moment]!),
      sagIn: sections.map((s) => sagOf(s.move)),
      bendingRatio: chain.role === 'beam' ? beamRatios(context, chain, strength) : [],
    };
  });
}

interface Ranges {
  readonly most: Float64Array;
  readonly least: Float64Array;
}

/** Greatest and least of every value over all responses. */
function rangesOf(responses: readonly LineResponse[], size: number): Ranges {
  const most = new Float64Array(size).fill(-Infinity);
  const least = new Float64Array(size).fill(Infinity);
  for (const { values } of responses) {
    for (let i = 0; i < size; i++) {
      const v = values[i]!;
      if (v > most[i]!) most[i] = v;
      if (v < least[i]!) least[i] = v;
    }
  }
  return { most, least };
}

/** The value farthest from zero over all responses, with its sign; zero where there are none. */
function farthest({ most, least }: Ranges, index: number): number {
  const [high, low] = [most[index]!, least[index]!];
  if (high < low) return 0;
  return high > -low ? high : low;
}

/** Bending stress over Fb CD at every station of a beam, worst combination, by the measure of its check (CL apart). */
function beamRatios(context: LineCheckContext, chain: Chain, strength: readonly LineResponse[]): readonly number[] {
  const answer = context.valuesOf(chain.memberId);
  if (!answer.ok) return [];
  const stations = new Map(
    beamStretches(context)
      .filter((s) => s.chain.memberId === chain.memberId)
      .flatMap((s) => s.stations.map((st) => [st.axial, st] as const)),
  );
  const { values } = answer;
  const pullShare = pullShareOf(values);
  return sectionsOf(chain, context.frame.layout).map((s) => {
    const station = stations.get(s.axial);
    if (!station) return 0;
    let most = 0;
    for (const r of strength)
      most = Math.max(most, stressAt(station, r.values, pullShare) / r.combination.durationFactor);
    return most / values.FbPsi;
  });
}
