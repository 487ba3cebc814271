/**
 * Cylinder with the exact Euler load of a truncated cone, derived here. With d straight along the length and
 * I = I1 (z/a)^4, z from the apex, EI y'' + P y = 0 is solved by y = z (A cos(q/z) + B sin(q/z)): between the ends,
 * at z1 and z2, the phase runs through q (1/z1 - 1/z2) = p, and P = p2 E sqrt(I1 I2) / L2.
 * Pinned: y = 0 at both ends, p = pi. One end fixed, other free: y measured from the free end, y = 0 there, y' = 0 at
 * the fixed end, which gives tan p = -p d1/(d2 - d1) (large end fixed) or tan p = p d2/(d2 - d1) (small end fixed).
 */
export function exactConeDiameter(
  smallest: number,
  largest: number,
  ends: 'bothPinned' | 'largeEndFixed' | 'smallEndFixed',
): number {
  const mean = Math.sqrt(smallest * largest);
  if (ends === 'bothPinned') return mean;
  const slope = ends === 'largeEndFixed' ? -smallest / (largest - smallest) : largest / (largest - smallest);
  // sin p - slope p cos p changes sign once between 90 and 180 degrees, or between 0 and 90
  const f = (p: number): number => Math.sin(p) - slope * p * Math.cos(p);
  let low = ends === 'largeEndFixed' ? Math.PI / 2 : 1e-3;
  let high = ends === 'largeEndFixed' ? Math.PI : Math.PI / 2;
  for (let i = 0; i < 80; i++) {
    const middle = (low + high) / 2;
    if (f(low) * f(middle) <= 0) high = middle;
    else low = middle;
  }
  // p2 sqrt(I1 I2) = pi2/4 I(d): the cylinder with one end free
  return mean * Math.sqrt((2 * low) / Math.PI);
}
