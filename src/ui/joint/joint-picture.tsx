import { useMemo } from 'react';
import type { JointSetting } from '../../engine/checks/joints/joint-setting.ts';
import type { Capacity } from '../../engine/project/model.ts';
import { onScreen } from '../drawing/paper.ts';
import { PictureView } from '../drawing/PictureView.tsx';
import { useWidth } from '../frame/paper-size.ts';
import { SHOWS } from '../frame/show.ts';
import { useWorkbench } from '../state/use-workbench.ts';
import './joint-picture.css';
import { jointViews } from './joint-views.ts';

export interface JointPictureProps {
  readonly setting: JointSetting;
  /** what holds it; null = nobody said */
  readonly capacity: Capacity;
}

/** Two views stand side by side from this width on [px]. */
const SIDE_BY_SIDE_PX = 560;
const GAP_PX = 16;
const HIGH_PX = 260;

/** A joint in its true geometry with its hardware, in two views at one scale. */
export function JointPicture({ setting, capacity }: JointPictureProps) {
  const [width, ref] = useWidth();
  const system = useWorkbench((state) => state.system);
  const shelter = useWorkbench((state) => state.evaluation?.shelter);
  const each = width >= SIDE_BY_SIDE_PX ? Math.floor((width - GAP_PX) / 2) : width;
  const pictures = useMemo(
    () =>
      shelter && each > 0
        ? jointViews(setting, capacity, {
            shelter,
            paper: onScreen(each, HIGH_PX),
            showLength: SHOWS[system].diameter,
          })
        : [],
    [setting, capacity, shelter, system, each],
  );
  return (
    <div className="joint-picture" ref={ref}>
      {pictures.map((picture) => (
        <PictureView key={picture.title} picture={picture} />
      ))}
    </div>
  );
}
