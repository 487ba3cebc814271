import { useMemo } from 'react';
import type { ViewProps } from './FrontView.tsx';
import type { LaidOver } from './picture-options.ts';
import { PictureView } from './PictureView.tsx';
import type { LineDetail } from './section-parts.ts';
import { sectionPicture } from './section-picture.ts';

export interface SectionViewProps extends ViewProps {
  readonly laidOver?: LaidOver | null;
  readonly lineDetails?: readonly LineDetail[];
  readonly snow?: string | null;
}

/** The shelter cut across its frame lines at the first posts. */
export function SectionView(props: SectionViewProps) {
  const { shelter, paper, showLength, selectedMemberId, lineDetails, snow, laidOver, hardware } = props;
  const picture = useMemo(
    () => sectionPicture(shelter, { paper, showLength, selectedMemberId, lineDetails, snow, laidOver, hardware }),
    [shelter, paper, showLength, selectedMemberId, lineDetails, snow, laidOver, hardware],
  );
  return <PictureView picture={picture} renderDimension={props.renderDimension} onSelect={props.onSelect} />;
}
