import { clause } from '../../../data/sources.ts';
import { put, type Note } from '../../note.ts';
import { capacityOf, jointKey } from '../../project/joint-capacity.ts';
import type { Capacity } from '../../project/model.ts';
import { quantity } from '../../units.ts';
import { ratedSite } from '../joints/rated-site.ts';
import type { CheckSite } from '../site-of-check.ts';
import type { RoofCheckContext } from './context.ts';
import type { PurlinLoading, PurlinResponse } from './purlin-loading.ts';
import { tellPurlinLoad } from './purlin-telling.ts';

/** Reaction of a continuous purlin over that of its own share of the length (own allowance). */
const CONTINUITY = 1.25;

interface Crossing {
  readonly rafterId: string;
  /** half way to the neighbours and out to the end [in] */
  readonly shareIn: number;
  /** length of purlin whose lift this crossing may have to hold [in] */
  readonly heldIn: number;
}

/**
 * Pull of a purlin on its ties to the rafters. Crossings tied alike make one row, the one with the longest share;
 * a crossing with a capacity of its own makes a row of its own.
 */
export function purlinTieSites(
  context: RoofCheckContext,
  loading: PurlinLoading,
): readonly CheckSite<PurlinResponse>[] {
  const { purlin } = loading;
  const { joints } = context.project;
  const keyOf = (c: Crossing): string => jointKey('purlinRafter', purlin.id, c.rafterId);
  const isOwn = (c: Crossing): boolean => joints.own.some((joint) => joint.key === keyOf(c));
  const crossings = crossingsOf(loading);
  const alike = crossings.filter((c) => !isOwn(c));
  const longest = alike.reduce<Crossing | null>((a, b) => (a === null || b.heldIn > a.heldIn ? b : a), null);
  const capacity = (c: Crossing): Capacity => capacityOf(context.project, 'purlinRafter', keyOf(c));
  return [
    ...(longest ? [tieSite(loading, longest, capacity(longest), { kind: 'whole', name: '' })] : []),
    ...crossings.filter(isOwn).map((c) => tieSite(loading, c, capacity(c), { kind: 'joint', name: c.rafterId })),
  ];
}

function crossingsOf({ purlin }: PurlinLoading): readonly Crossing[] {
  const at = purlin.rafterXIn;
  return at.map((x, i) => {
    const before = at[i - 1];
    const after = at[i + 1];
    const from = before === undefined ? purlin.fromXIn : (before + x) / 2;
    const to = after === undefined ? purlin.toXIn : (x + after) / 2;
    return {
      rafterId: purlin.rafterIds[i]!,
      shareIn: to - from,
      heldIn: Math.max(
        CONTINUITY * (to - from),
        leverIn(x - purlin.fromXIn, before, x, after),
        leverIn(purlin.toXIn - x, after, x, before),
      ),
    };
  });
}

/** Reaction per unit load of an outer crossing with an end beyond it and one span behind; 0 for an inner one [in]. */
function leverIn(endIn: number, outward: number | undefined, x: number, inward: number | undefined): number {
  if (outward !== undefined || inward === undefined || endIn <= 0) return 0;
  const span = Math.abs(inward - x);
  return (span + endIn) ** 2 / (2 * span);
}

function tieSite(
  loading: PurlinLoading,
  crossing: Crossing,
  capacity: Capacity,
  place: CheckSite<PurlinResponse>['place'],
): CheckSite<PurlinResponse> {
  return ratedSite<PurlinResponse>({
    ruleId: 'purlin.tie',
    memberId: loading.purlin.id,
    place,
    capacity,
    part: 'pull',
    force: (r, note) => {
      const pull = Math.max(0, -r.square) * crossing.heldIn;
      if (note) tellPull(loading, crossing, r, pull, note);
      return pull;
    },
  });
}

function tellPull(loading: PurlinLoading, crossing: Crossing, r: PurlinResponse, pull: number, note: Note): void {
  tellPurlinLoad(loading, r, note);
  note({
    symbol: 'T',
    words: 'pull of the purlin at one rafter',
    formula: 'max(0, -w) × l',
    put: [
      put('w', r.square, 'lb/in', 'load square to the slope, down +'),
      put(
        'l',
        crossing.heldIn,
        'in',
        `length held here: ${CONTINUITY} times its share of ${crossing.shareIn.toFixed(2)} in., or by lever at an end`,
      ),
    ],
    result: quantity(pull, 'lb'),
    clause: clause('OWN', 'continuity allowance of a purlin'),
  });
}
