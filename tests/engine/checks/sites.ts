import type { LineCheckContext } from '../../../src/engine/checks/line-context.ts';
import { rowsOf, verdictAt, type CheckSite } from '../../../src/engine/checks/site-of-check.ts';
import type { Verdict } from '../../../src/engine/check.ts';
import type { LineResponse } from '../../../src/engine/frame/line-frame.ts';
import type { LineMesh } from '../../../src/engine/frame/line-mesh.ts';
import type { BraceGeometry, PostGeometry, Stick } from '../../../src/engine/geometry/shelter.ts';
import { combination } from '../frame/hand-line.ts';

export type Site = CheckSite<LineResponse>;

/** The one site of a rule on a member, at a place if several share it. @throws Error when there is not exactly one */
export function siteOf(sites: readonly Site[], ruleId: string, memberId: string, place?: string): Site {
  const found = sites.filter(
    (s) => s.ruleId === ruleId && s.memberId === memberId && (place === undefined || s.place.name === place),
  );
  if (found.length !== 1) {
    const names = sites.filter((s) => s.ruleId === ruleId).map((s) => `${s.memberId}/${s.place.name}`);
    throw new Error(`${found.length} sites of ${ruleId} on ${memberId}, of ${names.join(', ')}`);
  }
  return found[0]!;
}

/**
 * A response with hand-written forces: everything zero but what is set here, by index. Snow duration unless said.
 */
export function handResponse(
  context: LineCheckContext,
  forces: readonly (readonly [index: number, value: number])[],
  more: Parameters<typeof combination>[1] = {},
): LineResponse {
  const { layout, mesh } = context.frame;
  const values = new Float64Array(layout.size);
  for (const [index, value] of forces) values[index] = value;
  return {
    combination: combination(
      {},
      { id: 'by-hand', duration: 'twoMonths', durationFactor: 1.15, gravityOnly: true, ...more },
    ),
    braceModel: 'bothWays',
    held: false,
    working: mesh.braces.map(() => true),
    values,
  };
}

/** Verdict of a site in a hand-written response. */
export const verdict = (site: Site, response: LineResponse): Verdict => verdictAt(site, response);

/** Row of a site over responses of one's own; null when the rule asks nothing in any of them. */
export const rowOver = (site: Site, responses: readonly LineResponse[]) =>
  rowsOf({ responses, scenario: (r) => r.braceModel, sites: [site] })[0] ?? null;

const grown = (stick: Stick | null, by: number): Stick | null =>
  stick?.kind === 'round'
    ? { ...stick, profile: stick.profile.map((p) => ({ ...p, diameterIn: p.diameterIn * by })) }
    : stick;

/** The same line with thicker logs under the very forces of the thin ones; places, lengths and cuts stay. */
export function thicker(context: LineCheckContext, by: number): LineCheckContext {
  const { frame } = context;
  const post = (p: PostGeometry): PostGeometry => ({
    ...p,
    stick: grown(p.stick, by),
    seats: p.seats.map((s) => ({
      ...s,
      beamDiameterIn: s.beamDiameterIn * by,
      postDiameterIn: s.postDiameterIn * by,
    })),
  });
  const brace = (b: BraceGeometry): BraceGeometry => ({
    ...b,
    stick: grown(b.stick, by),
    postDiameterIn: b.postDiameterIn * by,
    topDiameterIn: b.topDiameterIn * by,
  });
  const mesh: LineMesh = {
    ...frame.mesh,
    beams: frame.mesh.beams.map((c) => ({ ...c, diameterIn: c.diameterIn.map((d) => d * by) })),
    posts: frame.mesh.posts.map((c) => ({ ...c, diameterIn: c.diameterIn.map((d) => d * by), post: post(c.post) })),
    braces: frame.mesh.braces.map((link) => ({ ...link, brace: brace(link.brace) })),
  };
  const members = {
    ...frame.members,
    beams: frame.members.beams.map((b) => ({ ...b, stick: grown(b.stick, by) })),
    posts: frame.members.posts.map(post),
    braces: frame.members.braces.map(brace),
  };
  return { ...context, frame: { ...frame, mesh, members } };
}
