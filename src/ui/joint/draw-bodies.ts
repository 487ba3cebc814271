import { lengthOf, plus, type Vector } from '../../engine/checks/fasteners/space.ts';
import type { JointSetting } from '../../engine/checks/joints/joint-setting.ts';
import type { Point } from '../drawing/paper.ts';
import type { Bodies } from './bodies-of.ts';
import type { Body } from './body.ts';
import { seen } from './looks.ts';
import { insideOf, isInside, nearRim, seenBody, type Seen } from './outline.ts';
import type { Pen } from './pen.ts';
import { JOINT_DRAWING_WORDS } from './words.ts';

/** Both pieces, the upper one before the lower one, with what lies under them. */
export function drawBodies(pen: Pen, setting: JointSetting, bodies: Bodies): void {
  const lower = bodies.lower && drawBody(pen, bodies.lower);
  const upper = bodies.upper && drawBody(pen, bodies.upper);
  if (lower && upper) drawHidden(pen, lower, upper);
  namePieces(pen, setting, bodies, { upper, lower });
}

function drawBody({ sketch, look }: Pen, body: Body): Seen {
  const shown = seenBody(body, look);
  const onPaper = (points: readonly Point[]): readonly Point[] => points.map((p) => sketch.view.at(p.x, p.y));
  sketch.outline(onPaper(shown.outline), 'ink-thin', { covers: true });
  for (const edge of shown.edges) sketch.line(onPaper(edge), 'ink-line');
  if (shown.isEndOn) {
    const whole = [...body.uncut, ...body.uncut.slice(0, 1)].map((p) => seen(look, p));
    for (const part of beyond(whole, shown.outline)) sketch.line(onPaper(part), 'hidden-line');
  } else if (body.atJoint === body.uncut)
    for (const run of nearRim(body.atJoint, body, look)) sketch.line(onPaper(run), 'ink-thin');
  return shown;
}

/** What lies under both pieces, down to a level of the paper [in]. */
export function drawUnder({ sketch, look }: Pen, body: Body, lowIn: number): void {
  for (const edge of seenBody(body, look).edges)
    edge.slice(1).forEach((to, i) => {
      const from = edge[i]!;
      if (from.y < lowIn && to.y < lowIn) return;
      const t = (lowIn - from.y) / (to.y - from.y || 1);
      const cut = { x: from.x + t * (to.x - from.x), y: lowIn };
      const ends = [from.y < lowIn ? cut : from, to.y < lowIn ? cut : to];
      sketch.line(
        ends.map((p) => sketch.view.at(p.x, p.y)),
        'ink-thin',
      );
    });
}

/** What was cut off: parts of a whole section outside of what is left of it. */
const beyond = (whole: readonly Point[], left: readonly Point[]): readonly (readonly Point[])[] =>
  whole.slice(1).flatMap((to, i) => {
    const from = whole[i]!;
    const isLeft = left.some((p) => Math.hypot(p.x - to.x, p.y - to.y) < 1e-6);
    return isLeft ? [] : [[from, to]];
  });

/** Edges of what lies behind, where the piece before it covers them. */
function drawHidden({ sketch }: Pen, behind: Seen, before: Seen): void {
  for (const edge of behind.edges)
    for (const part of insideOf(edge, before.outline))
      sketch.line(
        part.map((p) => sketch.view.at(p.x, p.y)),
        'hidden-line',
      );
}

function namePieces(
  { sketch, look, at }: Pen,
  setting: JointSetting,
  bodies: Bodies,
  shown: Readonly<Record<'upper' | 'lower', Seen | null>>,
): void {
  const parts = [
    { piece: setting.upper, body: bodies.upper, key: 'upper', other: shown.lower },
    { piece: setting.lower, body: bodies.lower, key: 'lower', other: shown.upper },
  ];
  for (const { piece, body, key, other } of parts) {
    if (piece.of !== 'wood') continue;
    if (!body) {
      const about = at(bodies.middle);
      const text = JOINT_DRAWING_WORDS.sizeNotGiven(piece.label);
      sketch.text({ key: `name-${key}`, text, kind: 'note', centres: [about], about });
      continue;
    }
    const places = namePlaces(body, bodies.middle);
    const isClear = (p: Vector): boolean => !other || !isInside(seen(look, p), other.outline);
    const clear = places.filter(isClear);
    const centres = (clear.length > 0 ? clear : places).map(at);
    sketch.text({ key: `name-${key}`, text: piece.label, kind: 'note', centres, about: centres[0]! });
  }
}

/** Along the middle of a piece, from its far ends toward the joint. */
function namePlaces({ rings }: Body, middle: Vector): readonly Vector[] {
  const centre = (ring: readonly Vector[]): Vector =>
    ring.reduce<Vector>((sum, p) => plus(sum, p, 1 / ring.length), [0, 0, 0]);
  const ends = [centre(rings[0]!), centre(rings.at(-1)!)].toSorted(
    (a, b) => lengthOf(plus(b, middle, -1)) - lengthOf(plus(a, middle, -1)),
  );
  const [far, near] = [ends[0]!, ends[1]!];
  return [0.2, 0.3, 0.8, 0.7, 0.1, 0.4, 0.6].map((share) => plus(far, plus(near, far, -1), share));
}
