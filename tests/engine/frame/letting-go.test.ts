import * as fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { analyseLine, type LineFrame, type LineResponse } from '../../../src/engine/frame/line-frame.ts';
import type { LineMembers } from '../../../src/engine/frame/line-mesh.ts';
import { footIndex, pushIndex } from '../../../src/engine/frame/read-response.ts';
import { withSecondOrder } from '../../../src/engine/frame/second-order.ts';
import type { DeadPiece, LineCase } from '../../../src/engine/loads/cases.ts';
import { WOOD } from '../../support/plain-shed.ts';
import { combination, lineLoadsOf, randomCase, randomLine } from './hand-line.ts';

const ONLY_PUSH = { pullGiven: false, holdsItself: true } as const;
const LIFTED = [false, true].map((swaysAlong) =>
  combination(
    { wind: 0.6 },
    { id: swaysAlong ? 'along' : 'across', dead: { factor: 0.6, weight: 'light' }, swaysAlong },
  ),
);

/** A line under a wind, with two dead pieces of unlike light and heavy weight, nothing on the braces themselves. */
const loadedLine = randomLine.chain((members) =>
  fc.tuple(
    fc.constant(members),
    ...(['wind', 'heavy-a', 'light-a', 'heavy-b', 'light-b'] as const).map((id) =>
      randomCase(members, id).map((c): LineCase => ({ ...c, onBraces: [] })),
    ),
  ),
);

function frameOf(members: LineMembers, [wind, heavyA, lightA, heavyB, lightB]: readonly LineCase[]): LineFrame | null {
  const dead: DeadPiece[] = [
    { piece: 'a', heavy: heavyA!, light: lightA! },
    { piece: 'b', heavy: heavyB!, light: lightB! },
  ];
  const answer = analyseLine(members, lineLoadsOf([wind!], dead), LIFTED, () => WOOD.E, ONLY_PUSH);
  return answer.ok ? withSecondOrder(answer.frame, () => 0.3653) : null;
}

const pushing = ({ responses }: LineFrame): readonly LineResponse[] =>
  responses.filter((r) => r.braceModel === 'pushOnly' || r.braceModel === 'noBraces');

describe('a brace that only pushes', () => {
  it('is never asked a pull, whatever piece of dead load weighs light or heavy', () => {
    fc.assert(
      fc.property(loadedLine, ([members, ...cases]) => {
        const frame = frameOf(members, cases);
        for (const r of frame ? pushing(frame) : [])
          r.working.forEach((_, j) => expect(r.values[pushIndex(frame!.layout, j)]!).toBeGreaterThan(-1e-5));
      }),
      { seed: 117, numRuns: 60 },
    );
  });

  // What lets go is gone: the same line built without that brace, analysed anew, must say the same.
  it('leaves the line as one that was built without it', () => {
    let looked = 0;
    fc.assert(
      fc.property(loadedLine, ([members, ...cases]) => {
        const frame = frameOf(members, cases);
        const ofOne = frame ? pushing(frame).filter((r) => r.combination.id === 'across') : [];
        if (ofOne.length < 2) return;
        const last = ofOne.at(-1)!;
        const left = { ...members, braces: members.braces.filter((_, j) => last.working[j]) };
        const rebuiltFrame = frameOf(left, cases)!;
        const rebuilt = pushing(rebuiltFrame).find((r) => r.combination.id === 'across')!;
        if (!rebuilt.working.every(Boolean)) return;
        looked++;
        const scale = Math.max(...Array.from(last.values.subarray(0, frame!.layout.bracesAt), Math.abs));
        // plumb reactions of all feet: which weight a piece counts hangs on a wind that is none in some level ones
        const feet = ({ layout, mesh }: LineFrame, { values }: LineResponse) =>
          mesh.posts.map((post) => values[footIndex(layout, post) + 1]!);
        const expected = feet(rebuiltFrame, rebuilt);
        feet(frame!, last).forEach((lb, i) => expect(Math.abs(lb - expected[i]!)).toBeLessThan(1e-6 * scale));
      }),
      { seed: 118, numRuns: 200 },
    );
    expect(looked).toBeGreaterThan(0);
  });
});
