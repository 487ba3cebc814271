import { notGiven, type Verdict } from '../../check.ts';
import type { LedgerForce, LedgerReport } from '../../evaluation.ts';
import { message } from '../../message.ts';
import type { LedgerLine } from '../../project/model.ts';
import { quantity } from '../../units.ts';
import { onFixing, type LedgerResponse } from './ledger-forces.ts';

/** What a ledger brings to its wall in every combination, or why nobody knows. */
export type LedgerAsks =
  | { readonly ok: true; readonly line: LedgerLine; readonly responses: readonly LedgerResponse[] }
  | { readonly ok: false; readonly line: LedgerLine; readonly verdict: Verdict };

/** The greatest of every way, each with the combination that asks it. */
export function ledgerReport(asks: LedgerAsks): LedgerReport {
  const { line } = asks;
  return asks.ok
    ? { lineId: line.id, forces: forcesOf(asks.responses, line.fixingSpacingIn), reason: null }
    : { lineId: line.id, forces: [], reason: asks.verdict.reason ?? null };
}

const forcesOf = (responses: readonly LedgerResponse[], spacingIn: number | null): readonly LedgerForce[] => [
  greatest('down', responses, (r) => r.downPlf, spacingIn),
  greatest('up', responses, (r) => r.upPlf, spacingIn),
  greatest('out', responses, (r) => r.outPlf, spacingIn),
  greatest('along', responses, (r) => r.alongPlf, spacingIn),
];

function greatest(
  way: LedgerForce['way'],
  responses: readonly LedgerResponse[],
  plfOf: (r: LedgerResponse) => number,
  spacingIn: number | null,
): LedgerForce {
  let [plf, combinationId] = [0, ''];
  for (const r of responses) if (plfOf(r) > plf) [plf, combinationId] = [plfOf(r), r.combination.id];
  return { way, plf, onFixingLb: spacingIn === null ? null : onFixing(plf, spacingIn), combinationId };
}

/** Nobody has rated the fixings: the row shows what they would have to hold. */
export function asksOf(responses: readonly LedgerResponse[]): Verdict {
  const [downPlf, upPlf, outPlf, alongPlf] = forcesOf(responses, null).map((force) => force.plf);
  const values = { downPlf: downPlf!, upPlf: upPlf!, outPlf: outPlf!, alongPlf: alongPlf! };
  return notGiven(message('ledgerAsks', values), quantity(Math.max(...Object.values(values)), 'lb/ft'));
}
