import { DRIFT, SLIDING } from '../../data/loads/snow.ts';
import type { Shelter } from '../geometry/shelter.ts';
import { message, type Message } from '../message.ts';
import { stepsOf, type Note } from '../note.ts';
import type { Project } from '../project/model.ts';
import { feetFromInches, INCHES_PER_FOOT } from '../units.ts';
import { clearHeight, driftHeight, driftPeak, greaterDrift, stepDrift, windwardDriftHeight } from './site/drift.ts';
import { separatedDrift, truncatedPeak } from './site/drift-over-gap.ts';
import { slides, slidingReach, slidingSnow } from './site/sliding.ts';
import { flatRoofSnow, snowDensity } from './site/snow.ts';
import { evenBand, triangle, type SnowBand, type SnowSurplus } from './snow-surplus.ts';
import type { EvenSnow, UnevenFigure, UnevenRoofSnow, UnevenSnow } from './uneven-snow.ts';

type NeighbourSnow = Omit<UnevenRoofSnow, 'isPartialAcross'>;
type Neighbour = NonNullable<Project['surroundings']['neighbour']>;

/**
 * Snow from a higher roof beside the shelter: drifted by wind either way, and slid down. Each lies on the balanced snow and
 * never together with the other.
 * @source ASCE7 7.7, 7.9 (7-16)
 * @departs the higher roof counts as long as ours is wide; drift is not less for its parapet (safe side)
 */
export function neighbourSnow(project: Project, shelter: Shelter, snow: EvenSnow): NeighbourSnow {
  const given = project.surroundings.neighbour;
  if (!given) return { cases: [], leftOut: [message('noHigherRoof')], notGiven: [] };
  // a ledger lies on its wall
  const neighbour = given.ledgerLine === null ? given : { ...given, gapFt: 0 };
  const edge = edgeBeside(project, shelter, neighbour);
  const drifts = driftSnow(neighbour, shelter, snow);
  const slide = slideSnow(neighbour, snow);
  const toCase = ({ id, name, words, build }: Surplus): readonly UnevenSnow[] => {
    const bands = build();
    const [first] = bands;
    if (!first) return [];
    const figure = { name, psf: first.fromPsf };
    const steps = () => stepsOf(build).steps;
    return [{ id, words, evenPsf: () => snow.balancedPsf, surplus: { ...edge, bands }, figure, steps }];
  };
  return {
    cases: [...drifts.found, ...slide.found].flatMap(toCase),
    leftOut: [...drifts.leftOut, ...slide.leftOut],
    notGiven: [...drifts.notGiven, ...slide.notGiven],
  };
}

/**
 * True where a building below the low edge of a slope keeps snow from sliding off it, whatever its person thinks (own rule):
 * it stands nearer than slid snow reaches.
 */
export function isBlockedBelow({ surroundings: { neighbour } }: Project, { planes }: Shelter): boolean {
  if (!neighbour || (neighbour.ledgerLine === null && neighbour.gapFt >= SLIDING.overFt)) return false;
  const low = neighbour.side === 'yPlus' ? 1 : neighbour.side === 'yMinus' ? -1 : 0;
  return planes.some((p) => p.downY === low);
}

interface Surplus {
  readonly id: string;
  readonly name: UnevenFigure;
  readonly words: Message;
  readonly build: (note?: Note) => readonly SnowBand[];
}

interface Answer extends Pick<UnevenRoofSnow, 'leftOut' | 'notGiven'> {
  readonly found: readonly Surplus[];
}

const NOTHING: Answer = { found: [], leftOut: [], notGiven: [] };

/** Our edge beside the higher roof; at a ledger the face of the wall. */
function edgeBeside({ supportLines }: Project, { planes }: Shelter, { side, ledgerLine }: Neighbour) {
  const ledger = supportLines.find((l) => l.id === ledgerLine);
  const wall = ledger?.kind === 'ledger' ? ledger.wallFaceYIn : null;
  const ys = planes.flatMap((p) => [p.highYIn, p.lowYIn]);
  const edges: Record<Neighbour['side'], Omit<SnowSurplus, 'bands'>> = {
    xMinus: { axis: 'x', toward: 1, zeroIn: Math.min(...planes.map((p) => p.fromXIn)) },
    xPlus: { axis: 'x', toward: -1, zeroIn: Math.max(...planes.map((p) => p.toXIn)) },
    yMinus: { axis: 'y', toward: 1, zeroIn: wall ?? Math.min(...ys) },
    yPlus: { axis: 'y', toward: -1, zeroIn: wall ?? Math.max(...ys) },
  };
  return edges[side];
}

function driftSnow(neighbour: Neighbour, shelter: Shelter, snow: EvenSnow): Answer {
  const { gapFt, stepFt, upperLengthFt, side } = neighbour;
  if (snow.groundSnowPsf === 0) return { ...NOTHING, leftOut: [message('driftWithoutSnow')] };
  if (stepFt === 0) return { ...NOTHING, leftOut: [message('driftWithoutStep')] };
  if (upperLengthFt === 0) return { ...NOTHING, notGiven: [message('upperLengthNotGiven')] };
  const isAlong = side === 'xMinus' || side === 'xPlus';
  const lowerLengthFt = feetFromInches(isAlong ? shelter.planAlongIn : shelter.planAcrossIn);
  const { groundSnowPsf, slopedPsf } = snow;
  const leeHeight = (note?: Note) => driftHeight({ ...snow, fetchFt: upperLengthFt }, note);
  const windwardHeight = (note?: Note) =>
    windwardDriftHeight(driftHeight({ ...snow, fetchFt: lowerLengthFt }, note), note);
  const clear = (note?: Note) =>
    clearHeight({ stepFt, balancedPsf: slopedPsf, densityPcf: snowDensity(groundSnowPsf, note) }, note);
  const peak = (heightFt: number, note?: Note) =>
    driftPeak({ heightFt, densityPcf: snowDensity(groundSnowPsf, note) }, note);

  if (gapFt === 0) {
    if (clear() === 0) return { ...NOTHING, leftOut: [message('driftBuried', { stepFt })] };
    const build = (note?: Note): readonly SnowBand[] => {
      const hd = greaterDrift(leeHeight(note), windwardHeight(note), note);
      const shape = stepDrift(hd, clear(note), note);
      return triangle(peak(shape.heightFt, note), shape.widthFt * INCHES_PER_FOOT);
    };
    return { ...NOTHING, found: [{ id: 'snow-drift', name: 'snowDrift', words: message('caseSnowDrift'), build }] };
  }
  const lee = (note?: Note): readonly SnowBand[] => {
    const shape = separatedDrift({ driftHeightFt: leeHeight(note), stepFt, gapFt }, note);
    return shape ? triangle(peak(shape.heightFt, note), shape.widthFt * INCHES_PER_FOOT) : [];
  };
  const windward = (note?: Note): readonly SnowBand[] => {
    const shape = stepDrift(windwardHeight(note), clear(note), note);
    const atEdge = truncatedPeak({ peakPsf: peak(shape.heightFt, note), widthFt: shape.widthFt, gapFt }, note);
    return triangle(atEdge, Math.max(0, shape.widthFt - gapFt) * INCHES_PER_FOOT);
  };
  const both: readonly Surplus[] = [
    { id: 'snow-drift-lee', name: 'snowDriftLee', words: message('caseSnowDriftLee'), build: lee },
    { id: 'snow-drift-windward', name: 'snowDriftWindward', words: message('caseSnowDriftWindward'), build: windward },
  ];
  const found = both.filter(({ build }) => build().length > 0);
  const leftOut = found.length > 0 ? [] : [message('driftOverGap', { gapFt, limitFt: DRIFT.gapFt, stepFt })];
  return { ...NOTHING, found, leftOut };
}

function slideSnow(neighbour: Neighbour, snow: EvenSnow): Answer {
  const { slidesThisWay, guards, upperRisePer12, upperSlippery, upperCt, eaveToRidgeFt, gapFt, stepFt } = neighbour;
  if (!slidesThisWay) return { ...NOTHING, leftOut: [message('slidesElsewhere')] };
  if (guards) return { ...NOTHING, leftOut: [message('slideHeldBack')] };
  if (!slides(upperRisePer12, upperSlippery)) {
    const limit = upperSlippery ? SLIDING.slipperyAbovePer12 : SLIDING.otherAbovePer12;
    return { ...NOTHING, leftOut: [message('tooFlatToSlide', { rise: upperRisePer12 ?? 0, limit })] };
  }
  const reachFt = slidingReach({ gapFt, stepFt });
  if (reachFt === 0)
    return { ...NOTHING, leftOut: [message('slidesIntoGap', { gapFt, limitFt: SLIDING.overFt, stepFt })] };
  if (eaveToRidgeFt === 0) return { ...NOTHING, notGiven: [message('upperWidthNotGiven')] };
  const build = (note?: Note): readonly SnowBand[] => {
    const upperFlatSnowPsf = flatRoofSnow({ ...snow, ct: upperCt }, note);
    return evenBand(slidingSnow({ upperFlatSnowPsf, eaveToRidgeFt }, note), reachFt * INCHES_PER_FOOT);
  };
  return { ...NOTHING, found: [{ id: 'snow-sliding', name: 'snowSliding', words: message('caseSnowSliding'), build }] };
}
