import type { Paper, Point, View } from '../drawing/paper.ts';
import { beginSketch, type Picture } from '../drawing/sketch.ts';
import { drawCutOnFace, drawEnd } from './log-cuts.ts';
import { drawKnots } from './log-knots.ts';
import { outlineOf } from './log-outline.ts';
import { drawPiece, drawStations, ROWS, type LogWords } from './log-rows.ts';
import { diameterOn, type LogShown } from './log-shown.ts';
import { missingWords, nameMissing } from './missing-words.ts';
import type { NeededOfMember } from './needed-of-member.ts';
import { drawNeeded, type Surface } from './silhouette.ts';

export interface LogPictureOptions extends LogWords {
  readonly paper: Paper;
  /** null where the thinnest log is not wished for */
  readonly needed: NeededOfMember | null;
}

/** A log on paper, with the rows under it where its handles lie. */
export interface LogPicture {
  readonly picture: Picture;
  /** how many times thicker than long it is drawn */
  readonly times: number;
  /** the axis at a distance from the butt, moved up by some inches */
  readonly at: (fromButtIn: number, upIn: number) => Point;
  readonly scale: number;
  readonly stationsY: number;
  readonly rulerY: number;
}

/** The thickest place is drawn at least so thick, so that its taper is seen and a thumb can touch it. */
const LEAST_THICK_PX = 72;
const MARGIN = 2.6;

/** A log from the side, butt to the left: profile, stations, knots, cuts, and the stretch that the piece uses. */
export function logPicture(shown: LogShown, options: LogPictureOptions): LogPicture {
  const { paper } = options;
  const size = paper.textSize;
  const side = size * MARGIN;
  const scale = (paper.width - 2 * side) / Math.max(shown.lengthIn, 1);
  const thickest = Math.max(...shown.stations.map((s) => s.diameterIn));
  const times = Math.max(1, Math.ceil(LEAST_THICK_PX / (thickest * scale)));
  const half = (thickest / 2) * scale * times;
  const axisY = size * 3.2 + half;
  const bottomY = axisY + half;
  const at = (fromButtIn: number, upIn: number): Point => ({
    x: side + fromButtIn * scale,
    y: axisY - upIn * scale * times,
  });
  const view: View = { paper, width: paper.width, height: bottomY + ROWS.end, scale, at };
  const sketch = beginSketch(view);
  const outline = outlineOf(shown).map(([x, up]) => at(x, up));
  sketch.outline(outline, 'ink-heavy', { covers: true });
  for (const cut of shown.cuts) drawCutOnFace(sketch, shown, cut);
  for (const end of shown.ends) drawEnd(sketch, shown, end);
  drawKnots(sketch, shown, bottomY, bottomY + ROWS.knots);
  const { needed } = options;
  const surface = surfaceOf(shown, at);
  drawNeeded(sketch, needed?.bySection ?? [], surface, 'least-line');
  drawNeeded(sketch, needed?.byWhole ?? [], surface, 'whole-line');
  drawStations(sketch, shown, options, bottomY);
  drawPiece(sketch, shown, options, bottomY);
  // last, since it finds room for itself
  const missing = needed?.missing;
  if (missing) {
    const about = surface(missing.atIn, -1, missing.inches / 2);
    nameMissing(sketch, 'missing', about, missingWords(missing, options.showDiameter));
  }
  return {
    picture: sketch.finish(`Log of ${options.name}`, describe(shown, options)),
    times,
    at,
    scale,
    stationsY: bottomY + ROWS.stations,
    rulerY: bottomY + ROWS.ruler,
  };
}

/** Surface of the piece in the log's own places. */
const surfaceOf =
  (shown: LogShown, at: LogPicture['at']): Surface =>
  (atIn, side, outIn) => {
    const x = shown.fromButt(atIn);
    return at(x, side * (diameterOn(shown, x) / 2 + outIn));
  };

const describe = ({ stations, used, cuts }: LogShown, { name, showDiameter, showLength }: LogPictureOptions): string =>
  [
    ...stations.map((s) => `${showDiameter(s.diameterIn)} at ${showLength(s.fromButtIn)} from the butt.`),
    `${name} uses it from ${showLength(used[0])} to ${showLength(used[1])}.`,
    `${cuts.length} cuts and seats.`,
  ].join(' ');
