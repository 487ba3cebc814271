import type { SizeClass } from '../../data/wood/lumber.ts';
import { NOMINAL_IN } from '../../data/wood/lumber-factors.ts';
import type { SawnStick } from '../geometry/shelter.ts';

/** One ply of a sawn stick as the tables see it. */
export interface LumberSize {
  readonly thicknessIn: number;
  readonly widthIn: number;
  readonly nominalThicknessIn: number;
  readonly nominalWidthIn: number;
  readonly sizeClass: SizeClass;
  /** along the load */
  readonly depthIn: number;
  readonly isOnTheFlat: boolean;
}

/** Sawn sizes carry a little dust: a stick 2.0000001 in. thick is 2 in. thick. */
const NEAR_IN = 1e-6;
/** Thinnest piece of the graded tables: a dressed 2 in. */
const THINNEST_IN = 1.5;
/** Timbers wider than thick by more than this are beams and stringers. */
const POSTS_WIDER_BY_IN = 2;

/**
 * The least nominal size not under the actual one: 7-1/4 in. and a rough full 8 in. are both 8 in.; 14 and wider is 14.
 */
export const nominalSize = (actualIn: number): number =>
  NOMINAL_IN.find((nominal) => nominal >= actualIn - NEAR_IN) ?? 14;

/**
 * Size class of one ply.
 * @returns null when the stick is thinner than the tables begin
 * @source NDS_SUPPLEMENT Tables 4A and 4D: dimension lumber 2 to 4 in. thick, timbers 5x5 and larger
 */
export function lumberSize(stick: SawnStick): LumberSize | null {
  const isFlat = stick.lay === 'flat';
  const plyAcross = isFlat ? stick.breadthIn : stick.breadthIn / stick.plies;
  const plyAlong = isFlat ? stick.depthIn / stick.plies : stick.depthIn;
  const thicknessIn = Math.min(plyAcross, plyAlong);
  const widthIn = Math.max(plyAcross, plyAlong);
  if (thicknessIn < THINNEST_IN - NEAR_IN) return null;
  const nominalThicknessIn = nominalSize(thicknessIn);
  return {
    thicknessIn,
    widthIn,
    nominalThicknessIn,
    nominalWidthIn: nominalSize(widthIn),
    sizeClass: sizeClassOf(nominalThicknessIn, widthIn - thicknessIn),
    depthIn: plyAlong,
    isOnTheFlat: isFlat && plyAlong < plyAcross - NEAR_IN,
  };
}

function sizeClassOf(nominalThicknessIn: number, widerByIn: number): SizeClass {
  if (nominalThicknessIn <= 4) return 'dimension';
  return widerByIn > POSTS_WIDER_BY_IN + NEAR_IN ? 'beams' : 'posts';
}
