import { useMemo } from 'react';
import type { ViewProps } from './FrontView.tsx';
import type { LaidOver } from './picture-options.ts';
import { PictureView } from './PictureView.tsx';
import { planPicture } from './plan-picture.ts';

export interface PlanViewProps extends ViewProps {
  readonly laidOver?: LaidOver | null;
  readonly units: 'feet' | 'metric';
}

/** The shelter from above, through its roof. */
export function PlanView(props: PlanViewProps) {
  const { shelter, paper, showLength, selectedMemberId, units, laidOver } = props;
  const picture = useMemo(
    () => planPicture(shelter, { paper, showLength, selectedMemberId, units, laidOver }),
    [shelter, paper, showLength, selectedMemberId, units, laidOver],
  );
  return <PictureView picture={picture} renderDimension={props.renderDimension} onSelect={props.onSelect} />;
}
