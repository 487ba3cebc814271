import { type Fault, fault } from '../../message.ts';
import { groupOf } from '../traits.ts';
import type { Id, Log, LogStock, Member, MemberOf, Project } from '../model.ts';
import { lineAt, SAME_PLACE_IN, stockPlaceOf } from './at.ts';
import { usableStretch } from './logs.ts';
import { planeRunIn, slopedIn } from './roof.ts';

interface Use {
  readonly user: Id;
  readonly path: string;
  readonly stock: LogStock;
  /** length of log that the member takes; 0 for a post, whose length follows from levels (geometry's to find) */
  readonly lengthIn: number;
}

/** Members stay inside the measured part of their log, and a stem that stands for itself is used once. */
export function logUseFaults(project: Project): readonly Fault[] {
  const uses = everyUse(project);
  return project.logs.flatMap((log) => {
    const ofThis = uses.filter(({ stock }) => stock.logId === log.id);
    return [
      ...ofThis.flatMap((use) => stretchFaults(log, use)),
      ...(log.stands === 'log' ? overlapFaults(log, ofThis) : []),
    ];
  });
}

function everyUse(project: Project): readonly Use[] {
  const ofMembers = project.members.flatMap((member): readonly Use[] => {
    const place = stockPlaceOf(project, member);
    if (place?.stock.kind !== 'log') return [];
    return [{ user: member.id, path: place.path, stock: place.stock, lengthIn: lengthOnLogIn(project, member) }];
  });
  const ofLedgers = project.supportLines.flatMap((line): readonly Use[] => {
    if (line.kind !== 'ledger' || line.stock?.kind !== 'log') return [];
    return [{ user: line.id, path: lineAt(line.id, 'stock'), stock: line.stock, lengthIn: line.toXIn - line.fromXIn }];
  });
  return [...ofMembers, ...ofLedgers];
}

function stretchFaults(log: Log, { user, path, stock, lengthIn }: Use): readonly Fault[] {
  const [fromIn, toIn] = usableStretch(log);
  const endIn = stock.fromButtIn + lengthIn;
  if (stock.fromButtIn >= fromIn - SAME_PLACE_IN && endIn <= toIn + SAME_PLACE_IN) return [];
  const values = { member: user, log: log.id, startIn: stock.fromButtIn, endIn, fromIn, toIn };
  return [fault(`${path}.fromButtIn`, 'stretchPastLog', values)];
}

function overlapFaults(log: Log, uses: readonly Use[]): readonly Fault[] {
  const sorted = [...uses].sort((a, b) => a.stock.fromButtIn - b.stock.fromButtIn);
  return sorted.slice(1).flatMap((use, i) => {
    const before = sorted[i]!;
    const fromIn = use.stock.fromButtIn;
    const freeFromIn = before.stock.fromButtIn + before.lengthIn;
    const isSameStart = fromIn - before.stock.fromButtIn < SAME_PLACE_IN;
    if (fromIn > freeFromIn - SAME_PLACE_IN && !isSameStart) return [];
    return [
      fault(`${use.path}.fromButtIn`, 'logUsedTwice', {
        log: log.id,
        member: use.user,
        other: before.user,
        freeFromIn,
      }),
    ];
  });
}

/** Length of log that a member takes, so far as the file says it without levels [in]. */
function lengthOnLogIn(project: Project, member: Member): number {
  switch (member.role) {
    case 'beam':
      return member.toXIn - member.fromXIn;
    case 'post':
      return 0;
    case 'brace':
      return braceLengthIn(project, member);
    case 'rafter': {
      const plane = project.roofPlanes.find(({ id }) => id === member.plane);
      return plane ? slopedIn(plane, Math.max(0, planeRunIn(project, plane) - 2 * plane.covering.pastRafterIn)) : 0;
    }
    case 'purlin': {
      const plane = project.roofPlanes.find(({ id }) => id === member.plane);
      return plane ? plane.toXIn - plane.fromXIn : 0;
    }
    case 'tie':
      return tieLengthIn(project, member);
  }
}

/** Between working points: the wood itself is a little shorter. */
function braceLengthIn(project: Project, brace: MemberOf<'brace'>): number {
  const group = groupOf(project, brace);
  return group ? Math.hypot(brace.own?.runIn ?? group.runIn, brace.own?.dropIn ?? group.dropIn) : 0;
}

function tieLengthIn(project: Project, tie: MemberOf<'tie'>): number {
  const [from, to] = [tie.fromPost, tie.toPost].map((id) => {
    const post = project.members.find((member) => member.id === id);
    return post?.role === 'post' ? project.supportLines.find((line) => line.id === post.line)?.yIn : undefined;
  });
  return from === undefined || to === undefined ? 0 : Math.abs(to - from) + tie.pastFromIn + tie.pastToIn;
}
