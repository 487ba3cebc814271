import { between } from '../../engine/geometry/beam-shape.ts';
import type { LineGeometry, RafterGeometry, Shelter } from '../../engine/geometry/shelter.ts';
import type { Point } from './paper.ts';
import { coverZAt } from './roof-shape.ts';
import type { Ink, Sketch } from './sketch.ts';
import { hasSize, thicknessAt } from './sticks.ts';
import { beamsOf, planesOn } from './shelter-parts.ts';

/** A shim thinner than this does not show [in]. */
const LEAST_SHIM_IN = 1 / 16;

export function drawStrip(sketch: Sketch, shelter: Shelter, line: LineGeometry): void {
  const { view } = sketch;
  const rafters = raftersOver(shelter, line);
  const underStrip = line.bearingZIn - line.stripThicknessIn;
  for (const beam of beamsOf(shelter, line)) {
    if (!hasSize(beam.stick)) continue;
    for (const { rafter } of rafters) {
      const half = (thicknessAt(rafter.stick, 0, 'breadth') ?? 0) / 2;
      if (half === 0 || rafter.xIn < beam.fromXIn || rafter.xIn > beam.toXIn) continue;
      const topZ = between(beam.stations, rafter.xIn, (s) => s.topZIn);
      if (underStrip - topZ < LEAST_SHIM_IN) continue;
      sketch.outline(
        boxOf(rafter.xIn - half, rafter.xIn + half, topZ, underStrip).map((p) => view.at(p.x, p.y)),
        'ink-thin',
      );
    }
  }
  if (line.stripThicknessIn > 0) {
    sketch.outline(
      boxOf(line.fromXIn, line.toXIn, underStrip, line.bearingZIn).map((p) => view.at(p.x, p.y)),
      'ink-thin',
      { covers: true },
    );
  }
}

const boxOf = (left: number, right: number, low: number, high: number): readonly Point[] => [
  { x: left, y: low },
  { x: right, y: low },
  { x: right, y: high },
  { x: left, y: high },
];

function raftersOver(
  shelter: Shelter,
  line: LineGeometry,
): readonly { readonly rafter: RafterGeometry; readonly seatZIn: number }[] {
  return shelter.rafters.flatMap((rafter) => {
    const support = rafter.supports.find((s) => s.line === line.id);
    return support ? [{ rafter, seatZIn: support.zIn }] : [];
  });
}

/** Rafters cut across over the line, the purlin edge seen behind the cut, and the covering. */
export function drawRoofAtLine(sketch: Sketch, shelter: Shelter, line: LineGeometry, inkOf: (id: string) => Ink): void {
  const { view } = sketch;
  for (const { rafter, seatZIn } of raftersOver(shelter, line)) {
    const bottomZ = seatZIn - rafter.seatCutIn;
    const steep = 1 / Math.cos((rafter.slopeDeg * Math.PI) / 180);
    const breadth = thicknessAt(rafter.stick, 0, 'breadth');
    const depth = thicknessAt(rafter.stick, 0, 'depth');
    const options = { covers: true, memberId: rafter.id };
    if (breadth === null || depth === null) continue;
    if (rafter.stick?.kind === 'round') {
      sketch.circle(view.at(rafter.xIn, bottomZ + depth / 2), (depth / 2) * view.scale, inkOf(rafter.id), options);
      continue;
    }
    const box = boxOf(rafter.xIn - breadth / 2, rafter.xIn + breadth / 2, bottomZ, bottomZ + depth * steep);
    sketch.outline(
      box.map((p) => view.at(p.x, p.y)),
      inkOf(rafter.id),
      options,
    );
  }
  for (const plane of planesOn(shelter, line)) {
    const topZ = coverZAt(plane, line.yIn);
    const purlin = shelter.purlins.find((p) => p.plane === plane.id);
    const under = purlin ? thicknessAt(purlin.stick, 0, 'depth') : null;
    if (under !== null) {
      const z = topZ - under / Math.cos((plane.slopeDeg * Math.PI) / 180);
      sketch.line([view.at(plane.fromXIn, z), view.at(plane.toXIn, z)], 'ink-thin');
    }
    sketch.line([view.at(plane.fromXIn, topZ), view.at(plane.toXIn, topZ)], 'cover-line');
  }
}
