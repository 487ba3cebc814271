import { plus, type Vector } from '../../engine/checks/fasteners/space.ts';
import type { JointSetting } from '../../engine/checks/joints/joint-setting.ts';
import type { Shelter } from '../../engine/geometry/shelter.ts';

/**
 * A joint with both pieces where they lie. Forces of a tie log that runs beside its posts are taken as if the axes met;
 * it is drawn on the side of the posts where x is lower.
 */
export function asItLies(setting: JointSetting, shelter: Shelter): JointSetting {
  const { kind, upper, lower } = setting;
  const tie = kind === 'tiePost' ? shelter.ties.find(({ id }) => id === upper.id) : undefined;
  if (tie?.ends !== 'beside' || !upper.shape || !lower.shape) return setting;
  const half = (upper.shape.diameterIn ?? 0) / 2 + (lower.shape.diameterIn ?? 0) / 2;
  const moved = (at: Vector): Vector => plus(at, [-half, 0, 0]);
  const { axisAt, faces } = upper.shape;
  const shape = { ...upper.shape, axisAt: moved(axisAt), faces: faces.map((f) => ({ ...f, at: moved(f.at) })) };
  return { ...setting, upper: { ...upper, shape } };
}
