import * as fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { clause, remembered } from '../../../src/data/sources.ts';
import { put, type Step } from '../../../src/engine/note.ts';
import { createStepBook } from '../../../src/ui/calculation/step-book.ts';
import { showFigure } from '../../../src/ui/calculation/show-figure.ts';
import type { Row } from '../../../src/ui/paper/blocks.ts';

const asIs = (words: string): string => words;
const area: Step = {
  symbol: 'A',
  words: 'area of a circle',
  formula: 'pi / 4 × d^2',
  put: [put('d', 10, 'in', 'diameter')],
  result: { value: 78.53981, unit: 'in2' },
  clause: clause('MECHANICS', 'circle'),
};
const stress: Step = {
  symbol: 'fc',
  words: 'stress',
  formula: 'P / A',
  put: [put('P', 1000, 'lb', 'push'), put('A', 78.53981, 'in2', 'area', [area])],
  result: { value: 12.7324, unit: 'psi' },
  clause: remembered('NDS', '3.6.3'),
};
const ratio: Step = {
  symbol: 'ratio',
  words: 'passes where it is at most 1',
  formula: 'demand / capacity',
  put: [put('demand', 12.7324, 'psi', 'what is asked'), put('capacity', 500, 'psi', 'what may be asked')],
  result: { value: 0.0254648, unit: '1' },
  clause: clause('NDS', '3.6.3'),
};
const texts = ({ cells }: Row): readonly string[] => cells.map((cell) => cell.map(({ text }) => text).join(' | '));

/** A book that has told these already. */
function createAfter(steps: readonly Step[]): ReturnType<typeof createStepBook> {
  const book = createStepBook('feet', asIs);
  book.tell(steps);
  return book;
}

describe('the steps of the calculation', () => {
  it('stand below those from which their numbers come, and name them', () => {
    const rows = createStepBook('feet', asIs).tell([stress, ratio]);
    expect(rows.map(texts)).toEqual([
      ['1', 'area of a circle | A = pi / 4 × d²', 'd = 10 in, diameter', '78.54 in²', 'mechanics: circle'],
      ['2', 'stress | fc = P / A', 'P = 1,000 lb, push | A = 78.54 in², area (step 1)', '12.73 psi', 'NDS 3.6.3†'],
      [
        '3',
        'passes where it is at most 1 | ratio = demand / capacity',
        'demand = 12.73 psi, what is asked (step 2) | capacity = 500 psi, what may be asked',
        '0.02546',
        'NDS 3.6.3',
      ],
    ]);
  });

  it('are told once; a later check points to the number', () => {
    const book = createStepBook('feet', asIs);
    book.tell([stress]);
    const [again] = book.tell([stress]);
    expect(again?.step).toBeUndefined();
    expect(texts(again!)).toEqual(['', 'stress | fc', 'as in step 2', '12.73 psi', '']);
    // several in a run share a row
    const [both] = createAfter([area, ratio]).tell([area, ratio]);
    expect(texts(both!)).toEqual(['', 'told before', 'A = 78.54 in² (step 1), ratio = 0.02546 (step 2)', '', '']);
    // one that the next was made from stands there already
    const [last, ...rest] = createAfter([stress, ratio]).tell([area, stress, ratio]);
    expect(texts(last!)).toEqual(['', 'passes where it is at most 1 | ratio', 'as in step 3', '0.02546', '']);
    expect(rest).toEqual([]);
    // what is put in further down says the number itself, and needs no line of its own
    expect(book.tell([stress, ratio]).map(({ step }) => step)).toEqual([3]);
  });

  it('take a bare limit of 1 from no step, and say of a part of a sum how often it counts', () => {
    const factor: Step = {
      ...area,
      symbol: 'CM',
      words: 'factor',
      put: [],
      formula: 'CM',
      result: { value: 1, unit: '1' },
    };
    const sum: Step = {
      ...ratio,
      put: [
        put('0.6 ×', -38.95, 'lb', 'dead'),
        put('0.6 ×', 3e-13, 'lb', 'what rounding leaves'),
        put('CM', 1, '1', 'factor'),
        put('capacity', 1, '1', 'limit'),
      ],
    };
    const [, last] = createStepBook('feet', asIs).tell([factor, sum]);
    expect(texts(last!)[2]).toBe('0.6 × −38.95 lb, dead | CM = 1, factor (step 1) | capacity = 1, limit');
  });

  it('name no step where two could be meant: one amount twice under one symbol, or under another symbol', () => {
    const other: Step = { ...area, words: 'area of another circle', clause: clause('MECHANICS', 'another circle') };
    const late = (words: string, symbol = 'A'): Step => ({ ...stress, put: [put(symbol, 78.53981, 'in2', words)] });
    const numbersIn = (...steps: readonly Step[]): string =>
      texts(createStepBook('feet', asIs).tell(steps).at(-1)!)[2]!;
    expect(numbersIn(area, late('area'))).toBe('A = 78.54 in², area (step 1)');
    expect(numbersIn(area, other, late('area'))).toBe('A = 78.54 in², area');
    expect(numbersIn(area, other, late('area of another circle'))).toBe(
      'A = 78.54 in², area of another circle (step 2)',
    );
    expect(numbersIn(area, late('contact', 'Ac'))).toBe('Ac = 78.54 in², contact');
  });

  it('take what a ratio is made of from the last step that has it, and from none where two end alike', () => {
    const weaker: Step = {
      ...stress,
      symbol: 'f',
      words: 'greater of both',
      put: [put('fc', 12.7324, 'psi', 'stress')],
    };
    const asked = (...steps: readonly Step[]): string =>
      texts(
        createStepBook('feet', asIs)
          .tell([...steps, ratio])
          .at(-1)!,
      )[2]!.split(' | ')[0]!;
    expect(asked(stress, weaker)).toBe('demand = 12.73 psi, what is asked (step 3)');
    expect(asked(stress, { ...stress, symbol: 'g', words: 'of another piece' })).toBe(
      'demand = 12.73 psi, what is asked',
    );
  });

  it('note every clause with the place of its use', () => {
    const book = createStepBook('feet', asIs);
    book.tell([stress]);
    book.cite(remembered('IBC', '1809.4'), 'post A1: frost');
    expect(book.uses().map(({ clause: c, where }) => [c.source, c.memory ?? false, where])).toEqual([
      ['MECHANICS', false, 'step 1'],
      ['NDS', true, 'step 2'],
      ['IBC', true, 'post A1: frost'],
    ]);
  });
});

describe('a number of a step', () => {
  it('keeps at least four figures, so that the next line can be met', () => {
    const read = (shown: string): number => Number(shown.replaceAll(',', '').replace('−', '-').split(' ')[0]);
    fc.assert(
      fc.property(
        fc.double({ min: 1e-4, max: 1e7, noNaN: true }),
        fc.constantFrom('psi', 'in', 'lb', '1', 'lb·in'),
        fc.boolean(),
        (size, unit, isBelow) => {
          const value = isBelow ? -size : size;
          expect(Math.abs(read(showFigure({ value, unit }, 'feet')) - value)).toBeLessThanOrEqual(size * 5.01e-4);
        },
      ),
      { seed: 20261125, numRuns: 2000 },
    );
  });

  it('writes no zeros that say nothing', () => {
    expect(showFigure({ value: 36, unit: 'in' }, 'feet')).toBe('36 in');
    expect(showFigure({ value: 0.5, unit: '1' }, 'feet')).toBe('0.5');
    expect(showFigure({ value: 0, unit: 'lb' }, 'feet')).toBe('0 lb');
    expect(showFigure({ value: 45, unit: 'deg' }, 'feet')).toBe('45°');
    expect(showFigure({ value: -9.6941e-13, unit: '1' }, 'feet')).toBe('−9.694 × 10^-13');
    expect(showFigure({ value: -1.76e-11, unit: 'lb·in' }, 'feet')).toBe('0 lb·in');
    expect(showFigure({ value: Infinity, unit: 'psi' }, 'feet')).toBe('no limit');
    // 25.4 mm in an inch, by definition
    expect(showFigure({ value: 2, unit: 'in' }, 'metric')).toBe('50.8 mm');
  });
});
