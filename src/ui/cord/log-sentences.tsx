import { CLEAR_WOOD } from '../../data/wood/species.ts';
import { say } from '../../data/words/say.ts';
import { setAt } from '../../engine/project/edits/set-at.ts';
import { setStation } from '../../engine/project/edits/set-station.ts';
import type { Log, Project, Seen } from '../../engine/project/model.ts';
import { YoursChoice } from '../fields/choice.tsx';
import { CommandButton } from '../fields/command-choice.tsx';
import { Yours } from '../fields/yours.tsx';
import { newId, useOpenProject, useWorkbench } from '../state/use-workbench.ts';
import { logUnder, membersFromLog, traitPath } from './own.ts';
import { withLogOfItsOwn } from './own-edits.ts';
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
        <YoursChoice
          path={`${stock}.buttAt`}
          label={`${of}: where the butt lies`}
          choices={LIES.map(({ value }, i) => ({ value, words: ends[i] ?? value }))}
        />
        , used from <Yours path={`${stock}.fromButtIn`} label={`${of}: distance from the butt`} /> above the butt on.{' '}
        <CommandButton words="add a measured place" perform={(p) => withStationBetween(p, log)} />
      </p>
      <SharedLog log={log} memberId={memberId} />
      <SeenSentence log={log} of={of} />
      <WoodSentence log={log} of={of} />
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

function SpeciesChoice({ woodId, of }: { readonly woodId: string; readonly of: string }) {
  const species = useWorkbench(({ project }) => project?.woods.find(({ id }) => id === woodId)?.species ?? '');
  const names = CLEAR_WOOD.map(({ name }) => name);
  const listed = names.includes(species) ? names : [species, ...names];
  return (
    <YoursChoice
      path={`woods[${woodId}].species`}
      label={`${of}: species`}
      choices={listed.map((name) => ({ value: name, words: name.charAt(0).toLowerCase() + name.slice(1) }))}
    />
  );
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

const UNSEEN: Seen = {
  worstKnotIn: null,
  grainSlope1In: null,
  spiral: null,
  checks: '',
  straightIn: null,
  by: '',
  date: null,
};
const SPIRALS = [
  { value: 'none', words: 'none' },
  { value: 'left', words: 'to the left' },
  { value: 'right', words: 'to the right' },
];

function SeenSentence({ log, of }: { readonly log: Log; readonly of: string }) {
  const held = useWorkbench(({ evaluation }) => evaluation?.logs.find(({ logId }) => logId === log.id)?.heldBackBy);
  const seen = `logs[${log.id}].seen`;
  if (log.seen === null) {
    return (
      <p className="sentence">
        Nobody has looked at its knots and grain: the lowest stated strength is used.{' '}
        <CommandButton words="I have looked at it" perform={(p) => setAt(p, seen, UNSEEN)} />
      </p>
    );
  }
  const knots = log.seen.knotsInWorstFootIn ?? [];
  return (
    <p className="sentence">
      Widest knot <Yours path={`${seen}.worstKnotIn`} label={`${of}: widest knot`} />; in the worst foot of length{' '}
      {knots.length === 0 && 'no knot written down'}
      {knots.map((_, i) => (
        <span key={i}>
          <Yours path={`${seen}.knotsInWorstFootIn[${i}]`} label={`${of}: knot ${i + 1} of the worst foot`} />{' '}
        </span>
      ))}
      <CommandButton
        words="one more"
        name="one more knot"
        perform={(p) => setAt(p, `${seen}.knotsInWorstFootIn`, [...knots, 1])}
      />
      {knots.length > 0 && (
        <CommandButton
          words="one fewer"
          name="one knot fewer"
          perform={(p) => setAt(p, `${seen}.knotsInWorstFootIn`, knots.length > 1 ? knots.slice(0, -1) : undefined)}
        />
      )}
      . Grain <Yours path={`${seen}.grainSlope1In`} label={`${of}: slope of grain`} />, twist{' '}
      <YoursChoice path={`${seen}.spiral`} label={`${of}: twist of the grain`} choices={SPIRALS} />, drying checks{' '}
      <Yours path={`${seen}.checks`} label={`${of}: drying checks`} kind="text" />. Looked at by{' '}
      <Yours path={`${seen}.by`} label={`${of}: who looked`} kind="text" /> on{' '}
      <Yours path={`${seen}.date`} label={`${of}: day it was looked at`} kind="text" />. {held && say(held)}
    </p>
  );
}
