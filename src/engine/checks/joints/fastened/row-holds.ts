import type { PulledKind } from '../../../../data/fasteners/kind.ts';
import { clause } from '../../../../data/sources.ts';
import { put, type Note } from '../../../note.ts';
import type { FastenerRow } from '../../../project/model.ts';
import { degreesFromRadians, quantity } from '../../../units.ts';
import { combinedResistance } from '../../fasteners/combined.ts';
import { refused, type Refused } from '../../fasteners/refused.ts';
import { dot, type Vector } from '../../fasteners/space.ts';
import { strapPull } from '../../fasteners/steel-strap.ts';
import type { Pounds } from '../../fasteners/withdrawal.ts';
import type { JointSetting } from '../joint-setting.ts';
import type { JointPart } from '../rated.ts';
import { groupOf, squareTo } from './group.ts';
import { heldAgainstPull } from './row-pulled.ts';
import { heldSideways, type RowThere } from './row-sideways.ts';
import { shankSize } from './shank-size.ts';
import { standingsOf, steelOf, type Woods } from './standing.ts';

/** A part of a direction smaller than this is none. */
const NONE = 1e-6;

/** A row as it is written, where it stands in a joint: every place it joins, or why it does not fit. */
export type PlacedRow =
  { readonly ok: true; readonly row: FastenerRow; readonly places: readonly RowThere[] } | Refused;

export function placeRow(setting: JointSetting, woods: Woods, row: FastenerRow): PlacedRow {
  const answer = shankSize(row);
  if (!answer.ok) return answer;
  const places: RowThere[] = [];
  for (const standing of standingsOf(setting, woods, row, answer.size)) {
    if (!standing.ok) return standing;
    const group = groupOf(setting, standing, row);
    if ('ok' in group) return group;
    places.push({ row, size: answer.size, standing, group });
  }
  return { ok: true, row, places };
}

/**
 * What a placed row holds in one direction of its joint: the least of the places that it joins, and of its strap.
 * @returns pounds, or why it does not hold that way
 * @source NDS 12.3, 12.2, 12.4; AISI S100 D2, D3
 */
export function rowHolds(
  setting: JointSetting,
  { row, places }: Extract<PlacedRow, { ok: true }>,
  part: JointPart,
  CD: number,
  note?: Note,
): Pounds {
  if (part === 'push') return refused('fastenersDoNotPush');
  const isStrap = row.plate !== undefined && setting.upper.of !== 'sheet';
  if (isStrap && part !== 'pull') return refused('strapOnlyPulls');
  const force = setting.ways[part];
  let least = Infinity;
  for (const there of places) {
    const held = heldThere(there, force, CD, note);
    if (!held.ok) return held;
    least = Math.min(least, held.pounds);
  }
  if (!isStrap) return { ok: true, pounds: least };
  const strap = strapHolds(row, note);
  if (!strap.ok) return strap;
  return { ok: true, pounds: Math.min(least, strap.pounds) };
}

function heldThere(there: RowThere, force: Vector, CD: number, note?: Note): Pounds {
  const { row, standing, size } = there;
  const pull = Math.abs(dot(force, standing.into));
  const sideways = squareTo(force, standing.into);
  const push = Math.sqrt(Math.max(0, 1 - pull * pull));
  const isPulled = pull > NONE;
  const isPushed = push > NONE && sideways !== null;
  if ((isPulled && row.acts === 'lateral') || (isPushed && row.acts === 'withdrawal')) return refused('rowDoesNotAct');
  if (!isPulled) return heldSideways(there, sideways!, CD, note);
  const pulled = heldAgainstPull(there, CD, note);
  if (!pulled.ok || !isPushed) return pulled;
  const pushed = heldSideways(there, sideways, CD, note);
  if (!pushed.ok) return pushed;
  const carries = { pullLb: pulled.pounds, pushLb: pushed.pounds };
  const angleDeg = degreesFromRadians(Math.atan2(pull, push));
  if (size.kind === 'bolt' || size.kind === 'driftPin') return bothAtOnce(carries, pull, push, note);
  const kind: PulledKind = size.kind;
  return { ok: true, pounds: combinedResistance(kind, carries, angleDeg, note) };
}

/** A bolt that is pulled and pushed at once has no equation in the standard: one straight sum of shares (own rule). */
function bothAtOnce(
  { pullLb, pushLb }: { readonly pullLb: number; readonly pushLb: number },
  pull: number,
  push: number,
  note?: Note,
): Pounds {
  const pounds = 1 / (pull / pullLb + push / pushLb);
  note?.({
    symbol: 'R',
    words: 'force aslant at which the shares of pull and sideways force add up to 1',
    formula: '1 / (a / T + b / Z)',
    put: [
      put('a', pull, '1', 'part of the force along the bolt'),
      put('T', pullLb, 'lb', 'held along it'),
      put('b', push, '1', 'part of the force across it'),
      put('Z', pushLb, 'lb', 'held across it'),
    ],
    result: quantity(pounds, 'lb'),
    clause: clause('OWN', 'one straight sum of shares'),
  });
  return { ok: true, pounds };
}

/** The steel of all straps of a row. */
function strapHolds(row: FastenerRow, note?: Note): Pounds {
  const { plate, diameterIn: fastenerIn, rows: abreast } = row;
  if (!plate || plate.widthIn === null) return refused('strapWidthNotGiven');
  const { widthIn, thicknessIn, each } = plate;
  const strap = strapPull({ widthIn, thicknessIn, steel: steelOf(row), fastenerIn, abreast }, note);
  return strap.ok ? { ok: true, pounds: strap.pullLb * each } : strap;
}
