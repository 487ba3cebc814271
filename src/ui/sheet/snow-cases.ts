import { UNEVEN_SNOW_WORDS } from '../../data/words/sheet.ts';
import { roofPictures } from '../../engine/load-pictures.ts';
import type { LoadPicture } from '../../engine/load-pictures/picture.ts';
import type { Shelter } from '../../engine/geometry/shelter.ts';
import type { Project } from '../../engine/project/model.ts';
import { extentOf, fitView, type Paper } from '../drawing/paper.ts';
import { drawLedger, drawRoof, type LineDetail } from '../drawing/section-parts.ts';
import { beginSketch, type Picture } from '../drawing/sketch.ts';
import { layOnSection } from '../loads/lay-on-section.ts';
import { strengthOf } from '../loads/load-room.ts';
import { loadScale } from '../loads/load-scale.ts';
import type { UnitSystem } from '../units/system.ts';

/** Cases of snow that a higher roof beside the shelter brings, by their names on the sheet. */
const UNEVEN: Readonly<Record<string, string>> = {
  'snow-drift': UNEVEN_SNOW_WORDS.snowDrift,
  'snow-drift-lee': UNEVEN_SNOW_WORDS.snowDriftLee,
  'snow-drift-windward': UNEVEN_SNOW_WORDS.snowDriftWindward,
  'snow-sliding': UNEVEN_SNOW_WORDS.snowSliding,
};

interface UnevenSnow {
  readonly name: string;
  readonly picture: LoadPicture;
}

/** What drifts and what slides from a higher roof, as it lies on this one; nothing where none stands beside it. */
export function unevenSnowCases(project: Project): readonly UnevenSnow[] {
  if (project.surroundings.neighbour === null) return [];
  const answer = roofPictures(project);
  if (!answer.ok) return [];
  const cases = new Map(answer.pictures.filter(({ actsOn }) => actsOn === 'frame').map((each) => [each.id, each]));
  return Object.entries(UNEVEN).flatMap(([id, name]) => {
    const picture = cases.get(id);
    return picture ? [{ name, picture }] : [];
  });
}

interface SnowPictureOptions {
  readonly paper: Paper;
  readonly system: UnitSystem;
  readonly details: readonly LineDetail[];
  readonly title: string;
  readonly description: string;
  /** the greatest pressure of the cases that stand beside one another [psf] */
  readonly greatestPsf: number;
}

/** Longest arrow, in text sizes. */
const LONGEST = 3;
/** Of the wall so much is seen below the ledger [in]. */
const WALL_IN = 8;

/** The roof in section with one case of snow on it, to the same scale as the case beside it. */
export function snowPicture(
  picture: LoadPicture,
  shelter: Shelter,
  { paper, system, details, title, description, greatestPsf }: SnowPictureOptions,
): Picture {
  const size = paper.textSize;
  const pressures = loadScale(greatestPsf, 'psf', LONGEST * size, system);
  const forces = loadScale(1, 'lb', size, system);
  const load = { picture, shelter, system, pressures, forces, greatestPsf, title, description };
  const laidOver = layOnSection(load, size);
  const low = Math.min(...shelter.planes.flatMap((p) => [p.highZIn, p.lowZIn]));
  const view = fitView(
    extentOf([
      ...shelter.planes.flatMap((p) => [
        { right: p.highYIn, up: p.highZIn },
        { right: p.lowYIn, up: p.lowZIn },
      ]),
      { right: shelter.lines[0]?.yIn ?? 0, up: low - WALL_IN },
    ]),
    paper,
    { left: size * 2.4, right: size * 2.4, top: size * laidOver.above, bottom: size * 0.6 },
  );
  const sketch = beginSketch(view);
  const middle = (Math.min(...shelter.lines.map((l) => l.yIn)) + Math.max(...shelter.lines.map((l) => l.yIn))) / 2;
  for (const line of shelter.lines) {
    const detail = details.find(({ lineId }) => lineId === line.id);
    if (line.kind === 'ledger') drawLedger(sketch, line, detail, line.yIn < middle ? -1 : 1, low);
  }
  drawRoof(sketch, shelter, () => 'ink-thin');
  laidOver.draw(sketch);
  return sketch.finish(title, description);
}

/** The greatest pressure of several cases, to draw them to one scale [psf]. */
export const greatestOf = (cases: readonly LoadPicture[]): number =>
  Math.max(1, ...cases.flatMap(({ strips }) => strips.map(strengthOf)));
