/**
 * Width of the flat that a cut of depth t leaves on a round log: 2 sqrt(2 R t - t2) [in].
 * @source MECHANICS section of a circle
 */
export function flatWidth(diameterIn: number, depthIn: number): number {
  const t = Math.min(Math.max(depthIn, 0), diameterIn);
  return 2 * Math.sqrt(Math.max(0, diameterIn * t - t * t));
}

/**
 * Contact of a seat: the part of the flat's rectangle (width across, from `beforeIn` to `beyondIn` of the post axis)
 * that lies on the round post top [in2].
 * @source MECHANICS area of a circle cut by a strip
 */
export function seatArea(widthIn: number, beforeIn: number, beyondIn: number, postDiameterIn: number): number {
  return halfStrip(widthIn, beforeIn, postDiameterIn / 2) + halfStrip(widthIn, beyondIn, postDiameterIn / 2);
}

/** Area of x in [0, a], |y| <= w/2 inside a circle of radius R about the origin. */
function halfStrip(width: number, a: number, R: number): number {
  const half = Math.min(width / 2, R);
  const reach = Math.min(Math.max(a, 0), R);
  const corner = Math.sqrt(Math.max(0, R * R - half * half)); // where the strip's edge leaves the circle
  if (reach <= corner) return 2 * half * reach;
  return 2 * half * corner + 2 * (quarter(reach, R) - quarter(corner, R));
}

/**
 * How far the middle of a seat's contact lies from the post axis, toward `beyond` + [in]; 0 where nothing touches.
 * @source MECHANICS centroid of a circle cut by a strip
 */
export function seatOffset(widthIn: number, beforeIn: number, beyondIn: number, postDiameterIn: number): number {
  const area = seatArea(widthIn, beforeIn, beyondIn, postDiameterIn);
  const R = postDiameterIn / 2;
  return area > 0 ? (halfStripMoment(widthIn, beyondIn, R) - halfStripMoment(widthIn, beforeIn, R)) / area : 0;
}

/** First moment about x = 0 of the same area. */
function halfStripMoment(width: number, a: number, R: number): number {
  const half = Math.min(width / 2, R);
  const reach = Math.min(Math.max(a, 0), R);
  const corner = Math.sqrt(Math.max(0, R * R - half * half));
  if (reach <= corner) return half * reach * reach;
  return half * corner * corner + (2 / 3) * (half ** 3 - Math.max(0, R * R - reach * reach) ** 1.5);
}

/** Integral of sqrt(R2 - x2) from 0 to x. */
function quarter(x: number, R: number): number {
  return (x * Math.sqrt(Math.max(0, R * R - x * x)) + R * R * Math.asin(Math.min(1, x / R))) / 2;
}
