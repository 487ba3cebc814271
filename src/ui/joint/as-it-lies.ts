import { plus, type Vector } from '../../engine/checks/fasteners/space.ts';
import type { JointPiece, JointSetting } from '../../engine/checks/joints/joint-setting.ts';
import type { Shelter } from '../../engine/geometry/shelter.ts';

/** A joint with both pieces where they lie, and as long as they are, at the one place where it is drawn. */
export function asItLies(setting: JointSetting, shelter: Shelter): JointSetting {
  switch (setting.kind) {
    case 'tiePost':
      return besidePost(setting, shelter);
    case 'stripBeam':
      return stripWithItsEnds(setting, shelter);
    default:
      return setting;
  }
}

/**
 * Forces of a tie log that runs beside its posts are taken as if the axes met; it is drawn on the side of the posts where
 * x is lower.
 */
function besidePost(setting: JointSetting, shelter: Shelter): JointSetting {
  const { upper, lower } = setting;
  const tie = shelter.ties.find(({ id }) => id === upper.id);
  if (tie?.ends !== 'beside' || !upper.shape || !lower.shape) return setting;
  const half = (upper.shape.diameterIn ?? 0) / 2 + (lower.shape.diameterIn ?? 0) / 2;
  const moved = (at: Vector): Vector => plus(at, [-half, 0, 0]);
  const { axisAt, faces } = upper.shape;
  const shape = { ...upper.shape, axisAt: moved(axisAt), faces: faces.map((f) => ({ ...f, at: moved(f.at) })) };
  return { ...setting, upper: { ...upper, shape } };
}

/** A strip is judged where its fasteners stand nearest to an end and where its packing is thickest; it is drawn at one place. */
function stripWithItsEnds(setting: JointSetting, { lines, beams }: Shelter): JointSetting {
  const { upper, lower, at } = setting;
  const ends = (piece: JointPiece, { fromXIn, toXIn }: { readonly fromXIn: number; readonly toXIn: number }) => ({
    ...piece,
    toEndsIn: [at[0] - fromXIn, toXIn - at[0]] as const,
  });
  const line = lines.find(({ id }) => id === upper.id);
  const beam = beams.find(({ id }) => id === lower.id);
  return line && beam ? { ...setting, upper: ends(upper, line), lower: ends(lower, beam) } : setting;
}
