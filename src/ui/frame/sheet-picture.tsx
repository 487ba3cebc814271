import { useDeferredValue, useMemo } from 'react';
import type { Evaluation } from '../../engine/evaluation.ts';
import type { LineGeometry, Shelter } from '../../engine/geometry/shelter.ts';
import type { Project } from '../../engine/project/model.ts';
import { linkOfMember } from '../cord/links.ts';
import { isOwn, sharersOf } from '../cord/own.ts';
import { FrontView } from '../drawing/FrontView.tsx';
import type { LaidOver } from '../drawing/picture-options.ts';
import { late, lateCode } from '../late.tsx';
import { useWorkbench, withProgram } from '../state/use-workbench.ts';
import { showQuantity } from '../units/show-quantity.ts';
import type { UnitSystem } from '../units/system.ts';
import { renderDimension } from './dimension-field.tsx';
import { look, useFrameView, type SheetView } from './frame-view.ts';
import { useOverlay } from './hatch.tsx';
import { lineDetailsOf } from './line-details.ts';
import { onMoveBrace, onMovePost } from './moves.ts';
import { useIsPhone, usePaper, useWindowHeight } from './paper-size.ts';
import { SHOWS } from './show.ts';

/** The front view comes with the first figures, the others right after them. */
const SectionView = late(async () => (await import('../drawing/SectionView.tsx')).SectionView);
const PlanView = late(async () => (await import('../drawing/PlanView.tsx')).PlanView);

const useBuckledCode = lateCode(() => withProgram(import('./buckled.tsx')));
const useMarksCode = lateCode(() => withProgram(import('../joint/marks.ts')));
const useSilhouetteCode = lateCode(() => withProgram(import('../log/front-silhouette.ts')));

/** Room for a view: its width in pixels, its greatest height as a share of the window. */
export interface Size {
  readonly width: number;
  readonly height: number;
}

export interface PictureProps {
  readonly view: SheetView;
  readonly project: Project;
  readonly evaluation: Evaluation;
  readonly line: LineGeometry | undefined;
  readonly size: Size;
  /** only the large view is worked on: its lengths are fields, its posts and braces move */
  readonly isLarge: boolean;
}

/** One view of the shelter in the room that the sheet gives it. */
export function Picture({ view, project, evaluation, line, size, isLarge }: PictureProps) {
  const system = useWorkbench((state) => state.system);
  const selectedMemberId = useFrameView((state) => state.memberId);
  const height = useWindowHeight();
  const paper = usePaper(size.width, Math.round(height * size.height));
  // what is not looked at follows when there is time
  const soon = useDeferredValue(evaluation.shelter);
  const shelter = isLarge ? evaluation.shelter : soon;
  const overlay = useOverlay(evaluation, line?.id ?? '');
  const silhouette = useSilhouette(evaluation, isLarge ? (line?.id ?? '') : '', system);
  const buckled = useBuckled(evaluation, isLarge ? (line?.id ?? '') : '');
  const marksCode = useMarksCode();
  // an entry that is not valid yet may have taken away what the shelter still has
  const isStale = useWorkbench((state) => state.stale);
  const hardware = useMemo(
    () => (isLarge && !isStale ? marksCode?.hardwareMarks(project, shelter) : undefined),
    [isLarge, isStale, marksCode, project, shelter],
  );
  const lineDetails = useMemo(() => lineDetailsOf(project), [project]);
  const common = {
    shelter,
    paper,
    showLength: SHOWS[system].length,
    selectedMemberId,
    hardware,
    onSelect: (memberId: string) => selectMember(evaluation.shelter, memberId),
    ...(isLarge ? { renderDimension } : {}),
  };
  if (view === 'section') {
    return (
      <SectionView {...common} lineDetails={lineDetails} snow={isLarge ? snowInWords(evaluation, system) : null} />
    );
  }
  if (view === 'plan') return <PlanView {...common} units={system} />;
  if (!line) return null;
  const bracesAlike = (id: string, leg: 'runIn' | 'dropIn'): number =>
    isOwn(project, id, leg) ? 1 : sharersOf(project, id, leg);
  return (
    <FrontView
      {...common}
      showDiameter={SHOWS[system].diameter}
      lineId={line.id}
      overlay={isLarge ? overlay : null}
      // one thing at a time is drawn on the logs
      laidOver={overlay ? null : (buckled ?? silhouette)}
      {...(isLarge ? { move: { onMovePost, onMoveBrace, bracesAlike, units: system } } : {})}
    />
  );
}

/** The thinnest logs that would do, worked out when there is time; null where nobody wishes to see them. */
function useBuckled(evaluation: Evaluation, lineId: string): LaidOver | null {
  const code = useBuckledCode();
  const isWished = useFrameView(({ hatched }) => hatched === 'buckling');
  return useMemo(
    () => (isWished && lineId !== '' ? (code?.buckledFront(evaluation, lineId) ?? null) : null),
    [code, isWished, evaluation, lineId],
  );
}

function useSilhouette(evaluation: Evaluation, lineId: string, system: UnitSystem): LaidOver | null {
  const code = useSilhouetteCode();
  const isPhone = useIsPhone();
  const isWished = useFrameView((state) => state.silhouette) ?? !isPhone;
  const settled = useDeferredValue(evaluation);
  return useMemo(
    () => (code && isWished && lineId !== '' ? code.frontSilhouette(settled, lineId, SHOWS[system].diameter) : null),
    [code, isWished, settled, lineId, system],
  );
}

function snowInWords({ loads }: Evaluation, system: UnitSystem): string | null {
  const snow = loads.pressures.find(({ name }) => name === 'balancedSnow');
  if (snow === undefined || snow.value === null) return null;
  return `snow ${showQuantity({ value: snow.value, unit: snow.unit }, system)}`;
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
