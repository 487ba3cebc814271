import { ridgeOf } from '../../engine/geometry/ridge.ts';
import type { LineGeometry, Shelter } from '../../engine/geometry/shelter.ts';
import { byY, postsOf } from './shelter-parts.ts';

export type ShowLength = (inches: number) => string;

/** What the views say about themselves to a person who cannot see them, and the few words written on them. */
export const DRAWING_WORDS = {
  toSeat: (length: string) => `${length} to the seat`,
  toRidge: (length: string) => `${length} to the ridge`,
  ridge: 'ridge',
  pitch: (risePer12: number) => `${Math.round(risePer12 * 1000) / 1000} in 12`,
  dripLine: 'drip line',
  noBeamLog: 'beam: size not given',
  noPostLog: (label: string) => `${label}: size not given`,
  noPierTop: (label: string) => `${label}: pier top not given`,
  handles: 'Posts and braces that can be moved',
  movePost: (label: string) => `Post ${label}, along the line`,
  moveBraceRun: (label: string) => `Knee brace at ${label}, run along the beam`,
  moveBraceDrop: (label: string) => `Knee brace at ${label}, drop down the post`,
  handleKeys: {
    feet: 'Drag it, or use the arrow keys: 1 in at a press, with Shift 1/8 in. Escape takes it back.',
    metric: 'Drag it, or use the arrow keys: 25 mm at a press, with Shift 5 mm. Escape takes it back.',
  },
  bracesAlike: (count: number, all: number) => (count === all ? `all ${all} braces` : `${count} of ${all} braces`),
} as const;

export const frontTitle = (line: LineGeometry): string => `Front view of line ${line.label}`;

/** Posts, spans, overhangs and braces of one line in sentences. */
export function frontDescription(shelter: Shelter, line: LineGeometry, show: ShowLength): string {
  const posts = postsOf(shelter, line);
  const first = posts[0];
  const last = posts[posts.length - 1];
  const braces = shelter.braces.filter((b) => b.plane === 'along' && line.postIds.includes(b.postId));
  const said = [
    `${counted(posts.length, 'post')}: ${posts.map((p) => p.label).join(', ')}.`,
    ...posts.slice(1).map((p, i) => `${posts[i]!.label} to ${p.label} ${show(p.xIn - posts[i]!.xIn)} between axes.`),
  ];
  if (first && last) {
    said.push(
      `The beam reaches ${show(first.xIn - line.fromXIn)} past ${first.label} and ${show(line.toXIn - last.xIn)} past ${last.label}.`,
      `Seat of ${first.label} ${show(first.seatZIn - first.gradeZIn)} above the ground.`,
    );
  }
  said.push(braces.length === 0 ? 'No knee braces.' : `${counted(braces.length, 'knee brace')}.`);
  return said.join(' ');
}

export const SECTION_TITLE = 'Section across the frame lines';
export function sectionDescription(shelter: Shelter, show: ShowLength): string {
  const lines = byY(shelter);
  const ridge = ridgeOf(shelter.planes);
  const ridgeLine = lines.find((l) => l.id === ridge?.lineId);
  return [
    `${counted(lines.length, 'line')}: ${lines.map((l) => (l.kind === 'ledger' ? `${l.label} on the wall` : l.label)).join(', ')}.`,
    ...lines.slice(1).map((l, i) => `${lines[i]!.label} to ${l.label} ${show(l.yIn - lines[i]!.yIn)}.`),
    ...shelter.planes.map((p) => `Roof ${DRAWING_WORDS.pitch(p.risePer12)}, ${show(p.runIn)} from edge to edge.`),
    ...(ridgeLine ? [`The slopes meet on the ridge, line ${ridgeLine.label}; the rafters hang on its beam.`] : []),
  ].join(' ');
}

export const PLAN_TITLE = 'Plan';
export function planDescription(shelter: Shelter, show: ShowLength): string {
  return [
    `Covering ${show(shelter.planAlongIn)} by ${show(shelter.planAcrossIn)}.`,
    `${counted(shelter.posts.length, 'post')} on ${counted(shelter.lines.filter((l) => l.kind === 'frame').length, 'frame line')}, ${counted(shelter.rafters.length, 'rafter')}.`,
  ].join(' ');
}

const counted = (n: number, word: string): string => `${n} ${word}${n === 1 ? '' : 's'}`;
