import type { Sketch } from '../drawing/sketch.ts';
import { diameterOn, type LogShown } from './log-shown.ts';

/** Half a foot: the worst foot of length reaches so far to either side of its place [in]. */
const HALF_FOOT_IN = 6;

/** Where the worst foot lies: as it was written down, else at the thinnest station, which then counts. */
export const knotPlace = ({ log, stations }: Pick<LogShown, 'log' | 'stations'>): number =>
  log.seen?.knotAtFromButtIn ?? stations.reduce((a, b) => (b.diameterIn < a.diameterIn ? b : a)).fromButtIn;

/** The knots of the worst foot by their widths, side by side; how they sit round the log is not written down. */
export function drawKnots(sketch: Sketch, shown: LogShown, bottomY: number, wordsY: number): void {
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
    centres: [0, 70, -70].map((dx) => ({ x: view.at(middle, 0).x + dx, y: wordsY })),
    about: { x: view.at(middle, 0).x, y: bottomY },
    optional: true,
  });
}
