import * as fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { complaints, headline } from '../../../src/ui/sheet/headline.ts';
import { pieceNames } from '../../../src/ui/sheet/piece-names.ts';
import { evaluated } from '../../engine/whole/whole.ts';
import { plainShed } from '../../support/plain-shed.ts';

const counts = fc.record({
  pass: fc.nat({ max: 400 }),
  fail: fc.nat({ max: 3 }),
  notGiven: fc.nat({ max: 3 }),
  outside: fc.nat({ max: 3 }),
});

describe('the verdict at the head of the sheet', () => {
  it('says that all pass only when nothing fails, nothing is missing and nothing is outside the method', () => {
    fc.assert(
      fc.property(counts, (n) => {
        const isAll = n.fail === 0 && n.notGiven === 0 && n.outside === 0 && n.pass > 0;
        expect(/^All \d+ checks? pass\.$/.test(headline(n))).toBe(isAll);
      }),
      { seed: 20261125, numRuns: 300 },
    );
  });

  it('names what fails before what is missing, and leaves out neither', () => {
    expect(headline({ pass: 3, fail: 1, notGiven: 2, outside: 1 })).toBe(
      'Does not pass: 1 check fails, 2 not given, 1 outside the method.',
    );
    expect(headline({ pass: 3, fail: 50, notGiven: 0, outside: 0 })).toBe('Does not pass: 50 checks fail.');
    expect(headline({ pass: 3, fail: 0, notGiven: 5, outside: 0 })).toBe('Not complete: 5 not given. No check fails.');
    expect(headline({ pass: 3, fail: 0, notGiven: 7, outside: 1 })).toBe(
      'Not complete: 7 not given, 1 outside the method. No check fails.',
    );
    expect(headline({ pass: 240, fail: 0, notGiven: 0, outside: 0 })).toBe('All 240 checks pass.');
  });

  it('does not call a shelter without a single check passed', () => {
    expect(headline({ pass: 0, fail: 0, notGiven: 0, outside: 0 })).toBe('Not complete: nothing is checked.');
  });
});

describe('what does not pass', () => {
  it('is told once where one cause stops many checks: a lag screw too short for every seat of both beams', () => {
    const row = {
      fastener: 'lag',
      diameterIn: 0.5,
      lengthIn: 6,
      count: 1,
      rows: 1,
      spacingIn: null,
      endIn: null,
      acts: 'both',
      driven: 'dry',
    } as const;
    const capacity = { kind: 'fasteners', rows: [row], shoulder: false } as const;
    const project = { ...plainShed(), joints: { defaults: [{ kind: 'beamPost' as const, capacity }], own: [] } };
    const evaluation = evaluated(project);
    const stopped = evaluation.checks.filter(
      ({ reason, status }) => status === 'fail' && reason?.code === 'shankEndsEarly',
    );
    expect(stopped.length).toBeGreaterThan(8);
    const told = complaints(evaluation, pieceNames(project, evaluation), 'feet');
    const lines = told.filter(({ keys }) => keys.includes(stopped[0]!.key));
    expect(lines).toHaveLength(1);
    expect(lines[0]!.keys).toHaveLength(stopped.length);
    expect(lines[0]!.words).toMatch(
      new RegExp(`^Beam A and beam B, ${stopped.length} checks: the fastener is 6 in long and ends before`),
    );
    // nothing is left out, nothing told twice
    const open = evaluation.checks.filter(({ status }) => status !== 'pass').map(({ key }) => key);
    expect(told.flatMap(({ keys }) => keys).toSorted()).toEqual(open.toSorted());
  });
});
