import { type Fault, fault } from '../../message.ts';
import type { Log, Project, Station } from '../model.ts';

/** What can be cut from a log: between its first and last station, less what is trimmed off [in from the butt]. */
export function usableStretch(log: Log): readonly [number, number] {
  const from = log.stations[0]?.fromButtIn ?? 0;
  const to = log.stations.at(-1)?.fromButtIn ?? 0;
  return [Math.max(from, log.trim?.buttIn ?? 0), to - (log.trim?.tipIn ?? 0)];
}

/** Every log as it was measured, in the design and as peeled later. */
export function logFaults(project: Project): readonly Fault[] {
  return [
    ...project.logs.flatMap((log) => [
      ...stationFaults(`logs[${log.id}].stations`, log.stations),
      ...trimFaults(log),
      ...barkFaults(log),
    ]),
    ...project.asBuilt.peeled.flatMap(({ stations }, i) => stationFaults(`asBuilt.peeled[${i}].stations`, stations)),
  ];
}

const stationFaults = (path: string, stations: readonly Station[]): readonly Fault[] =>
  stations.slice(1).flatMap(({ fromButtIn }, i) => {
    const beforeIn = stations[i]!.fromButtIn;
    return fromButtIn > beforeIn
      ? []
      : [fault(`${path}[${i + 1}].fromButtIn`, 'stationsNotAscending', { got: fromButtIn, beforeIn })];
  });

function trimFaults(log: Log): readonly Fault[] {
  const [from, to] = usableStretch(log);
  return !log.trim || from < to ? [] : [fault(`logs[${log.id}].trim`, 'trimmedAway', { log: log.id })];
}

function barkFaults(log: Log): readonly Fault[] {
  const thinnestIn = Math.min(
    ...log.stations.map(({ diameterIn, acrossIn }) => Math.min(diameterIn, acrossIn ?? diameterIn)),
  );
  const barkIn = log.barkIn ?? 0;
  return 2 * barkIn < thinnestIn ? [] : [fault(`logs[${log.id}].barkIn`, 'barkTooThick', { barkIn, thinnestIn })];
}
