import type { LineGeometry, Shelter } from '../../engine/geometry/shelter.ts';
import { postsOf } from '../drawing/shelter-parts.ts';
import { showLength } from '../units/show-length.ts';
import type { UnitSystem } from '../units/system.ts';
import { groupBy } from './group-by.ts';

/** A front view that stands for one frame line or for several that look the same from the front. */
export interface FrontOnSheet {
  readonly lineId: string;
  readonly words: string;
}

/** One front view per different frame line; lines that differ in their height alone share one, and the caption says by how much. */
export function frontsOnSheet(shelter: Shelter, system: UnitSystem): readonly FrontOnSheet[] {
  const frames = shelter.lines.filter((l) => l.kind === 'frame').toSorted((a, b) => a.label.localeCompare(b.label));
  return groupBy(frames, (line) => shapeOf(shelter, line)).map(([drawn, ...alike]) => ({
    lineId: drawn!.id,
    words: `Line ${drawn!.label} from the front${alike.length === 0 ? '' : ` (${besides(alike, drawn!, system)})`}`,
  }));
}

/** Everything that is measured along the line, to a sixteenth of an inch. */
function shapeOf(shelter: Shelter, line: LineGeometry): string {
  const posts = postsOf(shelter, line);
  const to16 = (inches: number): number => Math.round(inches * 16);
  return JSON.stringify([
    posts.map((p) => [to16(p.xIn), p.foot.kind, p.stick?.kind]),
    shelter.beams.filter((b) => b.line === line.id).map((b) => [to16(b.fromXIn), to16(b.toXIn), b.stick?.kind]),
    shelter.braces
      .filter((b) => b.plane === 'along' && line.postIds.includes(b.postId))
      .map((b) => [posts.findIndex((p) => p.id === b.postId), b.side, to16(b.runIn), to16(b.dropIn)])
      .toSorted(),
  ]);
}

/** `line B alike, 2' 3" lower`; lines that differ by the same are named together. */
function besides(alike: readonly LineGeometry[], drawn: LineGeometry, system: UnitSystem): string {
  return groupBy(alike, (line) => offWords(line, drawn, system))
    .map((lines) => {
      const labels = lines.map(({ label }) => label).join(', ');
      return `line${lines.length > 1 ? 's' : ''} ${labels} alike${offWords(lines[0]!, drawn, system)}`;
    })
    .join('; ');
}

function offWords(line: LineGeometry, drawn: LineGeometry, system: UnitSystem): string {
  const lower = drawn.bearingZIn - line.bearingZIn;
  if (Math.abs(lower) < 1 / 16) return '';
  return `, ${showLength(Math.abs(lower), system)} ${lower > 0 ? 'lower' : 'higher'}`;
}
