import { describe, expect, it } from 'vitest';
import { exampleText, soundProject } from '../../../support/files.ts';
import { evaluated, rowOf } from '../../whole/whole.ts';

describe('a post base of plates, bolts and a rating', () => {
  it('says that sideways its rating must cover all that brings the push; against pull its bolts are computed', () => {
    const evaluation = evaluated(soundProject(exampleText('firewood-shed')));
    for (const ruleId of ['post.footAlong', 'post.footAcross'])
      expect(rowOf(evaluation, `${ruleId}/post-1/foot`).reason?.code).toBe('footSidewaysByRating');
    expect(rowOf(evaluation, 'post.foot/post-1/foot').reason?.code).not.toBe('footSidewaysByRating');
  });
});
