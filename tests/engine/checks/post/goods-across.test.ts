import { describe, expect, it } from 'vitest';
import { acrossMoment } from '../../../../src/engine/checks/post/across-wind.ts';
import type { Project } from '../../../../src/engine/project/model.ts';
import { lineId, plainShed } from '../../../support/plain-shed.ts';
import { lineBench } from '../../frame/line-bench.ts';

const stacked = (leansOnLines: string[]): Project => {
  const shed = plainShed();
  return {
    ...shed,
    surroundings: { ...shed.surroundings, goods: { blockedShare: 0.6, heightIn: 60, leansOnLines } },
  };
};

/** Moment half way up the first post of line A under wind across the lines. */
function momentIn(project: Project): { readonly lbIn: number; readonly heightIn: number; readonly q: number } {
  const { context, frame, site } = lineBench(project);
  const chain = frame.mesh.posts[0]!;
  const response = frame.responses.find((r) => r.combination.id === '5+wind-0-A-clear')!;
  const heightIn = chain.post.seatZIn - chain.post.footZIn;
  const atIn = chain.post.footZIn - chain.post.woodFromZIn + heightIn / 2;
  return { lbIn: acrossMoment(context, chain)(response, atIn), heightIn, q: site.figures.velocityPressure.value! };
}

describe('goods that lean on posts while the wind blows across', () => {
  // Roof 204 in. long, goods 60 in. high: face 204 x 60 / 144 ft2; flat sides 2.0 at most, G 0.85, never under 16 psf. Half
  // of it on each of two posts that stand alike from the ends of their line; an even load makes W L / 8 of its sum W.
  it('bend each post by its share of the wind on their long face', () => {
    const leaning = momentIn(stacked([lineId(0)]));
    const standing = momentIn(stacked([]));
    const W = ((204 * 60) / 144) * Math.max(leaning.q * 0.85 * 2, 16);
    expect(leaning.lbIn - standing.lbIn).toBeCloseTo((0.6 * (W / 2) * leaning.heightIn) / 8, 6);
  });

  it('bend no post of a line that they do not lean on', () => {
    expect(momentIn(stacked([lineId(1)])).lbIn).toBe(momentIn(stacked([])).lbIn);
  });
});
