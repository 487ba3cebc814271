import * as fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import type { DeadPiece, LineCase } from '../../../src/engine/loads/cases.ts';
import { analysed, combination, lineLoadsOf, randomCase, randomLine, responseOf } from './hand-line.ts';

const light = { factor: 0.6, weight: 'light' } as const;
const none = { factor: 0, weight: 'heavy' } as const;
/** Where a line sways its moves are worked out beside its forces. */
const SWAYS = { swaysAlong: true } as const;

/** A line with two dead pieces of unlike light and heavy weight, and a wind. */
const loadedLine = randomLine.chain((members) =>
  fc.tuple(
    fc.constant(members),
    randomCase(members, 'wind'),
    ...(['heavy-a', 'light-a', 'heavy-b', 'light-b'] as const).map((id) => randomCase(members, id)),
  ),
);

describe('dead load in an uplift combination', () => {
  it('each piece counts light times 0.6 where it helps and heavy in full where it adds to the harm', () => {
    fc.assert(
      fc.property(loadedLine, ([members, wind, heavyA, lightA, heavyB, lightB]) => {
        const pieces = [
          [heavyA!, lightA!],
          [heavyB!, lightB!],
        ] as const;
        const dead: DeadPiece[] = pieces.map(([heavy, own], i) => ({ piece: `piece-${i}`, heavy, light: own }));
        const together = analysed(members, lineLoadsOf([wind], dead), [
          combination({ wind: 0.6 }, { dead: light, ...SWAYS }),
        ]);
        const values = responseOf(together, 'wind', 'bothWays')!.values;
        // each load alone, as a case of its own, on the same mesh: every x that is loaded must have its node
        const cases = [wind, ...pieces.flat()];
        const alone = analysed(
          members,
          lineLoadsOf(cases),
          cases.map((c) => combination({ [c.caseId]: 1 }, { dead: none, ...SWAYS })),
        );
        const of = (c: LineCase): Float64Array => responseOf(alone, c.caseId, 'bothWays')!.values;
        const [w, ...each] = [wind, ...pieces.flat()].map(of);
        const scale = Math.max(...[w!, ...each].flatMap((v) => Array.from(v, Math.abs)));
        for (let i = 0; i < values.length; i++) {
          const harm = 0.6 * w![i]!;
          const byHand = [0, 2].reduce((sum, k) => {
            const [heavy, own] = [each[k]![i]!, each[k + 1]![i]!];
            return sum + (heavy * harm > 0 ? heavy : 0.6 * own);
          }, harm);
          // a piece whose effect is lost in rounding has no side
          const decided = [harm, each[0]![i]!, each[2]![i]!].every((v) => Math.abs(v) > 1e-7 * scale);
          expect(!decided || Math.abs(values[i]! - byHand) < 1e-7 * scale).toBe(true);
        }
      }),
      { seed: 111, numRuns: 30 },
    );
  });

  it('of a gravity combination counts heavy with its own factor, whatever its side', () => {
    fc.assert(
      fc.property(loadedLine, ([members, wind, heavyA, lightA]) => {
        const dead: DeadPiece[] = [{ piece: 'piece', heavy: heavyA!, light: lightA! }];
        const both = analysed(members, lineLoadsOf([wind], dead), [combination({ wind: 0.45 }, SWAYS)]);
        const cases = [wind, heavyA!, lightA!];
        const alone = analysed(
          members,
          lineLoadsOf(cases),
          cases.map((c) => combination({ [c.caseId]: 1 }, { dead: none, ...SWAYS })),
        );
        const [w, h] = [wind, heavyA!].map((c) => responseOf(alone, c.caseId, 'bothWays')!.values);
        const values = responseOf(both, 'wind', 'bothWays')!.values;
        const scale = Math.max(...Array.from(values, Math.abs));
        values.forEach((v, i) => expect(Math.abs(v - 0.45 * w![i]! - h![i]!)).toBeLessThan(1e-7 * scale));
      }),
      { seed: 112, numRuns: 20 },
    );
  });

  it('says piece by piece what it took, and the parts add up to the value', () => {
    fc.assert(
      fc.property(loadedLine, ([members, wind, heavyA, lightA]) => {
        const dead: DeadPiece[] = [{ piece: 'piece', heavy: heavyA!, light: lightA! }];
        const frame = analysed(members, lineLoadsOf([wind], dead), [
          combination({ wind: 0.6 }, { dead: light, ...SWAYS }),
        ]);
        const response = responseOf(frame, 'wind', 'bothWays')!;
        const scale = Math.max(...Array.from(response.values, Math.abs));
        for (let i = 0; i < response.values.length; i += 7) {
          const parts = frame.layout.parts(response, i);
          const sum = parts.reduce((total, p) => total + p.factor * p.value, 0);
          expect(Math.abs(sum - response.values[i]!)).toBeLessThan(1e-9 * scale);
          const harm = parts.find(({ name }) => name === 'wind');
          const piece = parts.find(({ name }) => name.startsWith('dead'));
          const harms = harm !== undefined && piece !== undefined && piece.name.startsWith('dead heavy');
          expect(!harms || harm.value * piece.value > 0).toBe(true);
        }
      }),
      { seed: 113, numRuns: 20 },
    );
  });
});
