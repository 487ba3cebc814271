import type { Vector } from '../../engine/checks/fasteners/space.ts';
import type { JointSetting } from '../../engine/checks/joints/joint-setting.ts';
import { jointsOf } from '../../engine/checks/joints/joints.ts';
import type { Shelter } from '../../engine/geometry/shelter.ts';
import { capacityOf } from '../../engine/project/joint-capacity.ts';
import type { Project } from '../../engine/project/model.ts';
import type { HardwareMark } from '../drawing/hardware-marks.ts';
import { asItLies } from './as-it-lies.ts';
import { farAndNear } from './draw-steel.ts';
import { looksAt } from './looks.ts';
import { groupBy } from '../sheet/group-by.ts';
import { faceOf, onShank, shanksOf, type Shank } from './shanks.ts';

/** A line across every joint that has fasteners: its first shank, or its strap from one piece to the other. */
export function hardwareMarks(project: Project, shelter: Shelter): readonly HardwareMark[] {
  const { defaults, own } = project.joints;
  if (![...defaults, ...own].some(({ capacity }) => capacity?.kind === 'fasteners')) return [];
  return jointsOf(project, shelter).flatMap((joint): readonly HardwareMark[] => {
    const capacity = capacityOf(project, joint.kind, joint.key);
    // screws of the sheet are too many and too small for a view of the shelter
    if (capacity?.kind !== 'fasteners' || joint.upper.of === 'sheet') return [];
    const setting = asItLies(joint, shelter);
    const seenOn = { lineId: frontOf(setting, shelter), isInSection: isInSection(setting, shelter) };
    if (seenOn.lineId === null && !seenOn.isInSection) return [];
    return capacity.rows.flatMap((row) =>
      linesOf(shanksOf(setting, row, looksAt(setting)[0].toward), setting.at).map((line) => ({
        ...seenOn,
        line,
        hasHead: row.plate === undefined,
      })),
    );
  });
}

/** One line for each strap, or for the shanks of a row that has no steel. */
function linesOf(shanks: readonly Shank[], joint: Vector): readonly HardwareMark['line'][] {
  const [first] = shanks;
  if (!first) return [];
  if (!first.plate) return [[first.headAt, onShank(first, first.size.lengthIn)]];
  return groupBy(shanks, faceOf).map((face) => {
    const [one, other] = groupBy(face, ({ main }) => main.id).map((on) => farAndNear(on, joint, false));
    return [one![0]!, other?.[0] ?? one!.at(-1)!];
  });
}

/** The frame line whose front view shows a joint; a brace or a tie across the lines is not seen there. */
function frontOf({ kind, lineId, place, upper, ways }: JointSetting, shelter: Shelter): string | null {
  if (kind === 'rafterStrip') return place;
  if (kind === 'stripBeam') return upper.id;
  if (kind === 'tiePost' || ((kind === 'bracePost' || kind === 'braceTop') && Math.abs(ways.across[0]) > 0.5))
    return null;
  return shelter.lines.some(({ id }) => id === lineId) ? lineId : null;
}

/** The section shows the first post of each line with what runs across from it, and the first rafter of each slope. */
function isInSection({ kind, upper, lower, ways }: JointSetting, shelter: Shelter): boolean {
  const isFirstPost = (id: string): boolean => shelter.lines.some(({ postIds }) => postIds[0] === id);
  const isFirstRafter = (id: string): boolean =>
    shelter.planes.some((plane) => shelter.rafters.find((r) => r.plane === plane.id)?.id === id);
  switch (kind) {
    case 'beamPost':
    case 'tiePost':
      return isFirstPost(lower.id);
    case 'postFoot':
      return isFirstPost(upper.id);
    case 'bracePost':
    case 'braceTop': {
      const isAcross = Math.abs(ways.across[0]) > 0.5;
      const brace = shelter.braces.find(({ id }) => id === upper.id);
      return isAcross && brace !== undefined && isFirstPost(brace.postId);
    }
    case 'purlinRafter':
      return isFirstRafter(lower.id);
    case 'rafterStrip':
    case 'rafterLedger':
    case 'rafterRafter':
      return isFirstRafter(upper.id);
    case 'stripBeam':
      return true;
    case 'beamSplice':
    case 'ledgerWall':
    case 'sheetPurlin':
    case 'sheetRafter':
      return false;
  }
}
