import type { Cited } from './cited.ts';
import type { PoleItem } from './pole-items.ts';

// Read only where it is ticked: the engine knows the items by name and their limits.

/** One thing that must be seen on a log before published pole values may stand for it. */
export interface InspectionItem extends Cited {
  readonly id: PoleItem;
  /** as it is ticked, in words that can be answered beside the log */
  readonly words: string;
}

const item = (
  id: PoleItem,
  words: string,
  source: Cited['source'],
  where: string,
  seen: Cited['seen'] = 'public copy',
): InspectionItem => ({ id, words, source, where, seen });

/**
 * What the owner ticks item by item. The limits of poles are those of piles, with other sizes (the sizes are not asked: each
 * section is judged at its own diameter).
 * @source D25, which D3200 takes over for poles; D2899; IOWA_DOT for the knots. Rows marked so from memory
 */
export const POLE_INSPECTION: readonly InspectionItem[] = [
  item('soundTree', 'cut from a live, sound, solid tree, above the swell of the butt', 'D25', 'opening clauses'),
  item('evenTaper', 'tapers evenly from butt to tip', 'D25', 'opening clauses'),
  item(
    'straightness',
    'a line from the middle of the butt to the middle of the tip stays inside the log',
    'D25',
    'straightness',
    'memory',
  ),
  item(
    'knots',
    'no unsound knot, none wider than 4 in. nor than a sixth of the girth there; a cluster is one knot',
    'IOWA_DOT',
    '4165',
  ),
  item('knotsInAFoot', 'knots in any one foot together at most a third of the girth', 'D25', 'knots', 'memory'),
  item('twist', 'grain twists at most half round in any 20 ft', 'D25', 'spiral grain', 'memory'),
  item('rings', 'six rings to the inch or more over the outer half of the butt', 'D25', 'rate of growth', 'memory'),
  item('splits', 'no split longer than the butt is thick', 'D25', 'splits', 'memory'),
  item('decay', 'no decay and no ring shake', 'IOWA_DOT', '4165'),
  item(
    'conditioning',
    'never kiln-dried, steamed or boiled: green or dried in the air',
    'D2899',
    'Table 2, conditioning',
  ),
];
