import { removeStation, setStation } from '../../engine/project/edits/set-station.ts';
import { CommandButton } from '../fields/command-choice.tsx';
import { CommandLength } from '../fields/command-length.tsx';
import { Yours } from '../fields/yours.tsx';
import type { Log } from '../../engine/project/model.ts';

/** Every measured place of a log: across by caliper, or round it by tape. */
export function StationTable({ log }: { readonly log: Log }) {
  const last = log.stations.length - 1;
  return (
    <table className="stations">
      <caption className="unseen">Measured places of the log</caption>
      <thead>
        <tr>
          <th scope="col">From the butt</th>
          <th scope="col">Across</th>
          <th scope="col">Girth</th>
          <th scope="col">
            <span className="unseen">Take away</span>
          </th>
        </tr>
      </thead>
      <tbody>
        {log.stations.map((station, i) => {
          const path = `logs[${log.id}].stations[${i}]`;
          const name = i === 0 ? 'butt' : i === last ? 'tip' : `station ${i}`;
          return (
            <tr key={i}>
              <th scope="row">
                {i === 0 && station.fromButtIn === 0 ? (
                  'butt'
                ) : (
                  <Yours path={`${path}.fromButtIn`} label={`Distance of the ${name} from the butt`} />
                )}
                {i === last && ' tip'}
              </th>
              <td>
                <Yours path={`${path}.diameterIn`} label={`Across at the ${name}`} />
                {station.acrossIn !== undefined && (
                  <>
                    {' '}
                    <span className="as-one">
                      by <Yours path={`${path}.acrossIn`} label={`Across the other way at the ${name}`} />
                    </span>
                  </>
                )}
              </td>
              <td>
                <CommandLength
                  label={`Girth at the ${name}`}
                  valueIn={Math.PI * station.diameterIn}
                  of="girth"
                  perform={(project, girthIn) =>
                    setStation(project, log.id, { ...station, diameterIn: girthIn / Math.PI, read: 'girth' })
                  }
                />
              </td>
              <td>
                {i > 0 && i < last && (
                  <CommandButton
                    words="remove"
                    name={`remove ${name}`}
                    perform={(project) => removeStation(project, log.id, station.fromButtIn)}
                  />
                )}
              </td>
            </tr>
          );
        })}
      </tbody>
    </table>
  );
}
