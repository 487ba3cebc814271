import { CALCULATION_WORDS } from '../../data/words/calculation.ts';
import type { LedgerReport, LoadReport } from '../../engine/evaluation.ts';
import { quantity } from '../../engine/units.ts';
import { combinationInWords } from '../cord/combination.ts';
import { line, type Row, type Table } from '../paper/blocks.ts';
import { showQuantity } from '../units/show-quantity.ts';
import type { UnitSystem } from '../units/system.ts';

/** What a ledger brings to its wall, way by way, and the combination that brings it. */
export function ledgerTable({ forces }: LedgerReport, name: string, loads: LoadReport, system: UnitSystem): Table {
  return {
    kind: 'table',
    label: `Forces of ${name} on its wall. ${CALCULATION_WORDS.ledger}`,
    columns: [
      { head: 'way', share: 60 },
      { head: 'on each foot', share: 80, align: 'right' },
      { head: 'on each fixing', share: 80, align: 'right' },
      { head: 'in', share: 320 },
    ],
    rows: forces.map(({ way, plf, onFixingLb, combinationId }): Row => ({
      cells: [
        line(way),
        line(showQuantity(quantity(plf, 'lb/ft'), system), 'strong'),
        line(onFixingLb === null ? CALCULATION_WORDS.noSpacing : showQuantity(quantity(onFixingLb, 'lb'), system)),
        line(combinationInWords(loads, { combinationId, scenario: '' })),
      ],
    })),
  };
}
