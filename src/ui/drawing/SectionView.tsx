import { useMemo } from 'react';
import type { ViewProps } from './FrontView.tsx';
import { PictureView } from './PictureView.tsx';
import type { LineDetail } from './section-parts.ts';
import { sectionPicture } from './section-picture.ts';

export interface SectionViewProps extends ViewProps {
  readonly lineDetails?: readonly LineDetail[];
  readonly snow?: string | null;
}

/** The shelter cut across its frame lines at the first posts. */
export function SectionView(props: SectionViewProps) {
  const { shelter, paper, showLength, selectedMemberId, lineDetails, snow } = props;
  const picture = useMemo(
    () => sectionPicture(shelter, { paper, showLength, selectedMemberId, lineDetails, snow }),
    [shelter, paper, showLength, selectedMemberId, lineDetails, snow],
  );
  return <PictureView picture={picture} renderDimension={props.renderDimension} onSelect={props.onSelect} />;
}
