import { describe, expect, it } from 'vitest';
import { deadThatRubs } from '../../../../src/engine/checks/ground/pier.ts';
import { baseFriction, sideBearing, slidingResistance } from '../../../../src/engine/checks/ground/sliding.ts';
import { MisuseError } from '../../../../src/engine/errors.ts';
import { redoFaults } from '../redo-step.ts';

const GRAVEL = { friction: 0.35, cohesionPsf: null };
const CLAY = { friction: null, cohesionPsf: 130 };

describe('what holds a pier against sliding', () => {
  it('[pier.sliding] of friction and cohesion both given the smaller counts, of neither nothing', () => {
    expect(baseFriction({ friction: 0.35, cohesionPsf: 130 }, 1000, 144)).toBeCloseTo(130, 9);
    expect(baseFriction({ friction: 0.1, cohesionPsf: 130 }, 1000, 144)).toBeCloseTo(100, 9);
    expect(baseFriction({ friction: null, cohesionPsf: null }, 1000, 144)).toBe(0);
  });

  it('[pier.sliding] six tenths of the dead load rub, less where the post lifts, never less than nothing', () => {
    expect(deadThatRubs(1000, 5000, 2000)).toBeCloseTo(600 + 1200, 9);
    expect(deadThatRubs(1000, 300, 2000)).toBeCloseTo(300 + 1200, 9);
    expect(deadThatRubs(1000, -500, 2000)).toBeCloseTo(700, 9);
    expect(deadThatRubs(1000, -5000, 2000)).toBe(0);
  });

  it('[pier.sliding] under and beside are added', () => {
    expect(slidingResistance(700, 1800)).toBe(2500);
    expect(sideBearing(150, 0, 18)).toBe(0);
  });

  it('refuses what is below zero', () => {
    expect(() => baseFriction(GRAVEL, -1, 10)).toThrow(MisuseError);
    expect(() => sideBearing(0, 4, 18)).toThrow(MisuseError);
    expect(() => sideBearing(100, 4, 0)).toThrow(MisuseError);
    expect(() => slidingResistance(-1, 0)).toThrow(MisuseError);
    expect(() => deadThatRubs(-1, 0, 0)).toThrow(MisuseError);
  });

  it('each step can be redone by hand', () => {
    expect(redoFaults((note) => baseFriction(GRAVEL, 900, 300, note))).toEqual([]);
    expect(redoFaults((note) => baseFriction(CLAY, 900, 300, note))).toEqual([]);
    expect(redoFaults((note) => sideBearing(150, 3.5, 24, note))).toEqual([]);
    expect(redoFaults((note) => slidingResistance(315, 1800, note))).toEqual([]);
    expect(redoFaults((note) => deadThatRubs(800, 300, 1500, note))).toEqual([]);
  });
});
