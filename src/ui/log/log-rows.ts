import type { Ink, Sketch } from '../drawing/sketch.ts';
import type { ShowLength } from '../drawing/words.ts';
import type { LogShown } from './log-shown.ts';

/** How a log's measures are written, what the piece is called, and what meets it along it. */
export interface LogWords {
  readonly showLength: ShowLength;
  readonly showDiameter: ShowLength;
  readonly name: string;
  readonly marks: readonly { readonly label: string; readonly atIn: number }[];
}

/** Rows below a drawn log, from its lowest edge down [px]. */
export const ROWS = { stations: 16, distances: 38, knots: 54, ruler: 74, piece: 100, end: 122 } as const;
const TICK = 4;
/** Radius of the ring by which a station slides [px]. */
const RING = 5;

/** At every station its distance from the butt, and over it the diameter that was measured. */
export function drawStations(sketch: Sketch, shown: LogShown, words: LogWords, bottomY: number): void {
  const { view } = sketch;
  const size = view.paper.textSize;
  const last = shown.stations.length - 1;
  shown.stations.forEach((station, i) => {
    const half = station.diameterIn / 2;
    const top = view.at(station.fromButtIn, half);
    straight(sketch, 'dimension', top.x, top.y - size * 0.6, top.x, bottomY + ROWS.stations);
    // the ring that slides lies here: no label may
    if (i > 0) sketch.circle({ x: top.x, y: bottomY + ROWS.stations }, RING, 'dimension');
    const measured = shown.log.stations[i]!;
    sketch.text({
      key: `d-${i}`,
      text: words.showDiameter(measured.diameterIn),
      kind: 'length',
      leaf: { path: `logs[${shown.log.id}].stations[${i}].diameterIn`, valueIn: measured.diameterIn, sign: 1 },
      centres: [1.5, 2.7].map((n) => ({ x: top.x, y: top.y - n * size })),
      about: top,
    });
    const distance = words.showLength(station.fromButtIn);
    const inner = i === last ? `tip, ${distance}` : distance;
    sketch.text({
      key: `s-${i}`,
      text: i === 0 ? 'butt' : inner,
      kind: 'note',
      centres: [0, -1.6, 1.6].map((m) => ({ x: top.x + m * size, y: bottomY + ROWS.distances })),
      about: { x: top.x, y: bottomY + ROWS.distances },
      optional: i > 0 && i < last,
    });
  });
}

/** The ruler, and below it the stretch that the piece is made of with what meets it along it. */
export function drawPiece(sketch: Sketch, shown: LogShown, words: LogWords, bottomY: number): void {
  const { view } = sketch;
  const size = view.paper.textSize;
  const x = (fromButtIn: number): number => view.at(fromButtIn, 0).x;
  const y = bottomY + ROWS.piece;
  const row = (atY: number, from: number, to: number): void => straight(sketch, 'dimension', x(from), atY, x(to), atY);
  const tick = (atX: number): void => straight(sketch, 'ink-line', atX, y - TICK, atX, y + TICK);
  row(bottomY + ROWS.ruler, 0, shown.lengthIn);
  row(y, ...shown.used);
  for (const end of shown.used) tick(x(end));
  for (const { label, atIn } of words.marks) {
    const place = x(shown.fromButt(atIn));
    tick(place);
    sketch.text({
      key: `m-${label}`,
      text: label,
      kind: 'name',
      centres: [{ x: place, y: y + size }],
      about: { x: place, y },
    });
  }
  const [from, to] = shown.used;
  sketch.text({
    key: 'piece',
    text: `${words.name}, ${words.showLength(to - from)}`,
    kind: 'note',
    centres: [0.5, 0.35, 0.65].map((t) => ({ x: x(from + t * (to - from)), y: y + size })),
    about: { x: x((from + to) / 2), y },
    optional: true,
  });
}

function straight(sketch: Sketch, ink: Ink, fromX: number, fromY: number, toX: number, toY: number): void {
  const ends = [
    { x: fromX, y: fromY },
    { x: toX, y: toY },
  ];
  sketch.line(ends, ink, { givesWay: true });
}
