import type {
  BeamGeometry,
  LineGeometry,
  PlaneGeometry,
  PostGeometry,
  Shelter,
} from '../../engine/geometry/shelter.ts';

/** Posts of a line by x. */
export const postsOf = (shelter: Shelter, line: LineGeometry): readonly PostGeometry[] =>
  shelter.posts.filter((p) => p.line === line.id).toSorted((a, b) => a.xIn - b.xIn);

export const byY = (shelter: Shelter): readonly LineGeometry[] => shelter.lines.toSorted((a, b) => a.yIn - b.yIn);

export const beamsOf = (shelter: Shelter, line: LineGeometry): readonly BeamGeometry[] =>
  shelter.beams.filter((b) => b.line === line.id);
export const planesOn = (shelter: Shelter, line: LineGeometry): readonly PlaneGeometry[] =>
  shelter.planes.filter((p) => p.onLines.includes(line.id));
