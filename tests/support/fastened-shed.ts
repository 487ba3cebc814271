import type { Capacity, FastenerRow, JointKind, Project } from '../../src/engine/project/model.ts';
import { widerByIn } from '../../src/engine/checks/joints/fastened/plate-seat.ts';
import { jointsOf } from '../../src/engine/checks/joints/joints.ts';
import { placeShelter } from '../../src/engine/geometry/place-shelter.ts';
import { bracedShedText, soundProject } from './files.ts';

const row = (change: Partial<FastenerRow>): FastenerRow => ({
  fastener: 'lag',
  diameterIn: 0.5,
  lengthIn: 4,
  count: 1,
  rows: 1,
  spacingIn: null,
  endIn: null,
  acts: 'both',
  driven: 'wet',
  ...change,
});
const STRAP = { thicknessIn: 0.1875, widthIn: 2, steel: 'plate', each: 2 } as const;
const SHEET = { thicknessIn: 0.0142, widthIn: null, steel: 'strap', each: 1 } as const;
const screw = (change: Partial<FastenerRow>): FastenerRow =>
  row({ fastener: 'screw', diameterIn: 0.216, washerIn: 0.5, ...change });

const ROWS: Readonly<Partial<Record<JointKind, readonly FastenerRow[]>>> = {
  sheetPurlin: [screw({ diameterIn: 0.19, lengthIn: 1.5, spacingIn: 9, plate: SHEET })],
  purlinRafter: [screw({ lengthIn: 4 })],
  stripBeam: [screw({ diameterIn: 0.242, lengthIn: 4 })],
  beamPost: [
    row({ endIn: 4, plate: STRAP }),
    row({ fastener: 'driftPin', diameterIn: 0.75, lengthIn: 19, acts: 'lateral' }),
  ],
  bracePost: [row({ diameterIn: 0.625, lengthIn: 8, washerIn: 1.375, headFlatIn: 0.8125 })],
  braceTop: [row({ diameterIn: 0.625, lengthIn: 8, washerIn: 1.375, headFlatIn: 0.8125 })],
  postFoot: [row({ endIn: 4, plate: STRAP })],
};

/** What the anchors of the post bases are said to hold; invented. */
const ANCHOR = {
  label: 'invented rating',
  parts: { pushLb: null, pullLb: 1500, alongLb: 1500, acrossLb: 1500 },
  durationIncluded: 1.6,
};

/**
 * A braced shed of which everything is given, with fasteners at almost every joint, as they are computed; some of them too
 * weak. Its beams have flats at every post, as deep as they are thicker, so that the straps lie on both.
 */
export function fastenedShed(): Project {
  const shed = soundProject(bracedShedText());
  const capacityOf = (kind: JointKind, capacity: Capacity): Capacity => {
    const rows = ROWS[kind];
    if (!rows) return capacity;
    return { kind: 'fasteners', rows, shoulder: true, ...(kind === 'postFoot' ? { alsoRated: ANCHOR } : {}) };
  };
  const defaults = shed.joints.defaults.map(({ kind, capacity }) => ({ kind, capacity: capacityOf(kind, capacity) }));
  const { shelter } = placeShelter(shed);
  const own = jointsOf(shed, shelter)
    .filter(({ kind }) => kind === 'beamPost')
    .map((setting) => ({ key: setting.key, capacity: flattened(capacityOf('beamPost', null), widerByIn(setting)) }));
  return { ...shed, joints: { defaults, own } };
}

/** The same rows with flats as deep under their straps. */
function flattened(capacity: Capacity, headFlatIn: number): Capacity {
  if (capacity?.kind !== 'fasteners') return capacity;
  return { ...capacity, rows: capacity.rows.map((r) => (r.plate ? { ...r, headFlatIn } : r)) };
}
