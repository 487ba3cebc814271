import { describe, expect, it } from 'vitest';
import { hardwareFaults } from '../../../src/engine/project/soundness/hardware.ts';
import type { FastenerRow, JointKind, Project } from '../../../src/engine/project/model.ts';
import { fastenedShed } from '../../support/fastened-shed.ts';
import { plainShed } from '../../support/plain-shed.ts';

const row = (change: Partial<FastenerRow>): FastenerRow => ({
  fastener: 'lag',
  diameterIn: 0.25,
  lengthIn: 5,
  count: 1,
  rows: 1,
  spacingIn: null,
  endIn: null,
  acts: 'both',
  driven: 'wet',
  ...change,
});
const shedWith = (kind: JointKind, change: Partial<FastenerRow>): Project => ({
  ...plainShed(),
  joints: { defaults: [{ kind, capacity: { kind: 'fasteners', rows: [row(change)], shoulder: false } }], own: [] },
});
const faultsOf = (kind: JointKind, change: Partial<FastenerRow>): readonly string[] =>
  hardwareFaults(shedWith(kind, change)).map(({ path, code }) => `${path.split('.').slice(-1)[0]} ${code}`);

// Purlins 2 by 4 in., rafters 2 by 8 in., posts of 8 to 9 in.; least distances by NDS 2018 Tables 12.5.1A to C (from memory).
describe('hardware that cannot fit is refused at its field', () => {
  it.each([
    ['a lag screw of no listed size', 'purlinRafter', { diameterIn: 0.26 }, 'diameterIn fastenerSizeNotListed'],
    [
      'a bolt thicker than the equations',
      'beamPost',
      { fastener: 'bolt', diameterIn: 1.25 },
      'diameterIn fastenerSizeNotListed',
    ],
    [
      'a nail thinner than any printed',
      'purlinRafter',
      { fastener: 'nail', diameterIn: 0.08 },
      'diameterIn fastenerYieldNotListed',
    ],
    ['three rows of two', 'purlinRafter', { count: 2, rows: 3, spacingIn: 2 }, 'rows moreRowsThanFasteners'],
    ['nearer to one another than 3 D', 'purlinRafter', { count: 2, spacingIn: 0.5 }, 'spacingIn fastenersNearInRow'],
    ['nearer to the end than 2 D', 'purlinRafter', { endIn: 0.25 }, 'endIn fastenerNearEnd'],
    ['ending in the purlin', 'purlinRafter', { lengthIn: 1 }, 'lengthIn shankEndsEarly'],
    ['longer than purlin and rafter', 'purlinRafter', { lengthIn: 17 }, 'lengthIn shankComesOut'],
    [
      'longer than post and strap',
      'postFoot',
      { lengthIn: 20, plate: { thicknessIn: 0.25, widthIn: 2, steel: 'plate', each: 2 } },
      'lengthIn shankComesOut',
    ],
    [
      'two holes across a narrow strap',
      'postFoot',
      { count: 2, rows: 2, spacingIn: 1, plate: { thicknessIn: 0.25, widthIn: 0.5, steel: 'plate', each: 1 } },
      'widthIn strapHolesTakeAll',
    ],
    ['a washer under the size of its shank', 'purlinRafter', { washerIn: 0.2 }, 'washerIn washerUnderShank'],
  ] as const satisfies readonly (readonly [string, JointKind, Partial<FastenerRow>, string])[])(
    '%s',
    (_, kind, change, fault) => {
      expect(faultsOf(kind, change)).toEqual([fault]);
    },
  );

  it('a shank thicker than a third of the stick it goes through', () => {
    const thin = shedWith('purlinRafter', { diameterIn: 0.75, lengthIn: 5 });
    const stock = {
      kind: 'sawn',
      breadthIn: 1.5,
      depthIn: 2,
      lay: 'edge',
      plies: 1,
      species: 'Western larch',
      grade: null,
      use: 'wet',
    } as const;
    const groups = thin.groups.map((g) => (g.role === 'rafter' || g.role === 'purlin' ? { ...g, stock } : g));
    expect(hardwareFaults({ ...thin, groups }).map((f) => f.code)).toEqual(['fastenerNearEdge']);
  });

  it('names the joint that has hardware of its own', () => {
    const project = plainShed();
    const capacity = { kind: 'fasteners', rows: [row({}), row({ lengthIn: 1 })], shoulder: false } as const;
    const own = [{ key: 'purlinRafter/purlin-1/rafter-2', capacity }];
    expect(hardwareFaults({ ...project, joints: { defaults: [], own } }).map((f) => f.path)).toEqual([
      'joints.own[purlinRafter/purlin-1/rafter-2].capacity.rows[1].lengthIn',
    ]);
  });
});

describe('hardware that may fit is let through', () => {
  it.each([
    ['a lag screw', 'purlinRafter', {}],
    ['a bolt through both', 'bracePost', { fastener: 'bolt', diameterIn: 0.625, lengthIn: 18 }],
    ['a strap that is not described yet', 'beamPost', { fastener: 'strap' }],
    ['a long pin down into the post', 'beamPost', { fastener: 'driftPin', diameterIn: 0.75, lengthIn: 24 }],
    ['what fastens a ledger to a wall that nobody knows', 'ledgerWall', { lengthIn: 40 }],
  ] as const satisfies readonly (readonly [string, JointKind, Partial<FastenerRow>])[])('%s', (_, kind, change) => {
    expect(faultsOf(kind, change)).toEqual([]);
  });

  it('a shed with fasteners at almost every joint', () => {
    expect(hardwareFaults(fastenedShed())).toEqual([]);
  });

  it('while a stick is not chosen yet nothing is said of lengths', () => {
    const project = shedWith('purlinRafter', { lengthIn: 17 });
    const groups = project.groups.map((g) => (g.role === 'rafter' ? { ...g, stock: null } : g));
    expect(hardwareFaults({ ...project, groups })).toEqual([]);
    const sheet = { thicknessIn: 0.0142, widthIn: null, steel: 'strap', each: 1 } as const;
    const screwed = shedWith('sheetPurlin', { fastener: 'screw', diameterIn: 0.19, plate: sheet });
    const bare = screwed.groups.map((g) => (g.role === 'purlin' ? { ...g, stock: null } : g));
    expect(hardwareFaults({ ...screwed, groups: bare })).toEqual([]);
  });
});
