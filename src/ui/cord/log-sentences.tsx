import { setStation } from '../../engine/project/edits/set-station.ts';
import type { Log, Project } from '../../engine/project/model.ts';
import { YoursChoice } from '../fields/choice.tsx';
import { CommandButton } from '../fields/command-choice.tsx';
import { Yours } from '../fields/yours.tsx';
import { newId, useOpenProject } from '../state/use-workbench.ts';
import { logUnder, membersFromLog, traitPath } from './own.ts';
import { HowToMeasure } from './how-to-measure.tsx';
import { MeasuredSentence } from './measured-sentence.tsx';
import { withLogOfItsOwn } from './own-edits.ts';
import { SeenSentence } from './seen-sentence.tsx';
import { SpeciesAside, SpeciesChoice } from './species-choice.tsx';
import { WoodSentence } from './wood-sentence.tsx';

const HOW = [
  { value: 'assumed', words: 'assumed' },
  { value: 'predicted', words: 'predicted from the standing tree' },
  { value: 'measured', words: 'measured on the log' },
];
const LIES = [
  { value: 'start', words: 'start' },
  { value: 'end', words: 'end' },
];
/** Where the butt lies, for members whose ends have names. */
const ENDS: Readonly<Record<string, readonly [string, string]>> = {
  beam: ['to the left', 'to the right'],
  post: ['at the foot', 'at the top'],
  brace: ['at the lower end', 'at the upper end'],
  rafter: ['at the eave', 'at the ridge'],
  purlin: ['to the left', 'to the right'],
};

interface LogProps {
  readonly memberId: string;
  /** what the piece is called in labels */
  readonly of: string;
}

/** The log that a member is made of: its wood, its sizes, how it lies, what was seen on it. */
export function LogSentences({ memberId, of }: LogProps) {
  const project = useOpenProject();
  const log = logUnder(project, memberId);
  const member = project.members.find(({ id }) => id === memberId);
  if (!log || !member) return null;
  const stock = traitPath(project, memberId, 'stock');
  const ends = ENDS[member.role] ?? ['at the start', 'at the end'];
  const last = log.stations.length - 1;
  return (
    <>
      <p className="sentence">
        A <SpeciesChoice woodId={log.woodId} of={of} /> log, sizes{' '}
        <YoursChoice path={`logs[${log.id}].how`} label={`${of}: how its sizes are known`} choices={HOW} />:{' '}
        {log.stations.map((station, i) => (
          <StationWords key={station.fromButtIn} log={log} index={i} of={of} />
        ))}{' '}
        <Yours path={`logs[${log.id}].stations[${last}].fromButtIn`} label={`${of}: length of the log`} /> long, butt{' '}
        <span className="as-one">
          <YoursChoice
            path={`${stock}.buttAt`}
            label={`${of}: where the butt lies`}
            choices={LIES.map(({ value }, i) => ({ value, words: ends[i] ?? value }))}
          />
          ,
        </span>{' '}
        used from <Yours path={`${stock}.fromButtIn`} label={`${of}: distance from the butt`} /> above the butt on.{' '}
        <CommandButton words="add a measured place" perform={(p) => withStationBetween(p, log)} />
      </p>
      <SharedLog log={log} memberId={memberId} />
      <MeasuredSentence log={log} memberId={memberId} of={of} />
      <SeenSentence log={log} of={of} />
      <HowToMeasure />
      <WoodSentence log={log} of={of} />
      <SpeciesAside log={log} />
    </>
  );
}

function StationWords({ log, index, of }: { readonly log: Log; readonly index: number; readonly of: string }) {
  const path = `logs[${log.id}].stations[${index}]`;
  const last = log.stations.length - 1;
  const where = index === 0 ? 'the butt' : index === last ? 'the tip' : 'a place between';
  return (
    <>
      <Yours path={`${path}.diameterIn`} label={`${of}: diameter at ${where}`} /> at{' '}
      {index > 0 && index < last ? (
        <Yours path={`${path}.fromButtIn`} label={`${of}: distance of the measured place from the butt`} />
      ) : (
        where
      )}
      ,{' '}
      {isThickerThanBefore(log, index) && (
        <output className="asks">
          thicker here than nearer the butt: measured right, or is the butt at the other end?
        </output>
      )}
    </>
  );
}

/** Logs taper to the tip. One that does not is taken as it was measured, but it is seldom so. */
const isThickerThanBefore = ({ stations }: Log, index: number): boolean =>
  stations.slice(0, index).some((before) => before.diameterIn < (stations[index]?.diameterIn ?? 0));

/** Between the two stations that lie farthest apart, the diameter straight between them until it is measured. */
function withStationBetween(project: Project, log: Log): Project {
  const gaps = log.stations.slice(1).map((to, i) => ({ from: log.stations[i]!, to }));
  const widest = gaps.reduce((a, b) =>
    b.to.fromButtIn - b.from.fromButtIn > a.to.fromButtIn - a.from.fromButtIn ? b : a,
  );
  return setStation(project, log.id, {
    fromButtIn: Math.round((widest.from.fromButtIn + widest.to.fromButtIn) / 2),
    diameterIn: (widest.from.diameterIn + widest.to.diameterIn) / 2,
  });
}

/** What else changes with this log, and the way out of it. */
function SharedLog({ log, memberId }: { readonly log: Log; readonly memberId: string }) {
  const project = useOpenProject();
  const sharers = membersFromLog(project, log.id);
  if (sharers.length < 2) return null;
  return (
    <p className="aside">
      {sharers.length} pieces are made of this size of log and change with it.{' '}
      <CommandButton
        words="only this one"
        name="a log of its own"
        perform={(p) => withLogOfItsOwn(p, memberId, `log-${newId()}`)}
      />
    </p>
  );
}
