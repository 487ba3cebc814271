import type { Capacity } from '../../engine/project/model.ts';

/** From where a joint is looked at. */
export const LOOK_WORDS = {
  front: 'from the front',
  end: 'along the line',
  above: 'from above',
  wall: 'toward the wall',
  upSlope: 'up the slope',
} as const;

export const JOINT_DRAWING_WORDS = {
  nothingGiven: 'nothing given',
  contactOnly: 'contact only',
  noRows: 'no fasteners yet',
  ratedBy: (label: string) => (label === '' ? 'rated' : `rated: ${label}`),
  sizeNotGiven: (label: string) => `${label}: size not given`,
  barrier: 'moisture barrier',
  anchor: 'anchor, rated',
  betweenThem: (hardware: string) => `between them: ${hardware}`,
  standOff: (length: string) => `stand-off ${length}`,
  wall: 'wall',
  sheet: 'sheet',
  pier: 'pier',
  ways: { pull: 'pull', push: 'push', along: 'along', across: 'across' },
  whatIs: {
    depth: (length: string) => `${length} deep`,
    through: (length: string) => `${length} through`,
    edge: (length: string) => `${length} to the edge`,
    end: (length: string) => `${length} to the end`,
    sideEnd: (length: string) => `${length} to the end`,
  },
} as const;

/** What holds a joint, where that is not its fasteners. */
export function heldBy(capacity: Capacity): string | null {
  if (capacity === null) return JOINT_DRAWING_WORDS.nothingGiven;
  if (capacity.kind === 'none') return JOINT_DRAWING_WORDS.contactOnly;
  if (capacity.kind === 'rated') return JOINT_DRAWING_WORDS.ratedBy(capacity.label);
  return capacity.rows.length === 0 ? JOINT_DRAWING_WORDS.noRows : null;
}
