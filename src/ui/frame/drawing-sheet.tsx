import { useDeferredValue, useMemo } from 'react';
import type { Evaluation } from '../../engine/evaluation.ts';
import type { LineGeometry, Shelter } from '../../engine/geometry/shelter.ts';
import type { Project } from '../../engine/project/model.ts';
import { FrontView } from '../drawing/FrontView.tsx';
import { PlanView } from '../drawing/PlanView.tsx';
import { SectionView } from '../drawing/SectionView.tsx';
import { linkOfMember } from '../cord/links.ts';
import { useWorkbench } from '../state/use-workbench.ts';
import { showQuantity } from '../units/show-quantity.ts';
import { renderDimension } from './dimension-field.tsx';
import { look, useFrameView, type SheetView } from './frame-view.ts';
import { HatchChoice, useOverlay } from './hatch.tsx';
import { lineDetailsOf } from './line-details.ts';
import { onMoveBrace, onMovePost } from './moves.ts';
import { useIsPhone, usePaper, useWidth, useWindowHeight } from './paper-size.ts';
import { SHOWS } from './show.ts';

const VIEWS: readonly { readonly view: SheetView; readonly words: string }[] = [
  { view: 'front', words: 'Front view' },
  { view: 'section', words: 'Section' },
  { view: 'plan', words: 'Plan' },
];

interface SheetProps {
  readonly project: Project;
  readonly evaluation: Evaluation;
  readonly stale: boolean;
}

/** The drawing sheet: one view large, the others hang beside it; on a phone one at a time. */
export function DrawingSheet({ project, evaluation, stale }: SheetProps) {
  const [width, ref] = useWidth();
  const isPhone = useIsPhone();
  const large = useFrameView((state) => state.large);
  const { shelter } = evaluation;
  const line = useChosenLine(shelter);
  const small = VIEWS.filter(({ view }) => view !== large);
  const common = { project, evaluation, line };
  return (
    <section className="drawing-sheet" aria-label="Drawing" ref={ref}>
      {isPhone && <ViewTabs large={large} />}
      <Figure view={large} {...common} width={width} isLarge stale={stale} />
      {!isPhone && (
        <div className="small-views">
          {small.map(({ view }) => (
            <Figure
              key={view}
              view={view}
              {...common}
              width={Math.floor((width - 24) / 2)}
              isLarge={false}
              stale={stale}
            />
          ))}
        </div>
      )}
    </section>
  );
}

/** The chosen line, else the first that has a frame. */
function useChosenLine(shelter: Shelter): LineGeometry | undefined {
  const chosen = useFrameView((state) => state.lineId);
  const frames = shelter.lines
    .filter(({ kind }) => kind === 'frame')
    .toSorted((a, b) => a.label.localeCompare(b.label));
  return frames.find(({ id }) => id === chosen) ?? frames[0];
}

function ViewTabs({ large }: { readonly large: SheetView }) {
  return (
    <fieldset className="chooser views">
      <legend className="unseen">View</legend>
      {VIEWS.map(({ view, words }) => (
        <label key={view} className={view === large ? 'chosen' : undefined}>
          <input
            type="radio"
            className="unseen"
            name="view"
            checked={view === large}
            onChange={() => look({ large: view })}
          />
          {words}
        </label>
      ))}
    </fieldset>
  );
}

interface FigureProps {
  readonly view: SheetView;
  readonly project: Project;
  readonly evaluation: Evaluation;
  readonly line: LineGeometry | undefined;
  readonly width: number;
  readonly isLarge: boolean;
  readonly stale: boolean;
}

function Figure({ view, project, evaluation, line, width, isLarge, stale }: FigureProps) {
  const { shelter } = evaluation;
  const words = VIEWS.find((each) => each.view === view)?.words ?? '';
  return (
    <figure className={isLarge ? 'large view' : 'small view'}>
      <figcaption>
        {isLarge ? (
          <h2>{words}</h2>
        ) : (
          <button type="button" className="enlarge" onClick={() => look({ large: view })}>
            {words}
            <span className="unseen">, show it large</span>
          </button>
        )}
        {view === 'front' && <LineChooser shelter={shelter} chosen={line} />}
        {isLarge && stale && <span className="stale">from your last valid entry</span>}
      </figcaption>
      {width > 0 && (
        <Picture view={view} project={project} evaluation={evaluation} line={line} width={width} isLarge={isLarge} />
      )}
      {isLarge && view === 'front' && <HatchChoice />}
    </figure>
  );
}

function LineChooser({ shelter, chosen }: { readonly shelter: Shelter; readonly chosen: LineGeometry | undefined }) {
  const frames = shelter.lines
    .filter(({ kind }) => kind === 'frame')
    .toSorted((a, b) => a.label.localeCompare(b.label));
  if (frames.length < 2) return <span> of line {chosen?.label}</span>;
  return (
    <fieldset className="chooser lines">
      <legend>of line</legend>
      {frames.map(({ id, label }) => (
        <label key={id} className={id === chosen?.id ? 'chosen' : undefined}>
          <input
            type="radio"
            className="unseen"
            name="line"
            checked={id === chosen?.id}
            onChange={() => look({ lineId: id })}
          />
          {label}
        </label>
      ))}
    </fieldset>
  );
}

type PictureProps = Omit<FigureProps, 'stale'>;

function Picture({ view, project, evaluation, line, width, isLarge }: PictureProps) {
  const system = useWorkbench((state) => state.system);
  const selectedMemberId = useFrameView((state) => state.memberId);
  const height = useWindowHeight();
  const paper = usePaper(width, Math.round(height * (isLarge ? 0.52 : 0.32)));
  // what is not looked at follows when there is time
  const late = useDeferredValue(evaluation.shelter);
  const shelter = isLarge ? evaluation.shelter : late;
  const overlay = useOverlay(evaluation, line?.id ?? '');
  const lineDetails = useMemo(() => lineDetailsOf(project), [project]);
  const snow = evaluation.loads.pressures.find(({ name }) => name === 'balancedSnow');
  const common = {
    shelter,
    paper,
    showLength: SHOWS[system].length,
    selectedMemberId,
    onSelect: (memberId: string) => selectMember(evaluation.shelter, memberId),
    ...(isLarge ? { renderDimension } : {}),
  };
  if (view === 'section') {
    const words = snow?.value == null ? null : `snow ${showQuantity({ value: snow.value, unit: snow.unit }, system)}`;
    return <SectionView {...common} lineDetails={lineDetails} snow={isLarge ? words : null} />;
  }
  if (view === 'plan') return <PlanView {...common} units={system} />;
  if (!line) return null;
  return (
    <FrontView
      {...common}
      showDiameter={SHOWS[system].diameter}
      lineId={line.id}
      overlay={isLarge ? overlay : null}
      {...(isLarge ? { move: { onMovePost, onMoveBrace, units: system } } : {})}
    />
  );
}

/** A member that is touched is the one the cord opens; its line is the one that is shown. */
function selectMember(shelter: Shelter, memberId: string): void {
  const parts = [...shelter.beams, ...shelter.posts];
  const lineId = parts.find(({ id }) => id === memberId)?.line ?? lineOfBrace(shelter, memberId);
  look({ memberId, openLink: linkOfMember(shelter, memberId), ...(lineId === undefined ? {} : { lineId }) });
}

const lineOfBrace = (shelter: Shelter, memberId: string): string | undefined => {
  const brace = shelter.braces.find(({ id }) => id === memberId);
  return shelter.posts.find(({ id }) => id === brace?.postId)?.line;
};
