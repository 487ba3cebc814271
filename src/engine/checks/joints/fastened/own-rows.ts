import { clause } from '../../../../data/sources.ts';
import { put, type Note } from '../../../note.ts';
import { quantity } from '../../../units.ts';
import type { JointPart } from '../rated.ts';
import type { PlacedRow } from './row-holds.ts';
import type { ShareOf } from './row-together.ts';

type Placed = Extract<PlacedRow, { readonly ok: true }>;

/** The row that holds a direction, and what it holds [lb]. */
export interface HeldBy {
  readonly part: JointPart;
  readonly row: Placed;
  readonly pounds: number;
}

/**
 * Share of a joint of which one row holds pull and can hold nothing else, as a strap, and another sideways forces and no
 * pull, as a pin: neither ever carries for the other, so each answers for its own directions. Several directions of one row
 * add up straight.
 * @returns null where a row may hold both: what it then carries of each is not known
 * @source OWN: each row by itself where neither can help the other
 */
export function togetherOnOwnRows(held: readonly HeldBy[]): ShareOf | null {
  const pulled = held.filter(({ part }) => part === 'pull');
  const pushed = held.filter(({ part }) => part !== 'pull');
  const isApart = pulled.every(({ row }) => onlyPulls(row)) && pushed.every(({ row }) => onlySideways(row));
  if (!isApart || pulled.length === 0 || pushed.length === 0) return null;
  return (forcesLb, note) => {
    const shares = held.map(({ pounds }, i) => (forcesLb[i] ?? 0) / pounds);
    const sumOf = (of: readonly HeldBy[]): number => of.reduce((sum, one) => sum + shares[held.indexOf(one)]!, 0);
    const [pull, sideways] = [sumOf(pulled), sumOf(pushed)];
    if (note) tell(held, shares, { pull, sideways }, note);
    return Math.max(pull, sideways);
  };
}

const onlyPulls = ({ row }: Placed): boolean => row.plate !== undefined;
const onlySideways = ({ row }: Placed): boolean =>
  row.plate === undefined && (row.acts === 'lateral' || row.fastener === 'driftPin');

function tell(
  held: readonly HeldBy[],
  shares: readonly number[],
  { pull, sideways }: { readonly pull: number; readonly sideways: number },
  note: Note,
): void {
  const ownRow = clause('OWN', 'each row by itself where neither can help the other');
  const pushed = held.map(({ part }, i) => ({ part, share: shares[i]! })).filter(({ part }) => part !== 'pull');
  note({
    symbol: 'S',
    words: 'share of the row that holds sideways forces alone',
    formula: pushed.map(({ part }) => part).join(' + '),
    put: pushed.map(({ part, share }) => put(part, share, '1', `share of what it holds, ${part}`)),
    result: quantity(sideways, '1'),
    clause: ownRow,
  });
  note({
    symbol: 'Σ',
    words: 'the harder of both rows',
    formula: 'max(T, S)',
    put: [
      put('T', pull, '1', 'share of the row that holds pull alone'),
      put('S', sideways, '1', 'share of the row that holds sideways forces alone'),
    ],
    result: quantity(Math.max(pull, sideways), '1'),
    clause: ownRow,
  });
}
