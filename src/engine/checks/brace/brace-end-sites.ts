import { notGiven } from '../../check.ts';
import { clause } from '../../../data/sources.ts';
import type { LineResponse } from '../../frame/line-frame.ts';
import type { BraceGeometry } from '../../geometry/shelter.ts';
import { flatWidth } from '../../geometry/seats.ts';
import type { DesignValues } from '../../material/values.ts';
import { put, type Note } from '../../note.ts';
import { jointKey } from '../../project/joint-capacity.ts';
import { quantity } from '../../units.ts';
import { valuesIn, type LineCheckContext } from '../line-context.ts';
import type { CheckSite } from '../site-of-check.ts';
import { bearingAtAngle, bearingStress } from '../wood/bearing.ts';
import { angleToGrain, forceAlongLog, forceSquareToLog, shearBeyondShoulder, shoulderArea } from '../wood/brace-end.ts';
import { adjustedShear } from '../wood/shear.ts';
import { holderAt } from '../joints/holder.ts';
import { fromFrame, ratedSite } from '../joints/rated-site.ts';
import { braceAcrossSites } from './brace-across.ts';
import { contactArea, endsOf, type End } from './brace-ends.ts';

/** Shear spreads no farther than this many depths of the housing (own rule, as step joints are judged abroad; from memory). */
const LONGEST_SHEAR = 8;

/**
 * A pushing brace presses square to the log and slides along it. The square part is bearing in both woods (Hankinson);
 * the part along needs a housed shoulder or a rated joint, else its capacity is not given.
 * @source NDS 3.10.3; MECHANICS ellipse of a round stick cut at an angle
 */
export function braceEndSites(
  context: LineCheckContext,
  brace: BraceGeometry,
  values: DesignValues | null,
  push: (r: LineResponse) => number,
): readonly CheckSite<LineResponse>[] {
  return endsOf(context, brace).flatMap((end) => {
    const logValues = valuesIn(context, end.logId);
    const both = values && logValues ? { brace: values, log: logValues } : null;
    return [
      squareSite(brace, end, both, push),
      ...alongSites(context, brace, end, both, push),
      ...braceAcrossSites(context, brace, end),
    ];
  });
}

interface BothWoods {
  readonly brace: DesignValues;
  readonly log: DesignValues;
}

function squareSite(
  brace: BraceGeometry,
  end: End,
  both: BothWoods | null,
  push: (r: LineResponse) => number,
): CheckSite<LineResponse> {
  const area = both && end.braceDiameterIn > 0 ? contactArea(end) : 0;
  return {
    ruleId: 'brace.bearing',
    memberId: brace.id,
    place: { kind: 'end', name: end.which },
    unit: 'psi',
    purpose: 'strength',
    isByDuration: true,
    stops: () =>
      area > 0
        ? null
        : notGiven({ code: both ? 'braceEndHasNoFlat' : 'memberNotGiven', values: { member: brace.label } }),
    demand: (r, note) => {
      tellPush(r, push, note);
      const square = forceSquareToLog(Math.max(0, push(r)), end.betaDeg, note);
      if (note) contactArea(end, note);
      return bearingStress(square, area, note);
    },
    capacity: (r, note) => lesserBearing(both!, end, 'side', r.combination.durationFactor, note),
  };
}

function tellPush(r: LineResponse, push: (r: LineResponse) => number, note?: Note): void {
  note?.({
    symbol: 'F',
    words: 'push in the brace',
    formula: 'F',
    put: [put('F', push(r), 'lb', 'from the frame analysis')],
    result: quantity(Math.max(0, push(r)), 'lb'),
    clause: clause('MECHANICS', 'plane frame, first order'),
  });
}

/** The weaker wood at this face: the log and the brace meet the same force at different angles to their grain. */
function lesserBearing(both: BothWoods, end: End, face: 'side' | 'shoulder', CD: number, note?: Note): number {
  const inLog = bearingAtAngle(both.log.FcPsi * CD, both.log.FcPerpPsi, angleToGrain('log', face, end.betaDeg), note);
  const inBrace = bearingAtAngle(
    both.brace.FcPsi * CD,
    both.brace.FcPerpPsi,
    angleToGrain('brace', face, end.betaDeg),
    note,
  );
  const least = Math.min(inLog, inBrace);
  note?.({
    symbol: "Fθ'",
    words: 'the weaker of log and brace',
    formula: 'min',
    put: [put('log', inLog, 'psi', 'log'), put('brace', inBrace, 'psi', 'brace')],
    result: quantity(least, 'psi'),
    clause: clause('NDS', '3.10.3'),
  });
  return least;
}

function alongSites(
  context: LineCheckContext,
  brace: BraceGeometry,
  end: End,
  both: BothWoods | null,
  push: (r: LineResponse) => number,
): readonly CheckSite<LineResponse>[] {
  const place = { kind: 'end', name: end.which } as const;
  const housed = end.cut.kind === 'housed' && end.cut.depthIn > 0 && both !== null && end.braceDiameterIn > 0;
  if (!housed) {
    return [
      ratedSite({
        ruleId: 'brace.shoulder',
        memberId: brace.id,
        place,
        holder: holderAt(context, end.kind, jointKey(end.kind, brace.id)),
        part: 'along',
        force: fromFrame('push along the log; no housed shoulder takes it', (r: LineResponse) =>
          forceAlongLog(Math.max(0, push(r)), end.betaDeg),
        ),
      }),
    ];
  }
  const width = Math.min(flatWidth(end.logDiameterIn, end.cut.depthIn), end.braceDiameterIn);
  const area = shoulderArea(end.cut.depthIn, end.logDiameterIn, end.braceDiameterIn);
  return [
    {
      ruleId: 'brace.shoulder',
      memberId: brace.id,
      place,
      unit: 'psi',
      purpose: 'strength',
      isByDuration: true,
      stops: () => (width > 0 ? null : notGiven({ code: 'braceEndHasNoFlat', values: { member: brace.label } })),
      demand: (r, note) => {
        tellPush(r, push, note);
        const along = forceAlongLog(Math.max(0, push(r)), end.betaDeg, note);
        if (note) shoulderArea(end.cut.depthIn, end.logDiameterIn, end.braceDiameterIn, note);
        return bearingStress(along, area, note);
      },
      capacity: (r, note) => lesserBearing(both!, end, 'shoulder', r.combination.durationFactor, note),
    },
    {
      ruleId: 'brace.shoulderShear',
      memberId: brace.id,
      place,
      unit: 'lb',
      purpose: 'strength',
      isByDuration: true,
      stops: () =>
        width > 0 && end.beyondIn > 0 ? null : notGiven({ code: 'braceEndHasNoFlat', values: { member: brace.label } }),
      demand: (r, note) => {
        tellPush(r, push, note);
        return forceAlongLog(Math.max(0, push(r)), end.betaDeg, note);
      },
      capacity: (r, note) => {
        if (note) for (const step of both!.log.steps('Fv')) note(step);
        const Fv = adjustedShear(both!.log.FvPsi, r.combination.durationFactor, note);
        return shearBeyondShoulder(Fv, width, Math.min(end.beyondIn, LONGEST_SHEAR * end.cut.depthIn), note);
      },
    },
  ];
}
