import { remembered } from '../../../data/sources.ts';
import { breaks, type Verdict } from '../../check.ts';
import type { BraceGeometry } from '../../geometry/shelter.ts';
import { nominalDepth } from '../../geometry/sticks.ts';
import { message } from '../../message.ts';
import { put, type Note } from '../../note.ts';
import { quantity } from '../../units.ts';
import { boredRows } from '../joints/bored-members.ts';
import type { JointSource } from '../joints/holder.ts';

export interface NetOfBrace {
  /** thinnest section less what is bored out, zero where nothing is left [in2] */
  readonly areaIn2: (note?: Note) => number;
  readonly through: Verdict | null;
}

/**
 * The thinnest section of a brace less the hardware of its fuller end: all rows of one end count in one section, and that
 * where the brace is thinnest (safe side).
 * @source NDS 3.1.2 (from memory)
 */
export function netOfBrace(source: JointSource, brace: BraceGeometry, wholeIn2: number): NetOfBrace {
  const ends = [0, 0];
  for (const row of boredRows(source, brace.id))
    ends[row.toIn < brace.lengthIn / 2 ? 0 : 1]! += row.inPlane.reduce((sum, b) => sum + b.areaIn2, 0);
  const boredIn2 = Math.max(...ends);
  const areaIn2 = Math.max(0, wholeIn2 - boredIn2);
  return {
    areaIn2: (note) => {
      if (boredIn2 > 0)
        note?.({
          symbol: 'An',
          words: 'thinnest section less the hardware of its fuller end',
          formula: 'A - Ah',
          put: [
            put('A', wholeIn2, 'in2', 'thinnest section'),
            put('Ah', boredIn2, 'in2', 'holes, width times length, and flats for hardware'),
          ],
          result: quantity(areaIn2, 'in2'),
          clause: remembered('NDS', '3.1.2'),
        });
      return areaIn2;
    },
    through:
      areaIn2 > 0
        ? null
        : breaks(message('holesTakeAll', { member: brace.label, atIn: 0, diameterIn: nominalDepth(brace.stick) })),
  };
}
