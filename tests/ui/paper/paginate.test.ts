import * as fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { paginate, type BlockHeight, type Page } from '../../../src/ui/paper/paginate.ts';

const ROOM = 100;
const height = fc.integer({ min: 1, max: 30 });
const block: fc.Arbitrary<BlockHeight> = fc.oneof(
  fc.record({ kind: fc.constant('heading' as const), height, leads: fc.constant(false) }),
  fc.record({ kind: fc.constant('text' as const), height, leads: fc.boolean() }),
  fc.record({
    kind: fc.constant('table' as const),
    label: fc.integer({ min: 1, max: 5 }),
    head: fc.integer({ min: 1, max: 8 }),
    rows: fc.array(height, { minLength: 1, maxLength: 12 }),
  }),
);
/** Headings in a row lead to something in the end: three of them and the highest first row stay below a page. */
const blocks = fc.array(block, { minLength: 1, maxLength: 25 }).map((list): readonly BlockHeight[] => {
  let led = 0;
  const kept = list.filter((each) => {
    led = leads(each) ? led + 1 : 0;
    return led <= 2;
  });
  return [...kept, { kind: 'text', height: 5, leads: false }];
});
const leads = (each: BlockHeight | undefined): boolean =>
  each !== undefined && each.kind !== 'table' && (each.kind === 'heading' || each.leads);
const settings = { seed: 20261125, numRuns: 500 };

/** Every block and row in the order in which it stands on the pages. */
const unrolled = (pages: readonly Page[]): readonly string[] =>
  pages.flat().flatMap(({ block: at, from, to }) => Array.from({ length: to - from }, (_, i) => `${at}.${from + i}`));

describe('pages of measured blocks', () => {
  it('hold every block and every row once, in their order', () => {
    fc.assert(
      fc.property(blocks, (list) => {
        const all = list.flatMap((each, at) =>
          Array.from({ length: each.kind === 'table' ? each.rows.length : 1 }, (_, i) => `${at}.${i}`),
        );
        expect(unrolled(paginate(list, ROOM))).toEqual(all);
      }),
      settings,
    );
  });

  it('are never fuller than their room', () => {
    fc.assert(
      fc.property(blocks, (list) => {
        for (const page of paginate(list, ROOM)) {
          const used = page.reduce((sum, { block: at, from, to }) => {
            const each = list[at]!;
            if (each.kind !== 'table') return sum + each.height;
            const rows = each.rows.slice(from, to).reduce((a, b) => a + b, 0);
            return sum + each.head + (from > 0 ? each.label : 0) + rows;
          }, 0);
          expect(used).toBeLessThanOrEqual(ROOM);
        }
      }),
      settings,
    );
  });

  it('never end with a heading or with a sentence that leads to what follows', () => {
    fc.assert(
      fc.property(blocks, (list) => {
        for (const page of paginate(list, ROOM)) expect(leads(list[page.at(-1)!.block])).toBe(false);
      }),
      settings,
    );
  });

  it('waste no page: what begins one would not have fitted on the page before', () => {
    fc.assert(
      fc.property(blocks, (list) => {
        const pages = paginate(list, ROOM);
        for (const [i, page] of pages.entries()) {
          const before = pages[i - 1];
          if (!before) continue;
          const used = before.reduce((sum, piece) => sum + piece.height, 0);
          const least = leastOf(list, page[0]!.block, page[0]!.from);
          expect(used + least).toBeGreaterThan(ROOM);
        }
      }),
      settings,
    );
  });

  it('put a row that is higher than a page on one by itself', () => {
    const table: BlockHeight = { kind: 'table', label: 2, head: 3, rows: [10, 500, 10] };
    const pages = paginate([{ kind: 'heading', height: 5, leads: false }, table], ROOM);
    expect(pages.map((page) => page.map(({ from, to }) => [from, to]))).toEqual([
      [
        [0, 1],
        [0, 1],
      ],
      [[1, 2]],
      [[2, 3]],
    ]);
  });
});

/** What must stand together from a row or a block on. */
function leastOf(list: readonly BlockHeight[], at: number, from: number): number {
  const each = list[at]!;
  if (each.kind === 'table') {
    // a table that begins here was not begun before; one that goes on needs no head to put one more row there
    return from === 0 ? each.head + each.rows[0]! : each.rows[from]!;
  }
  return leads(each) ? each.height + leastOf(list, at + 1, 0) : each.height;
}
