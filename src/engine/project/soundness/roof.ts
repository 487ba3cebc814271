import { type Fault, fault } from '../../message.ts';
import { INCHES_PER_FOOT } from '../../units.ts';
import type { MemberOf, Project, RoofPlane, SupportLine } from '../model.ts';
import { membersOf } from '../traits.ts';
import { isWithin, memberAt, planeAt, SAME_PLACE_IN } from './at.ts';

/** The lines a plane lies on, high to low; broken references are left out (they are faults of their own). */
const linesOf = (project: Project, plane: RoofPlane): readonly SupportLine[] =>
  plane.onLines.flatMap((id) => project.supportLines.find((line) => line.id === id) ?? []);

/** Level distance between the edges of the covering, and the same up the slope [in]. */
export function planeRunIn(project: Project, plane: RoofPlane): number {
  const ys = linesOf(project, plane).map(({ yIn }) => yIn);
  return Math.max(...ys, -Infinity) - Math.min(...ys, Infinity) + plane.highOverhangIn + plane.lowOverhangIn;
}
export const slopedIn = (plane: RoofPlane, levelIn: number): number =>
  levelIn * Math.hypot(1, plane.risePer12 / INCHES_PER_FOOT);

/** Least and greatest x of what carries rafters on a line [in]. */
function reachOf(project: Project, line: SupportLine): readonly [number, number] {
  if (line.kind === 'ledger') return [line.fromXIn, line.toXIn];
  const beams = membersOf(project, 'beam').filter((beam) => beam.line === line.id);
  return [Math.min(...beams.map((b) => b.fromXIn)), Math.max(...beams.map((b) => b.toXIn))];
}

export function planeFaults(project: Project): readonly Fault[] {
  return project.roofPlanes.flatMap((plane) => [
    ...edgeFaults(plane),
    ...leaningFaults(plane),
    ...ridgeFaults(project, plane),
    ...downhillFaults(project, plane),
    ...carriedFaults(project, plane),
  ]);
}

function edgeFaults(plane: RoofPlane): readonly Fault[] {
  if (plane.fromXIn < plane.toXIn) return [];
  return [fault(planeAt(plane.id, 'toXIn'), 'endsBeforeStart', { fromXIn: plane.fromXIn, toXIn: plane.toXIn })];
}

/** A plane on one line would lean on its neighbour and push outward: such thrust is not in the method. */
function leaningFaults(plane: RoofPlane): readonly Fault[] {
  const [only, ...more] = plane.onLines;
  if (only === undefined || more.length > 0) return [];
  return [fault(planeAt(plane.id, 'onLines'), 'planeOnOneLine', { plane: plane.id, line: only })];
}

/** Slopes that fall away from one ridge line end there: neither can reach through the other. */
function ridgeFaults(project: Project, plane: RoofPlane): readonly Fault[] {
  const side = downhill(project, plane);
  const other = project.roofPlanes.find(
    (p) => p.onLines[0] === plane.onLines[0] && side * downhill(project, p) < 0 && isBeside(p, plane),
  );
  if (!other || plane.highOverhangIn <= 0) return [];
  const { highOverhangIn } = plane;
  return [fault(planeAt(plane.id, 'highOverhangIn'), 'planePastRidge', { line: plane.onLines[0]!, highOverhangIn })];
}

/** +1 where y grows down the slope, -1 where it falls, 0 where the lines do not say. */
function downhill(project: Project, plane: RoofPlane): number {
  const ys = linesOf(project, plane).map(({ yIn }) => yIn);
  return Math.sign((ys.at(-1) ?? 0) - (ys[0] ?? 0));
}

/** Two planes lie over the same stretch along the lines. */
const isBeside = (a: RoofPlane, b: RoofPlane): boolean =>
  Math.min(a.toXIn, b.toXIn) - Math.max(a.fromXIn, b.fromXIn) > SAME_PLACE_IN;

/** Lines stand in one direction from high to low, none twice, none at the same place. */
function downhillFaults(project: Project, plane: RoofPlane): readonly Fault[] {
  const ys = linesOf(project, plane).map(({ yIn }) => yIn);
  const steps = ys.slice(1).map((y, i) => y - ys[i]!);
  const isOneWay = steps.every((step) => step > SAME_PLACE_IN) || steps.every((step) => step < -SAME_PLACE_IN);
  return isOneWay
    ? []
    : [fault(planeAt(plane.id, 'onLines'), 'linesNotInOrder', { plane: plane.id, ys: ys.join(', ') })];
}

function carriedFaults(project: Project, plane: RoofPlane): readonly Fault[] {
  const has = (role: 'rafter' | 'purlin') => membersOf(project, role).some((member) => member.plane === plane.id);
  return [
    ...(has('rafter') ? [] : [fault(planeAt(plane.id, 'id'), 'planeWithoutRafters', { plane: plane.id })]),
    ...(plane.sheetOn === 'rafters' || has('purlin')
      ? []
      : [fault(planeAt(plane.id, 'sheetOn'), 'planeWithoutPurlins', { plane: plane.id })]),
  ];
}

/** Rafters lie under the covering, on every line of their plane, no two at one place. */
export function rafterFaults(project: Project): readonly Fault[] {
  return project.roofPlanes.flatMap((plane) => {
    const rafters = membersOf(project, 'rafter').filter((rafter) => rafter.plane === plane.id);
    const reaches = linesOf(project, plane).map((line) => ({ line, reach: reachOf(project, line) }));
    return [
      ...samePlace(rafters, ({ xIn }) => xIn, 'xIn'),
      ...rafters.flatMap(({ id, xIn }) => {
        const path = memberAt(id, 'xIn');
        if (!isWithin(xIn, plane.fromXIn, plane.toXIn)) {
          return [fault(path, 'rafterPastCovering', { rafter: id, xIn, fromXIn: plane.fromXIn, toXIn: plane.toXIn })];
        }
        return reaches
          .filter(({ reach: [from, to] }) => from < to && !isWithin(xIn, from, to))
          .map(({ line, reach: [fromXIn, toXIn] }) =>
            fault(path, 'rafterPastLine', { rafter: id, xIn, line: line.id, fromXIn, toXIn }),
          );
      }),
    ];
  });
}

/** Purlins lie on the slope between the low and the high edge of the covering, no two at one place. */
export function purlinFaults(project: Project): readonly Fault[] {
  return project.roofPlanes.flatMap((plane) => {
    const purlins = membersOf(project, 'purlin').filter((purlin) => purlin.plane === plane.id);
    const mostIn = slopedIn(plane, planeRunIn(project, plane));
    return [
      ...samePlace(purlins, ({ upSlopeIn }) => upSlopeIn, 'upSlopeIn'),
      ...purlins
        .filter(({ upSlopeIn }) => mostIn > 0 && upSlopeIn > mostIn + SAME_PLACE_IN)
        .map(({ id, upSlopeIn }) =>
          fault(memberAt(id, 'upSlopeIn'), 'purlinPastCovering', { purlin: id, upSlopeIn, mostIn }),
        ),
    ];
  });
}

function samePlace<M extends MemberOf<'rafter' | 'purlin'>>(
  members: readonly M[],
  place: (member: M) => number,
  field: string,
): readonly Fault[] {
  const sorted = [...members].sort((a, b) => place(a) - place(b));
  return sorted.slice(1).flatMap((member, i) => {
    const before = sorted[i]!;
    if (place(member) - place(before) > SAME_PLACE_IN) return [];
    return [fault(memberAt(member.id, field), 'atSamePlace', { member: member.id, other: before.id })];
  });
}
