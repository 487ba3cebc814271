import { CUT_WASHERS } from '../../../../data/fasteners/bolts.ts';
import type { PulledKind } from '../../../../data/fasteners/kind.ts';
import { STEELS } from '../../../../data/fasteners/steel.ts';
import { FASTENER_WORDS } from '../../../../data/words/fasteners-pulled.ts';
import { remembered } from '../../../../data/sources.ts';
import { put, type Note } from '../../../note.ts';
import { quantity } from '../../../units.ts';
import { tensionOfSteel } from '../../fasteners/fastener-tension.ts';
import { headPullThrough } from '../../fasteners/head-pull-through.ts';
import { geometryFactor } from '../../fasteners/placement.ts';
import { pullOver } from '../../fasteners/pull-over.ts';
import { refused, type Refused } from '../../fasteners/refused.ts';
import { angleToGrainDeg } from '../../fasteners/round-geometry.ts';
import { washerBearing } from '../../fasteners/washer-bearing.ts';
import { grainMet, withdrawal, type Pounds } from '../../fasteners/withdrawal.ts';
import { HOLE_MORE_IN } from './bored.ts';
import { loadOn, placeIn } from './group.ts';
import { countOf, type RowThere } from './row-sideways.ts';
import type { InWood } from './in-wood.ts';

/**
 * What a row holds against a pull along its shanks: the shank in the wood that holds it, its steel, and its head. All
 * fasteners of a row share the pull alike.
 * @returns pounds of the whole row, or why it does not hold
 * @source NDS 12.2, 11.2.2, 3.10; AISI S100 J4.4 where a sheet lies under the head
 */
export function heldAgainstPull(there: RowThere, CD: number, note?: Note): Pounds {
  // what never holds a pull has no distances to keep for one
  const { kind } = there.size;
  if (kind === 'driftPin') return refused('driftPinNotPulled');
  const near = tooNear(there);
  if (near) return near;
  const limits = [shankHolds(there, kind, CD, note), headHolds(there, CD, note), steelHolds(there, note)];
  const refusal = limits.find((limit): limit is Refused => !limit.ok);
  if (refusal) return refusal;
  const each = Math.min(...limits.map((limit) => (limit.ok ? limit.pounds : 0)));
  const n = countOf(there);
  note?.({
    symbol: 'Trow',
    words: 'all fasteners of the row against pull',
    formula: 'n × T',
    put: [put('n', n, '1', 'fasteners'), put('T', each, 'lb', 'the least of shank, head and steel')],
    result: quantity(n * each, 'lb'),
    clause: remembered('NDS', '11.2.2'),
  });
  return { ok: true, pounds: n * each };
}

const BOUNDLESS: Pounds = { ok: true, pounds: Infinity };

/** The shank in the piece that holds it; a bolt holds by its nut. */
function shankHolds(there: RowThere, kind: PulledKind | 'bolt', CD: number, note?: Note): Pounds {
  const { size, standing, row } = there;
  const { main } = standing;
  if (kind === 'bolt') return row.plate?.each === 2 ? BOUNDLESS : underWasher(there, main, CD, note);
  const grain = grainMet(angleToGrainDeg(main.shape, { at: main.shape.axisAt, into: standing.into }));
  const pulled = (used: (typeof main.wood.used)[number], tell?: Note): Pounds =>
    withdrawal(
      {
        kind,
        diameterIn: size.nominalIn,
        lengthIn: size.lengthIn,
        penetrationIn: main.lengthIn,
        gravity: main.wood.gravity(tell),
        grain,
        isToed: standing.isToed,
        made: row.driven,
        used,
      },
      CD,
      tell,
    );
  const [worst] = main.wood.used.toSorted((a, b) => poundsOf(pulled(a)) - poundsOf(pulled(b)));
  return pulled(worst!, note);
}

const poundsOf = (answer: Pounds): number => (answer.ok ? answer.pounds : 0);

/** The head on the piece under it. */
function headHolds(there: RowThere, CD: number, note?: Note): Pounds {
  const { size, standing } = there;
  const { side } = standing;
  if (side.material === 'steel') {
    if (size.headIn === null) return refused('headNotKnown', { fastener: FASTENER_WORDS[size.kind] });
    return { ok: true, pounds: pullOver({ thicknessIn: side.lengthIn, headIn: size.headIn, steel: side.steel }, note) };
  }
  if (size.kind === 'lag' || size.kind === 'bolt') return underWasher(there, side, CD, note);
  const used = side.wood.used[0]!;
  return headPullThrough(
    { kind: size.kind, headIn: size.headIn, sideIn: side.lengthIn, gravity: side.wood.gravity(note), used },
    CD,
    note,
  );
}

function underWasher({ row, size, standing, group }: RowThere, piece: InWood, CD: number, note?: Note): Pounds {
  const listed = CUT_WASHERS.rows.find((w) => Math.abs(w.nominalIn - size.nominalIn) < 1e-3);
  const outsideIn = size.headIn ?? size.nominalIn;
  const { into } = standing;
  const place = placeIn(piece, into, group, loadOn(piece, into, group, group.along), size, 0, false);
  const { diameterIn } = piece.shape;
  return washerBearing(
    {
      outsideIn,
      holeIn: Math.min(listed?.holeIn ?? Infinity, size.nominalIn + HOLE_MORE_IN),
      diameterIn,
      flatIn: row.plate ? piece.flatIn : (row.headFlatIn ?? 0),
      edgeIn: place.loadedEdgeIn,
      offIn: piece.edgeIn - place.loadedEdgeIn,
      toEndIn: Math.max(0, piece.endIn - outsideIn / 2),
      angleDeg: angleToGrainDeg(piece.shape, { at: piece.shape.axisAt, into }),
      FcPerpPsi: piece.wood.values.FcPerpPsi,
      FcStarPsi: piece.wood.values.FcPsi * CD,
    },
    note,
  );
}

/** The steel of a threaded shank at its root. */
function steelHolds({ size }: RowThere, note?: Note): Pounds {
  if (size.rootIn >= size.nominalIn) return BOUNDLESS;
  return {
    ok: true,
    pounds: tensionOfSteel({ shankIn: size.nominalIn, rootIn: size.rootIn, steel: STEELS.rod }, note),
  };
}

/** What is pulled wants distances of its own. @source NDS Table 12.5.1E, from memory; thin shanks: commentary C12.1.6 */
function tooNear({ size, standing, group }: RowThere): Refused | null {
  const { main, into } = standing;
  const place = placeIn(main, into, group, loadOn(main, into, group, group.along), size, 0, false);
  const factor = geometryFactor({ ...place, loads: [] });
  return factor.ok ? null : factor;
}
