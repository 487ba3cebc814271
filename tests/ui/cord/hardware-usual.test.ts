import { describe, expect, it } from 'vitest';
import { jointsOf } from '../../../src/engine/checks/joints/joints.ts';
import type { JointSetting } from '../../../src/engine/checks/joints/joint-setting.ts';
import { placeShelter } from '../../../src/engine/geometry/place-shelter.ts';
import type { JointKind } from '../../../src/engine/project/model.ts';
import { ofThickness, underWasher } from '../../../src/ui/cord/hardware-flats.ts';
import {
  asKind,
  kindsFor,
  plateOf,
  slantwise,
  straightThrough,
  throughPlate,
  usualRow,
} from '../../../src/ui/cord/hardware-usual.ts';
import { plainShed, type Measures } from '../../support/plain-shed.ts';

function joint(kind: JointKind, measures: Partial<Measures> = {}): JointSetting {
  const project = plainShed(measures);
  const { shelter } = placeShelter(project);
  const found = jointsOf(project, shelter).find((each) => each.kind === kind);
  if (!found) throw new Error(`no joint ${kind}`);
  return found;
}

describe('a row of fasteners after a choice', () => {
  it('straight through again keeps nothing of its plate: no distance from the end, no flats of the plate', () => {
    const top = joint('braceTop');
    const lag = usualRow('lag', top);
    const plated = throughPlate({ ...lag, count: 3, spacingIn: 4 }, plateOf('plate', 2, undefined), top);
    expect(plated).toMatchObject({ count: 3, spacingIn: 4, endIn: 3.5, plate: { steel: 'plate', each: 2 } });
    expect(plated.washerIn).toBeUndefined();
    expect(straightThrough(plated, top)).toEqual({ ...lag, count: 3, spacingIn: 4 });
  });

  it('slantwise has the size of its kind, and stays slantwise as a spike, not as a lag screw or through a plate', () => {
    const seat = joint('rafterStrip');
    const nails = { ...usualRow('nail', seat), diameterIn: 0.263, lengthIn: 6, count: 2, spacingIn: 1.25 };
    const slanted = slantwise(nails);
    // NDS 2018 Table L4, from memory: 16d common, 0.162 by 3 1/2 in., where straight ones were 60d, 0.263 by 6 in.
    expect(slanted).toMatchObject({ diameterIn: 0.162, lengthIn: 3.5, count: 2, spacingIn: 1.25, slanted: true });
    expect(asKind(slanted, 'spike', seat).slanted).toBe(true);
    expect(asKind(slanted, 'lag', seat).slanted).toBeUndefined();
    expect(throughPlate(slanted, plateOf('plate', 2, undefined), seat).slanted).toBeUndefined();
    expect(straightThrough(slanted, seat).slanted).toBeUndefined();
  });

  // Round logs 12 - 24 x 2 / 192 = 11.75 in. over the first post, whose own thickness at its top the setting tells:
  // the flats on both sides are half of what the two differ, to the next sixteenth.
  it('with plates over logs of unlike thickness has flats half as deep as the logs differ', () => {
    const seat = joint('beamPost');
    const step = Math.abs(seat.upper.shape!.diameterIn! - seat.lower.shape!.diameterIn!) / 2;
    const { headFlatIn } = throughPlate(usualRow('bolt', seat), plateOf('plate', 2, undefined), seat);
    expect(step).toBeGreaterThan(1 / 16);
    expect(Math.abs((headFlatIn ?? 0) - step)).toBeLessThanOrEqual(1 / 32);
  });

  it('keeps flats that were typed for its plates when the plate or the fastener is another', () => {
    const seat = joint('beamPost');
    const typed = { ...throughPlate(usualRow('lag', seat), plateOf('plate', 2, undefined), seat), headFlatIn: 0.4375 };
    expect(throughPlate(typed, plateOf('strap', 2, typed.plate), seat).headFlatIn).toBe(0.4375);
    const bolted = asKind(typed, 'bolt', seat);
    expect(bolted).toMatchObject({ headFlatIn: 0.4375, plate: { steel: 'plate', each: 2 } });
    expect(bolted.washerIn).toBeUndefined();
  });

  // outside of cut washers: 1-3/8 in. for 1/2, 1-3/4 in. for 5/8, 2 in. for 3/4 (ASME B18.21.1 wide, from memory); a chord
  // as long as the washer lies R - sqrt(R2 - a2) deep, the shank square to the log
  it.each([
    [0.5, 1.375],
    [0.75, 2],
  ])('a lag screw %d in. thick comes with a washer %d in. wide on a flat as wide', (diameterIn, washerIn) => {
    const top = joint('beamPost');
    const R = top.upper.shape!.diameterIn! / 2;
    const chordIn = R - Math.sqrt(R * R - (washerIn / 2) ** 2);
    const row = ofThickness({ ...usualRow('lag', top), headFlatIn: 0 }, diameterIn, top);
    expect(row.washerIn).toBe(washerIn);
    expect(row.headFlatIn! - chordIn).toBeGreaterThanOrEqual(-1e-4);
    expect(row.headFlatIn! - chordIn).toBeLessThan(1 / 16);
  });

  it('without a washer keeps the flat that was typed, and a smaller washer makes none shallower', () => {
    const top = joint('beamPost');
    const typed = { ...usualRow('lag', top), headFlatIn: 0.75 };
    expect(underWasher(typed, null, top)).toEqual({ ...underWasher(typed, 1, top), washerIn: undefined });
    expect(underWasher(typed, null, top)).not.toHaveProperty('washerIn');
    expect(underWasher(typed, 1, top)).toMatchObject({ washerIn: 1, headFlatIn: 0.75 });
  });

  it('is no bolt down the length of a post, where no nut finds a far side', () => {
    expect(kindsFor(joint('beamPost'))).not.toContain('bolt');
    expect(kindsFor(joint('braceTop'))).toContain('bolt');
  });
});
