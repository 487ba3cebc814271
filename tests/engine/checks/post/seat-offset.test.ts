import { describe, expect, it } from 'vitest';
import type { LineCheckContext } from '../../../../src/engine/checks/line-context.ts';
import { postSites } from '../../../../src/engine/checks/post/post-checks.ts';
import { offsetMoment } from '../../../../src/engine/checks/post/seat-offset.ts';
import { sectionsOf } from '../../../../src/engine/frame/read-response.ts';
import { seatOffset } from '../../../../src/engine/geometry/seats.ts';
import { plainShed, WOOD, type Measures } from '../../../support/plain-shed.ts';
import { lineBench } from '../../frame/line-bench.ts';
import { handResponse, siteOf, verdict } from '../sites.ts';

const ID = 'post-0-0';
const PUSH = 9_000;

/** Even posts of 8 in., held by a building both ways. */
const contextOf = (measures: Partial<Measures>): LineCheckContext =>
  lineBench({
    ...plainShed({ postDiametersIn: [8, 8], ...measures }),
    lateral: { along: [{ by: 'building' }], across: [{ by: 'building' }] },
  }).context;
const pushed = (context: LineCheckContext) => {
  const chain = context.frame.mesh.posts[0]!;
  const sections = sectionsOf(chain, context.frame.layout);
  return handResponse(
    context,
    sections.map((s) => [s.axial, -PUSH] as const),
  );
};

/** Middle of the contact by counting squares of a fine grid, beyond the axis +. */
function byGrid(width: number, before: number, beyond: number, d: number): number {
  const n = 1200;
  let [area, moment] = [0, 0];
  for (let i = 0; i < n; i++) {
    const x = -d / 2 + ((i + 0.5) * d) / n;
    if (x < -before || x > beyond) continue;
    const y = Math.min(width / 2, Math.sqrt(Math.max(0, (d * d) / 4 - x * x)));
    area += y;
    moment += x * y;
  }
  return moment / area;
}

describe('a beam that presses beside the axis of its post', () => {
  it.each([
    [5.2, 1.5, 4, 8],
    [9, 0, 4, 8],
    [3.4, 3, 0.5, 6.5],
  ])(
    '[post.bending] the middle of a contact %f in. wide, from %f to %f in. past the axis of an %f in. post',
    (...at) => {
      expect(Math.abs(seatOffset(...at) - byGrid(...at))).toBeLessThan(0.01);
    },
  );

  // half a circle: its middle lies 4 R / (3 pi) from the axis
  it('[post.bending] a wide beam that ends on the axis presses 4 R / (3 pi) beside it', () => {
    expect(seatOffset(20, 0, 20, 8)).toBeCloseTo((4 * 4) / (3 * Math.PI), 12);
  });

  it('[post.bending] a beam that passes over presses in the middle', () => {
    const context = contextOf({});
    expect(context.frame.mesh.posts[0]!.post.seats[0]!.offsetIn).toBeCloseTo(0, 12);
    expect(offsetMoment(context, context.frame.mesh.posts[0]!, 'along')).toBeNull();
  });

  // NDS 15.4.1: fb1 + fc (6 e / d)(1 + 0.234 fc / FcE1); 8 e / d in the round: P e over pi d^3 / 32 is fc 8 e / d
  it('[post.bending] of a beam that ends on the post: fc 8 e / d (1 + 0.234 fc / FcE) at the seat', () => {
    const context = contextOf({ postXsIn: [0, 144], beamEndsIn: [-1, 145], bracesAt: [] });
    const { post } = context.frame.mesh.posts[0]!;
    const e = post.seats[0]!.offsetIn;
    expect(e).toBeGreaterThan(0.5);
    const r = pushed(context);
    const site = siteOf(postSites(context), 'post.bending', ID);
    const L = post.seatZIn - post.footZIn;
    const fc = PUSH / (16 * Math.PI);
    const FcE = (0.822 * WOOD.Emin) / (L / (4 * Math.sqrt(Math.PI))) ** 2;
    const star = WOOD.Fc * 1.15;
    const half = (1 + FcE / star) / 1.6;
    const allowed = star * (half - Math.sqrt(half * half - FcE / star / 0.8));
    const fb = fc * ((8 * e) / 8) * (1 + (0.234 * fc) / FcE);
    const sum = (fc / allowed) ** 2 + fb / (WOOD.Fb * 1.15 * (1 - fc / FcE));
    expect(verdict(site, r).demand!.value / sum).toBeCloseTo(1, 6);
    // half way up a pinned post has half of it
    const chain = context.frame.mesh.posts[0]!;
    expect(offsetMoment(context, chain, 'along')!(r, L / 2, 0)).toBeCloseTo((PUSH * e) / 2, 6);
  });

  // a beam that bows to the side passes over its middle post beside it: My = P y at the seat, none at a pinned foot
  it('[post.bending] of a beam that bows to the side over its middle post: P y across, beside the contact it shifts', () => {
    const shed = plainShed({ postDiametersIn: [8, 8], postXsIn: [0, 72, 144], pierTopsIn: [6, 6, 6], bracesAt: [] });
    const context = lineBench({
      ...shed,
      lateral: { along: [{ by: 'building' }], across: [{ by: 'building' }] },
      logs: shed.logs.map((log) => ({ ...log, seen: log.seen && { ...log.seen, straightIn: 2 } })),
    }).context;
    const chain = context.frame.mesh.posts[1]!;
    const [seat] = chain.post.seats;
    const { besideIn } = seat!;
    expect(besideIn).toBeGreaterThan(0.3);
    const r = handResponse(
      context,
      sectionsOf(chain, context.frame.layout).map((s) => [s.axial, -PUSH] as const),
    );
    const L = chain.post.seatZIn - chain.post.footZIn;
    const top = offsetMoment(context, chain, 'across')!;
    expect(top(r, L, 0) / (PUSH * besideIn)).toBeCloseTo(1, 9);
    expect(top(r, L, 0.5) / (PUSH * besideIn)).toBeCloseTo(1 + 0.234 / 2, 9);
    expect(top(r, 0, 0)).toBe(0);
    // 15.4.1 by hand, both planes: nothing along
    const site = siteOf(postSites(context), 'post.bending', chain.memberId);
    const fc = PUSH / (16 * Math.PI);
    const FcE = (0.822 * WOOD.Emin) / (L / (4 * Math.sqrt(Math.PI))) ** 2;
    const star = WOOD.Fc * 1.15;
    const half = (1 + FcE / star) / 1.6;
    const allowed = star * (half - Math.sqrt(half * half - FcE / star / 0.8));
    const fb = fc * besideIn * (1 + (0.234 * fc) / FcE);
    const sum = (fc / allowed) ** 2 + fb / (WOOD.Fb * 1.15 * (1 - fc / FcE));
    expect(verdict(site, r).demand!.value / sum).toBeCloseTo(1, 6);
    // contact by counting squares: the flat lies beside the middle of the circle
    const [n, R] = [800, seat!.postDiameterIn / 2];
    let squares = 0;
    for (let i = 0; i < n; i++)
      for (let k = 0; k < n; k++) {
        const [x, y] = [-R + ((i + 0.5) * 2 * R) / n, -R + ((k + 0.5) * 2 * R) / n];
        if (x * x + y * y < R * R && Math.abs(x) < seat!.lengthIn / 2 && Math.abs(y - besideIn) < seat!.widthIn / 2)
          squares += 1;
      }
    expect((squares * (2 * R) ** 2) / n ** 2 / seat!.areaIn2).toBeCloseTo(1, 2);
  });

  it('[post.bending] where sway and gravity oppose, the moment of second order stands if it is the harder one', () => {
    const context = contextOf({});
    const chain = context.frame.mesh.posts[0]!;
    const [station] = sectionsOf(chain, context.frame.layout).filter((s) => s.atIn > 20);
    const at = (moment: number) =>
      handResponse(context, [
        [station!.moment, moment],
        ...sectionsOf(chain, context.frame.layout).map((s) => [s.axial, -500] as const),
      ]);
    const site = siteOf(postSites(context), 'post.bending', ID);
    const first = at(1000);
    const second = { ...at(-9000), secondOrder: { times: 2, first } };
    const harder = verdict(site, second).demand!.value;
    expect(harder).toBeGreaterThan(5 * verdict(site, first).demand!.value);
    // counted once: the sum is that of the larger moment with nothing added to it
    const fb = 9000 / ((Math.PI * 8 ** 3) / 32);
    expect(harder).toBeCloseTo(fb / (WOOD.Fb * 1.15), 2);
  });
});
