import type { HardwareMark } from './hardware-marks.ts';
import type { Paper } from './paper.ts';
import type { Picture, Sketch } from './sketch.ts';
import type { ShowLength } from './words.ts';

/** Something laid over a view of the shelter, drawn before the view's own words find their places. */
export interface LaidOver {
  /** room round what is drawn, in text sizes */
  readonly above: number;
  readonly left: number;
  readonly right: number;
  /** drawn before the parts of the view, so that they lie on it */
  readonly drawUnder?: (sketch: Sketch) => void;
  readonly draw: (sketch: Sketch) => void;
  /** what it adds to the picture's title and description */
  readonly title: string;
  readonly description: string;
}

/** What every view is told besides the shelter. */
export interface PictureOptions {
  readonly paper: Paper;
  readonly showLength: ShowLength;
  /** how diameters are written; as lengths where not given */
  readonly showDiameter?: ShowLength | undefined;
  readonly selectedMemberId?: string | null | undefined;
  readonly laidOver?: LaidOver | null | undefined;
  readonly hardware?: readonly HardwareMark[] | undefined;
}

/** A picture's own words, and after them those of what is laid over it. */
export const finishWith = (sketch: Sketch, title: string, description: string, over?: LaidOver | null): Picture =>
  over
    ? sketch.finish(`${title}: ${over.title}`, `${description} ${over.description}`)
    : sketch.finish(title, description);
