import { type Fault, fault } from '../../message.ts';
import type { Project } from '../model.ts';
import { lineAt } from './at.ts';

/** A ledger has a building that carries it, and runs from a lower to a higher x; each side has one wall. */
export function surroundingsFaults(project: Project): readonly Fault[] {
  const carried = project.surroundings.neighbour?.ledgerLine ?? null;
  const ledgers = project.supportLines.flatMap((line) => (line.kind === 'ledger' ? [line] : []));
  const { closed } = project.surroundings;
  return [
    ...ledgers
      .filter(({ id }) => id !== carried)
      .map(({ id }) => fault('surroundings.neighbour', 'ledgerWithoutBuilding', { line: id })),
    ...ledgers
      .filter(({ fromXIn, toXIn }) => fromXIn >= toXIn)
      .map(({ id, fromXIn, toXIn }) => fault(lineAt(id, 'toXIn'), 'endsBeforeStart', { fromXIn, toXIn })),
    ...closed.flatMap(({ side }, i) => {
      const first = closed.findIndex((wall) => wall.side === side);
      return first < i ? [fault(`surroundings.closed[${i}].side`, 'sideClosedTwice', { side, first })] : [];
    }),
  ];
}
