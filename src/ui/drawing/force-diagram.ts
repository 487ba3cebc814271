import type { MemberEnvelope } from '../../engine/evaluation.ts';
import type { BeamGeometry, LineGeometry, Shelter } from '../../engine/geometry/shelter.ts';
import { between } from '../../engine/geometry/beam-shape.ts';
import { hatchStrokes } from './outline.ts';
import type { Point } from './paper.ts';
import type { Sketch } from './sketch.ts';
import { hasSize } from './sticks.ts';

/** What is hatched on the members' own outlines. */
export interface ForceOverlay {
  readonly kind: 'moment' | 'shear' | 'sag';
  readonly members: readonly MemberEnvelope[];
  /** the greatest value in words, with its distance from the member's start: `moment 61,200 lb·in at 9 ft 4 in` */
  readonly show: (value: number, atIn: number) => string;
}

interface Curves {
  readonly high: readonly number[];
  readonly low: readonly number[];
}
/** Positive moment is drawn on the side that it stretches, positive shear above, sag below as it hangs. */
function curvesOf(kind: ForceOverlay['kind'], m: MemberEnvelope): Curves {
  if (kind === 'moment') return { high: m.momentMaxLbIn, low: m.momentMinLbIn };
  if (kind === 'shear') return { high: m.shearMinLb.map((v) => -v), low: m.shearMaxLb.map((v) => -v) };
  return { high: m.sagIn, low: m.sagIn.map(() => 0) };
}

/** A member's axis on the paper: place at a distance from its start, and the way that `positive` is drawn. */
interface Axis {
  readonly memberId: string;
  readonly at: (s: number) => Point;
  readonly out: Point;
}

/** The greatest value reaches this many log thicknesses, and at least this much paper, from the axis. */
const REACH_IN_LOGS = 1.8;
const LEAST_REACH = 3;

/** Draws the diagram on every beam and post of the line (sag on beams only) to one scale, and names its greatest value. */
export function drawForces(sketch: Sketch, shelter: Shelter, line: LineGeometry, overlay: ForceOverlay): void {
  const axes = axesOf(sketch, shelter, line, overlay.kind !== 'sag');
  const shown = axes.flatMap((axis) => {
    const envelope = overlay.members.find((m) => m.memberId === axis.memberId);
    return envelope && envelope.atIn.length > 1 ? [{ axis, envelope, curves: curvesOf(overlay.kind, envelope) }] : [];
  });
  const greatest = Math.max(0, ...shown.flatMap((s) => [...s.curves.high, ...s.curves.low].map(Math.abs)));
  if (!(greatest > 0)) return;
  const reach = Math.max(
    REACH_IN_LOGS * thickestBeam(shelter, line) * sketch.view.scale,
    LEAST_REACH * sketch.view.paper.textSize,
  );
  const perUnit = reach / greatest;
  const peaks = shown.flatMap(({ axis, envelope, curves }) =>
    [curves.high, curves.low].flatMap((values) => {
      const edge = envelope.atIn.map((s, i) => moved(axis.at(s), axis.out, (values[i] ?? 0) * perUnit));
      drawLobe(sketch, axis, envelope, edge);
      const most = values.findIndex((v) => Math.abs(v) === greatest);
      return most < 0 ? [] : [{ place: edge[most]!, value: values[most]!, out: axis.out, atIn: envelope.atIn[most]! }];
    }),
  );
  const peak = peaks[0];
  if (peak) namePeak(sketch, peak, overlay.show(greatest, peak.atIn));
}

function drawLobe(sketch: Sketch, axis: Axis, envelope: MemberEnvelope, edge: readonly Point[]): void {
  const first = envelope.atIn[0]!;
  const last = envelope.atIn[envelope.atIn.length - 1]!;
  const lobe = [axis.at(first), ...edge, axis.at(last)];
  if (edge.every((p, i) => Math.hypot(p.x - axis.at(envelope.atIn[i]!).x, p.y - axis.at(envelope.atIn[i]!).y) < 0.2)) {
    return;
  }
  sketch.hatch(hatchStrokes(lobe, sketch.view.paper.textSize * 0.4));
  sketch.line(lobe, 'force-line');
  sketch.line([axis.at(first), axis.at(last)], 'ink-thin');
}

function namePeak(
  sketch: Sketch,
  peak: { readonly place: Point; readonly value: number; readonly out: Point },
  text: string,
): void {
  const size = sketch.view.paper.textSize;
  const side = Math.sign(peak.value) || 1;
  const near = [1, 1.6, 2.4].map((n) => moved(peak.place, peak.out, side * n * size));
  sketch.text({
    key: 'force',
    text,
    kind: 'note',
    centres: near.flatMap((p) => [0, 3, -3].map((n) => ({ x: p.x + n * size, y: p.y }))),
    about: peak.place,
  });
}

function axesOf(sketch: Sketch, shelter: Shelter, line: LineGeometry, withPosts: boolean): readonly Axis[] {
  const { view } = sketch;
  const beams = shelter.beams.filter((b) => b.line === line.id && hasSize(b.stick));
  const posts = withPosts ? shelter.posts.filter((p) => p.line === line.id) : [];
  return [
    ...beams.map((b): Axis => ({ memberId: b.id, at: (s) => onBeam(sketch, b, s), out: { x: 0, y: 1 } })),
    // a post runs up from its foot; what lies under a member that runs to the right lies to the right of one that runs up
    ...posts.map((p): Axis => ({ memberId: p.id, at: (s) => view.at(p.xIn, p.footZIn + s), out: { x: 1, y: 0 } })),
  ];
}

const onBeam = (sketch: Sketch, beam: BeamGeometry, s: number): Point =>
  sketch.view.at(
    beam.fromXIn + s,
    between(beam.stations, beam.fromXIn + s, (p) => p.axisZIn),
  );
const moved = (p: Point, way: Point, by: number): Point => ({ x: p.x + way.x * by, y: p.y + way.y * by });
const thickestBeam = (shelter: Shelter, line: LineGeometry): number =>
  Math.max(0, ...shelter.beams.filter((b) => b.line === line.id).flatMap((b) => b.stations.map((s) => s.diameterIn)));
