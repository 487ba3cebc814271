import { FASTENER_WORDS } from '../../../../data/words/fasteners-pulled.ts';
import type { FastenerRow } from '../../../project/model.ts';
import { toeNail } from '../../fasteners/lateral-factors.ts';
import { refused, type Refused } from '../../fasteners/refused.ts';
import { stretchIn, type ShankLine } from '../../fasteners/round-geometry.ts';
import type { ShankPath } from '../../fasteners/shank-path.ts';
import type { JointPiece } from '../joint-setting.ts';
import { inWood, type Standing } from './in-wood.ts';
import type { ShankSize } from './shank-size.ts';
import type { PieceWood } from './wood-of-piece.ts';

/** How a slanted nail goes: from its start down to the lower piece, and into that, along the line through both [in]. */
export interface ToedReach {
  readonly ok: true;
  readonly startIn: number;
  readonly reachIn: number;
}

/**
 * Whether a shank can be driven slantwise through the side of the upper piece into the lower one, and how far it goes.
 * @returns its lengths, or why it is not taken so
 * @source NDS 12.5.4, from memory
 */
export function toedReach(
  upper: JointPiece,
  { kind, lengthIn }: Pick<ShankSize, 'kind' | 'lengthIn'>,
  path: Extract<ShankPath, { ok: true }>,
): ToedReach | Refused {
  if (kind !== 'nail' && kind !== 'spike') return refused('toedOnlyNails', { fastener: FASTENER_WORDS[kind] });
  if (upper.stick?.kind !== 'sawn') return refused('toedNeedsSawn');
  const { sideIn: startIn, penetrationIn } = toeNail(lengthIn);
  const { thicknessIn } = path.side;
  if (startIn > thicknessIn) return refused('toedTooLong', { lengthIn, startIn, thicknessIn });
  const reachIn = penetrationIn - path.gapIn;
  if (reachIn <= 0) return refused('shankEndsEarly', { lengthIn, beginsIn: startIn + path.gapIn });
  if (reachIn > path.main.thicknessIn)
    return refused('shankComesOut', { lengthIn, roomIn: startIn + path.gapIn + path.main.thicknessIn });
  return { ok: true, startIn, reachIn };
}

/**
 * Nails through the side of the upper piece into the lower one, slanted and started as the standard draws it. They hold what
 * that geometry leaves, and less by its factors.
 * @source NDS 12.5.4, from memory
 */
export function toedThrough(
  upper: JointPiece,
  lower: JointPiece,
  line: ShankLine,
  woods: { readonly upper: PieceWood; readonly lower: PieceWood },
  row: FastenerRow,
  size: ShankSize,
  path: Extract<ShankPath, { ok: true }>,
): Standing | Refused {
  const reach = toedReach(upper, size, path);
  if (!reach.ok) return reach;
  const { startIn, reachIn } = reach;
  const inUpper = inWood(
    upper,
    woods.upper,
    line,
    stretchIn(upper.shape!, line)!.fromIn + path.side.thicknessIn - startIn,
    startIn,
    row,
  );
  return {
    ok: true,
    into: line.into,
    side: { ...inUpper, edgeIn: path.side.edgeHalfWayIn ?? Infinity },
    main: inWood(lower, woods.lower, line, stretchIn(lower.shape!, line)!.fromIn, reachIn, row),
    gapIn: path.gapIn,
    beyondIn: 0,
    planes: 1,
    isToed: true,
  };
}
