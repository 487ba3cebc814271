import { BOLTS } from '../../../../data/fasteners/bolts.ts';
import type { FastenerKind } from '../../../../data/fasteners/kind.ts';
import { LAG_SCREWS } from '../../../../data/fasteners/lag-screws.ts';
import { NAILS } from '../../../../data/fasteners/nails.ts';
import { SCREW_POINT } from '../../../../data/fasteners/withdrawal.ts';
import { FASTENER_WORDS } from '../../../../data/words/fasteners-pulled.ts';
import type { FastenerRow } from '../../../project/model.ts';
import { threadOf } from '../../fasteners/holding-length.ts';
import { refused, type Refused } from '../../fasteners/refused.ts';
import { boltThreadIn, rootDiameterOf } from '../../fasteners/thread-in-piece.ts';

/** A fastener of a row by its listed size. */
export interface ShankSize {
  readonly kind: FastenerKind;
  readonly nominalIn: number;
  readonly lengthIn: number;
  readonly rootIn: number;
  /** tapered point; a bolt has none */
  readonly tipIn: number;
  /** thread with its point; none of plain shanks */
  readonly threadIn: number;
  /** outside of the washer, the head across its flats, or a flat round head; null: nothing is known of it */
  readonly headIn: number | null;
}

export type SizeAnswer = { readonly ok: true; readonly size: ShankSize } | Refused;

const SAME_SIZE_IN = 1e-3;

/**
 * What a written row says of each fastener, with what its size lists.
 * @source NDS Appendix L
 */
export function shankSize(row: FastenerRow): SizeAnswer {
  const { fastener: kind, diameterIn: nominalIn, lengthIn } = row;
  if (kind === 'strap') return refused('strapWithoutFasteners');
  const root = rootDiameterOf(kind, nominalIn);
  if (!root.ok) return root;
  const thread = threadIn(kind, nominalIn, lengthIn);
  if (!thread) return refused('fastenerSizeNotListed', { fastener: FASTENER_WORDS[kind], diameterIn: nominalIn });
  const headIn = row.washerIn ?? headOf(kind, nominalIn);
  return { ok: true, size: { kind, nominalIn, lengthIn, rootIn: root.rootIn, ...thread, headIn } };
}

function threadIn(
  kind: FastenerKind,
  nominalIn: number,
  lengthIn: number,
): Pick<ShankSize, 'threadIn' | 'tipIn'> | null {
  switch (kind) {
    case 'bolt':
      return { threadIn: boltThreadIn(nominalIn, lengthIn), tipIn: 0 };
    case 'driftPin':
      return { threadIn: 0, tipIn: 0 };
    case 'nail':
    case 'spike':
      // the point of a nail is as long as that of a screw where nothing else is known (NDS 12.3.5.3)
      return { threadIn: 0, tipIn: SCREW_POINT.diameters * nominalIn };
    case 'lag':
    case 'screw':
      return threadOf({ kind, diameterIn: nominalIn, lengthIn });
  }
}

function headOf(kind: FastenerKind, nominalIn: number): number | null {
  const rows = {
    lag: LAG_SCREWS.rows,
    bolt: BOLTS.rows,
    nail: NAILS.rows.map(nailHead),
    screw: [],
    spike: [],
    driftPin: [],
  };
  return rows[kind].find((row) => Math.abs(row.nominalIn - nominalIn) < SAME_SIZE_IN)?.headIn ?? null;
}

const nailHead = ({ diameterIn, headIn }: (typeof NAILS.rows)[number]) => ({ nominalIn: diameterIn, headIn });
