import type { LedgerReport } from '../../evaluation.ts';
import type { CheckSource } from '../check-source.ts';
import type { RoofCheckContext } from './context.ts';
import { ledgerChecks } from './ledger.ts';
import { purlinChecks } from './purlin-checks.ts';
import { rafterChecks } from './rafter-checks.ts';
import { sheetChecks } from './sheet.ts';
import { stripTieChecks } from './strip-tie.ts';

/** Every check of the roof down the load path (sheet, purlins, rafters with their ties, ledger, strips), and what ledgers bring. */
export function roofChecks(context: RoofCheckContext): {
  readonly sources: readonly CheckSource[];
  readonly ledgers: readonly LedgerReport[];
} {
  const rafters = rafterChecks(context);
  const ledgers = ledgerChecks(context, rafters);
  const sources = [
    ...sheetChecks(context),
    ...purlinChecks(context),
    ...rafters.sources,
    ...ledgers.sources,
    ...stripTieChecks(context, rafters),
  ];
  return { sources, ledgers: ledgers.reports };
}
