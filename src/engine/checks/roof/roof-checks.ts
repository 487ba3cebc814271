import type { CheckSource } from '../check-source.ts';
import type { RoofCheckContext } from './context.ts';
import { ledgerChecks } from './ledger.ts';
import { purlinChecks } from './purlin-checks.ts';
import { rafterChecks } from './rafter-checks.ts';
import { sheetChecks } from './sheet.ts';
import { stripTieChecks } from './strip-tie.ts';

/** Every check of the roof down the load path: sheet, purlins, rafters with their ties, ledger, strips. */
export function roofChecks(context: RoofCheckContext): readonly CheckSource[] {
  const rafters = rafterChecks(context);
  return [
    ...sheetChecks(context),
    ...purlinChecks(context),
    ...rafters.sources,
    ...ledgerChecks(context, rafters),
    ...stripTieChecks(context, rafters),
  ];
}
