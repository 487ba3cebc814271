import type { Paper } from './paper.ts';
import type { ShowLength } from './words.ts';

/** What every view is told besides the shelter. */
export interface PictureOptions {
  readonly paper: Paper;
  readonly showLength: ShowLength;
  /** how diameters are written; as lengths where not given */
  readonly showDiameter?: ShowLength | undefined;
  readonly selectedMemberId?: string | null | undefined;
}
