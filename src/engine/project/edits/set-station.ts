import { MisuseError } from '../../errors.ts';
import type { Id, Project, Station } from '../model.ts';

/**
 * The project with a measured station on a log: it takes the place of the one at the same distance from the butt, or
 * goes in between its neighbours.
 * @throws MisuseError  if there is no such log
 */
export function setStation(project: Project, logId: Id, station: Station): Project {
  if (!project.logs.some(({ id }) => id === logId)) throw new MisuseError('logId', logId, 'a log of the project');
  const logs = project.logs.map((log) => {
    if (log.id !== logId) return log;
    const others = log.stations.filter(({ fromButtIn }) => fromButtIn !== station.fromButtIn);
    return { ...log, stations: [...others, station].sort((a, b) => a.fromButtIn - b.fromButtIn) };
  });
  return { ...project, logs };
}

/**
 * The project without the station of a log at a distance from the butt. Its first and its last stay: they are its ends.
 * @throws MisuseError  if there is no such log, or no station between its ends there
 */
export function removeStation(project: Project, logId: Id, fromButtIn: number): Project {
  const stations = project.logs.find(({ id }) => id === logId)?.stations ?? [];
  if (!stations.slice(1, -1).some((s) => s.fromButtIn === fromButtIn)) {
    throw new MisuseError('fromButtIn', fromButtIn, 'a station between the ends of a log of the project');
  }
  const logs = project.logs.map((log) =>
    log.id === logId ? { ...log, stations: log.stations.filter((s) => s.fromButtIn !== fromButtIn) } : log,
  );
  return { ...project, logs };
}
