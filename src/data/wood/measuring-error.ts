/**
 * How far off a diameter may be by how it was found (own defaults; the person's own figure replaces them). A girth within
 * 1/2 in. puts the diameter within 1/2 over pi, callipers read to 1/4 in.; a size that is only assumed may be off by
 * 1/2 in., one that is predicted from the standing tree by 1 in.
 */
export const USUAL_ERROR_IN = {
  assumed: 0.5,
  predicted: 1,
  byCalliper: 0.25,
  byGirth: 0.5 / Math.PI,
} as const;
