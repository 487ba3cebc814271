import { type Fault, fault } from '../../message.ts';
import type { FrameLine, Id, MemberOf, Project, Stock } from '../model.ts';
import { membersOf } from '../traits.ts';
import { isWithin, lineAt, memberAt, SAME_PLACE_IN, stockPlaceOf } from './at.ts';

const frameLines = (project: Project): readonly FrameLine[] =>
  project.supportLines.filter((line): line is FrameLine => line.kind === 'frame');

export const beamsOn = (project: Project, line: Id): readonly MemberOf<'beam'>[] =>
  membersOf(project, 'beam').filter((beam) => beam.line === line);
const postsOn = (project: Project, line: Id): readonly MemberOf<'post'>[] =>
  membersOf(project, 'post').filter((post) => post.line === line);

/** Beams of a line follow one another without gap or overlap, and meet over a post. */
export function beamFaults(project: Project): readonly Fault[] {
  return frameLines(project).flatMap((line) => {
    const beams = [...beamsOn(project, line.id)].sort((a, b) => a.fromXIn - b.fromXIn);
    if (beams.length === 0) return [fault(lineAt(line.id, 'id'), 'lineWithoutBeam', { line: line.id })];
    const backward = beams
      .filter(({ fromXIn, toXIn }) => fromXIn >= toXIn)
      .map(({ id, fromXIn, toXIn }) => fault(memberAt(id, 'toXIn'), 'endsBeforeStart', { fromXIn, toXIn }));
    const meetings = beams.slice(1).flatMap((beam, i) => meetingFaults(project, beams[i]!, beam));
    return [...backward, ...meetings];
  });
}

function meetingFaults(project: Project, before: MemberOf<'beam'>, beam: MemberOf<'beam'>): readonly Fault[] {
  const path = memberAt(beam.id, 'fromXIn');
  const values = { beam: beam.id, other: before.id, fromXIn: beam.fromXIn, endIn: before.toXIn };
  if (beam.fromXIn < before.toXIn - SAME_PLACE_IN) return [fault(path, 'beamsOverlap', values)];
  if (beam.fromXIn > before.toXIn + SAME_PLACE_IN) return [fault(path, 'beamsApart', values)];
  const isOverPost = postsOn(project, beam.line).some(({ xIn }) => Math.abs(xIn - beam.fromXIn) <= SAME_PLACE_IN);
  return isOverPost ? [] : [fault(path, 'beamsMeetOffPost', values)];
}

/** Every frame line has a post; posts stand under a beam and farther apart than their diameters. */
export function postFaults(project: Project): readonly Fault[] {
  return frameLines(project).flatMap((line) => {
    const posts = [...postsOn(project, line.id)].sort((a, b) => a.xIn - b.xIn);
    if (posts.length === 0) return [fault(lineAt(line.id, 'id'), 'lineWithoutPost', { line: line.id })];
    const beams = beamsOn(project, line.id);
    const loose = posts
      .filter(({ xIn }) => beams.length > 0 && !beams.some((beam) => isWithin(xIn, beam.fromXIn, beam.toXIn)))
      .map(({ id }) => fault(memberAt(id, 'xIn'), 'postWithoutBeam', { post: id }));
    const close = posts.slice(1).flatMap((post, i) => spacingFaults(project, posts[i]!, post));
    return [...loose, ...close];
  });
}

function spacingFaults(project: Project, before: MemberOf<'post'>, post: MemberOf<'post'>): readonly Fault[] {
  const apartIn = post.xIn - before.xIn;
  const leastIn = Math.max(widthIn(project, before), widthIn(project, post));
  if (apartIn > leastIn && apartIn > SAME_PLACE_IN) return [];
  return [fault(memberAt(post.id, 'xIn'), 'postsTooClose', { post: post.id, other: before.id, apartIn, leastIn })];
}

/** Thickest that a post can be along its line: its log where it is thickest; 0 where nothing is known of it [in]. */
function widthIn(project: Project, post: MemberOf<'post'>): number {
  const stock: Stock | undefined = stockPlaceOf(project, post)?.stock;
  if (stock?.kind === 'sawn') return Math.max(stock.breadthIn * stock.plies, stock.depthIn);
  if (stock?.kind !== 'log') return 0;
  const log = project.logs.find(({ id }) => id === stock.logId);
  return Math.max(0, ...(log?.stations ?? []).map(({ diameterIn, acrossIn }) => Math.max(diameterIn, acrossIn ?? 0)));
}
