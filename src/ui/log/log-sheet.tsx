import '../styles/link-body.css';
import './log.css';
import { useDeferredValue, useEffect, useMemo, useRef, useState } from 'react';
import { setAt } from '../../engine/project/edits/set-at.ts';
import { removeStation, setStation } from '../../engine/project/edits/set-station.ts';
import type { Evaluation } from '../../engine/evaluation.ts';
import type { Log, LogStock, Project } from '../../engine/project/model.ts';
import { stockOf } from '../../engine/project/traits.ts';
import { HowToMeasure } from '../cord/how-to-measure.tsx';
import { logUnder, memberIn, membersFromLog } from '../cord/own.ts';
import { PieceChooser } from '../cord/piece-chooser.tsx';
import { namesOf } from '../cord/places.ts';
import { SeenSentence } from '../cord/seen-sentence.tsx';
import { PictureView, type RenderDimension } from '../drawing/PictureView.tsx';
import type { Phase } from '../drawing/SlideHandle.tsx';
import { CommandButton } from '../fields/command-choice.tsx';
import { Yours } from '../fields/yours.tsx';
import { look, useFrameView } from '../frame/frame-view.ts';
import { useIsPhone, usePaper } from '../frame/paper-size.ts';
import { SHOWS } from '../frame/show.ts';
import { acts, useWorkbench } from '../state/use-workbench.ts';
import { HandCuts } from './hand-cuts.tsx';
import { LogHandles } from './log-handles.tsx';
import { logPicture } from './log-picture.ts';
import { diameterOn, logShown } from './log-shown.ts';
import { neededOf } from './needed-of-member.ts';
import { marksAlong, pieceName } from './piece-words.ts';
import { Section } from './section-here.tsx';
import { SilhouetteSwitch } from './silhouette-switch.tsx';
import { StationTable } from './station-table.tsx';
import { Worth } from './worth.tsx';

interface LogSheetProps {
  readonly project: Project;
  readonly evaluation: Evaluation;
  readonly memberId: string;
  readonly width: number;
  readonly stale: boolean;
}

/** One log by itself: measured, seen, cut, and what it is worth. */
export function LogSheet(props: LogSheetProps) {
  const { project, evaluation, memberId, stale } = props;
  const names = useMemo(() => namesOf(evaluation), [evaluation]);
  const log = logUnder(project, memberId);
  const member = memberIn(project, memberId);
  const stock = member ? stockOf(project, member) : null;
  const name = member ? pieceName(names, member) : 'this piece';
  return (
    <div className="log-sheet">
      <div className="loads-head">
        <h2>Log of {name}</h2>
        <button type="button" className="tool" onClick={leave}>
          back to the views
        </button>
        {stale && <span className="stale">from your last valid entry</span>}
      </div>
      {log && (
        <PieceChooser
          name="Piece of this log"
          ids={membersFromLog(project, log.id)}
          chosen={memberId}
          names={names}
          onChoose={(logOf) => look({ logOf })}
        />
      )}
      {log && stock?.kind === 'log' ? (
        <Drawn {...props} log={log} stock={stock} name={name} />
      ) : (
        <p>{name} is not made of a log.</p>
      )}
    </div>
  );
}

function leave(): void {
  look({ logOf: null });
  requestAnimationFrame(() => document.querySelector<HTMLElement>('.look-at-log')?.focus());
}

interface DrawnProps extends LogSheetProps {
  readonly log: Log;
  readonly stock: LogStock;
  readonly name: string;
}

function Drawn({ project, evaluation, memberId, width, log, stock, name }: DrawnProps) {
  const system = useWorkbench((state) => state.system);
  const isPhone = useIsPhone();
  const withSilhouette = useFrameView(({ silhouette }) => silhouette) ?? !isPhone;
  const paper = usePaper(width, 400);
  const settled = useDeferredValue(evaluation);
  const { shelter } = evaluation;
  const member = memberIn(project, memberId);
  const shown = useMemo(
    () => logShown(project, shelter, memberId, log, stock),
    [project, shelter, memberId, log, stock],
  );
  const needed = useMemo(
    () => (withSilhouette ? neededOf(settled, memberId) : null),
    [withSilhouette, settled, memberId],
  );
  const [lookedAt, setLookedAt] = useState<number | null>(null);
  const newest = useRef<string | null>(null);
  useEffect(() => {
    // who adds a station goes on to write down what was measured there
    if (newest.current === null) return;
    const field = document.querySelector<HTMLElement>(`.log-sheet .stations [data-path="${newest.current}"]`);
    newest.current = null;
    field?.focus({ preventScroll: isPhone });
  });
  const drawn = useMemo(() => {
    if (!shown) return null;
    const { length, diameter } = SHOWS[system];
    const marks = marksAlong(shelter, memberId);
    return logPicture(shown, { paper, showLength: length, showDiameter: diameter, name, marks, needed });
  }, [shown, system, paper, name, needed, shelter, memberId]);
  if (!shown || !drawn) return <p>Its bark is on and its thickness is not given: there is no wood to draw.</p>;

  const atIn = Math.min(lookedAt ?? (shown.used[0] + shown.used[1]) / 2, shown.lengthIn);
  const show = SHOWS[system].length;
  const add = (fromButtIn: number): void => {
    const near = shown.stations.find((s) => Math.abs(s.fromButtIn - fromButtIn) < 1);
    setLookedAt(near?.fromButtIn ?? fromButtIn);
    const index = near ? shown.stations.indexOf(near) : shown.stations.filter((s) => s.fromButtIn < fromButtIn).length;
    newest.current = `logs[${log.id}].stations[${index}].diameterIn`;
    if (near) return;
    const station = { fromButtIn, diameterIn: measuredBetween(log, fromButtIn) };
    acts().perform({ name: 'add a station', perform: (p) => setStation(p, log.id, station), undo: 'now' });
  };
  const move = (index: number, fromButtIn: number, phase: Phase): void => {
    if (phase === 'cancel') return acts().cancelGesture();
    const path = `logs[${log.id}].stations[${index}].fromButtIn`;
    acts().perform({ name: 'move a station', perform: (p) => setAt(p, path, fromButtIn), undo: 'with-next' });
    if (phase === 'end') acts().settle();
  };
  const remove = (index: number): void => {
    const { fromButtIn } = shown.stations[index]!;
    acts().perform({
      name: 'remove a station',
      perform: (p) => removeStation(p, log.id, fromButtIn),
      undo: 'now',
    });
  };
  return (
    <>
      <PictureView picture={drawn.picture} renderDimension={renderDiameter}>
        <LogHandles
          drawn={drawn}
          shown={shown}
          units={system}
          showLength={show}
          atIn={atIn}
          onLook={setLookedAt}
          onAdd={add}
          onMove={move}
          onRemove={remove}
        />
      </PictureView>
      <p className="aside">
        {drawn.times > 1 && `Drawn ${drawn.times} times thicker than long. `}
        Touch the log to add a station there; its rings slide along it. The place looked at slides on the line below,
        Enter adds a station there.
      </p>
      <SilhouetteSwitch wholeRow={needed?.wholeRow ?? null} />
      <div className="log-columns">
        <Section
          project={project}
          shelter={shelter}
          memberId={memberId}
          atIn={shown.alongPiece(atIn)}
          place={`${show(atIn)} from the butt`}
        />
        <div>
          <h3>Measured</h3>
          <StationTable log={log} />
          <p>
            <CommandButton
              words={`put the worst foot ${show(atIn)} from the butt`}
              name="place of the worst foot"
              perform={(p) => setAt(p, `logs[${log.id}].seen.knotAtFromButtIn`, atIn)}
            />
          </p>
        </div>
        {member && (
          <div>
            <h3>Cut into it</h3>
            <HandCuts {...{ project, shelter, member, shown, atIn }} place={`${show(atIn)} from the butt`} />
          </div>
        )}
        <div>
          <h3>Seen on it</h3>
          <SeenSentence log={log} of={name} />
          <HowToMeasure />
        </div>
        <div>
          <h3>What it is worth</h3>
          <Worth log={log} />
        </div>
      </div>
    </>
  );
}

/** What stands at a place until it is measured: straight between the stations beside it, bark and all. */
const measuredBetween = (log: Log, fromButtIn: number): number => diameterOn({ stations: log.stations }, fromButtIn);

const renderDiameter: RenderDimension = (path, _, { text }) => (
  <Yours path={path} label="Diameter at a station" shownAs={text} />
);
