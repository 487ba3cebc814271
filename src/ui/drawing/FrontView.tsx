import { useMemo } from 'react';
import type { Shelter } from '../../engine/geometry/shelter.ts';
import type { ForceOverlay } from './force-diagram.ts';
import { frontPicture } from './front-picture.ts';
import { FrontHandles, type FrontHandlesProps } from './FrontHandles.tsx';
import type { HardwareMark } from './hardware-marks.ts';
import type { Paper } from './paper.ts';
import type { LaidOver } from './picture-options.ts';
import { PictureView, type RenderDimension } from './PictureView.tsx';
import type { ShowLength } from './words.ts';

export interface ViewProps {
  readonly shelter: Shelter;
  readonly paper: Paper;
  readonly showLength: ShowLength;
  readonly showDiameter?: ShowLength;
  readonly selectedMemberId?: string | null;
  readonly hardware?: readonly HardwareMark[] | undefined;
  readonly onSelect?: (memberId: string) => void;
  readonly renderDimension?: RenderDimension;
}
export interface FrontViewProps extends ViewProps {
  readonly lineId: string;
  readonly overlay?: ForceOverlay | null;
  readonly laidOver?: LaidOver | null;
  /** posts and braces can be moved; without it the view is a picture */
  readonly move?: Pick<FrontHandlesProps, 'onMovePost' | 'onMoveBrace' | 'bracesAlike' | 'units'>;
}

/** A frame line from the front. Nothing is drawn for a line that has no frame. */
export function FrontView(props: FrontViewProps) {
  const { shelter, lineId, paper, showLength, showDiameter, selectedMemberId, overlay, laidOver, hardware } = props;
  const picture = useMemo(
    () =>
      frontPicture(shelter, lineId, { paper, showLength, showDiameter, selectedMemberId, overlay, laidOver, hardware }),
    [shelter, lineId, paper, showLength, showDiameter, selectedMemberId, overlay, laidOver, hardware],
  );
  if (!picture) return null;
  return (
    <PictureView picture={picture} renderDimension={props.renderDimension} onSelect={props.onSelect}>
      {props.move && (
        <FrontHandles
          shelter={shelter}
          lineId={lineId}
          view={picture.view}
          showLength={showLength}
          onSelect={props.onSelect}
          {...props.move}
        />
      )}
    </PictureView>
  );
}
