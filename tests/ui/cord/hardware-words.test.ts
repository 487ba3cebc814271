import { describe, expect, it } from 'vitest';
import { jointsOf } from '../../../src/engine/checks/joints/joints.ts';
import type { FastenerRow, JointKind } from '../../../src/engine/project/model.ts';
import { parseProject } from '../../../src/engine/project/parse.ts';
import { sizeInWords } from '../../../src/ui/cord/hardware-sizes.ts';
import { asKind, kindsFor, usualRow } from '../../../src/ui/cord/hardware-usual.ts';
import { rowInWords } from '../../../src/ui/cord/hardware-words.ts';
import { EXAMPLES, exampleText, soundProject } from '../../support/files.ts';
import { evaluated } from '../../engine/whole/whole.ts';

const demo = soundProject(exampleText('firewood-shed'));
const settingOf = (kind: JointKind) => jointsOf(demo, evaluated(demo).shelter).find((joint) => joint.kind === kind)!;

describe('a small size', () => {
  it('stands in sixteenths where it is one, else as the tables print it', () => {
    expect([0.4375, 0.5, 8, 1.375].map((inches) => sizeInWords(inches, 'feet'))).toEqual([
      '7/16 in',
      '1/2 in',
      '8 in',
      '1 3/8 in',
    ]);
    expect([0.162, 0.0179, 0.1046].map((inches) => sizeInWords(inches, 'feet'))).toEqual([
      '0.162 in',
      '0.0179 in',
      '0.1046 in',
    ]);
    expect(sizeInWords(0.5, 'metric')).toBe('12.7 mm');
  });
});

describe('a row of fasteners in a few words', () => {
  const row: FastenerRow = {
    fastener: 'lag',
    diameterIn: 0.5,
    lengthIn: 7,
    count: 2,
    rows: 1,
    spacingIn: 2,
    endIn: null,
    washerIn: 1.375,
    headFlatIn: 0.375,
    acts: 'both',
    driven: 'wet',
  };
  it('names how many of what, and what lies under the heads', () => {
    expect(rowInWords(row, 'feet')).toBe('2 lag screws, 1/2 in by 7 in, 2 in apart, washer 1 3/8 in, flat 3/8 in deep');
  });
  it('names the steel that they go through', () => {
    const { washerIn: _, headFlatIn: __, ...bare } = row;
    const strap = { thicknessIn: 0.1875, widthIn: 2, steel: 'plate', each: 2 } as const;
    expect(rowInWords({ ...bare, count: 1, spacingIn: null, endIn: 3.5, plate: strap }, 'feet')).toBe(
      '1 lag screw, 1/2 in by 7 in, through side plates on both sides 3/16 in by 2 in, the first 3 1/2 in from the end',
    );
  });
  it('says that nails are driven slantwise', () => {
    const nails = { ...usualRow('nail', null), count: 2, rows: 2, spacingIn: 1.25, slanted: true };
    expect(rowInWords(nails, 'feet')).toBe(
      '2 16d common nails, 0.162 in by 3 1/2 in, driven slantwise, 1 1/4 in apart, in 2 lines',
    );
  });
  it('calls a nail by its name', () => {
    // NDS 2018 Table L4, from memory: 16d common, 0.162 by 3 1/2 in.
    const nails = { ...usualRow('nail', null), count: 4, spacingIn: 2.5 };
    expect(rowInWords(nails, 'feet')).toBe('4 16d common nails, 0.162 in by 3 1/2 in, 2 1/2 in apart');
  });
});

describe('a row before anybody types', () => {
  it('goes deep enough into the piece that holds its point, where a listed length does', () => {
    const { diameterIn, lengthIn } = usualRow('lag', settingOf('bracePost'));
    // brace of 4 1/2 to 5 in. at 45 degrees, let in: some 3 1/2 in. of it lie under the head, then 8 diameters in the post
    expect(lengthIn).toBeGreaterThanOrEqual(3.25 + 8 * diameterIn);
    expect(lengthIn).toBeLessThanOrEqual(12);
  });

  it('has steel where nothing reaches straight from one piece into the other', () => {
    expect(usualRow('bolt', settingOf('postFoot')).plate).toBeDefined();
    expect(usualRow('bolt', settingOf('braceTop')).plate).toBeUndefined();
  });

  it('keeps how many and how they stand when another kind is chosen', () => {
    const setting = settingOf('bracePost');
    const lags = { ...usualRow('lag', setting), count: 3, spacingIn: 4, driven: 'dry' as const };
    const bolts = asKind(lags, 'bolt', setting);
    expect(bolts).toMatchObject({ fastener: 'bolt', diameterIn: 0.625, count: 3, spacingIn: 4, driven: 'dry' });
  });

  it.each(EXAMPLES)('is taken into the file of %s where a listed size can reach at all', (name) => {
    const project = soundProject(exampleText(name));
    const kinds = new Map(jointsOf(project, evaluated(project).shelter).map((joint) => [joint.kind, joint]));
    const refused = [...kinds].flatMap(([kind, setting]) =>
      kindsFor(setting).flatMap((fastener) => {
        const capacity = { kind: 'fasteners', rows: [usualRow(fastener, setting)], shoulder: false } as const;
        const answer = parseProject({ ...project, joints: { defaults: [{ kind, capacity }], own: [] } });
        return answer.ok ? [] : answer.faults.map(({ code }) => `${fastener} ${kind} ${code}`);
      }),
    );
    // no nail is longer than 6 in. (NDS 2018 Table L4, from memory): none reaches through a log
    expect(refused.filter((each) => !/^nail (beamPost|braceTop) shankEndsEarly$/.test(each))).toEqual([]);
  });
});
