import type { LineReport, MemberEnvelope, PostReactions } from './evaluation.ts';
import type { LineCheckContext } from './checks/line-context.ts';
import { beamStretches } from './checks/beam/beam-sections.ts';
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
  const strength = responses.filter((r) => r.combination.purpose === 'strength');
  const years = responses.filter((r) => r.combination.purpose === 'sagLongTerm');
  const most = (index: (s: (typeof sections)[number]) => number): number[] =>
    sections.map((s) => strength.reduce((m, r) => Math.max(m, r.values[index(s)]!), -Infinity));
  const least = (index: (s: (typeof sections)[number]) => number): number[] =>
    sections.map((s) => strength.reduce((m, r) => Math.min(m, r.values[index(s)]!), Infinity));
  return {
    memberId: chain.memberId,
    atIn: sections.map((s) => s.atIn),
    axialMaxLb: most((s) => s.axial),
    axialMinLb: least((s) => s.axial),
    shearMaxLb: most((s) => s.shear),
    shearMinLb: least((s) => s.shear),
    momentMaxLbIn: most((s) => s.moment),
    momentMinLbIn: least((s) => s.moment),
    // a post is asked how far it bows sideways, a beam how far it sags
    sagIn: sections.map((s) =>
      years.reduce((m, r) => {
        const move = chain.role === 'beam' ? -r.values[s.move + 1]! : r.values[s.move]!;
        return Math.abs(move) > Math.abs(m) ? move : m;
      }, 0),
    ),
    bendingRatio: ratios ?? [],
  };
}

/** Bending stress over the allowable at every station of a beam, worst combination. */
function beamRatios(context: LineCheckContext, chain: Chain): readonly number[] {
  const answer = context.valuesOf(chain.memberId);
  if (!answer.ok) return [];
  const stations = new Map(
    beamStretches(context)
      .filter((s) => s.chain.memberId === chain.memberId)
      .flatMap((s) => s.stations.map((st) => [`${st.axial}`, st] as const)),
  );
  const strength = context.frame.responses.filter((r) => r.combination.purpose === 'strength');
  return sectionsOf(chain, context.frame.layout).map((s) => {
    const station = stations.get(`${s.axial}`);
    if (!station) return 0;
    return strength.reduce(
      (m, r) =>
        Math.max(
          m,
          Math.abs(r.values[s.moment]!) /
            station.section.modulusIn3 /
            (answer.values.FbPsi * r.combination.durationFactor),
        ),
      0,
    );
  });
}
