import type { LineReport, MemberEnvelope, PostReactions } from './evaluation.ts';
import type { LineCheckContext } from './checks/line-context.ts';
import { beamStretches } from './checks/beam/beam-sections.ts';
import { pullShareOf, stressAt } from './checks/beam/bending.ts';
import { footIndex, holdIndex, sectionsOf } from './frame/read-response.ts';
import type { Chain } from './frame/line-mesh.ts';
import type { LineResponse } from './frame/line-frame.ts';

/** What the drawing hatches and the sheet prints of one analysed line. */
export function lineReport(context: LineCheckContext): LineReport {
  const { frame, line } = context;
  const strength = frame.responses.filter((r) => r.combination.purpose === 'strength');
  const hold = holdIndex(frame.layout, frame.mesh);
  return {
    lineId: line.id,
    stands: frame.unheld.length === 0,
    reason: frame.unheld[0]?.reason ?? null,
    posts: frame.mesh.posts.map((p) => reactionsOf(p.memberId, footIndex(frame.layout, p), strength)),
    members: [
      ...frame.mesh.beams.map((chain) => envelope(context, chain, frame.responses, beamRatios(context, chain))),
      ...frame.mesh.posts.map((chain) => envelope(context, chain, frame.responses, null)),
    ],
    braces: frame.mesh.braces.map((link, j) => {
      const pushes = strength.map((r) => r.values[frame.layout.bracesAt + j]!);
      return {
        braceId: link.brace.id,
        greatestPushLb: Math.max(0, ...pushes),
        greatestPullLb: Math.max(0, ...pushes.map((p) => -p)),
      };
    }),
    holdingLb: strength.reduce((most, r) => (r.held ? Math.max(most, Math.abs(r.values[hold]!)) : most), 0),
  };
}

/** Worst of the brace models in every combination; each part on its own. */
function reactionsOf(postId: string, foot: number, responses: readonly LineResponse[]): PostReactions {
  const byCombination: Record<string, { verticalLb: number; alongLb: number; momentLbIn: number }> = {};
  let down = 0;
  let up = 0;
  let along = 0;
  for (const r of responses) {
    const v = { verticalLb: r.values[foot + 1]!, alongLb: r.values[foot]!, momentLbIn: r.values[foot + 2]! };
    byCombination[`${r.combination.id}|${r.braceModel}`] = v;
    down = Math.max(down, v.verticalLb);
    up = Math.max(up, -v.verticalLb);
    along = Math.max(along, Math.abs(v.alongLb));
  }
  return { postId, byCombination, greatestDownLb: down, greatestUpLb: up, greatestAlongLb: along };
}

function envelope(
  context: LineCheckContext,
  chain: Chain,
  responses: readonly LineResponse[],
  ratios: readonly number[] | null,
): MemberEnvelope {
  const sections = sectionsOf(chain, context.frame.layout);
  const valuesOf = (purpose: LineResponse['combination']['purpose']): readonly Float64Array[] =>
    responses.filter((r) => r.combination.purpose === purpose).map((r) => r.values);
  const strength = valuesOf('strength');
  const years = valuesOf('sagLongTerm');
  const axial = sections.map((s) => rangeOf(strength, s.axial));
  const shear = sections.map((s) => rangeOf(strength, s.shear));
  const moment = sections.map((s) => rangeOf(strength, s.moment));
  return {
    memberId: chain.memberId,
    atIn: sections.map((s) => s.atIn),
    axialMaxLb: axial.map((r) => r.most),
    axialMinLb: axial.map((r) => r.least),
    shearMaxLb: shear.map((r) => r.most),
    shearMinLb: shear.map((r) => r.least),
    momentMaxLbIn: moment.map((r) => r.most),
    momentMinLbIn: moment.map((r) => r.least),
    // a post is asked how far it bows sideways, a beam how far it sags
    sagIn: sections.map((s) => (chain.role === 'beam' ? -farthest(years, s.move + 1) : farthest(years, s.move))),
    bendingRatio: ratios ?? [],
  };
}

/** Greatest and least of one value over all responses. */
function rangeOf(responses: readonly Float64Array[], index: number): { readonly most: number; readonly least: number } {
  let most = -Infinity;
  let least = Infinity;
  for (const values of responses) {
    const v = values[index]!;
    if (v > most) most = v;
    if (v < least) least = v;
  }
  return { most, least };
}

/** The value farthest from zero over all responses, with its sign. */
function farthest(responses: readonly Float64Array[], index: number): number {
  const { most, least } = rangeOf(responses, index);
  if (most < least) return 0;
  return most > -least ? most : least;
}

/** Bending stress over Fb CD at every station of a beam, worst combination, by the measure of its check (CL apart). */
function beamRatios(context: LineCheckContext, chain: Chain): readonly number[] {
  const answer = context.valuesOf(chain.memberId);
  if (!answer.ok) return [];
  const stations = new Map(
    beamStretches(context)
      .filter((s) => s.chain.memberId === chain.memberId)
      .flatMap((s) => s.stations.map((st) => [st.axial, st] as const)),
  );
  const { values } = answer;
  const pullShare = pullShareOf(values);
  const strength = context.frame.responses.filter((r) => r.combination.purpose === 'strength');
  return sectionsOf(chain, context.frame.layout).map((s) => {
    const station = stations.get(s.axial);
    if (!station) return 0;
    let most = 0;
    for (const r of strength)
      most = Math.max(most, stressAt(station, r.values, pullShare) / r.combination.durationFactor);
    return most / values.FbPsi;
  });
}
