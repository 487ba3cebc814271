import { type Fault, fault } from '../../message.ts';
import type { Id, MemberOf, Project } from '../model.ts';
import { groupOf, membersOf } from '../traits.ts';
import { isWithin, memberAt, PASSES_POST_IN } from './at.ts';
import { beamsOn } from './line-members.ts';

interface PostPlace {
  readonly line: Id;
  readonly xIn: number;
  readonly yIn: number;
}

function placeOfPost(project: Project, id: Id): PostPlace | null {
  const post = membersOf(project, 'post').find((member) => member.id === id);
  const line = project.supportLines.find((l) => l.id === post?.line);
  return post && line ? { line: line.id, xIn: post.xIn, yIn: line.yIn } : null;
}

/** A brace ends on its beam, or on a tie or rafter that passes its post; no two lie in one place. */
export function braceFaults(project: Project): readonly Fault[] {
  const taken = new Map<string, Id>();
  return membersOf(project, 'brace').flatMap((brace) => {
    const place = [brace.post, brace.to, brace.side].join('/');
    const other = taken.get(place);
    if (other !== undefined) {
      return [fault(memberAt(brace.id, 'side'), 'atSamePlace', { member: brace.id, other })];
    }
    taken.set(place, brace.id);
    const post = placeOfPost(project, brace.post);
    const group = groupOf(project, brace);
    if (!post || !group) return [];
    const runIn = (brace.own?.runIn ?? group.runIn) * (brace.side === 'plus' ? 1 : -1);
    return brace.to === 'line' ? onBeamFaults(project, brace, post, runIn) : onTieFaults(project, brace, post, runIn);
  });
}

const runPath = (brace: MemberOf<'brace'>): string =>
  brace.own?.runIn === undefined ? `groups[${brace.group}].runIn` : memberAt(brace.id, 'own.runIn');

function onBeamFaults(project: Project, brace: MemberOf<'brace'>, post: PostPlace, runIn: number): readonly Fault[] {
  const beams = beamsOn(project, post.line);
  const endXIn = post.xIn + runIn;
  if (beams.length === 0 || beams.some(({ fromXIn, toXIn }) => isWithin(endXIn, fromXIn, toXIn))) return [];
  const fromXIn = Math.min(...beams.map((beam) => beam.fromXIn));
  const toXIn = Math.max(...beams.map((beam) => beam.toXIn));
  return [fault(runPath(brace), 'bracePastBeam', { brace: brace.id, endIn: endXIn, fromIn: fromXIn, toIn: toXIn })];
}

function onTieFaults(project: Project, brace: MemberOf<'brace'>, post: PostPlace, runIn: number): readonly Fault[] {
  const log = reachAcross(project, brace.to);
  if (!log) return [];
  const passes = Math.abs(log.xIn - post.xIn) <= PASSES_POST_IN && isWithin(post.yIn, log.fromYIn, log.toYIn);
  if (!passes) {
    const values = {
      brace: brace.id,
      to: brace.to,
      post: brace.post,
      offIn: Math.abs(log.xIn - post.xIn),
      mostIn: PASSES_POST_IN,
    };
    return [fault(memberAt(brace.id, 'to'), 'braceOffPost', values)];
  }
  const endYIn = post.yIn + runIn;
  if (isWithin(endYIn, log.fromYIn, log.toYIn)) return [];
  return [
    fault(runPath(brace), 'bracePastBeam', { brace: brace.id, endIn: endYIn, fromIn: log.fromYIn, toIn: log.toYIn }),
  ];
}

interface Reach {
  readonly xIn: number;
  readonly fromYIn: number;
  readonly toYIn: number;
}

/** Where a tie or rafter runs: its x and its ends in y; null where its own references are broken. */
function reachAcross(project: Project, id: Id): Reach | null {
  const member = project.members.find((m) => m.id === id);
  if (member?.role === 'tie') return tieReach(project, member);
  if (member?.role !== 'rafter') return null;
  const plane = project.roofPlanes.find((p) => p.id === member.plane);
  const ys = (plane?.onLines ?? []).flatMap((line) => project.supportLines.find((l) => l.id === line)?.yIn ?? []);
  const [high, low] = [ys[0], ys.at(-1)];
  if (!plane || high === undefined || low === undefined) return null;
  const down = low > high ? 1 : -1;
  const ends = [high - down * plane.highOverhangIn, low + down * plane.lowOverhangIn];
  return { xIn: member.xIn, fromYIn: Math.min(...ends), toYIn: Math.max(...ends) };
}

function tieReach(project: Project, tie: MemberOf<'tie'>): Reach | null {
  const from = placeOfPost(project, tie.fromPost);
  const to = placeOfPost(project, tie.toPost);
  if (!from || !to) return null;
  const up = to.yIn > from.yIn ? 1 : -1;
  const ends = [from.yIn - up * tie.pastFromIn, to.yIn + up * tie.pastToIn];
  return { xIn: (from.xIn + to.xIn) / 2, fromYIn: Math.min(...ends), toYIn: Math.max(...ends) };
}

/** A tie joins two posts of different lines that stand square across from one another. */
export function tieFaults(project: Project): readonly Fault[] {
  return membersOf(project, 'tie').flatMap((tie) => {
    const from = placeOfPost(project, tie.fromPost);
    const to = placeOfPost(project, tie.toPost);
    if (!from || !to) return [];
    const path = memberAt(tie.id, 'toPost');
    if (from.yIn === to.yIn) return [fault(path, 'tieAlongLine', { tie: tie.id, from: tie.fromPost, to: tie.toPost })];
    const offIn = Math.abs(to.xIn - from.xIn);
    if (offIn <= PASSES_POST_IN) return [];
    return [
      fault(path, 'tieNotSquare', { tie: tie.id, from: tie.fromPost, to: tie.toPost, offIn, mostIn: PASSES_POST_IN }),
    ];
  });
}
