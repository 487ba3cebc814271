import { notGiven, type Verdict } from '../../check.ts';
import type { LedgerForce, LedgerReport } from '../../evaluation.ts';
import { message } from '../../message.ts';
import type { LedgerLine } from '../../project/model.ts';
import { quantity } from '../../units.ts';
import { onFixing, type LedgerResponse } from './ledger-forces.ts';
import { widthOnFixing, type RafterOnLedger } from './ledger-span.ts';

/** What a ledger brings to its wall in every combination, or why nobody knows. */
export type LedgerAsks = LedgerAsksKnown | { readonly ok: false; readonly line: LedgerLine; readonly verdict: Verdict };

export interface LedgerAsksKnown {
  readonly ok: true;
  readonly line: LedgerLine;
  readonly rafters: readonly RafterOnLedger[];
  readonly responses: readonly LedgerResponse[];
}

/** The greatest of every way, each with the combination that asks it. */
export function ledgerReport(asks: LedgerAsks): LedgerReport {
  const { line } = asks;
  return asks.ok
    ? { lineId: line.id, forces: forcesOf(asks), reason: null }
    : { lineId: line.id, forces: [], reason: asks.verdict.reason ?? null };
}

/** Rafters press, lift and pull where they stand; along itself a ledger is stiff and shares out. */
function forcesOf({ responses, rafters, line: { fixingSpacingIn } }: LedgerAsksKnown): readonly LedgerForce[] {
  const widthIn = fixingSpacingIn === null ? null : widthOnFixing(rafters, fixingSpacingIn);
  return [
    greatest('down', responses, (r) => r.downPlf, widthIn),
    greatest('up', responses, (r) => r.upPlf, widthIn),
    greatest('out', responses, (r) => r.outPlf, widthIn),
    greatest('along', responses, (r) => r.alongPlf, fixingSpacingIn),
  ];
}

function greatest(
  way: LedgerForce['way'],
  responses: readonly LedgerResponse[],
  plfOf: (r: LedgerResponse) => number,
  widthIn: number | null,
): LedgerForce {
  let [plf, combinationId] = [0, ''];
  for (const r of responses) if (plfOf(r) > plf) [plf, combinationId] = [plfOf(r), r.combination.id];
  return { way, plf, onFixingLb: widthIn === null ? null : onFixing(plf, widthIn), combinationId };
}

/** Nobody has rated the fixings: the row shows what they would have to hold. */
export function asksOf(asks: LedgerAsksKnown): Verdict {
  const [downPlf, upPlf, outPlf, alongPlf] = forcesOf(asks).map((force) => force.plf);
  const values = { downPlf: downPlf!, upPlf: upPlf!, outPlf: outPlf!, alongPlf: alongPlf! };
  return notGiven(message('ledgerAsks', values), quantity(Math.max(...Object.values(values)), 'lb/ft'));
}
