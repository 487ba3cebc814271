import { describe, expect, it } from 'vitest';
import type { Project } from '../../../../src/engine/project/model.ts';
import { bracedShedText, soundProject } from '../../../support/files.ts';
import { evaluated, off, rowOf } from '../../whole/whole.ts';

const shed = soundProject(bracedShedText());
const typed = (instead: Project['instead']) => evaluated({ ...shed, instead });

/** NDS 3.7.1.5 as printed. */
function stability(FcE: number, FcStar: number, c: number): number {
  const a = FcE / FcStar;
  const half = (1 + a) / (2 * c);
  return half - Math.sqrt(half * half - a / c);
}

describe('column values typed instead', () => {
  it.each(['post.push/post-1/whole', 'brace.push/brace-1/whole'])(
    '%s takes a typed c: the two capacities are as CP of NDS 3.7.1.5 with either c',
    (key) => {
      const of = key.split('/')[1]!;
      // one Euler stress for all combinations: else the buckling of the line gives each its own
      const length = { what: 'effectiveLengthAlongIn', of: 'post-1', value: 240, why: 'an engineer' } as const;
      const plain = rowOf(typed([length]), key);
      const row = rowOf(typed([length, { what: 'columnC', of, value: 0.6, why: 'an engineer' }]), key);
      // Fc* from the not-looked-at ratio: (3760 - 1.645 x 0.18 x 3760) x 0.56 / 1.9, times CD of the governing combination
      const CD = row.combinationId.startsWith('3-snow') ? 1.15 : 1.6;
      const FcStar = (((1 - 1.645 * 0.18) * 3760 * 0.56) / 1.9) * CD;
      // FcE from the untyped capacity by halving, then the typed one must follow
      let [low, high] = [1, 1e6];
      for (let i = 0; i < 200; i++) {
        const FcE = (low + high) / 2;
        if (FcStar * stability(FcE, FcStar, 0.8) < plain.capacity!.value) low = FcE;
        else high = FcE;
      }
      expect(off(row.capacity!.value, FcStar * stability(low, FcStar, 0.6))).toBeLessThan(1e-6);
    },
  );

  it('[post.slender] takes a typed a in d = dmin + (dmax - dmin) (a - 0.15 (1 - dmin / dmax)) of NDS 3.7.2', () => {
    const value = 0.7;
    const evaluation = typed([{ what: 'columnTaperA', of: null, value, why: 'an engineer' }]);
    const post = evaluation.shelter.posts.find((p) => p.id === 'post-1')!;
    const [dmax, dmin] = [10.5, 10.5 - (1.25 * post.lengthIn) / 144];
    const d = dmin + (dmax - dmin) * (value - 0.15 * (1 - dmin / dmax));
    const ratio = (2.4 * post.lengthIn) / ((Math.sqrt(Math.PI) / 2) * d);
    expect(off(rowOf(evaluation, 'post.slender/post-1/along').demand!.value, ratio)).toBeLessThan(1e-12);
  });
});
