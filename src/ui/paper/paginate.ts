/** Heights of a block as they were measured, all in one unit. */
export type BlockHeight =
  | { readonly kind: 'heading' | 'text'; readonly height: number; readonly leads: boolean }
  | {
      readonly kind: 'table';
      /** its label, printed only where the table goes on from the page before */
      readonly label: number;
      readonly head: number;
      readonly rows: readonly number[];
    };

/** What stands on a page of a block: of a table the rows from `from` to before `to`. */
export interface Piece {
  readonly block: number;
  readonly from: number;
  readonly to: number;
  readonly height: number;
}
export type Page = readonly Piece[];

/**
 * Puts blocks on pages in their order. What leads (a heading, the sentence over a table) never stands last on a page; a
 * table is parted between rows only, its heads and its label are repeated. Whatever is higher than a page by itself stands
 * alone on one.
 */
export function paginate(blocks: readonly BlockHeight[], room: number): readonly Page[] {
  const pages: Piece[][] = [[]];
  let used = 0;
  const turn = (): void => {
    pages.push([]);
    used = 0;
  };
  const add = (piece: Piece): void => {
    pages.at(-1)!.push(piece);
    used += piece.height;
  };
  for (let i = 0; i < blocks.length; i++) {
    if (used > 0 && used + leastWith(blocks, i) > room && !isLed(blocks, i)) turn();
    const block = blocks[i]!;
    if (block.kind !== 'table') {
      add({ block: i, from: 0, to: 1, height: block.height });
      continue;
    }
    let from = 0;
    while (from < block.rows.length) {
      const fixed = block.head + (from > 0 ? block.label : 0);
      let height = fixed;
      let to = from;
      while (to < block.rows.length && used + height + block.rows[to]! <= room) height += block.rows[to++]!;
      // a row that no page holds stands there all the same
      if (to === from && isFresh(pages.at(-1)!, blocks)) height += block.rows[to++]!;
      if (to > from) add({ block: i, from, to, height });
      if (to < block.rows.length) turn();
      from = to;
    }
  }
  return pages.filter((page) => page.length > 0);
}

/** Nothing stands on the page but what leads to the block in hand. */
const isFresh = (page: Page, blocks: readonly BlockHeight[]): boolean =>
  page.every(({ block }) => leads(blocks[block]));

const leads = (block: BlockHeight | undefined): boolean =>
  block !== undefined && block.kind !== 'table' && (block.kind === 'heading' || block.leads);

/** What leads was put on this page together with room for it. */
const isLed = (blocks: readonly BlockHeight[], at: number): boolean => leads(blocks[at - 1]);

/** The least that must stand together from a block on: what leads, and the first piece of what it leads to. */
function leastWith(blocks: readonly BlockHeight[], at: number): number {
  let height = 0;
  for (let i = at; i < blocks.length; i++) {
    const block = blocks[i]!;
    if (block.kind === 'table') return height + block.head + (block.rows[0] ?? 0);
    height += block.height;
    if (!leads(block)) return height;
  }
  return height;
}
