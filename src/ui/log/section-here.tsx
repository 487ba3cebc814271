import { useMemo, useState } from 'react';
import { explainSection } from '../../engine/explain.ts';
import { shapedEnds } from '../../engine/cuts-of-member.ts';
import type { Shelter } from '../../engine/geometry/shelter.ts';
import type { Project } from '../../engine/project/model.ts';
import { sectionOfMember } from '../../engine/section-of-member.ts';
import { StepList } from '../cord/steps.tsx';
import { onScreen } from '../drawing/paper.ts';
import { PictureView } from '../drawing/PictureView.tsx';
import { SHOWS } from '../frame/show.ts';
import { useWorkbench } from '../state/use-workbench.ts';
import { showQuantity } from '../units/show-quantity.ts';
import { sectionPicture } from './section-picture.ts';

interface SectionHereProps {
  readonly project: Project;
  readonly shelter: Shelter;
  readonly memberId: string;
  /** from the piece's start [in] */
  readonly atIn: number;
  /** the place in words */
  readonly place: string;
}

const ACROSS_PX = 150;
const PAPER = onScreen(ACROSS_PX, ACROSS_PX);

/** The section at the place that is looked at, with what its checks count. */
export function Section({ project, shelter, memberId, atIn, place }: SectionHereProps) {
  const system = useWorkbench((state) => state.system);
  const [isOpen, setOpen] = useState(false);
  const here = useMemo(() => sectionOfMember(project, shelter, memberId, atIn), [project, shelter, memberId, atIn]);
  const picture = useMemo(() => here && sectionPicture(here, PAPER, `Section ${place}`), [here, place]);
  if (!here || !picture) return <p className="section-here">No part of the piece lies {place}.</p>;
  const { section, cuts, flatIn, diameterIn } = here;
  const isAtShapedEnd = shapedEnds(shelter, memberId).some(({ atIn: end, lean }) => {
    const short = Math.sign(lean) * (atIn - end);
    return short < (Math.abs(lean) * diameterIn) / 2;
  });
  const parts = cuts.length + (flatIn > 0 ? 1 : 0);
  return (
    <div className="section-here">
      <PictureView picture={picture} />
      <div>
        <p>
          <strong>{place}</strong>
        </p>
        <p className="section-figures">
          <span>d {SHOWS[system].diameter(diameterIn)},</span>{' '}
          <span>A {showQuantity({ value: section.areaIn2, unit: 'in2' }, system)},</span>{' '}
          <span>
            S{' '}
            <button type="button" className="opens" aria-expanded={isOpen} onClick={() => setOpen(!isOpen)}>
              {showQuantity({ value: section.modulusIn3, unit: 'in3' }, system)}
              <span className="unseen">, its steps</span>
            </button>
          </span>
        </p>
        <p className="aside">
          {parts === 0 && 'A whole circle.'}
          {parts === 1 && 'The circle less one cut.'}
          {parts > 1 && `${parts} cuts meet here: they count as one of their summed depth.`}
          {isAtShapedEnd && ' The end of the piece is cut to lie on its log here: less is left than is drawn.'}
        </p>
        {isOpen && (
          <StepList steps={explainSection(project, shelter, memberId, atIn)} label="Steps of the section modulus" />
        )}
      </div>
    </div>
  );
}
