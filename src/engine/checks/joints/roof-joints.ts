import { ridgeOf } from '../../geometry/ridge.ts';
import type { PlaneGeometry, PurlinGeometry, RafterGeometry, Shelter } from '../../geometry/shelter.ts';
import { jointKey } from '../../project/joint-capacity.ts';
import type { JointKind, Project } from '../../project/model.ts';
import type { Vector } from '../fasteners/space.ts';
import type { JointPiece, JointSetting } from './joint-setting.ts';
import { lineJoints } from './line-joints.ts';
import { bearerPiece, purlinPiece, rafterPiece, slopeOf } from './roof-pieces.ts';
import { ACROSS_Y, ALONG_X, DOWN, opposite, UP } from './stick-shape.ts';

/** Rows of what is asked once for all of a plane. */
const WHOLE = 'whole';

/** Every joint of the roof: sheet to its rows, purlins to rafters, rafters to lines and at the ridge, strips to beams. */
export function roofJoints(project: Project, shelter: Shelter): readonly JointSetting[] {
  return [
    ...shelter.planes.flatMap((plane) => sheetJoints(project, shelter, plane)),
    ...shelter.purlins.flatMap((purlin) => purlinJoints(shelter, purlin)),
    ...shelter.rafters.flatMap((rafter) => rafterJoints(project, shelter, rafter)),
    ...ridgeJoints(shelter),
    ...shelter.lines.flatMap((line) => lineJoints(project, shelter, line)),
  ];
}

function sheetJoints(project: Project, shelter: Shelter, plane: PlaneGeometry): readonly JointSetting[] {
  const onPurlins = project.roofPlanes.find((p) => p.id === plane.id)?.sheetOn === 'purlins';
  const kind: JointKind = onPurlins ? 'sheetPurlin' : 'sheetRafter';
  const { up, out } = slopeOf(plane);
  const rows: readonly JointPiece[] = onPurlins
    ? shelter.purlins.filter((p) => p.plane === plane.id).map((p) => purlinPiece(shelter, p, middleOf(p)))
    : shelter.rafters.filter((r) => r.plane === plane.id).map((r) => rafterPiece(r, r.runIn / 2));
  const sheet: JointPiece = { id: plane.id, label: plane.label, of: 'sheet', stick: null, shape: null, toEndsIn: null };
  return rows.map((row) => ({
    id: jointKey(kind, plane.id, row.id),
    key: jointKey(kind, plane.id),
    kind,
    label: `${plane.label} on ${row.label}`,
    place: WHOLE,
    lineId: null,
    upper: sheet,
    lower: row,
    at: row.shape?.axisAt ?? [0, 0, 0],
    ways: { pull: out, along: opposite(up), across: ALONG_X },
    line: row.shape && { at: row.shape.axisAt, into: opposite(out) },
    shoulderIn: 0,
  }));
}

const middleOf = ({ fromXIn, toXIn }: PurlinGeometry): number => (fromXIn + toXIn) / 2;

function purlinJoints(shelter: Shelter, purlin: PurlinGeometry): readonly JointSetting[] {
  return purlin.rafterIds.map((rafterId) => {
    const rafter = shelter.rafters.find((r) => r.id === rafterId)!;
    const { up, out } = slopeOf(rafter);
    const upper = purlinPiece(shelter, purlin, rafter.xIn);
    const at = upper.shape?.axisAt ?? [rafter.xIn, 0, 0];
    return {
      id: jointKey('purlinRafter', purlin.id, rafterId),
      key: jointKey('purlinRafter', purlin.id, rafterId),
      kind: 'purlinRafter',
      label: `${purlin.label} on ${rafter.label}`,
      place: rafterId,
      lineId: null,
      upper,
      lower: rafterPiece(rafter, purlin.upSlopeIn * slopeOf(rafter).cos),
      at,
      ways: { pull: out, along: ALONG_X, across: opposite(up) },
      line: { at, into: opposite(out) },
      shoulderIn: 0,
    };
  });
}

/** A rafter on each of its lines: on the strip, on the ledger, or on the beam itself. */
function rafterJoints(project: Project, shelter: Shelter, rafter: RafterGeometry): readonly JointSetting[] {
  return rafter.supports.flatMap((support): readonly JointSetting[] => {
    const line = shelter.lines.find((l) => l.id === support.line)!;
    const kind: JointKind = line.kind === 'ledger' ? 'rafterLedger' : 'rafterStrip';
    const lower = bearerPiece(project, shelter, line, rafter.xIn);
    if (!lower) return [];
    const at: Vector = [rafter.xIn, support.yIn, support.zIn];
    return [
      {
        id: jointKey(kind, rafter.id, line.id),
        key: jointKey(kind, rafter.id, line.id),
        kind,
        label: `${rafter.label} on ${lower.label}`,
        place: line.id,
        lineId: null,
        upper: rafterPiece(rafter, support.atIn, support.zIn),
        lower,
        at,
        ways: { pull: UP, along: ALONG_X, across: ACROSS_Y },
        line: { at, into: DOWN },
        shoulderIn: 0,
      },
    ];
  });
}

/** Rafters of two slopes that end against one another over their ridge line. */
function ridgeJoints(shelter: Shelter): readonly JointSetting[] {
  const ridge = ridgeOf(shelter.planes);
  if (!ridge) return [];
  const [one, other] = ridge.planes;
  return shelter.rafters
    .filter((r) => r.plane === one.id)
    .flatMap((rafter): readonly JointSetting[] => {
      const meets = shelter.rafters.find((r) => r.plane === other.id && Math.abs(r.xIn - rafter.xIn) < MEETS_IN);
      if (!meets) return [];
      const [upper, lower] = [rafterPiece(rafter, rafter.runIn), rafterPiece(meets, meets.runIn)];
      return [
        {
          id: jointKey('rafterRafter', rafter.id, meets.id),
          key: jointKey('rafterRafter', rafter.id, meets.id),
          kind: 'rafterRafter',
          label: `${rafter.label} at ${meets.label}`,
          place: meets.id,
          lineId: null,
          upper,
          lower,
          at: upper.shape?.axisAt ?? [rafter.xIn, 0, 0],
          ways: { pull: slopeOf(rafter).up[1] > 0 ? [0, -1, 0] : ACROSS_Y, along: UP, across: ALONG_X },
          line: null,
          shoulderIn: 0,
        },
      ];
    });
}

/** Rafters of two slopes this near along the ridge meet there [in]; own rule. */
const MEETS_IN = 1;
