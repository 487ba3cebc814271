import type { LineGeometry, PurlinGeometry, RafterGeometry, Shelter, Stick } from '../../geometry/shelter.ts';
import { nominalDepth, stickOf } from '../../geometry/sticks.ts';
import type { LedgerLine, Project } from '../../project/model.ts';
import { radiansFromDegrees } from '../../units.ts';
import { plus, type Vector } from '../fasteners/space.ts';
import { beamPiece } from './frame-pieces.ts';
import type { JointPiece } from './joint-setting.ts';
import { ALONG_X, DOWN, shapeOf, UP } from './stick-shape.ts';

/** Directions of a roof slope: up the slope and out of it. */
interface Slope {
  readonly up: Vector;
  readonly out: Vector;
  readonly cos: number;
}

export function slopeOf({ slopeDeg, downY }: Pick<RafterGeometry, 'slopeDeg' | 'downY'>): Slope {
  const angle = radiansFromDegrees(slopeDeg);
  const [cos, sin] = [Math.cos(angle), Math.sin(angle)];
  return { up: [0, -downY * cos, sin], out: [0, downY * sin, cos], cos };
}

/** A purlin where it lies on the tops of its rafters. */
export function purlinPiece(shelter: Shelter, purlin: PurlinGeometry, xIn: number): JointPiece {
  const rafter = shelter.rafters.find((r) => r.plane === purlin.plane);
  const { stick } = purlin;
  const half = nominalDepth(stick) / 2;
  const shape = rafter
    ? shapeOf(
        stick,
        { axisAt: offTop(rafter, purlin, xIn, half), axis: ALONG_X, up: slopeOf(rafter).out },
        diameterIn(stick),
      )
    : null;
  return {
    id: purlin.id,
    label: purlin.label,
    of: 'wood',
    stick,
    shape,
    toEndsIn: [xIn - purlin.fromXIn, purlin.toXIn - xIn],
  };
}

function offTop(rafter: RafterGeometry, purlin: PurlinGeometry, xIn: number, offIn: number): Vector {
  const { out, cos } = slopeOf(rafter);
  const onAxis = alongRafter(rafter, purlin.upSlopeIn * cos);
  return plus([xIn, onAxis[1], onAxis[2]], out, nominalDepth(rafter.stick) / 2 + offIn);
}

/** Mean thickness of a stick that changes little over a joint; sawn ones have none [in]. */
const diameterIn = (stick: Stick | null): number => (stick?.kind === 'round' ? nominalDepth(stick) + stick.flatIn : 0);

/** On a roof flatter than this a seat cut is as deep all along. */
const LEVEL_BELOW_RISE = 1 / 4;

/**
 * A seat cut is as deep as it is written at its heel and runs out uphill, its middle over the line: there it takes half, and
 * what goes through has the more wood on its way (safe side: the less reaches what lies under it).
 */
function seatCutOverLine({ slopeDeg, seatCutIn }: RafterGeometry): number {
  return 12 * Math.tan(radiansFromDegrees(slopeDeg)) < LEVEL_BELOW_RISE ? seatCutIn : seatCutIn / 2;
}

/** The axis of a rafter at a level distance from its eave end. */
function alongRafter(rafter: RafterGeometry, atIn: number): Vector {
  const support = rafter.supports[0]!;
  const { cos } = slopeOf(rafter);
  const tan = Math.tan(radiansFromDegrees(rafter.slopeDeg));
  const zIn = support.zIn - seatCutOverLine(rafter) + nominalDepth(rafter.stick) / 2 / cos;
  return [rafter.xIn, rafter.eaveYIn - rafter.downY * atIn, zIn + (atIn - support.atIn) * tan];
}

export function rafterPiece(rafter: RafterGeometry, atIn: number, seatZIn?: number): JointPiece {
  const { up, out, cos } = slopeOf(rafter);
  const at = alongRafter(rafter, atIn);
  const seat = seatZIn === undefined ? [] : [{ at: [at[0], at[1], seatZIn] as const, outward: DOWN }];
  return {
    id: rafter.id,
    label: rafter.label,
    of: 'wood',
    stick: rafter.stick,
    shape: shapeOf(rafter.stick, { axisAt: at, axis: up, up: out }, diameterIn(rafter.stick), seat),
    toEndsIn: [atIn / cos, (rafter.runIn - atIn) / cos],
  };
}

/** What lies under the rafters of a line: its ledger, its strip, or its beam where it has no strip. */
export function bearerPiece(project: Project, shelter: Shelter, line: LineGeometry, xIn: number): JointPiece | null {
  const written = project.supportLines.find((l) => l.id === line.id)!;
  if (written.kind === 'ledger') return ledgerPiece(project, line, written, xIn);
  if (written.strip) return stripPiece(line, stickOf(project, written.strip.stock, line.toXIn - line.fromXIn), xIn);
  const beam = shelter.beams.find((b) => b.line === line.id && b.fromXIn - 1e-6 <= xIn && xIn <= b.toXIn + 1e-6);
  return beam ? beamPiece(beam, xIn, line.yIn) : null;
}

function stripPiece(line: LineGeometry, stick: Stick | null, xIn: number): JointPiece {
  const thick = stick?.kind === 'sawn' ? { ...stick, depthIn: line.stripThicknessIn } : stick;
  const axisAt: Vector = [xIn, line.yIn, line.bearingZIn - line.stripThicknessIn / 2];
  return {
    id: line.id,
    label: `strip ${line.label}`,
    of: 'wood',
    stick,
    shape: shapeOf(thick, { axisAt, axis: ALONG_X, up: UP }, line.stripThicknessIn),
    toEndsIn: [xIn - line.fromXIn, line.toXIn - xIn],
  };
}

export function ledgerPiece(project: Project, line: LineGeometry, written: LedgerLine, xIn: number): JointPiece {
  const stick = stickOf(project, written.stock, line.toXIn - line.fromXIn);
  const off = Math.sign(line.yIn - written.wallFaceYIn) || 1;
  const sawn = stick?.kind === 'sawn' ? stick : null;
  const axisAt: Vector = [
    xIn,
    written.wallFaceYIn + (off * (sawn?.breadthIn ?? 0)) / 2,
    line.bearingZIn - (sawn?.depthIn ?? 0) / 2,
  ];
  return {
    id: line.id,
    label: `ledger ${line.label}`,
    of: 'wood',
    stick,
    shape: shapeOf(sawn, { axisAt, axis: ALONG_X, up: UP }, 0),
    toEndsIn: [xIn - line.fromXIn, line.toXIn - xIn],
  };
}
