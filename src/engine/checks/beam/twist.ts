import type { LineResponse } from '../../frame/line-frame.ts';
import type { LineMesh } from '../../frame/line-mesh.ts';
import type { Bow } from '../../geometry/bow.ts';
import type { BeamGeometry, PostGeometry } from '../../geometry/shelter.ts';

/** Turning moment from the values of a response, one way + and the other - [lb·in] */
export type Twist = (values: LineResponse['values']) => number;

/**
 * What turns a beam that bows to the side, in shares by place. Loads follow the log, beside the straight line from seat to
 * seat: a moment M along a log that is curved in plan turns it by M times the curvature on every inch.
 * @param shareAt share of what turns it at a place that is asked for; a straight line within each element of the mesh
 * @source MECHANICS bar curved in plan: dT/dx = M / R, R = L2 / (8 c)
 */
export function twistOf(
  mesh: LineMesh,
  beam: BeamGeometry,
  { sideIn }: Bow,
  shareAt: (xIn: number, middleXIn: number) => number,
): Twist {
  const curvature = (8 * sideIn) / (beam.toXIn - beam.fromXIn) ** 2;
  if (curvature === 0) return () => 0;
  const chain = mesh.beams.find((b) => b.memberId === beam.id)!;
  const forces: { readonly at: number; readonly weight: number }[] = [];
  for (let i = 0; i < chain.count; i++) {
    const [from, to] = [beam.fromXIn + chain.atIn[i]!, beam.fromXIn + chain.atIn[i + 1]!];
    const middle = (from + to) / 2;
    const [a, b] = [shareAt(from, middle), shareAt(to, middle)];
    const element = (chain.firstElement + i) * 6;
    // moment and shear at both ends tell the moment between them, a cubic under a load that varies evenly; times a straight
    // share its integral is exact
    const h = to - from;
    forces.push(
      { at: element + 2, weight: (curvature * h * (7 * a + 3 * b)) / 20 },
      { at: element + 5, weight: (curvature * h * (3 * a + 7 * b)) / 20 },
      { at: element + 1, weight: (curvature * h * h * (3 * a + 2 * b)) / 60 },
      { at: element + 4, weight: (-curvature * h * h * (2 * a + 3 * b)) / 60 },
    );
  }
  const counted = forces.filter(({ weight }) => weight !== 0);
  const places = Int32Array.from(counted, ({ at }) => at);
  const weights = Float64Array.from(counted, ({ weight }) => weight);
  return (values) => {
    let sum = 0;
    for (let k = 0; k < places.length; k++) sum += weights[k]! * values[places[k]!]!;
    return sum;
  };
}

/**
 * How such a beam turns on one of its posts: what is between two posts is shared by the distance to each, an overhang goes
 * to its post whole. For an even load w between two ends that makes w c L / 3 at each.
 * @param posts every post under the beam, in order along it
 */
export function twistAtPost(
  mesh: LineMesh,
  beam: BeamGeometry,
  bow: Bow,
  posts: readonly PostGeometry[],
  post: PostGeometry,
): Twist {
  const i = posts.indexOf(post);
  const toward = (other: PostGeometry | undefined, xIn: number): number =>
    other ? Math.max(0, (other.xIn - xIn) / (other.xIn - post.xIn)) : 1;
  return twistOf(mesh, beam, bow, (xIn) => toward(xIn < post.xIn ? posts[i - 1] : posts[i + 1], xIn));
}
