/**
 * Width of the flat that a cut of depth t leaves on a round log: 2 sqrt(2 R t - t2) [in].
 * @source MECHANICS section of a circle
 */
export function flatWidth(diameterIn: number, depthIn: number): number {
  const t = Math.min(Math.max(depthIn, 0), diameterIn);
  return 2 * Math.sqrt(Math.max(0, diameterIn * t - t * t));
}

/**
 * Contact of a seat: the part of the flat's rectangle (width across, from `beforeIn` to `beyondIn` of the post axis, its
 * middle `besideIn` of that axis) that lies on the round post top [in2].
 * @source MECHANICS area of a circle cut by a strip
 */
export function seatArea(
  widthIn: number,
  beforeIn: number,
  beyondIn: number,
  postDiameterIn: number,
  besideIn = 0,
): number {
  const R = postDiameterIn / 2;
  const edges = [widthIn / 2 + besideIn, widthIn / 2 - besideIn];
  const area = edges.reduce((sum, edge) => sum + sideStrip(edge, beforeIn, R) + sideStrip(edge, beyondIn, R), 0);
  return Math.max(0, area);
}

/** Area of x in [0, a], y in [0, edge] inside a circle of radius R about the origin; less than zero where the edge is. */
function sideStrip(edge: number, a: number, R: number): number {
  const y = Math.min(Math.abs(edge), R);
  const reach = Math.min(Math.max(a, 0), R);
  const corner = Math.sqrt(Math.max(0, R * R - y * y)); // where the strip's edge leaves the circle
  const area = reach <= corner ? y * reach : y * corner + quarter(reach, R) - quarter(corner, R);
  return Math.sign(edge) * area;
}

/**
 * How far the middle of a seat's contact lies from the post axis, toward `beyond` + [in]; 0 where nothing touches.
 * @source MECHANICS centroid of a circle cut by a strip
 */
export function seatOffset(
  widthIn: number,
  beforeIn: number,
  beyondIn: number,
  postDiameterIn: number,
  besideIn = 0,
): number {
  const area = seatArea(widthIn, beforeIn, beyondIn, postDiameterIn, besideIn);
  const R = postDiameterIn / 2;
  const edges = [widthIn / 2 + besideIn, widthIn / 2 - besideIn];
  const moment = edges.reduce(
    (sum, edge) => sum + sideStripMoment(edge, beyondIn, R) - sideStripMoment(edge, beforeIn, R),
    0,
  );
  return area > 0 ? moment / area : 0;
}

/** First moment about x = 0 of the same area. */
function sideStripMoment(edge: number, a: number, R: number): number {
  const y = Math.min(Math.abs(edge), R);
  const reach = Math.min(Math.max(a, 0), R);
  const corner = Math.sqrt(Math.max(0, R * R - y * y));
  const moment =
    reach <= corner
      ? (y * reach * reach) / 2
      : (y * corner * corner) / 2 + (y ** 3 - Math.max(0, R * R - reach * reach) ** 1.5) / 3;
  return Math.sign(edge) * moment;
}

/** Integral of sqrt(R2 - x2) from 0 to x. */
function quarter(x: number, R: number): number {
  return (x * Math.sqrt(Math.max(0, R * R - x * x)) + R * R * Math.asin(Math.min(1, x / R))) / 2;
}
