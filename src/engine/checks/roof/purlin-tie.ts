import { clause } from '../../../data/sources.ts';
import { personOnStrip } from '../../loads/person.ts';
import { put, type Note } from '../../note.ts';
import { jointKey } from '../../project/joint-capacity.ts';
import { quantity } from '../../units.ts';
import { weakestHolder, type Holder } from '../joints/holder.ts';
import { ratedSite } from '../joints/rated-site.ts';
import { togetherSite } from '../joints/together-site.ts';
import type { CheckSite } from '../site-of-check.ts';
import type { RoofCheckContext } from './context.ts';
import type { PurlinLoading, PurlinResponse } from './purlin-loading.ts';
import { tellPurlinLoad } from './purlin-telling.ts';

/** Reaction of a continuous purlin over that of its own share of the length (own allowance). */
const CONTINUITY = 1.25;

export interface Crossing {
  readonly rafterId: string;
  /** half way to the neighbours and out to the end [in] */
  readonly shareIn: number;
  /** length of purlin whose lift this crossing may have to hold [in] */
  readonly heldIn: number;
}

/**
 * Pull of a purlin on its ties to the rafters, and its slide down the slope. Crossings tied alike make one row, the one
 * with the longest share; a crossing with a capacity of its own makes rows of its own.
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
  const heldAlike = (all: readonly Crossing[]): Holder => weakestHolder(context, 'purlinRafter', all.map(keyOf));
  return [
    ...(longest ? tieSites(loading, longest, heldAlike(alike), { kind: 'whole', name: '' }) : []),
    ...crossings
      .filter(isOwn)
      .flatMap((c) => tieSites(loading, c, heldAlike([c]), { kind: 'joint', name: c.rafterId })),
  ];
}

/** Length of a purlin that its hardest crossing holds [in]. */
export const hardestCrossing = (loading: PurlinLoading): Crossing =>
  crossingsOf(loading).reduce((a, b) => (b.heldIn > a.heldIn ? b : a));

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

function tieSites(
  loading: PurlinLoading,
  crossing: Crossing,
  holder: Holder,
  place: CheckSite<PurlinResponse>['place'],
): readonly CheckSite<PurlinResponse>[] {
  const tie = { memberId: loading.purlin.id, place, holder };
  const asks = [
    { ruleId: 'purlin.tie', part: 'pull', force: handedOn(loading, crossing, PULL) },
    { ruleId: 'purlin.slide', part: 'across', force: handedOn(loading, crossing, SLIDE) },
  ] as const;
  const together = togetherSite<PurlinResponse>({ ...tie, ruleId: 'purlin.together', parts: asks });
  return [...asks.map((ask) => ratedSite<PurlinResponse>({ ...tie, ...ask })), ...(together ? [together] : [])];
}

/** One way in which a purlin acts on a rafter under it. */
interface HandedOn {
  readonly symbol: string;
  readonly words: string;
  readonly formula: string;
  readonly loadWords: string;
  readonly load: (r: PurlinResponse) => number;
  readonly counts: (load: number) => number;
  /** part of a plumb load that acts this way */
  readonly ofPlumb: (loading: PurlinLoading) => number;
}

const PULL: HandedOn = {
  symbol: 'T',
  words: 'pull of the purlin at one rafter',
  formula: 'max(0, -w) × l',
  loadWords: 'load square to the slope, down +',
  load: (r) => r.square,
  counts: (w) => Math.max(0, -w),
  ofPlumb: () => 0,
};
const SLIDE: HandedOn = {
  symbol: 'S',
  words: 'slide of the purlin at one rafter, down the slope',
  formula: 'abs(w) × l',
  loadWords: 'load along the slope',
  load: (r) => r.along,
  counts: Math.abs,
  ofPlumb: ({ sin }) => sin,
};
export const PRESS: HandedOn = {
  symbol: 'P',
  words: 'press of the purlin on one rafter',
  formula: 'max(0, w) × l',
  loadWords: 'load square to the slope, down +',
  load: (r) => r.square,
  counts: (w) => Math.max(0, w),
  ofPlumb: ({ cos }) => cos,
};

/**
 * What the length of purlin that a crossing holds hands on to it, in one way [lb]. A person at work stands right over the
 * crossing, with nothing but dead load beside.
 */
export const handedOn =
  (loading: PurlinLoading, { shareIn, heldIn }: Crossing, way: HandedOn) =>
  (r: PurlinResponse, note?: Note): number => {
    const part = way.ofPlumb(loading);
    const person = part * personOnStrip(r.combination, loading.purlin.tributaryWidthIn * loading.cos);
    const even = person > 0 ? part * r.dead : way.load(r);
    const force = way.counts(even) * heldIn + person;
    if (note && person === 0) tellPurlinLoad(loading, r, note);
    note?.({
      symbol: way.symbol,
      words: way.words,
      formula: person > 0 ? `${way.formula} + N` : way.formula,
      put: [
        put('w', even, 'lb/in', person > 0 ? 'dead load that acts this way' : way.loadWords),
        put(
          'l',
          heldIn,
          'in',
          `length held here: ${CONTINUITY} times its share of ${shareIn.toFixed(2)} in., or by lever at an end`,
        ),
        ...(person > 0 ? [put('N', person, 'lb', 'a person at work right over it, the part that acts this way')] : []),
      ],
      result: quantity(force, 'lb'),
      clause: clause('OWN', 'continuity allowance of a purlin'),
    });
    return force;
  };
