import { LEDGER_WORDS } from '../../data/words/sheet.ts';
import type { JointSetting } from '../../engine/checks/joints/joint-setting.ts';
import type { JointPart } from '../../engine/checks/joints/rated.ts';
import type { CheckRow } from '../../engine/evaluation.ts';
import type { Message } from '../../engine/message.ts';
import type { Project } from '../../engine/project/model.ts';
import { quantity, type Quantity } from '../../engine/units.ts';
import { showLength } from '../units/show-length.ts';
import { showAmount, showQuantity, showUnit } from '../units/show-quantity.ts';
import type { UnitSystem } from '../units/system.ts';

/** `221 of 650`, with the unit where it is no plain force; what nobody has rated shows what it is asked. */
export function askedCell(row: CheckRow | null, part: JointPart, system: UnitSystem): string {
  if (row === null) return '';
  const demand = askedOfLedger(row)?.[part] ?? row.demand;
  // a sum of shares is no force
  if (demand === null || demand.unit === '1') return '';
  const asked = showAmount(demand, system);
  const unit = demand.unit === 'lb' ? '' : ` ${showUnit(demand.unit, system)}`;
  // nothing is asked of bare contact
  if (row.status === 'pass' && row.capacity === null) return `${asked}${unit}`;
  return `${asked} of ${row.capacity ? showAmount(row.capacity, system) : '?'}${unit}`;
}

/** Forces on each foot of a ledger whose fixings nobody has rated: outward, along the wall, up or down. */
function askedOfLedger({ reason }: CheckRow): Readonly<Record<JointPart, Quantity>> | null {
  const plf = ledgerForces(reason);
  if (!plf) return null;
  const { down, up, out, along } = plf;
  return { push: out, pull: out, along, across: down.value > up.value ? down : up };
}

function ledgerForces(reason: Message | undefined): Readonly<Record<'down' | 'up' | 'out' | 'along', Quantity>> | null {
  if (reason?.code !== 'ledgerAsks') return null;
  const plf = (name: string): Quantity => quantity(Number(reason.values[name]), 'lb/ft');
  return { down: plf('downPlf'), up: plf('upPlf'), out: plf('outPlf'), along: plf('alongPlf') };
}

/** What a ledger asks on each foot, in the directions of its wall, and how far its fixings stand apart. */
export function ledgerWords(project: Project, joint: JointSetting, worst: CheckRow, system: UnitSystem): string {
  if (joint.kind !== 'ledgerWall') return '';
  const line = project.supportLines.find(({ id }) => id === joint.upper.id);
  const every = line?.kind === 'ledger' && line.fixingSpacingIn !== null ? line.fixingSpacingIn : null;
  const forces = ledgerForces(worst.reason);
  return [
    ...(every === null ? [] : [`, ${LEDGER_WORDS.every} ${showLength(every, system)}`]),
    ...(forces
      ? [
          `; ${Object.entries(forces)
            .map(([way, plf]) => `${way} ${showQuantity(plf, system)}`)
            .join(', ')}`,
        ]
      : []),
  ].join('');
}
