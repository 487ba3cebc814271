import type { LineCheckContext } from '../checks/line-context.ts';
import type { SeatOnPost } from '../checks/transverse/rafter-on-post.ts';
import { withSecondOrder } from '../frame/second-order.ts';
import { analyseLine, type LineResponse } from '../frame/line-frame.ts';
import type { RowGeometry } from '../geometry/rows.ts';
import type { PostGeometry } from '../geometry/shelter.ts';
import type { Givens } from '../givens.ts';
import { elasticity, stabilityShare } from '../line-stiffness.ts';
import type { LoadCase } from '../loads/cases.ts';
import { deadOverTheYears } from '../loads/combine.ts';
import type { Combination } from '../loads/combination.ts';
import { stretchesOf } from '../loads/stretches.ts';
import { message, type Message } from '../message.ts';
import { pullIsGiven } from '../pull-is-given.ts';
import { whyMembersUnknown, type Blocked } from '../why-not-analysed.ts';
import { inPlaceId, pressedId } from './case-ids.ts';
import { bracedRafter, whyRafterNotComputed } from './braced-rafter.ts';
import type { PushAcross, PushesAcross } from './push-across.ts';
import { roofOnRafter } from './roof-on-rafter.ts';
import { deadOfRow, pressedRow, pushOnRow } from './row-loads.ts';
import { turnedRow } from './turned-row.ts';

/** A row that holds itself across as a frame, analysed; or why it is not. */
export type RowAnswer =
  | { readonly ok: true; readonly row: RowGeometry; readonly frame: RowFrame }
  | { readonly ok: false; readonly row: RowGeometry; readonly blocked: Blocked };

export interface RowFrame {
  readonly context: LineCheckContext;
  /** Emin over E of a member */
  readonly share: (memberId: string) => number;
  /** which way of holding the push a response is of; null where nothing pushes across */
  readonly pushOf: (response: LineResponse) => PushAcross | null;
  /** what the lines press on the tops of its posts */
  readonly seatOn: FromLines['seatOn'];
}

/** What the frame lines bring: every combination, the cases behind them, and what each presses on a post. */
export interface FromLines {
  readonly combinations: readonly Combination[];
  readonly cases: readonly LoadCase[];
  /** greatest push on the foot that any brace model brings [lb] */
  readonly pressOn: (post: PostGeometry, combinationId: string) => number;
  /** what the beam of a line presses on the top of a post */
  readonly seatOn: (post: PostGeometry, combinationId: string) => SeatOnPost;
}

/**
 * Analyses a row for every strength combination of the lines, each way in which its push across may be held, and for the
 * weight of its own logs over the years.
 */
export function analyseRow(
  givens: Givens,
  row: RowGeometry,
  lines: FromLines,
  across: PushesAcross,
  shareOf: ReadonlyMap<string, number>,
): RowAnswer {
  const { project, shelter, site, materials } = givens;
  const notReached = whyRafterNotComputed(givens, row);
  if (notReached) return { ok: false, row, blocked: { status: 'outside', reason: notReached } };
  const members = turnedRow(project, row);
  const blocked = whyMembersUnknown(givens, members);
  if (blocked) return { ok: false, row, blocked };
  const rafter = bracedRafter(row);
  const roof = rafter && roofOnRafter(givens, row, rafter, lines.cases);
  const dead = [...deadOfRow(givens, row), ...(roof ? [roof.dead] : [])];
  const inPlace = across.pushes.flatMap((push) => roof?.inPlace(push) ?? []);
  const asked = combinationsOf(lines, across, new Set([...(roof?.cases ?? []), ...inPlace].map((c) => c.caseId)));
  const cases = [
    ...across.pushes.map((push) => pushOnRow(row, across, push, shareOf, members.posts)),
    ...inPlace,
    ...(roof?.cases ?? []),
    ...lines.combinations.map(({ id }) => pressedRow(row, pressedId(id), (post) => lines.pressOn(post, id))),
  ];
  const answer = analyseLine(
    members,
    { lineId: row.id, dead, cases, alongLb: {}, deadLb: 0, inertiaLb: 0 },
    [...asked.keys(), deadOverTheYears(project.calculation.kcr)],
    elasticity(givens, members),
    { pullGiven: pullIsGiven({ project, shelter, valuesOf: materials.of }, members.braces), holdsItself: true },
  );
  if (!answer.ok)
    return { ok: false, row, blocked: { status: 'outside', reason: message('rowIsMechanism', { row: row.label }) } };
  const share = stabilityShare(givens, members);
  const frame = withSecondOrder(answer.frame, share);
  const reason = (code: Message['code']): Message =>
    message(code === 'nothingHoldsWhilePulled' ? 'rowLetsGo' : 'rowNothingHolds', { row: row.label });
  const context: LineCheckContext = {
    project,
    shelter,
    line: members.line,
    frame: { ...frame, unheld: frame.unheld.map((u) => ({ ...u, reason: reason(u.reason.code) })) },
    site,
    stretches: stretchesOf(members.line, members.posts),
    alongLb: {},
    valuesOf: materials.of,
  };
  return {
    ok: true,
    row,
    frame: { context, share, pushOf: (r) => asked.get(r.combination) ?? null, seatOn: lines.seatOn },
  };
}

/**
 * Every strength combination of the lines as the rows are asked it: once for each way of holding its push across.
 * @param onRafter  cases that come down on the rafter of the row
 */
function combinationsOf(
  { combinations, cases }: FromLines,
  { pushes }: PushesAcross,
  onRafter: ReadonlySet<string>,
): ReadonlyMap<Combination, PushAcross | null> {
  const comesWith = new Map(cases.map((c) => [c.id, c.pushAcross ?? null]));
  // of a push along the lines a row bears nothing in its own plane but what the roof then brings to its rafter; its tie logs
  // are pushed to the side by it
  const along = new Set(cases.filter((c) => c.swaysAlong).map((c) => c.id));
  const asked = new Map<Combination, PushAcross | null>();
  for (const combination of combinations) {
    const pressed = { caseId: pressedId(combination.id), factor: 1 };
    const pushing = combination.factors.find((f) => comesWith.get(f.caseId));
    const ways = pushing ? pushes.filter((push) => push.comesWith === comesWith.get(pushing.caseId)) : [];
    const ofRoof = combination.factors.filter((f) => onRafter.has(f.caseId));
    const beside = combination.factors.filter((f) => along.has(f.caseId) && !onRafter.has(f.caseId));
    if (ways.length === 0)
      asked.set({ ...combination, factors: [...beside, ...ofRoof, pressed], swaysAlong: false }, null);
    for (const push of ways) {
      const pushed = [push.id, inPlaceId(push.id)]
        .filter((id) => id === push.id || onRafter.has(id))
        .map((caseId) => ({ caseId, factor: pushing!.factor }));
      asked.set(
        { ...combination, factors: [...pushed, ...ofRoof, pressed], gravityOnly: false, swaysAlong: true },
        push,
      );
    }
  }
  return asked;
}
