import type { LineMembers } from '../frame/line-mesh.ts';
import { handCuts, housingCuts } from '../geometry/beams.ts';
import { depthOf } from '../geometry/rafter-axis.ts';
import type { RowGeometry } from '../geometry/rows.ts';
import type {
  BeamGeometry,
  BraceGeometry,
  LineGeometry,
  PostGeometry,
  Stick,
  TieGeometry,
} from '../geometry/shelter.ts';
import type { Project } from '../project/model.ts';
import { bracedRafter, rafterAsBeam, upToRafter } from './braced-rafter.ts';

/**
 * A row across as a frame line is: its y runs where a line's x does, its tie logs, or the rafter that its braces run to, are
 * the beams. So everything that is known of
 * frame lines holds for it: mesh, braces as unknown forces, brace models, buckling, checks. Posts turn their other side and
 * their other fixity; the side plus of a brace is +y already.
 */
export function turnedRow(project: Project, row: RowGeometry): LineMembers {
  const braces = row.braces.map(turnedBrace);
  const rafter = bracedRafter(row);
  const lying = rafter ? [rafterAsBeam(row, rafter)] : row.ties.map((tie) => turnedTie(project, row, tie, braces));
  const beams = lying.length === 0 && row.posts.length > 1 ? [raftersOver(row)] : lying;
  const posts = row.posts.map((post) => turnedPost(rafter ? upToRafter(post, rafter) : post));
  return { line: turnedLine(row, lying), beams, posts, braces };
}

/**
 * Of the rafters that join the tops of posts without a tie log: they hand the push from one to the next, and no more. Stiff
 * enough never to be the part that buckles, too soft to carry a post down.
 */
const RAFTERS = 'rafters';
const LINK: Stick = {
  kind: 'typed',
  name: RAFTERS,
  FbSIn3Psi: 0,
  VallowLb: 0,
  EIPsiIn4: 1e9,
  heavyPlf: 0,
  lightPlf: 0,
};

function raftersOver(row: RowGeometry): BeamGeometry {
  return {
    id: `${row.id}/${RAFTERS}`,
    line: row.id,
    label: RAFTERS,
    fromXIn: row.posts[0]!.yIn,
    toXIn: row.posts.at(-1)!.yIn,
    stick: LINK,
    stations: row.posts.map((p) => ({
      xIn: p.yIn,
      diameterIn: 0,
      axisZIn: p.axisZIn,
      topZIn: p.axisZIn,
      undersideZIn: p.axisZIn,
      shimIn: 0,
    })),
    cuts: [],
  };
}

function turnedLine(row: RowGeometry, lying: readonly BeamGeometry[]): LineGeometry {
  const ends = [...row.posts.map((p) => p.yIn), ...lying.flatMap((t) => [t.fromXIn, t.toXIn])];
  return {
    id: row.id,
    kind: 'frame',
    label: `${row.posts.map((p) => p.label).join(' ')} across`,
    yIn: row.xIn,
    bearingZIn: Math.max(...row.posts.map((p) => p.axisZIn)),
    stripThicknessIn: 0,
    fromXIn: Math.min(...ends),
    toXIn: Math.max(...ends),
    beamIds: lying.map((b) => b.id),
    postIds: row.posts.map((p) => p.id),
  };
}

function turnedTie(
  project: Project,
  row: RowGeometry,
  tie: TieGeometry,
  braces: readonly BraceGeometry[],
): BeamGeometry {
  const lengthIn = tie.toYIn - tie.fromYIn;
  const places = tie.stick?.kind === 'round' ? tie.stick.profile.map((p) => p.atIn) : [0, lengthIn];
  return {
    id: tie.id,
    line: row.id,
    label: tie.label,
    fromXIn: tie.fromYIn,
    toXIn: tie.toYIn,
    stick: tie.stick,
    stations: [...new Set([0, ...places, lengthIn])]
      .filter((at) => at <= lengthIn)
      .toSorted((a, b) => a - b)
      .map((at) => stationOf(tie, at)),
    cuts: [...handCuts(project, tie.id), ...housingCuts(tie.id, braces)],
  };
}

function stationOf(tie: TieGeometry, atIn: number): BeamGeometry['stations'][number] {
  const diameterIn = depthOf(tie.stick, atIn);
  return {
    xIn: tie.fromYIn + atIn,
    diameterIn,
    axisZIn: tie.axisZIn,
    topZIn: tie.axisZIn + diameterIn / 2,
    undersideZIn: tie.axisZIn - diameterIn / 2,
    shimIn: 0,
  };
}

function turnedPost(post: PostGeometry): PostGeometry {
  const { along, across } = post.foot.fixity;
  const fixity = { along: across, across: along };
  return {
    ...post,
    xIn: post.yIn,
    yIn: post.xIn,
    foot: { ...post.foot, fixity },
    stick: turnedStick(post.stick),
    // the beams of the lines rest on it out of this plane
    seats: [],
  };
}

/** A sawn post is as deep across the lines as it is broad along them. */
const turnedStick = (stick: Stick | null): Stick | null =>
  stick?.kind === 'sawn' ? { ...stick, breadthIn: stick.depthIn, depthIn: stick.breadthIn } : stick;

function turnedBrace(brace: BraceGeometry): BraceGeometry {
  const turned = ({ xIn, yIn, zIn }: BraceGeometry['postPoint']) => ({ xIn: yIn, yIn: xIn, zIn });
  return { ...brace, plane: 'along', postPoint: turned(brace.postPoint), topPoint: turned(brace.topPoint) };
}
