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
