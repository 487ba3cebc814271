import {
  BETWEEN_ROWS,
  EDGE_DISTANCE,
  END_DISTANCE,
  IN_ROW,
  PULLED_LAG,
  THIN_FASTENERS,
  type DistanceInDiameters,
  type LoadOnGrain,
} from '../../../data/fasteners/placement.ts';
import { remembered } from '../../../data/sources.ts';
import { notNegative, positive } from '../../errors.ts';
import { cited } from '../../material/citation.ts';
import { put, type Note, type Step } from '../../note.ts';
import { quantity } from '../../units.ts';
import { THICK_FROM_IN } from './dowel-bearing.ts';
import { refused, type Refused } from './refused.ts';

const LEAST_OF_ALL = remembered('NDS', '12.5.1');
/** Distances that differ by the last bit of a number are the same. */
const SLACK_IN = 1e-9;

/** How fasteners stand in one wood piece. On a round log edges are measured along the chord at the fastener. */
export interface FastenerPlace {
  readonly nominalIn: number;
  readonly isHardwood: boolean;
  /** thin shanks alone ask */
  readonly isPrebored: boolean;
  /** every way in which a combination pushes this wood; at an angle to the grain, along and across; none: it is only pulled */
  readonly loads: readonly LoadOnGrain[];
  readonly endIn: number;
  /** to the edge that a load across the grain presses toward, and to the other one */
  readonly loadedEdgeIn: number;
  readonly unloadedEdgeIn: number;
  /** from one to the next in a row; null where a row has one */
  readonly inRowIn: number | null;
  /** from row to row, and from the first to the last; null where there is one row */
  readonly rowsApartIn: number | null;
  readonly outerRowsIn: number | null;
  /** all rows are held by one plate or piece that does not shrink with the wood */
  readonly hasOnePlate: boolean;
  /** bearing length over diameter, the lesser of main piece and all side pieces together */
  readonly slenderness: number;
}

export type GeometryFactor = { readonly ok: true; readonly Cdelta: number } | Refused;

/**
 * Geometry factor of a group: the least share of the full distances to the end and in the row. Distances to the edge and
 * between rows have no share, they are kept or not.
 * @param place of the fasteners in one of the pieces; ask each piece, the least one counts
 * @returns CΔ, 0.5 to 1, or the distance that is too short
 * @throws MisuseError if the diameter is not above zero or a distance below zero
 * @source NDS 12.5.1, Tables 12.5.1A to E, from memory; thin shanks: commentary C12.1.6 (own rule)
 */
export function geometryFactor(place: FastenerPlace, note?: Note): GeometryFactor {
  positive('nominalIn', place.nominalIn);
  for (const name of ['endIn', 'loadedEdgeIn', 'unloadedEdgeIn', 'slenderness'] as const)
    notNegative(name, place[name]);
  const tooShort = firstTooShort(place);
  if (tooShort) return tooShort;
  const Cdelta =
    place.nominalIn < THICK_FROM_IN ? 1 : Math.min(1, ...place.loads.flatMap((load) => shares(place, load)));
  if (note) {
    for (const load of place.loads) tellShares(place, load, note);
    note(leastShareStep(place, Cdelta));
  }
  return { ok: true, Cdelta };
}

function leastShareStep(place: FastenerPlace, Cdelta: number): Step {
  const isThin = place.nominalIn < THICK_FROM_IN;
  const all = isThin ? [] : place.loads.flatMap((load) => shares(place, load));
  const puts = all.map((share, i) => put(`C${i + 1}`, share, '1', 'share of a full distance'));
  const why = isThin ? ': thinner than 1/4 in.' : all.length === 0 ? ': only pulled' : '';
  return {
    symbol: 'CΔ',
    words: `geometry factor${why}`,
    formula: puts.length === 0 ? '1' : `min(1, ${puts.map(({ symbol }) => symbol).join(', ')})`,
    put: puts,
    result: quantity(Cdelta, '1'),
    clause: LEAST_OF_ALL,
  };
}

const isAcross = (load: LoadOnGrain): boolean => load === 'across';
const endOf = ({ isHardwood }: FastenerPlace, load: LoadOnGrain): DistanceInDiameters =>
  END_DISTANCE[isHardwood ? 'hardwood' : 'softwood'][load];
const rowOf = (load: LoadOnGrain): DistanceInDiameters => (isAcross(load) ? IN_ROW.across : IN_ROW.along);

const shares = (place: FastenerPlace, load: LoadOnGrain): readonly number[] => [
  place.endIn / (endOf(place, load).full * place.nominalIn),
  ...(place.inRowIn === null ? [] : [place.inRowIn / (rowOf(load).full * place.nominalIn)]),
];

function tellShares(place: FastenerPlace, load: LoadOnGrain, note: Note): void {
  if (place.nominalIn < THICK_FROM_IN) return;
  const asked = [
    { symbol: 'end', words: 'to the end', gotIn: place.endIn, full: endOf(place, load).full, table: END_DISTANCE },
    ...(place.inRowIn === null
      ? []
      : [{ symbol: 'row', words: 'in the row', gotIn: place.inRowIn, full: rowOf(load).full, table: IN_ROW }]),
  ];
  for (const { symbol, words, gotIn, full, table } of asked) {
    note({
      symbol: `CΔ ${symbol}`,
      words: `share of the full distance ${words}, ${LOAD_WORDS[load]}`,
      formula: 's / (k × D)',
      put: [
        put('s', gotIn, 'in', `distance ${words}`),
        put('k', full, '1', 'diameters for full value'),
        put('D', place.nominalIn, 'in', 'nominal diameter'),
      ],
      result: quantity(gotIn / (full * place.nominalIn), '1'),
      clause: cited(table.source, table.where, table.seen),
    });
  }
}

const LOAD_WORDS: Readonly<Record<LoadOnGrain, string>> = {
  towardEnd: 'loaded toward the end',
  awayFromEnd: 'loaded away from the end',
  across: 'loaded across the grain',
};

/** What is asked of one distance: the reason when it is short, and how many diameters it must have. */
interface Asked {
  readonly code:
    'fastenerNearEnd' | 'fastenerNearEdge' | 'fastenerNearLoadedEdge' | 'fastenersNearInRow' | 'fastenerRowsNear';
  readonly gotIn: number | null;
  readonly diameters: number;
}

function firstTooShort(place: FastenerPlace): Refused | null {
  const D = place.nominalIn;
  const isThin = D < THICK_FROM_IN;
  for (const { code, gotIn, diameters } of leastDistances(place, isThin)) {
    const leastIn = diameters * D;
    if (gotIn !== null && gotIn < leastIn - SLACK_IN) return refused(code, { gotIn, leastIn, diameters });
  }
  return isThin ? null : (slenderNearEdge(place) ?? rowsTooFarApart(place));
}

function leastDistances(place: FastenerPlace, isThin: boolean): readonly Asked[] {
  const { loads } = place;
  if (isThin) return (loads.length === 0 ? PULLED_AS : loads).flatMap((load) => leastOfThin(place, load));
  return loads.length === 0 ? leastOfPulled(place) : loads.flatMap((load) => leastOfThick(place, load));
}

/** A thin shank that is only pulled keeps the distances of a push away from the end (own rule). */
const PULLED_AS: readonly LoadOnGrain[] = ['awayFromEnd'];

function leastOfPulled({ endIn, loadedEdgeIn, unloadedEdgeIn, inRowIn, rowsApartIn }: FastenerPlace): readonly Asked[] {
  const { end, edge, spacing } = PULLED_LAG;
  return [
    { code: 'fastenerNearEnd', gotIn: endIn, diameters: end },
    { code: 'fastenerNearEdge', gotIn: Math.min(loadedEdgeIn, unloadedEdgeIn), diameters: edge },
    { code: 'fastenersNearInRow', gotIn: inRowIn, diameters: spacing },
    { code: 'fastenerRowsNear', gotIn: rowsApartIn, diameters: spacing },
  ];
}

function leastOfThick(place: FastenerPlace, load: LoadOnGrain): readonly Asked[] {
  const { endIn, loadedEdgeIn, unloadedEdgeIn, inRowIn, rowsApartIn } = place;
  const across = isAcross(load);
  return [
    { code: 'fastenerNearEnd', gotIn: endIn, diameters: endOf(place, load).least },
    across
      ? { code: 'fastenerNearLoadedEdge', gotIn: loadedEdgeIn, diameters: EDGE_DISTANCE.loaded }
      : { code: 'fastenerNearEdge', gotIn: loadedEdgeIn, diameters: EDGE_DISTANCE.along },
    {
      code: 'fastenerNearEdge',
      gotIn: unloadedEdgeIn,
      diameters: across ? EDGE_DISTANCE.unloaded : EDGE_DISTANCE.along,
    },
    { code: 'fastenersNearInRow', gotIn: inRowIn, diameters: rowOf(load).least },
    {
      code: 'fastenerRowsNear',
      gotIn: rowsApartIn,
      diameters: across ? betweenRowsAcross(place.slenderness) : BETWEEN_ROWS.along,
    },
  ];
}

/** Diameters between rows loaded across the grain, growing straight with the slenderness of the shank. */
function betweenRowsAcross(slenderness: number): number {
  const { acrossStout, stoutTo, acrossSlender, slenderFrom } = BETWEEN_ROWS;
  const share = Math.min(1, Math.max(0, (slenderness - stoutTo) / (slenderFrom - stoutTo)));
  return acrossStout + share * (acrossSlender - acrossStout);
}

function leastOfThin(place: FastenerPlace, load: LoadOnGrain): readonly Asked[] {
  const least = THIN_FASTENERS[place.isPrebored ? 'prebored' : 'driven'];
  return [
    { code: 'fastenerNearEnd', gotIn: place.endIn, diameters: least.end[load] },
    { code: 'fastenerNearEdge', gotIn: Math.min(place.loadedEdgeIn, place.unloadedEdgeIn), diameters: least.edge },
    {
      code: 'fastenersNearInRow',
      gotIn: place.inRowIn,
      diameters: isAcross(load) ? least.inRowAcross : least.inRowAlong,
    },
    { code: 'fastenerRowsNear', gotIn: place.rowsApartIn, diameters: least.betweenRows },
  ];
}

/** Along the grain a slender shank also wants half of what is between its rows to the edge. */
function slenderNearEdge(place: FastenerPlace): Refused | null {
  const { loads, slenderness, rowsApartIn, loadedEdgeIn, unloadedEdgeIn } = place;
  if (rowsApartIn === null || slenderness <= EDGE_DISTANCE.slenderFrom || loads.every(isAcross)) return null;
  const gotIn = Math.min(loadedEdgeIn, unloadedEdgeIn);
  const leastIn = rowsApartIn / 2;
  return gotIn < leastIn - SLACK_IN ? refused('fastenerSlenderNearEdge', { gotIn, leastIn }) : null;
}

/** Outer rows across the grain on one plate: the wood shrinks between them and splits. */
function rowsTooFarApart({ hasOnePlate, outerRowsIn, loads }: FastenerPlace): Refused | null {
  if (!hasOnePlate || outerRowsIn === null || loads.every(isAcross)) return null;
  const mostIn = BETWEEN_ROWS.onOnePlateIn;
  return outerRowsIn > mostIn + SLACK_IN ? refused('fastenerRowsApart', { gotIn: outerRowsIn, mostIn }) : null;
}
