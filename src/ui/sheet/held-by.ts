import { SHEET_WORDS } from '../../data/words/sheet.ts';
import { STATUS_WORDS } from '../../data/words/status.ts';
import type { JointSetting } from '../../engine/checks/joints/joint-setting.ts';
import type { Shelter } from '../../engine/geometry/shelter.ts';
import type { Capacity, FastenerRow, RatedCapacity } from '../../engine/project/model.ts';
import { rowInWords } from '../cord/hardware-words.ts';
import { asItLies } from '../joint/as-it-lies.ts';
import { looksAt } from '../joint/looks.ts';
import { measuresOf, type Measure } from '../joint/measures.ts';
import { shanksOf } from '../joint/shanks.ts';
import { JOINT_DRAWING_WORDS } from '../joint/words.ts';
import { showLength } from '../units/show-length.ts';
import type { UnitSystem } from '../units/system.ts';

/**
 * What holds alike joints: somebody's rating by its label, or every row of fasteners with the least depth, and the least
 * wood beside and before them, of all these joints.
 */
export function heldBy(
  joints: readonly JointSetting[],
  capacity: Capacity,
  shelter: Shelter,
  system: UnitSystem,
): string {
  if (capacity === null) return STATUS_WORDS.notGiven;
  switch (capacity.kind) {
    case 'none':
      return SHEET_WORDS.contactOnly;
    case 'rated':
      return ratedWords(capacity);
    case 'fasteners': {
      const rows = capacity.rows.map((row) => [rowInWords(row, system), ...leastWood(joints, row, shelter, system)]);
      return [
        ...(rows.length === 0 ? [JOINT_DRAWING_WORDS.noRows] : rows.map((words) => words.join(', '))),
        ...(capacity.shoulder ? [SHEET_WORDS.shoulder] : []),
        ...(capacity.alsoRated ? [`${SHEET_WORDS.anchor} ${ratedWords(capacity.alsoRated)}`] : []),
      ].join('; ');
    }
  }
}

const ratedWords = ({ label }: Pick<RatedCapacity, 'label'>): string => JOINT_DRAWING_WORDS.ratedBy(label.trim());

const KINDS: readonly Measure['what'][] = ['depth', 'through', 'edge', 'end'];

/** In the piece that holds their points. */
function leastWood(
  joints: readonly JointSetting[],
  row: FastenerRow,
  shelter: Shelter,
  system: UnitSystem,
): readonly string[] {
  const measures = joints.flatMap((joint) => {
    const setting = asItLies(joint, shelter);
    return measuresOf(shanksOf(setting, row, looksAt(setting)[0].toward));
  });
  return KINDS.flatMap((what) => {
    const lengths = measures.filter((m) => m.what === what).map(({ lengthIn }) => lengthIn);
    if (lengths.length === 0) return [];
    const least = showLength(Math.min(...lengths), system, { style: 'marks', feetFrom: 'never' });
    return [JOINT_DRAWING_WORDS.whatIs[what](least)];
  });
}
