import { describe, expect, it } from 'vitest';
import { evaluate } from '../../../src/engine/evaluate.ts';
import { canJoinRows, joinRows } from '../../../src/engine/project/edits/join-rows.ts';
import { parseProject } from '../../../src/engine/project/parse.ts';
import { membersOf } from '../../../src/engine/project/traits.ts';
import type { NewId, Project } from '../../../src/engine/project/model.ts';
import { EXAMPLES, exampleText, soundProject } from '../../support/files.ts';
import { plainShed } from '../../support/plain-shed.ts';

const counting = (): NewId => {
  let n = 0;
  return (what) => `${what}-new-${(n += 1)}`;
};
const undecided = (): Project => ({
  ...plainShed(),
  lateral: { along: [{ by: 'kneeBraces' }], across: [{ by: null }] },
});

describe('joinRows', () => {
  it('sets a tie with a brace at each end between posts that stand square across, and names what holds', () => {
    const joined = joinRows(undecided(), counting());
    expect(membersOf(joined, 'tie').map((t) => [t.fromPost, t.toPost])).toEqual([
      ['post-0-0', 'post-1-0'],
      ['post-0-1', 'post-1-1'],
    ]);
    const across = membersOf(joined, 'brace').filter((b) => b.to !== 'line');
    expect(across.map((b) => [b.post, b.side])).toEqual([
      ['post-0-0', 'plus'],
      ['post-1-0', 'minus'],
      ['post-0-1', 'plus'],
      ['post-1-1', 'minus'],
    ]);
    expect(joined.lateral.across).toEqual([{ by: 'transverseFrame' }]);
    expect(parseProject(joined)).toMatchObject({ ok: true });
  });

  it('leaves what is there: who holds it already, ties that stand, posts with none across from them', () => {
    const held = plainShed();
    const once = joinRows(held, counting());
    expect(once.lateral).toBe(held.lateral);
    expect(canJoinRows(once)).toBe(false);
    expect(joinRows(once, counting())).toBe(once);
    const apart = held.members.map((m) => (m.role === 'post' && m.line === 'line-1' ? { ...m, xIn: m.xIn + 9 } : m));
    expect(canJoinRows({ ...held, members: apart })).toBe(false);
  });

  it('makes a sound file of every example, which is evaluated', () => {
    for (const name of EXAMPLES) {
      const joined = joinRows(soundProject(exampleText(name)), counting());
      expect([name, parseProject(joined).ok, evaluate(joined).ok]).toEqual([name, true, true]);
    }
  });

  it('leaves the wood of the ties to be said: nothing of them is judged until then', () => {
    const answer = evaluate(joinRows(undecided(), counting()));
    const rows = answer.ok ? answer.evaluation.checks.filter((c) => c.ruleId === 'sway.across') : [];
    expect(rows.map((row) => [row.memberId, row.status, row.reason?.code])).toEqual([
      ['row:post-0-0', 'notGiven', 'acrossNotKnown'],
      ['row:post-0-1', 'notGiven', 'acrossNotKnown'],
    ]);
  });
});
