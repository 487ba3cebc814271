import { type Fault, fault } from '../../message.ts';
import type { Id, OwnLoad, Project } from '../model.ts';
import { isWithin } from './at.ts';
import { beamsOn } from './line-members.ts';

/** Own loads and cuts lie on what they name. */
export function ownLoadFaults(project: Project): readonly Fault[] {
  return [
    ...project.ownLoads.flatMap((load) => loadFaults(project, load)),
    ...project.cuts.flatMap(({ id, member, centreIn }) => {
      const reach = reachOfMember(project, member);
      if (!reach || isWithin(centreIn, ...reach)) return [];
      return [
        fault(`cuts[${id}].centreIn`, 'cutOffMember', { cut: id, member, centreIn, fromIn: reach[0], toIn: reach[1] }),
      ];
    }),
  ];
}

function loadFaults(project: Project, { id, where }: OwnLoad): readonly Fault[] {
  const path = `ownLoads[${id}].where`;
  switch (where.on) {
    case 'line':
      return offFaults(id, `${path}.xIn`, [where.xIn], reachOfLine(project, where.line), where.line);
    case 'stretch':
      return [
        ...backward(`${path}.toXIn`, where.fromXIn, where.toXIn),
        ...offFaults(id, path, [where.fromXIn, where.toXIn], reachOfLine(project, where.line), where.line),
      ];
    case 'member': {
      const role = project.members.find((member) => member.id === where.member)?.role;
      if (role === 'brace') return [fault(`${path}.member`, 'loadOnRole', { load: id, role })];
      return offFaults(id, `${path}.atIn`, [where.atIn], reachOfMember(project, where.member), where.member);
    }
    case 'plane':
      return [
        ...backward(`${path}.toXIn`, where.fromXIn, where.toXIn),
        ...backward(`${path}.toYIn`, where.fromYIn, where.toYIn),
      ];
  }
}

/** Posts end at a seat that geometry finds; no coordinate of a file is larger than this. */
const TALLEST_POST_IN = 6000;

type Reach = readonly [number, number];

const backward = (path: string, fromIn: number, toIn: number): readonly Fault[] =>
  fromIn < toIn ? [] : [fault(path, 'endsBeforeStart', { fromXIn: fromIn, toXIn: toIn })];

function offFaults(load: Id, path: string, placesIn: readonly number[], reach: Reach | null, on: Id): readonly Fault[] {
  if (!reach || placesIn.every((place) => isWithin(place, ...reach))) return [];
  return [fault(path, 'loadOffMember', { load, on, atIn: placesIn.join(' to '), fromIn: reach[0], toIn: reach[1] })];
}

function reachOfLine(project: Project, id: Id): Reach | null {
  const line = project.supportLines.find((l) => l.id === id);
  if (line?.kind === 'ledger') return [line.fromXIn, line.toXIn];
  const beams = beamsOn(project, id);
  return beams.length === 0 ? null : [Math.min(...beams.map((b) => b.fromXIn)), Math.max(...beams.map((b) => b.toXIn))];
}

/** Where a place on a member may lie: x on a beam or a purlin, above the foot on a post; null where levels decide. */
function reachOfMember(project: Project, id: Id): Reach | null {
  const member = project.members.find((m) => m.id === id);
  if (member?.role === 'beam') return [member.fromXIn, member.toXIn];
  if (member?.role === 'purlin') {
    const plane = project.roofPlanes.find((p) => p.id === member.plane);
    return plane ? [plane.fromXIn, plane.toXIn] : null;
  }
  return member?.role === 'post' ? [0, TALLEST_POST_IN] : null;
}
