import { LEDGER_WORDS } from '../../data/words/sheet.ts';
import type { JointSetting } from '../../engine/checks/joints/joint-setting.ts';
import type { JointPart } from '../../engine/checks/joints/rated.ts';
import type { CheckRow, Evaluation, LedgerForce } from '../../engine/evaluation.ts';
import type { Project } from '../../engine/project/model.ts';
import { quantity, type Quantity } from '../../engine/units.ts';
import { showLength } from '../units/show-length.ts';
import { showAmount, showQuantity, showUnit } from '../units/show-quantity.ts';
import type { UnitSystem } from '../units/system.ts';

/** `221 of 650`, with the unit where it is no plain force; what nobody has rated shows what it is asked. */
export function askedCell(
  row: CheckRow | null,
  part: JointPart,
  { ledgers }: Pick<Evaluation, 'ledgers'>,
  system: UnitSystem,
): string {
  if (row === null) return '';
  const ofLedger = row.capacity === null ? forcesOfLedger(row.memberId, ledgers) : null;
  const demand = ofLedger?.[part] ?? row.demand;
  // a sum of shares is no force
  if (demand === null || demand.unit === '1') return '';
  const asked = showAmount(demand, system);
  const unit = demand.unit === 'lb' ? '' : ` ${showUnit(demand.unit, system)}`;
  // nothing is asked of bare contact
  if (row.status === 'pass' && row.capacity === null) return `${asked}${unit}`;
  return `${asked} of ${row.capacity ? showAmount(row.capacity, system) : '?'}${unit}`;
}

/** Forces on each foot of a ledger, where they are known: outward, along the wall, up or down. */
export function forcesOfLedger(
  lineId: string,
  ledgers: Evaluation['ledgers'],
): Readonly<Record<JointPart, Quantity>> | null {
  const forces = ledgers.find((ledger) => ledger.lineId === lineId)?.forces;
  if (!forces || forces.length === 0) return null;
  const most = (...ways: readonly LedgerForce['way'][]): Quantity =>
    quantity(Math.max(...forces.filter(({ way }) => ways.includes(way)).map(({ plf }) => plf)), 'lb/ft');
  return { push: most('out'), pull: most('out'), along: most('along'), across: most('down', 'up') };
}

/** How far the fixings of a ledger stand apart, and what it brings to its wall on each foot and on each fixing. */
export function ledgerWords(
  project: Project,
  joint: JointSetting,
  ledgers: Evaluation['ledgers'],
  system: UnitSystem,
): string {
  if (joint.kind !== 'ledgerWall') return '';
  const line = project.supportLines.find(({ id }) => id === joint.upper.id);
  const every = line?.kind === 'ledger' && line.fixingSpacingIn !== null ? line.fixingSpacingIn : null;
  const forces = ledgers.find(({ lineId }) => lineId === joint.upper.id)?.forces ?? [];
  const onFoot = forces.map(({ way, plf }) => `${way} ${showQuantity(quantity(plf, 'lb/ft'), system)}`);
  const onFixing = forces.flatMap(({ way, onFixingLb: lb }) =>
    lb === null ? [] : [`${way} ${showQuantity(quantity(lb, 'lb'), system)}`],
  );
  return [
    ...(every === null ? [] : [`, ${LEDGER_WORDS.every} ${showLength(every, system)}`]),
    ...(onFoot.length === 0 ? [] : [`; ${onFoot.join(', ')}`]),
    ...(onFixing.length === 0 ? [] : [`; ${LEDGER_WORDS.onEachFixing} ${onFixing.join(', ')}`]),
  ].join('');
}
