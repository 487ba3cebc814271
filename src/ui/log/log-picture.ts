import type { CutHere } from '../../engine/section-of-member.ts';
import type { Paper, Point, View } from '../drawing/paper.ts';
import { beginSketch, type Picture, type Sketch } from '../drawing/sketch.ts';
import type { ShowLength } from '../drawing/words.ts';
import { diameterOn, type LogShown } from './log-shown.ts';
import { missingWords, nameMissing } from './missing-words.ts';
import type { NeededOfMember } from './needed-of-member.ts';
import { drawNeeded } from './silhouette.ts';

export interface LogPictureOptions {
  readonly paper: Paper;
  readonly showLength: ShowLength;
  readonly showDiameter: ShowLength;
  /** what the piece is called, and where its posts stand along it */
  readonly name: string;
  readonly marks: readonly { readonly label: string; readonly atIn: number }[];
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
const ROWS = { stations: 16, distances: 38, knots: 54, ruler: 74, piece: 100, end: 122 } as const;

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
  drawProfile(sketch, shown);
  for (const cut of shown.cuts) drawCut(sketch, shown, cut);
  drawKnots(sketch, shown, bottomY);
  if (options.needed) drawSilhouette(sketch, shown, options.needed, options);
  drawStations(sketch, shown, options, bottomY);
  drawPiece(sketch, shown, options, bottomY);
  return {
    picture: sketch.finish(`Log of ${options.name}`, describe(shown, options)),
    times,
    at,
    scale,
    stationsY: bottomY + ROWS.stations,
    rulerY: bottomY + ROWS.ruler,
  };
}

/** Its outline from the butt along the top and back; where the piece is planed, less the flat. */
export function profileOf({ stations }: Pick<LogShown, 'stations'>): readonly (readonly [number, number])[] {
  return [
    ...stations.map((s) => [s.fromButtIn, s.diameterIn / 2] as const),
    ...stations.toReversed().map((s) => [s.fromButtIn, -s.diameterIn / 2] as const),
  ];
}

function drawProfile(sketch: Sketch, shown: LogShown): void {
  const { view } = sketch;
  sketch.outline(
    profileOf(shown).map(([x, up]) => view.at(x, up)),
    'ink-heavy',
    { covers: true },
  );
  if (shown.flatIn > 0) {
    const ends = shown.used.map((x) => view.at(x, diameterOn(shown, x) / 2 - shown.flatIn));
    sketch.line(ends, 'ink-line', { givesWay: true });
  }
}

/** From which side a cut is seen: above, below, or towards the viewer. */
export function sideOfCut({ angleDeg }: Pick<CutHere, 'angleDeg'>): 'top' | 'bottom' | 'face' {
  const turned = ((angleDeg % 360) + 360) % 360;
  if (turned < 60 || turned > 300) return 'top';
  return turned > 120 && turned < 240 ? 'bottom' : 'face';
}

function drawCut(sketch: Sketch, shown: LogShown, cut: CutHere): void {
  const { view } = sketch;
  const middle = shown.fromButt(cut.atIn);
  const xs = [middle - cut.lengthIn / 2, middle + cut.lengthIn / 2].map((x) =>
    Math.min(Math.max(x, shown.used[0]), shown.used[1]),
  );
  const [from, to] = [xs[0]!, xs[1]!];
  const side = sideOfCut(cut);
  if (side === 'face') {
    const half = Math.min(cut.depthIn, diameterOn(shown, middle) / 2);
    const box = [view.at(from, half), view.at(to, half), view.at(to, -half), view.at(from, -half)];
    sketch.outline(box, 'hidden-line', { givesWay: true });
    return;
  }
  const sign = side === 'top' ? 1 : -1;
  const surface = (x: number): number => (sign * diameterOn(shown, x)) / 2;
  const floor = (x: number): number => surface(x) - sign * cut.depthIn;
  const notch = [
    view.at(from, surface(from)),
    view.at(from, floor(from)),
    view.at(to, floor(to)),
    view.at(to, surface(to)),
  ];
  sketch.outline(notch, 'ink-line', { covers: true, givesWay: true });
}

/** Half a foot: the worst foot of length reaches so far to either side of its place [in]. */
const HALF_FOOT_IN = 6;

/** Where the worst foot lies: as it was written down, else at the thinnest station, which then counts. */
export const knotPlace = ({ log, stations }: Pick<LogShown, 'log' | 'stations'>): number =>
  log.seen?.knotAtFromButtIn ?? stations.reduce((a, b) => (b.diameterIn < a.diameterIn ? b : a)).fromButtIn;

/** The knots of the worst foot by their widths, side by side; how they sit round the log is not written down. */
function drawKnots(sketch: Sketch, shown: LogShown, bottomY: number): void {
  const { seen } = shown.log;
  const foot = seen?.knotsInWorstFootIn ?? [];
  const widths = foot.length > 0 ? foot : seen?.worstKnotIn ? [seen.worstKnotIn] : [];
  if (widths.length === 0) return;
  const { view } = sketch;
  const place = knotPlace(shown);
  const middle = Math.min(Math.max(place, HALF_FOOT_IN), Math.max(shown.lengthIn - HALF_FOOT_IN, 0));
  const up = diameterOn(shown, middle) * 0.2;
  widths.forEach((width, i) => {
    const x = middle - HALF_FOOT_IN + (2 * HALF_FOOT_IN * (i + 0.5)) / widths.length;
    const y = i % 2 === 0 ? up : -up;
    const ring = Array.from({ length: 16 }, (_, n) => {
      const turn = (n * Math.PI) / 8;
      return view.at(x + (width / 2) * Math.cos(turn), y + (width / 2) * Math.sin(turn));
    });
    sketch.outline(ring, 'ink-thin', { givesWay: true });
  });
  const isPlaced = seen?.knotAtFromButtIn !== undefined;
  sketch.text({
    key: 'knots',
    text: isPlaced ? 'worst foot' : 'worst foot: place not given',
    kind: 'note',
    centres: [0, 70, -70].map((dx) => ({ x: view.at(middle, 0).x + dx, y: bottomY + ROWS.knots })),
    about: { x: view.at(middle, 0).x, y: bottomY },
    optional: true,
  });
}

function drawSilhouette(
  sketch: Sketch,
  shown: LogShown,
  { bySection, byWhole, missing }: NeededOfMember,
  { showDiameter }: LogPictureOptions,
): void {
  const { view } = sketch;
  const surface = (atIn: number, side: 1 | -1, outIn: number): Point => {
    const x = shown.fromButt(atIn);
    return view.at(x, side * (diameterOn(shown, x) / 2 + outIn));
  };
  drawNeeded(sketch, bySection, surface, 'least-line');
  drawNeeded(sketch, byWhole, surface, 'whole-line');
  if (!missing) return;
  nameMissing(sketch, 'missing', surface(missing.atIn, -1, missing.inches / 2), missingWords(missing, showDiameter));
}

function drawStations(sketch: Sketch, shown: LogShown, options: LogPictureOptions, bottomY: number): void {
  const { view } = sketch;
  const size = view.paper.textSize;
  const last = shown.stations.length - 1;
  shown.stations.forEach((station, i) => {
    const half = station.diameterIn / 2;
    const top = view.at(station.fromButtIn, half);
    sketch.line(
      [
        { x: top.x, y: top.y - size * 0.6 },
        { x: top.x, y: bottomY + ROWS.stations },
      ],
      'dimension',
      { givesWay: true },
    );
    const measured = shown.log.stations[i]!;
    sketch.text({
      key: `d-${i}`,
      text: options.showDiameter(measured.diameterIn),
      kind: 'length',
      leaf: { path: `logs[${shown.log.id}].stations[${i}].diameterIn`, valueIn: measured.diameterIn, sign: 1 },
      centres: [1.5, 2.7].map((n) => ({ x: top.x, y: top.y - n * size })),
      about: top,
    });
    const words =
      i === 0
        ? 'butt'
        : i === last
          ? `tip, ${options.showLength(station.fromButtIn)}`
          : options.showLength(station.fromButtIn);
    sketch.text({
      key: `s-${i}`,
      text: words,
      kind: 'note',
      centres: [0, -1.6, 1.6].map((m) => ({ x: top.x + m * size, y: bottomY + ROWS.distances })),
      about: { x: top.x, y: bottomY + ROWS.distances },
      optional: i > 0 && i < last,
    });
  });
}

/** The ruler, and below it the stretch that the piece is made of with the posts along it. */
function drawPiece(sketch: Sketch, shown: LogShown, options: LogPictureOptions, bottomY: number): void {
  const { view } = sketch;
  const size = view.paper.textSize;
  const x = (fromButtIn: number): number => view.at(fromButtIn, 0).x;
  const row = (y: number, from: number, to: number): void =>
    sketch.line(
      [
        { x: x(from), y },
        { x: x(to), y },
      ],
      'dimension',
      { givesWay: true },
    );
  row(bottomY + ROWS.ruler, 0, shown.lengthIn);
  const y = bottomY + ROWS.piece;
  row(y, ...shown.used);
  for (const end of shown.used)
    sketch.line(
      [
        { x: x(end), y: y - 4 },
        { x: x(end), y: y + 4 },
      ],
      'ink-line',
      { givesWay: true },
    );
  for (const { label, atIn } of options.marks) {
    const place = x(shown.fromButt(atIn));
    sketch.line(
      [
        { x: place, y: y - 4 },
        { x: place, y: y + 4 },
      ],
      'ink-line',
      { givesWay: true },
    );
    sketch.text({
      key: `m-${label}`,
      text: label,
      kind: 'name',
      centres: [{ x: place, y: y + size }],
      about: { x: place, y },
    });
  }
  sketch.text({
    key: 'piece',
    text: `${options.name}, ${options.showLength(shown.used[1] - shown.used[0])}`,
    kind: 'note',
    centres: [0.5, 0.35, 0.65].map((t) => ({ x: x(shown.used[0] + t * (shown.used[1] - shown.used[0])), y: y + size })),
    about: { x: x((shown.used[0] + shown.used[1]) / 2), y },
    optional: true,
  });
}

const describe = ({ stations, used, cuts }: LogShown, { name, showDiameter, showLength }: LogPictureOptions): string =>
  [
    ...stations.map((s) => `${showDiameter(s.diameterIn)} at ${showLength(s.fromButtIn)} from the butt.`),
    `${name} uses it from ${showLength(used[0])} to ${showLength(used[1])}.`,
    `${cuts.length} cuts and seats.`,
  ].join(' ');
