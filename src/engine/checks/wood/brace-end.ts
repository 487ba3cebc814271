import { clause, remembered } from '../../../data/sources.ts';
import { MisuseError, positive } from '../../errors.ts';
import { flatWidth } from '../../geometry/seats.ts';
import { put, type Note } from '../../note.ts';
import { quantity, radiansFromDegrees } from '../../units.ts';
import { flattenedArea } from './flat-section.ts';

/**
 * Where a brace lands on a log. beta is the angle between the two axes at that end: phi at the post, 90 - phi at the
 * beam. The part of its force square to the log presses on the side of the log, the part along needs a shoulder.
 */
const STATICS = clause('MECHANICS', 'parts of a force');
const CONTACT = clause('MECHANICS', 'ellipse of a plane cut, clipped to a strip');
const SHOULDER = clause('OWN', 'shoulder of a housing: two thirds of width times depth');
const BEYOND = remembered('NDS', 'Appendix E.3');

function sharpAngle(betaDeg: number): number {
  if (positive('betaDeg', betaDeg) > 90) throw new MisuseError('betaDeg', betaDeg, 'an angle above 0, at most 90');
  return radiansFromDegrees(betaDeg);
}

/**
 * Part of the brace force that is square to the receiving log.
 * @param forceLb force along the brace, sign kept [lb]
 * @param betaDeg angle between brace and log, above 0 to 90 [deg]
 * @returns force [lb]
 * @throws MisuseError if the angle is out of these bounds
 * @source MECHANICS: F sin beta
 */
export function forceSquareToLog(forceLb: number, betaDeg: number, note?: Note): number {
  const square = forceLb * Math.sin(sharpAngle(betaDeg));
  note?.({
    symbol: 'P',
    words: 'part of the brace force square to the log',
    formula: 'F × sin(β)',
    put: forceAndAngle(forceLb, betaDeg),
    result: quantity(square, 'lb'),
    clause: STATICS,
  });
  return square;
}

/**
 * Part of the brace force that runs along the receiving log.
 * @returns force [lb]
 * @throws MisuseError as `forceSquareToLog`
 * @source MECHANICS: F cos beta
 */
export function forceAlongLog(forceLb: number, betaDeg: number, note?: Note): number {
  const along = forceLb * Math.cos(sharpAngle(betaDeg));
  note?.({
    symbol: 'H',
    words: 'part of the brace force along the log',
    formula: 'F × cos(β)',
    put: forceAndAngle(forceLb, betaDeg),
    result: quantity(along, 'lb'),
    clause: STATICS,
  });
  return along;
}

const forceAndAngle = (forceLb: number, betaDeg: number) => [
  put('F', forceLb, 'lb', 'force along the brace'),
  put('β', betaDeg, 'deg', 'angle between brace and log'),
];

/**
 * Contact of a brace's plane end cut on the flat of the log: an ellipse as wide as the brace and 1/sin(beta) longer,
 * as far as the flat reaches across.
 * @param braceDiameterIn at the end cut [in]
 * @param flatIn depth of the flat, or of the floor of the housing, below the log's surface [in]
 * @param logDiameterIn at the joint [in]
 * @param betaDeg angle between brace and log [deg]
 * @returns contact [in2]
 * @throws MisuseError if a value is out of bounds
 * @limits a round log without a flat touches along a line: a depth of 0 is refused.
 * @source MECHANICS: circle clipped to a strip, over sin beta
 */
export function braceContactArea(
  braceDiameterIn: number,
  flatIn: number,
  logDiameterIn: number,
  betaDeg: number,
  note?: Note,
): number {
  const d = positive('braceDiameterIn', braceDiameterIn);
  const width = flatWidth(positive('logDiameterIn', logDiameterIn), positive('flatIn', flatIn));
  const clipped = Math.max(0, (d - width) / 2);
  const area = flattenedArea(d, clipped, clipped) / Math.sin(sharpAngle(betaDeg));
  note?.({
    symbol: 'A',
    words: 'contact of the brace end on the flat of the log',
    formula: 'Ac / sin(β)',
    put: [
      put('d', d, 'in', 'diameter of the brace'),
      put('w', width, 'in', 'width of the flat on the log'),
      put('Ac', flattenedArea(d, clipped, clipped), 'in2', 'circle of the brace within the width of the flat'),
      put('β', betaDeg, 'deg', 'angle between brace and log'),
    ],
    result: quantity(area, 'in2'),
    clause: CONTACT,
  });
  return area;
}

/**
 * Shoulder of a housing that takes the part of the force along the log: two thirds of width times depth, where the
 * width is the narrower of the brace and the floor of the housing.
 * @param depthIn depth of the housing [in]
 * @param logDiameterIn, braceDiameterIn at the joint [in]
 * @returns shoulder [in2]
 * @throws MisuseError if a value is not above zero
 * @source OWN. The shoulder is a slice of the log's round edge; a parabola of that width and depth lies inside it.
 */
export function shoulderArea(depthIn: number, logDiameterIn: number, braceDiameterIn: number, note?: Note): number {
  const h = positive('depthIn', depthIn);
  const floor = flatWidth(positive('logDiameterIn', logDiameterIn), h);
  const w = Math.min(floor, positive('braceDiameterIn', braceDiameterIn));
  const area = (2 / 3) * w * h;
  note?.({
    symbol: 'A',
    words: 'shoulder of the housing',
    formula: '2 / 3 × w × h',
    put: [
      put('w', w, 'in', 'narrower of the brace and the floor of the housing'),
      put('h', h, 'in', 'depth of the housing'),
    ],
    result: quantity(area, 'in2'),
    clause: SHOULDER,
  });
  return area;
}

/**
 * Shear that the log can take beyond a shoulder, on the plane of the housing's floor.
 * @param FvAllowablePsi Fv' [psi]
 * @param widthIn width of that plane, the floor of the housing [in]
 * @param lengthIn of wood beyond the shoulder, to the end of the log or the next cut [in]
 * @returns allowable force along the log [lb]
 * @throws MisuseError if a value is not above zero
 * @source NDS Appendix E.3, from memory: the stress falls from its peak to nothing over the length, so half counts.
 */
export function shearBeyondShoulder(FvAllowablePsi: number, widthIn: number, lengthIn: number, note?: Note): number {
  const allowable =
    (positive('FvAllowablePsi', FvAllowablePsi) * positive('widthIn', widthIn) * positive('lengthIn', lengthIn)) / 2;
  note?.({
    symbol: "H'",
    words: 'allowable shear of the log beyond the shoulder',
    formula: "Fv' × w × l / 2",
    put: [
      put("Fv'", FvAllowablePsi, 'psi', 'allowable shear along the grain'),
      put('w', widthIn, 'in', 'width of the sheared plane'),
      put('l', lengthIn, 'in', 'length of wood beyond the shoulder'),
    ],
    result: quantity(allowable, 'lb'),
    clause: BEYOND,
  });
  return allowable;
}

/**
 * Angle between load and grain on a face of the joint, in the wood of the log or of the brace.
 * @param wood whose grain
 * @param face `side`: the flat, pressed square to the log; `shoulder`: pressed along the log
 * @param betaDeg angle between brace and log [deg]
 * @returns angle, 0 to 90 [deg]
 * @throws MisuseError if the angle is out of bounds
 * @source MECHANICS: plane geometry of the two axes
 */
export function angleToGrain(wood: 'log' | 'brace', face: 'side' | 'shoulder', betaDeg: number): number {
  sharpAngle(betaDeg);
  if (wood === 'log') return face === 'side' ? 90 : 0;
  return face === 'side' ? 90 - betaDeg : betaDeg;
}
