import { between } from '../../geometry/beam-shape.ts';
import type { BeamGeometry, LineGeometry, Shelter, Stick } from '../../geometry/shelter.ts';
import { stickOf } from '../../geometry/sticks.ts';
import { jointKey } from '../../project/joint-capacity.ts';
import type { LedgerLine, Project } from '../../project/model.ts';
import { plus, type Vector } from '../fasteners/space.ts';
import { beamPiece } from './frame-pieces.ts';
import type { JointPiece, JointSetting } from './joint-setting.ts';
import { bearerPiece, ledgerPiece } from './roof-pieces.ts';
import { ACROSS_Y, ALONG_X, DOWN, opposite, shapeOf, UP } from './stick-shape.ts';

/** Rows of what is asked once for all of a line. */
const WHOLE = 'whole';

/** The strip on each beam of its line where the packing is thickest, or the ledger on its wall. */
export function lineJoints(project: Project, shelter: Shelter, line: LineGeometry): readonly JointSetting[] {
  const written = project.supportLines.find((l) => l.id === line.id)!;
  if (written.kind === 'ledger') return [ledgerJoint(project, line, written)];
  if (!written.strip) return [];
  return beamsOf(shelter, line).map((beam): JointSetting => {
    const xs = rafterPlaces(shelter, line, beam);
    const xIn = xs.reduce((a, b) => (shimAt(beam, b) > shimAt(beam, a) ? b : a));
    const contact = stripContact(project, shelter, { line, beam, xIn });
    return { ...contact, upper: nearestEnd(contact.upper, xIn, xs), lower: nearestEnd(contact.lower, xIn, xs) };
  });
}

/** The strip on each beam of its line, once for each rafter: what one joint of the line stands for. */
export function stripContacts(project: Project, shelter: Shelter, line: LineGeometry): readonly JointSetting[] {
  const written = project.supportLines.find((l) => l.id === line.id)!;
  if (written.kind === 'ledger' || !written.strip) return [];
  return beamsOf(shelter, line).flatMap((beam) =>
    rafterPlaces(shelter, line, beam).map((xIn) => stripContact(project, shelter, { line, beam, xIn })),
  );
}

const beamsOf = (shelter: Shelter, line: LineGeometry): readonly BeamGeometry[] =>
  shelter.beams.filter((b) => b.line === line.id);

interface StripPlace {
  readonly line: LineGeometry;
  readonly beam: BeamGeometry;
  readonly xIn: number;
}

function stripContact(project: Project, shelter: Shelter, { line, beam, xIn }: StripPlace): JointSetting {
  const upper = bearerPiece(project, shelter, line, xIn)!;
  const at: Vector = [xIn, line.yIn, between(beam.stations, xIn, (s) => s.topZIn)];
  return {
    id: jointKey('stripBeam', line.id, beam.id),
    key: jointKey('stripBeam', line.id),
    kind: 'stripBeam',
    label: `strip ${line.label} on ${beam.label}`,
    place: WHOLE,
    lineId: null,
    upper,
    lower: beamPiece(beam, xIn, line.yIn),
    at,
    ways: { pull: UP, along: ALONG_X, across: ACROSS_Y },
    line: { at, into: DOWN },
    shoulderIn: 0,
  };
}

function ledgerJoint(project: Project, line: LineGeometry, written: LedgerLine): JointSetting {
  const xIn = (line.fromXIn + line.toXIn) / 2;
  const upper = ledgerPiece(project, line, written, xIn);
  const off: Vector = [0, Math.sign(line.yIn - written.wallFaceYIn) || 1, 0];
  const at: Vector = [xIn, written.wallFaceYIn, line.bearingZIn - heightOf(upper.stick) / 2];
  return {
    id: jointKey('ledgerWall', line.id),
    key: jointKey('ledgerWall', line.id),
    kind: 'ledgerWall',
    label: `ledger ${line.label} on the wall`,
    place: WHOLE,
    lineId: null,
    upper,
    lower: wallPiece(project, line, written, at, off),
    at,
    ways: { pull: off, along: ALONG_X, across: UP },
    line: { at, into: opposite(off) },
    shoulderIn: 0,
  };
}

/**
 * The wood that a fixing ends in, behind the cover of the wall: a stud by its middle, a band as high as the fixing. Where its ends
 * lie nobody knows: they are taken as far away.
 */
function wallPiece(project: Project, line: LineGeometry, { behind }: LedgerLine, at: Vector, off: Vector): JointPiece {
  const piece = { id: `${line.id}/wall`, label: 'wall' };
  const stick = behind ? stickOf(project, behind.stock, 0) : null;
  if (!behind || stick?.kind !== 'sawn') return { ...piece, of: 'wall', stick: null, shape: null, toEndsIn: null };
  const isUpright = behind.grain === 'upright';
  // a stud stands with its depth into the wall, a band lies with its breadth into it
  const deepIn = isUpright ? stick.depthIn : stick.breadthIn;
  const lying = {
    axisAt: plus(at, off, -behind.coverIn - deepIn / 2),
    axis: isUpright ? UP : ALONG_X,
    up: isUpright ? off : UP,
  };
  return { ...piece, of: 'wood', stick, shape: shapeOf(stick, lying, 0), toEndsIn: [FAR_IN, FAR_IN] };
}

/** Where the ends of the wall's wood are taken to lie [in]; own choice, farther than any fastener asks for. */
const FAR_IN = 48;

const heightOf = (stick: Stick | null): number => (stick?.kind === 'sawn' ? stick.depthIn : 0);

/** Where rafters lie over a beam; its middle where none does. */
function rafterPlaces(shelter: Shelter, line: LineGeometry, { fromXIn, toXIn }: BeamGeometry): readonly number[] {
  const xs = shelter.rafters.filter((r) => r.supports.some((s) => s.line === line.id)).map((r) => r.xIn);
  const over = xs.filter((x) => fromXIn <= x && x <= toXIn);
  return over.length > 0 ? over : [(fromXIn + toXIn) / 2];
}

const shimAt = (beam: BeamGeometry, xIn: number): number => between(beam.stations, xIn, (s) => s.shimIn);

/** A piece at one place that stands for several: as near to its ends as the nearest of them. */
function nearestEnd(piece: JointPiece, xIn: number, xs: readonly number[]): JointPiece {
  if (!piece.toEndsIn) return piece;
  const [start, end] = piece.toEndsIn;
  return {
    ...piece,
    toEndsIn: [start + Math.min(...xs.map((x) => x - xIn)), end + Math.min(...xs.map((x) => xIn - x))],
  };
}
