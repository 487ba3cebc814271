import type { MemberOf, Project, RoofPlane } from '../project/model.ts';
import { traitsOf } from '../project/traits.ts';
import { degreesFromRadians } from '../units.ts';
import type { PlaneGeometry, PurlinGeometry, RafterGeometry } from './shelter.ts';
import { nominalDepth, stickOf } from './sticks.ts';

/** A roof plane from its high to its low edge. Overhangs are level, from the line's axis to the edge of the covering. */
export function placePlane(
  project: Project,
  plane: RoofPlane,
  bearing: ReadonlyMap<string, number>,
  label: string,
): PlaneGeometry {
  const lineYIn = plane.onLines.map((id) => project.supportLines.find((l) => l.id === id)?.yIn ?? 0);
  const highY = lineYIn[0]!;
  const lowY = lineYIn[lineYIn.length - 1]!;
  const downY = lowY >= highY ? 1 : -1;
  const slope = Math.atan(plane.risePer12 / 12);
  const onSlope = coveringAboveSeat(project, plane, slope);
  const rise = plane.risePer12 / 12;
  return {
    id: plane.id,
    label,
    onLines: plane.onLines,
    lineYIn,
    risePer12: plane.risePer12,
    slopeDeg: degreesFromRadians(slope),
    fromXIn: plane.fromXIn,
    toXIn: plane.toXIn,
    highYIn: highY - downY * plane.highOverhangIn,
    lowYIn: lowY + downY * plane.lowOverhangIn,
    downY,
    highZIn: (bearing.get(plane.onLines[0]!) ?? 0) + onSlope + rise * plane.highOverhangIn,
    lowZIn: (bearing.get(plane.onLines[plane.onLines.length - 1]!) ?? 0) + onSlope - rise * plane.lowOverhangIn,
    runIn: Math.abs(lowY - highY) + plane.highOverhangIn + plane.lowOverhangIn,
  };
}

/** Height of the covering over the rafter seat, plumb: rafter less its seat cut, and purlins lying on it. */
function coveringAboveSeat(project: Project, plane: RoofPlane, slope: number): number {
  const rafter = project.members.find((m): m is MemberOf<'rafter'> => m.role === 'rafter' && m.plane === plane.id);
  const purlin = project.members.find((m): m is MemberOf<'purlin'> => m.role === 'purlin' && m.plane === plane.id);
  const rafterTraits = rafter ? traitsOf(project, rafter) : null;
  const rafterDepth = rafterTraits
    ? nominalDepth(stickOf(project, rafterTraits.stock, 1)) - rafterTraits.seatCutIn * Math.cos(slope)
    : 0;
  const purlinDepth =
    purlin && plane.sheetOn === 'purlins' ? nominalDepth(stickOf(project, traitsOf(project, purlin).stock, 1)) : 0;
  return (Math.max(0, rafterDepth) + purlinDepth) / Math.cos(slope);
}

/** What the sticks of a plane are called after their role, by place: `3`, `B3`. */
export type StickName = (index: number) => string;

/** Rafters of a plane, ascending x, each with the width of covering it carries out to the edges. */
export function placeRafters(
  project: Project,
  plane: PlaneGeometry,
  source: RoofPlane,
  bearing: ReadonlyMap<string, number>,
  nameOf: StickName,
): readonly RafterGeometry[] {
  const members = project.members
    .filter((m): m is MemberOf<'rafter'> => m.role === 'rafter' && m.plane === plane.id)
    .sort((a, b) => a.xIn - b.xIn || a.id.localeCompare(b.id));
  const supports = plane.onLines
    .map((line, i) => ({
      line,
      atIn: Math.abs(plane.lowYIn - plane.lineYIn[i]!),
      yIn: plane.lineYIn[i]!,
      zIn: bearing.get(line) ?? 0,
    }))
    .reverse();
  return members.map((m, i) => {
    const traits = traitsOf(project, m);
    const before = members[i - 1];
    const after = members[i + 1];
    const fromX = before ? (before.xIn + m.xIn) / 2 : plane.fromXIn;
    const toX = after ? (after.xIn + m.xIn) / 2 : plane.toXIn;
    const gaps = [before ? m.xIn - before.xIn : 0, after ? after.xIn - m.xIn : 0];
    return {
      id: m.id,
      label: `rafter ${nameOf(i)}`,
      plane: plane.id,
      xIn: m.xIn,
      tributaryFromXIn: fromX,
      tributaryToXIn: toX,
      tributaryWidthIn: toX - fromX,
      spacingIn: members.length > 1 ? Math.max(...gaps) : null,
      runIn: plane.runIn,
      supports,
      slopeDeg: plane.slopeDeg,
      eaveYIn: plane.lowYIn,
      downY: plane.downY,
      stick: stickOf(project, traits.stock, plane.runIn / Math.cos((plane.slopeDeg * Math.PI) / 180)),
      seatCutIn: traits.seatCutIn,
      blocked: traits.blocked,
      continuous: source.rafters === 'continuous',
    };
  });
}

/** Purlins of a plane, from the low edge up the slope. */
export function placePurlins(
  project: Project,
  plane: PlaneGeometry,
  rafters: readonly RafterGeometry[],
  nameOf: StickName,
): readonly PurlinGeometry[] {
  const slopeLength = plane.runIn / Math.cos((plane.slopeDeg * Math.PI) / 180);
  const members = project.members
    .filter((m): m is MemberOf<'purlin'> => m.role === 'purlin' && m.plane === plane.id)
    .sort((a, b) => a.upSlopeIn - b.upSlopeIn || a.id.localeCompare(b.id));
  return members.map((m, i) => {
    const before = members[i - 1];
    const after = members[i + 1];
    const from = before ? (before.upSlopeIn + m.upSlopeIn) / 2 : 0;
    const to = after ? (after.upSlopeIn + m.upSlopeIn) / 2 : slopeLength;
    return {
      id: m.id,
      label: `purlin ${nameOf(i)}`,
      plane: plane.id,
      upSlopeIn: m.upSlopeIn,
      tributaryFromIn: from,
      tributaryWidthIn: to - from,
      slopeDeg: plane.slopeDeg,
      fromXIn: plane.fromXIn,
      toXIn: plane.toXIn,
      rafterXIn: rafters.map((r) => r.xIn),
      rafterIds: rafters.map((r) => r.id),
      stick: stickOf(project, traitsOf(project, m).stock, plane.toXIn - plane.fromXIn),
    };
  });
}
