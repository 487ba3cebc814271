import type { Capacity, FastenerRow, JointKind, Project } from '../../src/engine/project/model.ts';
import { everythingGivenText, soundProject } from './files.ts';

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
    row({ fastener: 'bolt', diameterIn: 0.625, lengthIn: 16, endIn: 4.5, plate: STRAP }),
    row({ fastener: 'driftPin', diameterIn: 0.75, lengthIn: 19, acts: 'lateral' }),
  ],
  bracePost: [row({ fastener: 'bolt', diameterIn: 0.625, lengthIn: 16, endIn: 4.5, plate: STRAP })],
  braceTop: [row({ diameterIn: 0.75, lengthIn: 9, washerIn: 2, headFlatIn: 0.1875 })],
  postFoot: [row({ endIn: 4, plate: STRAP })],
};

/** What the anchors of the post bases are said to hold; invented. */
const ANCHOR = {
  label: 'invented rating',
  parts: { pushLb: null, pullLb: 1500, alongLb: 1500, acrossLb: 1500 },
  durationIncluded: 1.6,
};

/** The shed of which everything is given, with fasteners at almost every joint, as they are computed; some of them too weak. */
export function fastenedShed(): Project {
  const shed = soundProject(everythingGivenText());
  const capacityOf = (kind: JointKind, capacity: Capacity): Capacity => {
    const rows = ROWS[kind];
    if (!rows) return capacity;
    return { kind: 'fasteners', rows, shoulder: false, ...(kind === 'postFoot' ? { alsoRated: ANCHOR } : {}) };
  };
  const defaults = shed.joints.defaults.map(({ kind, capacity }) => ({ kind, capacity: capacityOf(kind, capacity) }));
  return { ...shed, joints: { defaults, own: [] } };
}
