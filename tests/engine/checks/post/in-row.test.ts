import { describe, expect, it } from 'vitest';
import type { LineCheckContext, PostAcross } from '../../../../src/engine/checks/line-context.ts';
import { acrossPushAtFoot } from '../../../../src/engine/checks/pier/across-push.ts';
import { postSites } from '../../../../src/engine/checks/post/post-checks.ts';
import { footIndex, sectionsOf } from '../../../../src/engine/frame/read-response.ts';
import { acrossOnLine } from '../../../../src/engine/transverse/pressed-responses.ts';
import { plainShed, WOOD } from '../../../support/plain-shed.ts';
import { tiedShed } from '../../../support/tied-shed.ts';
import { lineBench } from '../../frame/line-bench.ts';
import { handResponse, siteOf, verdict } from '../sites.ts';

const ID = 'post-0-0';
/** What a row does to its posts, drawn by hand: the same everywhere. */
const ROW: PostAcross = {
  momentAt: () => ({ plusLbIn: 9000, minusLbIn: 4000 }),
  addedAt: () => ({ pushLb: 700, pullLb: 500 }),
  bucklesAt: 4,
  foot: { pushLb: 300, momentLbIn: 0, addedPushLb: 700, addedPullLb: 500 },
};
const SHARE = (): number => WOOD.Emin / WOOD.E;
const POSTS = new Map([[ID, { in: () => ROW }]]);

function inRow(context: LineCheckContext): LineCheckContext {
  return { ...context, across: { responses: context.frame.responses, onPost: (id) => POSTS.get(id) ?? null } };
}
const placeOf = ({ frame }: LineCheckContext, heightIn: number) =>
  sectionsOf(frame.mesh.posts[0]!, frame.layout).find((s) => Math.abs(s.atIn - heightIn) < 1e-6)!;

describe('a post that stands in a frame across', () => {
  const shed = plainShed({ postDiametersIn: [8, 8], bracesAt: [] });
  const context = inRow(
    lineBench({ ...shed, lateral: { along: [{ by: 'building' }], across: [{ by: 'transverseFrame' }] } }).context,
  );
  const at = placeOf(context, 0);
  const S = (Math.PI * 8 ** 3) / 32;
  const A = (Math.PI * 8 * 8) / 4;

  // NDS 3.9-3 with the resultant of both moments; FcE across from the row: so many times the push over the area
  it('[post.bending] adds the moments of both planes as a vector, its Euler stress the row gives', () => {
    const [P, Mx] = [5000, 12_000];
    const r = handResponse(context, [
      [at.axial, -P],
      [at.moment, Mx],
    ]);
    const fc = P / A;
    const FcE = (4 * P) / A;
    const star = WOOD.Fc * 1.15;
    const half = (1 + FcE / star) / 1.6;
    const Fc = star * (half - Math.sqrt(half * half - FcE / star / 0.8));
    const fb = Math.hypot(Mx, 9000) / S;
    const v = verdict(siteOf(postSites(context), 'post.bending', ID), r);
    expect(v.demand!.value).toBeCloseTo((fc / Fc) ** 2 + fb / (WOOD.Fb * 1.15 * (1 - 1 / 4)), 9);
  });

  it('[post.footAcross] hands the push of its row to the foot', () => {
    const push = acrossPushAtFoot(context, context.frame.mesh.posts[0]!)!;
    expect(push(handResponse(context, []))).toMatchObject({ pushLb: 300, momentLbIn: 0 });
    // the other post of the line stands in no row: nobody knows what reaches its foot
    expect(acrossPushAtFoot(context, context.frame.mesh.posts[1]!)).toBeNull();
  });

  it('is asked pressed and lifted by what the push across adds, a post outside any row as before', () => {
    const { frame } = context;
    const across = acrossOnLine(frame, POSTS, SHARE)!;
    const own = frame.responses.find((r) => r.combination.purpose === 'strength')!;
    const [pressed, lifted] = across.responses.filter((r) => r.across?.own === own);
    const [first, other] = frame.mesh.posts.map((p) => footIndex(frame.layout, p) + 1);
    expect(pressed!.values[first!]! - own.values[first!]!).toBeCloseTo(700, 9);
    expect(lifted!.values[first!]! - own.values[first!]!).toBeCloseTo(-500, 9);
    expect(pressed!.values[at.axial]! - own.values[at.axial]!).toBeCloseTo(-700, 9);
    expect(lifted!.values[at.axial]! - own.values[at.axial]!).toBeCloseTo(500, 9);
    expect(pressed!.values[other!]).toBe(own.values[other!]);
    // sag asks nothing of it
    expect(across.responses.filter((r) => r.combination.purpose !== 'strength').every((r) => !r.across)).toBe(true);
    expect(acrossOnLine(frame, new Map(), SHARE)).toBeUndefined();
  });
});

describe('a post with a brace across let into it', () => {
  const context = inRow(lineBench(tiedShed()).context);
  const post = context.frame.mesh.posts[0]!.post;
  const brace = context.shelter.braces.find((b) => b.id === 'across-0-near')!;
  const at = placeOf(context, brace.postPoint.zIn - post.woodFromZIn);

  // own rule: a housing counts twice in bending while its face is stretched; the brace stands on the +y side
  it('[post.tension] counts the housing twice while its face is stretched across, once while it is pressed', () => {
    const r = handResponse(context, [[at.axial, 1000]]);
    /** Bent at the housing alone. */
    const sum = (plusLbIn: number, minusLbIn: number): number => {
      const none = { plusLbIn: 0, minusLbIn: 0 };
      const momentAt = (atIn: number) => (Math.abs(atIn - at.atIn) < 1e-6 ? { plusLbIn, minusLbIn } : none);
      const bent = { ...context, across: { ...context.across!, onPost: () => ({ in: () => ({ ...ROW, momentAt }) }) } };
      return verdict(siteOf(postSites(bent), 'post.tension', ID), r).demand!.value;
    };
    const pull = sum(0, 0);
    expect(sum(0, 9000)).toBeGreaterThan(pull);
    expect((sum(9000, 0) - pull) / (sum(0, 9000) - pull)).toBeCloseTo(2, 9);
    // the harder of both ways
    expect(sum(4000, 9000)).toBeCloseTo(sum(0, 9000), 12);
  });

  it('[post.housing] is asked for the depth of that housing too', () => {
    const heights = postSites(context)
      .filter((s) => s.ruleId === 'post.housing' && s.memberId === ID)
      .map((s) => s.place.name);
    expect(heights).toContain(`at-${at.atIn.toFixed(1)}`);
  });
});
