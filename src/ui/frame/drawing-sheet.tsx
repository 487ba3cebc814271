import type { Evaluation } from '../../engine/evaluation.ts';
import type { Shelter } from '../../engine/geometry/shelter.ts';
import type { Project } from '../../engine/project/model.ts';
import { late } from '../late.tsx';
import { useLoadsView, type LoadWish } from '../loads/loads-view.ts';
import { ShowLoads } from '../loads/show-loads.tsx';
import { withProgram } from '../state/use-workbench.ts';
import { look, useFrameView } from './frame-view.ts';
import { HatchChoice } from './hatch.tsx';
import { useIsPhone, useWidth } from './paper-size.ts';
import { Picture, type PictureProps, type Size } from './sheet-picture.tsx';
import { LineChooser, useChosenLine, VIEWS, ViewTabs } from './view-choosers.tsx';

const LoadsSheet = late(async () => (await withProgram(import('../loads/loads-sheet.tsx'))).LoadsSheet);
const BuckledWords = late(async () => (await withProgram(import('./buckled.tsx'))).BuckledWords);
const SilhouetteSwitch = late(async () => (await import('../log/silhouette-switch.tsx')).SilhouetteSwitch);
const LogSheet = late(async () => (await withProgram(import('../log/log-sheet.tsx'))).LogSheet);

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
  const carriesLoads = useLoadsView(({ wish }) => wish !== null);
  const logOf = useFrameView((state) => state.logOf);
  if (logOf !== null && project.members.some(({ id }) => id === logOf)) {
    return (
      <section className="drawing-sheet" aria-label="Drawing" ref={ref}>
        {width > 0 && <LogSheet {...{ project, evaluation, width, stale }} memberId={logOf} />}
      </section>
    );
  }
  if (carriesLoads) {
    return (
      <section className="drawing-sheet" aria-label="Drawing" ref={ref}>
        {width > 0 && <LoadsSheet project={project} evaluation={evaluation} width={width} stale={stale} />}
      </section>
    );
  }
  if (isPhone) {
    return (
      <section className="drawing-sheet" aria-label="Drawing" ref={ref}>
        <ViewTabs large={large} />
        <Figure view={large} {...common} size={{ width, height: 0.5 }} isLarge stale={stale} />
      </section>
    );
  }
  const sizes = sizesOf(width, shelter);
  return (
    <section className={`drawing-sheet ${sizes.beside ? 'beside' : 'below'}`} aria-label="Drawing" ref={ref}>
      <Figure view={large} {...common} size={sizes.large} isLarge stale={stale} />
      {small.map(({ view }, i) => (
        <Figure key={view} view={view} {...common} size={sizes.small[i] ?? sizes.large} isLarge={false} stale={stale} />
      ))}
    </section>
  );
}

const GAP_PX = 24;
/** A shelter longer than this many heights fills the sheet; a shorter one leaves room beside it. */
const LONG = 2.6;

/** The smaller views hang beside and below the large one, or both below a long one. */
function sizesOf(width: number, shelter: Shelter): { beside: boolean; large: Size; small: readonly Size[] } {
  const isLong = shelter.planAlongIn > LONG * Math.max(...shelter.lines.map(({ bearingZIn }) => bearingZIn), 1);
  const half = Math.floor((width - GAP_PX) / 2);
  if (isLong || width < 700) {
    const small = { width: half, height: 0.27 };
    return { beside: false, large: { width, height: 0.46 }, small: [small, small] };
  }
  const wide = Math.floor((width - GAP_PX) * 0.62);
  return {
    beside: true,
    large: { width: wide, height: 0.54 },
    small: [
      { width: width - GAP_PX - wide, height: 0.54 },
      { width: wide, height: 0.27 },
    ],
  };
}

/** What section and plan show first. */
const BALANCED_SNOW: LoadWish = { by: 'case', id: 'snow', forLine: null, actsOn: 'frame' };

interface FigureProps extends PictureProps {
  readonly stale: boolean;
}

function Figure({ view, project, evaluation, line, size, isLarge, stale }: FigureProps) {
  const { shelter } = evaluation;
  const hatched = useFrameView((state) => state.hatched);
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
        {view !== 'front' && <ShowLoads wish={BALANCED_SNOW} words="loads" />}
        {isLarge && stale && <span className="stale">from your last valid entry</span>}
      </figcaption>
      {size.width > 0 && (
        <Picture view={view} project={project} evaluation={evaluation} line={line} size={size} isLarge={isLarge} />
      )}
      {isLarge && view === 'front' && <HatchChoice />}
      {isLarge && view === 'front' && hatched === 'none' && <SilhouetteSwitch />}
      {isLarge && view === 'front' && hatched === 'buckling' && line && (
        <BuckledWords evaluation={evaluation} lineId={line.id} />
      )}
    </figure>
  );
}
