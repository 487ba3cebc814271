import '../styles/loads.css';
import { useDeferredValue, useMemo } from 'react';
import { say } from '../../data/words/say.ts';
import type { Evaluation } from '../../engine/evaluation.ts';
import { roofPictures, type RoofPictures } from '../../engine/load-pictures.ts';
import type { LoadPicture } from '../../engine/load-pictures/picture.ts';
import type { Project } from '../../engine/project/model.ts';
import { namesOf } from '../cord/places.ts';
import { reasonInWords } from '../cord/reason.ts';
import { PlanView } from '../drawing/PlanView.tsx';
import { SectionView } from '../drawing/SectionView.tsx';
import { lineDetailsOf } from '../frame/line-details.ts';
import { usePaper, useWindowHeight } from '../frame/paper-size.ts';
import { SHOWS } from '../frame/show.ts';
import { useWorkbench } from '../state/use-workbench.ts';
import { CaseSteps, nameOfPicture } from './case-steps.tsx';
import { placeOf } from './choose-case.ts';
import { Governing } from './governing.tsx';
import { layOnPlan } from './lay-on-plan.ts';
import { layOnSection, LONGEST_PUSH } from './lay-on-section.ts';
import { strengthOf } from './load-room.ts';
import { loadScale, type LoadScale } from './load-scale.ts';
import { loadSentences } from './load-sentences.ts';
import { leaveLoads, useLoadsView, type LoadWish } from './loads-view.ts';

interface LoadsSheetProps {
  readonly project: Project;
  readonly evaluation: Evaluation;
  readonly width: number;
  readonly stale: boolean;
}

/** Section and plan with one load case after the other as it acts; what governs, and what does not apply. */
export function LoadsSheet({ project, evaluation, width, stale }: LoadsSheetProps) {
  const wish = useLoadsView((state) => state.wish);
  const settled = useDeferredValue(project);
  const answer = useMemo(() => roofPictures(settled), [settled]);
  return (
    <>
      <div className="loads-head">
        <h2>Loads</h2>
        <button type="button" className="tool" onClick={backToViews}>
          back to the views
        </button>
        {stale && <span className="stale">from your last valid entry</span>}
      </div>
      {answer.ok && wish ? (
        <Shown answer={answer} project={settled} evaluation={evaluation} width={width} wish={wish} />
      ) : (
        <p>No loads can be drawn before what is named below is mended.</p>
      )}
    </>
  );
}

function backToViews(): void {
  leaveLoads();
  // the button that led here is there again
  requestAnimationFrame(() => document.querySelector<HTMLElement>('.show-loads')?.focus());
}

/** Longest arrow of a pressure, in text sizes. */
const LONGEST_PRESSURE = 6;
const GAP_PX = 24;
/** Narrower than this the plan stands under the section [px]. */
const BOTH_PX = 640;

interface ShownProps extends Omit<LoadsSheetProps, 'stale'> {
  readonly answer: RoofPictures;
  readonly wish: LoadWish;
}

function Shown({ answer, project, evaluation, width, wish }: ShownProps) {
  const system = useWorkbench((state) => state.system);
  const checkKey = useLoadsView((state) => state.checkKey);
  const names = useMemo(() => namesOf(evaluation), [evaluation]);
  const { shelter } = evaluation;
  const { pictures } = answer;
  const at = placeOf(pictures, wish);
  const picture = pictures[at];
  const isBoth = width >= BOTH_PX;
  const paper = usePaper(isBoth ? Math.floor((width - GAP_PX) / 2) : width, Math.round(useWindowHeight() * 0.5));
  const scales = useMemo(() => {
    // a person on one rafter presses a small place hard: that would leave all else too small
    const wide = pictures.filter((p) => p.actsOn === 'frame' || p.kind === 'wind');
    const greatestPsf = Math.max(1, ...wide.flatMap((p) => p.strips.map(strengthOf)));
    const greatestLb = Math.max(1, ...pictures.flatMap(forcesOf));
    return {
      greatestPsf,
      pressures: loadScale(greatestPsf, 'psf', LONGEST_PRESSURE * paper.textSize, system),
      forces: loadScale(greatestLb, 'lb', LONGEST_PUSH * paper.textSize, system),
    };
  }, [pictures, paper, system]);
  const drawn = useMemo(() => {
    if (!picture) return null;
    const title = nameOfPicture(picture, names);
    const sentences = loadSentences(picture, { shelter, names, system });
    const load = { picture, shelter, system, ...scales, title, description: sentences.join(' ') };
    return { title, sentences, section: layOnSection(load, paper.textSize), plan: layOnPlan(load) };
  }, [picture, shelter, names, system, scales, paper]);
  const lineDetails = useMemo(() => lineDetailsOf(project), [project]);
  const row = checkKey === null ? undefined : evaluation.checks.find(({ key }) => key === checkKey);
  if (!picture || !drawn) return null;
  const common = { shelter, paper, showLength: SHOWS[system].length };
  return (
    <>
      <CaseSteps pictures={pictures} at={at} names={names} />
      <output className="loads-name">
        {at + 1} of {pictures.length}: {drawn.title}
      </output>
      <div className={isBoth ? 'loads-views both' : 'loads-views'}>
        <SectionView {...common} lineDetails={lineDetails} laidOver={drawn.section} />
        <PlanView {...common} units={system} laidOver={drawn.plan} />
      </div>
      <div className="loads-words">
        {row && (
          <Governing
            row={row}
            evaluation={evaluation}
            cases={answer.cases}
            kcr={project.calculation.kcr}
            names={names}
          />
        )}
        {drawn.sentences.map((sentence) => (
          <p key={sentence}>{sentence}</p>
        ))}
        {picture.strips.length > 0 && (
          <Scale scale={scales.pressures} words="Arrows of pressures; the plan is hatched the closer the harder." />
        )}
        {forcesOf(picture).length > 0 && (
          <Scale scale={scales.forces} words="Arrows of forces; the smallest are drawn longer, to be seen." />
        )}
        <h3>What does not apply</h3>
        <ul>
          {[...evaluation.loads.leftOut, ...answer.leftOut].map((reason) => (
            <li key={say(reason)}>{reasonInWords(reason, names, system)}</li>
          ))}
        </ul>
      </div>
    </>
  );
}

/** Every force that is drawn as an arrow [lb]. */
function forcesOf({ points, pushes, across }: LoadPicture): readonly number[] {
  const hung = new Map<string, number>();
  for (const { lineId, downLb } of points) hung.set(lineId, (hung.get(lineId) ?? 0) + downLb);
  return [...hung.values(), ...pushes.map((p) => p.alongLb), ...(across ? [across.asdLb] : [])].map(Math.abs);
}

/** The scale as a length that can be held against an arrow, and in words. */
function Scale({ scale, words }: { readonly scale: LoadScale; readonly words: string }) {
  return (
    <p className="loads-scale">
      <span className="scale-length" style={{ inlineSize: `${scale.linePx}px` }} /> {words} To scale: {scale.words}.
    </p>
  );
}
