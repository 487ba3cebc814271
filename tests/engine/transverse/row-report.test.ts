import { describe, expect, it } from 'vitest';
import { exampleText, soundProject } from '../../support/files.ts';
import { evaluated } from '../whole/whole.ts';

describe('reactions of a row across', () => {
  it('list every push by itself, so that the greatest of each foot stands among them', () => {
    const posts = evaluated(soundProject(exampleText('framed-shed'))).rows.flatMap((row) => row.frame?.posts ?? []);
    expect(posts.length).toBeGreaterThan(0);
    for (const post of posts) {
      const listed = Object.values(post.byCombination);
      expect(Math.max(...listed.map(({ alongLb }) => Math.abs(alongLb)))).toBe(post.greatestAlongLb);
      expect(Math.max(...listed.map(({ verticalLb }) => verticalLb))).toBe(post.greatestDownLb);
    }
  });
});
