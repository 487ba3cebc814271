import type { RoofZone } from '../../../data/loads/free-roof-components.ts';
import { clause } from '../../../data/sources.ts';
import type { PlaneGeometry } from '../../geometry/shelter.ts';
import { notGiven } from '../../check.ts';
import type { Combination } from '../../loads/combination.ts';
import { combine } from '../../loads/combine.ts';
import { componentWind, type ComponentWindCase } from '../../loads/component-cases.ts';
import { surfaceWeight } from '../../loads/roof-weights.ts';
import { edgeWidthIn, reachesGableEnd, zoneAt } from '../../loads/zones.ts';
import { message } from '../../message.ts';
import { put, type Note } from '../../note.ts';
import { jointKey } from '../../project/joint-capacity.ts';
import { quantity, radiansFromDegrees } from '../../units.ts';
import { checkSource, plainSource, type CheckSource } from '../check-source.ts';
import { holderAt } from '../joints/holder.ts';
import { ratedSite } from '../joints/rated-site.ts';
import { ASKED_ONCE } from '../site-of-check.ts';
import { purlinsOn, raftersOn, refused, unasked, writtenPlane, type RoofCheckContext } from './context.ts';
import { purlinZone } from './purlin-loading.ts';
import { greatestGap } from './rafter-allowable.ts';
import { sheetSlide } from './sheet-slide.ts';

/** Sheet continuous over its rows pulls on an inner one by more than its share (own allowance). */
const CONTINUITY = 1.25;

/** Rated span of the covering, and what its screws hold against lift, plane by plane. */
export function sheetChecks(context: RoofCheckContext): readonly CheckSource[] {
  return context.shelter.planes.flatMap((plane) => [
    spanSource(context, plane),
    upliftSource(context, plane),
    sheetSlide(context, plane),
  ]);
}

function spanSource(context: RoofCheckContext, plane: PlaneGeometry): CheckSource {
  const { ratedSpanIn } = writtenPlane(context, plane.id).covering;
  const gapIn = gapOf(context, plane);
  const tell = (symbol: string, words: string, value: number, note?: Note): number => {
    const given = { symbol, words, formula: 'as placed and as typed', put: [], result: quantity(value, 'in') };
    note?.({ ...given, clause: clause('OWN', 'rated span from its maker') });
    return value;
  };
  return checkSource({
    responses: [ASKED_ONCE],
    sites: [
      {
        ruleId: 'sheet.span',
        memberId: plane.id,
        place: { kind: 'whole', name: '' },
        unit: 'in',
        purpose: 'strength',
        stops: () => (ratedSpanIn === null ? notGiven(message('spanNotRated'), quantity(gapIn, 'in')) : null),
        demand: (_, note) => tell('s', 'widest gap between rows under the sheet', gapIn, note),
        capacity: (_, note) => tell('sr', 'rated span of the sheet', ratedSpanIn ?? NaN, note),
      },
    ],
  });
}

/** Places of the rows that the sheet lies on: purlins up the slope, or rafters along the eave [in]. */
function rowsUnder(context: RoofCheckContext, plane: PlaneGeometry): readonly number[] {
  return writtenPlane(context, plane.id).sheetOn === 'purlins'
    ? purlinsOn(context, plane.id).map((p) => p.upSlopeIn)
    : raftersOn(context, plane.id).map((r) => r.xIn);
}

/** Widest gap between rows; the whole plane where there are not two of them. */
function gapOf(context: RoofCheckContext, plane: PlaneGeometry): number {
  const gap = greatestGap(rowsUnder(context, plane));
  if (Number.isFinite(gap)) return gap;
  const isOnPurlins = writtenPlane(context, plane.id).sheetOn === 'purlins';
  return isOnPurlins ? plane.runIn / Math.cos(radiansFromDegrees(plane.slopeDeg)) : plane.toXIn - plane.fromXIn;
}

interface SheetResponse {
  readonly combination: Combination;
  /** net load square to the slope, down + [psf] */
  readonly netPsf: number;
  readonly deadPsf: number;
  readonly wind: { readonly found: ComponentWindCase; readonly factor: number };
  readonly row: SheetRow;
}

/** A row under the sheet: the zone of the roof that it reaches, and the width of sheet that its screws hold. */
interface SheetRow {
  readonly zone: RoofZone;
  readonly widthIn: number;
}

/**
 * Lift of the sheet on its screws, as pounds on each foot of row, against a rated pull read the same way. A screw's own
 * area is the smallest there is, so the smallest area class is taken.
 * @source ASCE7 30.8 (7-16)
 */
function upliftSource(context: RoofCheckContext, plane: PlaneGeometry): CheckSource {
  const wind = componentWind(context.site, context.form, plane.slopeDeg, 'upToA2');
  if (!wind.ok) return plainSource(unasked(['sheet.uplift'], plane.id, refused(wind)));
  const kind = writtenPlane(context, plane.id).sheetOn === 'purlins' ? 'sheetPurlin' : 'sheetRafter';
  const weight = coveringLight(context, plane) * Math.cos(radiansFromDegrees(plane.slopeDeg));
  return checkSource({
    responses: sheetResponses(wind.cases, weight, sheetRows(context, plane)),
    sites: [
      ratedSite<SheetResponse>({
        ruleId: 'sheet.uplift',
        memberId: plane.id,
        place: { kind: 'whole', name: '' },
        holder: holderAt(context, kind, jointKey(kind, plane.id), 'lb/ft'),
        unit: 'lb/ft',
        part: 'pull',
        force: (r, note) => {
          const pull = (Math.max(0, -r.netPsf) * CONTINUITY * r.row.widthIn) / 12;
          if (note) tellLift(r, pull, note);
          return pull;
        },
      }),
    ],
  });
}

/** Of the rows in each zone the one that holds the widest strip; without any row the whole plane in corners. */
function sheetRows(context: RoofCheckContext, plane: PlaneGeometry): readonly SheetRow[] {
  const rows: readonly SheetRow[] =
    writtenPlane(context, plane.id).sheetOn === 'purlins'
      ? purlinsOn(context, plane.id).map((p) => ({ zone: purlinZone(context, p), widthIn: p.tributaryWidthIn }))
      : raftersOn(context, plane.id).map((r) => ({
          zone: zoneAt(reachesGableEnd(plane, r.tributaryFromXIn, r.tributaryToXIn, edgeWidthIn(context.site)), true),
          widthIn: r.tributaryWidthIn,
        }));
  if (rows.length === 0) return [{ zone: 3, widthIn: gapOf(context, plane) }];
  return ([3, 2] as const).flatMap((zone) => {
    const widths = rows.filter((row) => row.zone === zone).map((row) => row.widthIn);
    return widths.length > 0 ? [{ zone, widthIn: Math.max(...widths) }] : [];
  });
}

/** Only a typed weight of the covering alone is known to lie on the screws [psf]. */
function coveringLight(context: RoofCheckContext, plane: PlaneGeometry): number {
  const { dead } = writtenPlane(context, plane.id);
  if (dead.by === 'total' && dead.includes.length > 0) return 0;
  return surfaceWeight(context.project, plane, [], context.weights).light;
}

/** Combinations of light dead load and lifting wind, each on the row that it pulls hardest: all others press down more. */
function sheetResponses(
  cases: readonly ComponentWindCase[],
  lightPsf: number,
  rows: readonly SheetRow[],
): readonly SheetResponse[] {
  return combine(cases)
    .filter((combination) => combination.dead.weight === 'light')
    .flatMap((combination) =>
      combination.factors.flatMap(({ caseId, factor }): readonly SheetResponse[] => {
        const found = cases.find((c) => c.id === caseId && c.psf[3] < 0);
        if (!found) return [];
        const deadPsf = combination.dead.factor * lightPsf;
        const netPsf = ({ zone }: SheetRow): number => deadPsf + factor * found.psf[zone];
        const row = rows.reduce((a, b) => (netPsf(b) * b.widthIn < netPsf(a) * a.widthIn ? b : a));
        return [{ combination, deadPsf, netPsf: netPsf(row), wind: { found, factor }, row }];
      }),
    );
}

function tellLift({ deadPsf, wind, row }: SheetResponse, pull: number, note: Note): void {
  note({
    symbol: 'T',
    words: 'lift on each foot of a row of screws',
    formula: `max(0, -(D + f × p)) × ${CONTINUITY} × b / 12`,
    put: [
      put('D', deadPsf, 'psf', 'light covering square to the slope, with its factor'),
      put('f', wind.factor, '1', `factor of ${wind.found.id}`),
      put(
        'p',
        wind.found.psf[row.zone],
        'psf',
        `wind lifting the smallest area, zone ${row.zone}`,
        wind.found.steps(row.zone),
      ),
      put('b', row.widthIn, 'in', 'width of sheet on the row'),
    ],
    result: quantity(pull, 'lb/ft'),
    clause: clause('ASCE7', '2.4.1, 30.8'),
  });
}
