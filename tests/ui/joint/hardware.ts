import type { JointSetting } from '../../../src/engine/checks/joints/joint-setting.ts';
import { jointsOf } from '../../../src/engine/checks/joints/joints.ts';
import { placeShelter } from '../../../src/engine/geometry/place-shelter.ts';
import type { Shelter } from '../../../src/engine/geometry/shelter.ts';
import type { Capacity, FastenerRow, JointKind, Project } from '../../../src/engine/project/model.ts';

export const row = (change: Partial<FastenerRow> = {}): FastenerRow => ({
  fastener: 'lag',
  diameterIn: 0.5,
  lengthIn: 8,
  count: 1,
  rows: 1,
  spacingIn: null,
  endIn: null,
  acts: 'both',
  driven: 'dry',
  ...change,
});
const fasteners = (...rows: FastenerRow[]): Capacity => ({ kind: 'fasteners', rows, shoulder: false });

const STRAPS = row({
  diameterIn: 0.25,
  lengthIn: 2.5,
  count: 4,
  rows: 2,
  spacingIn: 1.5,
  endIn: 3,
  plate: { thicknessIn: 0.105, widthIn: 3, steel: 'strap', each: 2 },
});
const ROOFING = row({
  fastener: 'screw',
  diameterIn: 0.242,
  lengthIn: 1.5,
  spacingIn: 4,
  washerIn: 0.5,
  plate: { thicknessIn: 0.018, widthIn: null, steel: 'plate', each: 1 },
});
const RATING = {
  label: 'an invented rating',
  parts: { pushLb: null, pullLb: 500, alongLb: 500, acrossLb: 500 },
  durationIncluded: 1.6,
};

/** Invented hardware for a joint of each kind, so that everything that can be drawn is drawn once. */
export const HARDWARE: Readonly<Record<JointKind, Capacity>> = {
  sheetPurlin: fasteners(ROOFING),
  sheetRafter: fasteners(ROOFING),
  purlinRafter: fasteners(row({ fastener: 'screw', diameterIn: 0.268, lengthIn: 4, count: 2, spacingIn: 1 })),
  rafterStrip: fasteners(row({ fastener: 'screw', diameterIn: 0.268, lengthIn: 8 })),
  rafterLedger: fasteners(row({ fastener: 'nail', diameterIn: 0.162, lengthIn: 3.5, count: 3, spacingIn: 1 })),
  stripBeam: fasteners(row({ diameterIn: 0.375, lengthIn: 5, washerIn: 1 })),
  beamPost: fasteners(STRAPS, row({ fastener: 'driftPin', diameterIn: 0.75, lengthIn: 18 })),
  beamSplice: fasteners(STRAPS),
  bracePost: fasteners(
    row({ diameterIn: 0.625, lengthIn: 10, count: 2, spacingIn: 3, washerIn: 1.75, headFlatIn: 0.5 }),
  ),
  braceTop: fasteners(row({ fastener: 'bolt', diameterIn: 0.625, lengthIn: 20, washerIn: 1.75, headFlatIn: 0.5 })),
  tiePost: fasteners(STRAPS),
  postFoot: {
    kind: 'fasteners',
    rows: [
      row({
        fastener: 'bolt',
        lengthIn: 14,
        count: 2,
        spacingIn: 3,
        endIn: 4,
        plate: { thicknessIn: 0.1875, widthIn: 3, steel: 'plate', each: 2 },
      }),
    ],
    shoulder: false,
    alsoRated: RATING,
  },
  ledgerWall: { kind: 'rated', ...RATING },
  rafterRafter: fasteners(
    row({
      fastener: 'nail',
      diameterIn: 0.162,
      lengthIn: 2.5,
      count: 4,
      rows: 2,
      spacingIn: 1.25,
      endIn: 2,
      plate: { thicknessIn: 0.06, widthIn: 3, steel: 'strap', each: 1 },
    }),
  ),
};

export interface Placed {
  readonly shelter: Shelter;
  readonly joints: readonly JointSetting[];
}

export function placed(project: Project): Placed {
  const { shelter } = placeShelter(project);
  return { shelter, joints: jointsOf(project, shelter) };
}

export const ofKind = ({ joints }: Placed, kind: JointKind): JointSetting => {
  const found = joints.find((joint) => joint.kind === kind);
  if (!found) throw new Error(`no ${kind} in this shelter`);
  return found;
};

/** One joint of each kind that a shelter has. */
export const eachKind = ({ joints }: Placed): readonly JointSetting[] => [
  ...new Map(joints.toReversed().map((joint) => [joint.kind, joint])).values(),
];
