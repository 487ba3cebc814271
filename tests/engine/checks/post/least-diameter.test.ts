import { describe, expect, it } from 'vitest';
import { postSections } from '../../../../src/engine/checks/post/least-diameter.ts';
import type { LineCheckContext } from '../../../../src/engine/checks/line-context.ts';
import type { LineResponse } from '../../../../src/engine/frame/line-frame.ts';
import { sectionsOf } from '../../../../src/engine/frame/read-response.ts';
import { plainShed, WOOD } from '../../../support/plain-shed.ts';
import { lineBench } from '../../frame/line-bench.ts';
import { handResponse } from '../sites.ts';
import { leastOf } from '../least-of.ts';

/** Even posts of 8 in. without housings; a building holds the top both ways, so that Ke is 1. */
const { context } = lineBench({
  ...plainShed({ postDiametersIn: [8, 8], braceEnd: { kind: 'coped', depthIn: 0 } }),
  lateral: { along: [{ by: 'building' }], across: [{ by: 'building' }] },
});
const chain = context.frame.mesh.posts[0]!;
const sections = sectionsOf(chain, context.frame.layout);
const seatAt = chain.post.seatZIn - chain.post.woodFromZIn;
/** A face half way up, under the seat. */
const index = sections.findIndex((s) => s.atIn > seatAt / 3 && s.atIn < seatAt);
const at = sections[index]!;
const under = (...responses: LineResponse[]): LineCheckContext => ({
  ...context,
  frame: { ...context.frame, responses },
});
const least = (...responses: LineResponse[]): number => leastOf(postSections(under(...responses), chain))[index]!;
const CD = 1.15;

describe('the thinnest post that would do with the forces held', () => {
  // P / (pi d2 / 4) = Fc CD turned round (NDS 3.6.3)
  it('[post.crushing] is sqrt(4 P / (pi Fc CD)) where the push alone decides', () => {
    const d = least(handResponse(context, [[at.axial, -9000]]));
    expect(d).toBeCloseTo(Math.sqrt((4 * 9000) / (Math.PI * WOOD.Fc * CD)), 5);
  });

  // M = Fb CD pi d3 / 32 turned round (NDS 3.3; circle)
  it('[post.bending] is (32 M / (pi Fb CD))^(1/3) where nothing pushes', () => {
    const d = least(handResponse(context, [[at.moment, 30_000]]));
    expect(d).toBeCloseTo(Math.cbrt((32 * 30_000) / (Math.PI * WOOD.Fb * CD)), 5);
  });

  // NDS 3.9.2 turned round: (fc / Fc')2 + fb / (Fb (1 - fc / FcE)) = 1, fc on the representative section that stands
  it('[post.bending] leaves to bending what the push of the column as it stands leaves', () => {
    const [P, M] = [9000, 12_000];
    const fc = P / (16 * Math.PI);
    const le = chain.post.seatZIn - chain.post.footZIn;
    const side = 4 * Math.sqrt(Math.PI);
    const FcE = (0.822 * WOOD.Emin) / (le / side) ** 2;
    const star = WOOD.Fc * CD;
    const half = (1 + FcE / star) / 1.6;
    const allowed = star * (half - Math.sqrt(half * half - FcE / star / 0.8));
    const fb = (1 - (fc / allowed) ** 2) * WOOD.Fb * CD * (1 - fc / FcE);
    const bends = handResponse(context, [
      [at.axial, -P],
      [at.moment, M],
    ]);
    expect(least(bends)).toBeCloseTo(Math.cbrt((32 * M) / (Math.PI * fb)), 4);
  });

  // NDS 3.9.1: ft / Ft + fb / Fb = 1 at the answer
  it('[post.tension] is where pull and bending come to 1', () => {
    const [T, M] = [6000, 12_000];
    const pulls = handResponse(context, [
      [at.axial, T],
      [at.moment, M],
    ]);
    const d = least(pulls);
    const sum = (4 * T) / (Math.PI * d * d) / (WOOD.Ft * CD) + (32 * M) / (Math.PI * d ** 3) / (WOOD.Fb * CD);
    expect(sum).toBeCloseTo(1, 5);
  });

  it('[post.bending] has no answer while the column as it stands is pushed past what it can take', () => {
    expect(least(handResponse(context, [[at.axial, -90_000]]))).toBe(Infinity);
  });

  // at most a sixth of the post is let in (own rule): 1.4 in. asks for 8.4 in., whatever little is asked of the wood
  it('[post.housing] is six times the depth of a housing where that asks for most', () => {
    const housed = lineBench(
      plainShed({ postDiametersIn: [8, 8], braceEnd: { kind: 'housed', depthIn: 1.4 } }),
    ).context;
    const post = housed.frame.mesh.posts[0]!;
    const brace = housed.frame.members.braces.find(({ postId }) => postId === post.memberId)!;
    const faces = sectionsOf(post, housed.frame.layout);
    const i = faces.findIndex((s) => Math.abs(s.atIn - (brace.postPoint.zIn - post.post.woodFromZIn)) < 1e-6);
    const responses = [handResponse(housed, [[faces[i]!.axial, -10]])];
    const answer = leastOf(postSections({ ...housed, frame: { ...housed.frame, responses } }, post));
    expect(answer[i]).toBeCloseTo(8.4, 9);
  });

  it('asks nothing above the seat', () => {
    const answer = leastOf(postSections(under(handResponse(context, [[at.axial, -9000]])), chain));
    expect(answer.filter((_, i) => sections[i]!.atIn > seatAt + 1e-6).every(Number.isNaN)).toBe(true);
  });
});
