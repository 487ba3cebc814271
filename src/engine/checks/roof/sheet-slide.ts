import { clause } from '../../../data/sources.ts';
import type { PlaneGeometry, RafterGeometry } from '../../geometry/shelter.ts';
import type { Combination } from '../../loads/combination.ts';
import { combine } from '../../loads/combine.ts';
import { componentLive } from '../../loads/component-cases.ts';
import { atEnds } from '../../loads/rafter-reactions.ts';
import { surfaceWeight } from '../../loads/roof-weights.ts';
import { snowCases, type SnowCase } from '../../loads/snow-cases.ts';
import { put, type Note, type Step } from '../../note.ts';
import { jointKey } from '../../project/joint-capacity.ts';
import { quantity, radiansFromDegrees } from '../../units.ts';
import { checkSource, type CheckSource } from '../check-source.ts';
import { holderAt } from '../joints/holder.ts';
import { ratedSite } from '../joints/rated-site.ts';
import { purlinsOn, raftersOn, writtenPlane, type RoofCheckContext } from './context.ts';

/** A row of screws with what lies on its strip of sheet, by case, on level area [psf]. */
interface ScrewedRow {
  readonly widthIn: number;
  readonly psfOf: (caseId: string) => number;
  readonly stepsOf: (caseId: string) => readonly Step[];
}

interface SlideResponse {
  readonly combination: Combination;
  readonly row: ScrewedRow;
}

/**
 * What lies on the sheet pulls it down the slope, and its screws with it; friction under it is not counted. Wind is square
 * to the sheet and slides nothing. Of all rows the one asked most in each combination.
 * @source MECHANICS part of a plumb load along a slope; ASCE7 2.4.1 (7-16)
 */
export function sheetSlide(context: RoofCheckContext, plane: PlaneGeometry): CheckSource {
  const { risePer12, sheetOn } = writtenPlane(context, plane.id);
  const { heavy } = surfaceWeight(context.project, plane, [], context.weights);
  const live = componentLive(context.project, plane.id, risePer12, 0, 1, 0);
  const snow = snowCases(context.site, 1);
  const given = live.map((c) => ({ id: c.id, psf: c.psf[0]!, steps: c.steps }));
  const rows = rowsOf(context, plane, snow, given);
  const kind = sheetOn === 'purlins' ? 'sheetPurlin' : 'sheetRafter';
  const slide = slideOf(plane, heavy);
  return checkSource({
    responses: combine([...live, ...snow])
      .filter((combination) => combination.dead.weight === 'heavy')
      .map((combination): SlideResponse => ({
        combination,
        row: rows.reduce((a, b) => (slide({ combination, row: b }) > slide({ combination, row: a }) ? b : a)),
      })),
    sites: [
      ratedSite<SlideResponse>({
        ruleId: 'sheet.slide',
        memberId: plane.id,
        place: { kind: 'whole', name: '' },
        holder: holderAt(context, kind, jointKey(kind, plane.id), 'lb/ft'),
        unit: 'lb/ft',
        part: 'along',
        force: slide,
      }),
    ],
  });
}

interface GivenCase {
  readonly id: string;
  readonly psf: number;
  readonly steps: () => readonly Step[];
}

/** Rows under the sheet: purlins, or rafters; without any the whole plane at once, under what lies evenly. */
function rowsOf(
  context: RoofCheckContext,
  plane: PlaneGeometry,
  snow: readonly SnowCase[],
  given: readonly GivenCase[],
): readonly ScrewedRow[] {
  const rafters = raftersOn(context, plane.id);
  const row = (widthIn: number, onRow: (c: SnowCase) => GivenCase): ScrewedRow => {
    const cases = [...given, ...snow.map(onRow)];
    const find = (caseId: string) => cases.find((c) => c.id === caseId);
    return {
      widthIn,
      psfOf: (caseId) => find(caseId)?.psf ?? 0,
      stepsOf: (caseId) => find(caseId)?.steps() ?? [],
    };
  };
  const [rafter] = rafters;
  if (!rafter) return [row(plane.runIn, ({ id }) => ({ id, psf: 0, steps: () => [] }))];
  if (writtenPlane(context, plane.id).sheetOn === 'rafters')
    return rafters.map((r) => row(r.tributaryWidthIn, (c) => hardestAlong(context, r, c)));
  return purlinsOn(context, plane.id).map((p) =>
    row(p.tributaryWidthIn, (c) => ({
      id: c.id,
      psf: c.onPurlin(p, rafter),
      steps: () => c.stepsOnPurlin(p, rafter),
    })),
  );
}

/** Snow where it lies deepest along a rafter. */
function hardestAlong(context: RoofCheckContext, rafter: RafterGeometry, c: SnowCase): GivenCase {
  const ends = context
    .runOf(rafter)
    .parts.flatMap((part) =>
      (['low', 'high'] as const).map((end) => ({ part, end, psf: atEnds(c.pressure(rafter, part).plumbPsf)[end] })),
    );
  const most = ends.reduce((a, b) => (b.psf > a.psf ? b : a));
  return { id: c.id, psf: most.psf, steps: () => c.stepsAt(rafter, most.part, most.end) };
}

/** Down the slope on each foot of a row [lb/ft]. */
const slideOf =
  (plane: PlaneGeometry, heavyPsf: number) =>
  ({ combination, row }: SlideResponse, note?: Note): number => {
    const theta = radiansFromDegrees(plane.slopeDeg);
    const acting = combination.factors.map(({ caseId, factor }) => ({ caseId, factor, psf: row.psfOf(caseId) }));
    const deadPsf = combination.dead.factor * heavyPsf;
    const level = acting.reduce((sum, { factor, psf }) => sum + factor * psf, 0);
    const slide = ((deadPsf + level * Math.cos(theta)) * Math.sin(theta) * row.widthIn) / 12;
    note?.({
      symbol: 'S',
      words: 'down the slope on each foot of a row of screws',
      formula: `(${['D', ...acting.map((_, i) => `f${i + 1} × p${i + 1} × cos(θ)`)].join(' + ')}) × sin(θ) × b / 12`,
      put: [
        put('D', deadPsf, 'psf', 'covering, with its factor'),
        put('θ', plane.slopeDeg, 'deg', 'roof slope'),
        put('b', row.widthIn, 'in', 'width of sheet on the row'),
        ...acting.flatMap(({ caseId, factor, psf }, i) => [
          put(`f${i + 1}`, factor, '1', `factor of ${caseId}`),
          put(`p${i + 1}`, psf, 'psf', `${caseId}, on level area`, row.stepsOf(caseId)),
        ]),
      ],
      result: quantity(slide, 'lb/ft'),
      clause: clause('MECHANICS', 'plumb load on a slope'),
    });
    return slide;
  };
