import { remembered } from '../../../../data/sources.ts';
import { STEELS } from '../../../../data/fasteners/steel.ts';
import { put, type Note } from '../../../note.ts';
import { quantity } from '../../../units.ts';
import { refused } from '../../fasteners/refused.ts';
import { dot, type Vector } from '../../fasteners/space.ts';
import type { Pounds } from '../../fasteners/withdrawal.ts';
import type { JointSetting } from '../joint-setting.ts';
import type { PlacedRow } from './row-holds.ts';
import { heldSideways, type RowThere } from './row-sideways.ts';

/** Safety factor on the yield moment. @source AISI F2.1, from memory */
const ON_YIELD = 1.67;
const BENDING = remembered('AISI', 'F2.1');
/** Cosine above which a push runs along the shanks: the post then presses flat on a plate. */
const ALONG_SHANK = 0.5;

/** True where a push presses the post flat against its plates: their bending is then a matter of the base's rating. */
export const pressesFlat = ({ places: [there] }: Extract<PlacedRow, { ok: true }>, force: Vector): boolean =>
  there !== undefined && Math.abs(dot(force, there.standing.into)) > ALONG_SHANK;

/**
 * What plates and fasteners of a post base hold against a push of the foot edgewise to the plates: the fasteners across
 * their shanks in the post, and the standing plates as brackets from the pier up to the farthest of them.
 * @returns pounds, or why they do not hold
 * @source NDS 12.3; AISI S100 F2.1, from memory
 * @departs the elastic section counts, not the plastic one (safe side)
 */
export function footHoldsEdgewise(
  { standOffIn = 0 }: JointSetting,
  { places: [there] }: Extract<PlacedRow, { ok: true }>,
  force: Vector,
  CD: number,
  note?: Note,
): Pounds {
  if (!there) return refused('fastenersNone');
  const held = heldSideways(there, force, CD, note);
  const plates = platesBend(there, standOffIn, note);
  if (!held.ok || !plates.ok) return held.ok ? plates : held;
  const pounds = Math.min(held.pounds, plates.pounds);
  note?.({
    symbol: 'Zf',
    words: 'push edgewise that fasteners and plates of the base hold',
    formula: 'min(Zrow, Pb)',
    put: [put('Zrow', held.pounds, 'lb', 'fasteners'), put('Pb', plates.pounds, 'lb', 'plates in bending')],
    result: quantity(pounds, 'lb'),
    clause: BENDING,
  });
  return { ok: true, pounds };
}

function platesBend({ row, group }: RowThere, standOffIn: number, note?: Note): Pounds {
  if (!row.plate || row.plate.widthIn === null) return refused('strapWidthNotGiven');
  const { thicknessIn: t, widthIn: w, each, steel } = row.plate;
  const { FyPsi: Fy, words } = STEELS[steel];
  const lever = standOffIn + (row.endIn ?? 0) + (group.inRow - 1) * group.spacingIn;
  const pounds = (each * Fy * t * w * w) / 6 / ON_YIELD / Math.max(lever, w);
  note?.({
    symbol: 'Pb',
    words: `push at which the standing plates yield in bending, ${words}`,
    formula: 'n × Fy × t × w^2 / 6 / 1.67 / l',
    put: [
      put('n', each, '1', 'plates'),
      put('Fy', Fy, 'psi', 'least yield strength'),
      put('t', t, 'in', 'thickness'),
      put('w', w, 'in', 'width'),
      put('l', Math.max(lever, w), 'in', 'from the pier to the farthest fastener, at least the width of the plate'),
    ],
    result: quantity(pounds, 'lb'),
    clause: BENDING,
  });
  return { ok: true, pounds };
}
