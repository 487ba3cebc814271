import { describe, expect, it } from 'vitest';
import { evaluate } from '../../../src/engine/evaluate.ts';
import { rowInWords } from '../../../src/ui/cord/pieces/frames-across.tsx';
import { namesOf } from '../../../src/ui/cord/places.ts';
import { tiedShed } from '../../support/tied-shed.ts';

const answer = evaluate(tiedShed());
if (!answer.ok) throw new Error('the tied shed is sound');
const { evaluation } = answer;

describe('a row across in a sentence', () => {
  it('says what it stands on and how much of the way its tops may move they move', () => {
    const words = rowInWords(evaluation.rows[0]!, evaluation);
    const most = Math.max(
      ...evaluation.checks.flatMap((c) =>
        c.ruleId === 'sway.across' && c.memberId === 'row:post-0-0' ? c.ratio! : [],
      ),
    );
    expect(words).toBe(
      `Row A1 B1 stands on 1 tie log and 2 braces; its tops move ${most.toFixed(2)} of what they may.`,
    );
  });

  it('says no more than it stands on while nothing is judged', () => {
    expect(rowInWords(evaluation.rows[1]!, { ...evaluation, checks: [] })).toBe(
      'Row A2 B2 stands on 1 tie log and 2 braces.',
    );
  });

  it('is called by its posts, its tie log and braces too', () => {
    const names = namesOf(evaluation);
    expect(['row:post-0-0', 'tie-0', 'across-0-near', 'across-0-far'].map((id) => names.get(id))).toEqual([
      'row A1 B1',
      'tie A1 B1',
      'brace A1 front',
      'brace B1 back',
    ]);
  });
});
