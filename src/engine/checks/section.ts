import type { Stick } from '../geometry/shelter.ts';
import { put, type Note } from '../note.ts';
import { clause } from '../../data/sources.ts';
import { quantity } from '../units.ts';
import { netSection, type Bored, type Unbored } from './wood/bored-section.ts';
import { centroidShift, flattenedArea, flattenedInertia, sectionModulusToward } from './wood/flat-section.ts';
import { shearArea } from './wood/flat-shear.ts';
import { roundArea, roundInertia, roundSectionModulus } from './wood/round-section.ts';

/** What is left of a stick at one place, for forces in its own plane. Shear is asked of the width that holes leave. */
export interface Section {
  readonly areaIn2: number;
  readonly modulusIn3: number;
  /** V over this area is the greatest shear stress [in2] */
  readonly shearAreaIn2: number;
  /** tells how the section came about */
  readonly tell: (note: Note) => void;
}

const NOTHING_LEFT: Section = { areaIn2: 0, modulusIn3: 0, shearAreaIn2: 0, tell: () => undefined };

/** Less of its depth than this is no wood to count on; the formulas of a flat lose their figures there. */
const SLIVER = 1e-3;

const depthLeft = (stick: Stick, diameterIn: number, cutIn: number): number =>
  stick.kind === 'sawn' ? stick.depthIn - cutIn : diameterIn - (stick.kind === 'round' ? stick.flatIn : 0) - cutIn;

/**
 * Section of a stick at a place: round less its planed flat and the cut there, or sawn less the cut, and less what is bored.
 * A cut and a flat on opposite sides are taken as one flat of their summed depth (safe side).
 * @param diameterIn wood diameter there; of a sawn stick its depth [in]
 * @param cutIn      depth of the cut there, zero for none [in]
 * @param bored      holes and flats of hardware there
 * @returns a section of nothing where the cut goes through: stresses on it are infinite, so that no check can pass
 */
export function sectionAt(stick: Stick, diameterIn: number, cutIn: number, bored: readonly Bored[] = []): Section {
  const whole = unboredAt(stick, diameterIn, cutIn);
  if (bored.length === 0 || whole.areaIn2 === 0) return whole;
  // which side of the stick was cut is not asked: both are tried
  const outline = outlineOf(stick, diameterIn, cutIn, whole.areaIn2);
  const nets = [outline, mirrored(outline)].map((side) => ({ side, net: netSection(side, bored) }));
  const worst = nets.reduce((a, b) => ((b.net?.modulusIn3 ?? 0) < (a.net?.modulusIn3 ?? 0) ? b : a));
  const widthIn = stick.kind === 'sawn' ? stick.breadthIn : diameterIn;
  const widthShare = 1 - bored.reduce((sum, b) => sum + b.widthIn, 0) / widthIn;
  if (!worst.net || widthShare <= 0) return NOTHING_LEFT;
  return {
    ...worst.net,
    shearAreaIn2: whole.shearAreaIn2 * widthShare,
    tell: (note) => {
      whole.tell(note);
      netSection(worst.side, bored, note);
    },
  };
}

/** The section with the cut on top. */
function outlineOf(stick: Stick, diameterIn: number, cutIn: number, areaIn2: number): Unbored {
  if (stick.kind === 'sawn') {
    const { breadthIn, depthIn } = stick;
    const [topIn, bottomIn] = [depthIn / 2 - cutIn, -depthIn / 2];
    const inertiaIn4 = (breadthIn * (depthIn - cutIn) ** 3) / 12;
    return { areaIn2, inertiaIn4, centroidIn: (topIn + bottomIn) / 2, topIn, bottomIn };
  }
  const r = diameterIn / 2;
  const flat = (stick.kind === 'round' ? stick.flatIn : 0) + cutIn;
  if (flat <= 0) return { areaIn2, inertiaIn4: roundInertia(diameterIn), centroidIn: 0, topIn: r, bottomIn: -r };
  return {
    areaIn2,
    inertiaIn4: flattenedInertia(diameterIn, flat, 0),
    centroidIn: -centroidShift(diameterIn, flat, 0),
    topIn: r - flat,
    bottomIn: -r,
  };
}

const mirrored = ({ areaIn2, inertiaIn4, centroidIn, topIn, bottomIn }: Unbored): Unbored => ({
  areaIn2,
  inertiaIn4,
  centroidIn: -centroidIn,
  topIn: -bottomIn,
  bottomIn: -topIn,
});

function unboredAt(stick: Stick, diameterIn: number, cutIn: number): Section {
  if (depthLeft(stick, diameterIn, cutIn) <= SLIVER * diameterIn) return NOTHING_LEFT;
  if (stick.kind === 'sawn') {
    const depth = stick.depthIn - cutIn;
    const areaIn2 = stick.breadthIn * depth;
    const modulusIn3 = (stick.breadthIn * depth * depth) / 6;
    return {
      areaIn2,
      modulusIn3,
      shearAreaIn2: (2 / 3) * areaIn2,
      tell: (note) =>
        note({
          symbol: 'S',
          words: 'section modulus of what is left',
          formula: 'b d2 / 6',
          put: [put('b', stick.breadthIn, 'in', 'breadth'), put('d', depth, 'in', 'depth left')],
          result: quantity(modulusIn3, 'in3'),
          clause: clause('MECHANICS', 'rectangle'),
        }),
    };
  }
  const flat = (stick.kind === 'round' ? stick.flatIn : 0) + cutIn;
  if (flat <= 0) {
    const areaIn2 = roundArea(diameterIn);
    return {
      areaIn2,
      modulusIn3: roundSectionModulus(diameterIn),
      shearAreaIn2: 0.75 * areaIn2,
      tell: (note) => roundSectionModulus(diameterIn, note),
    };
  }
  const toFlat = sectionModulusToward(diameterIn, flat, 0);
  const toRound = sectionModulusToward(diameterIn, 0, flat);
  return {
    areaIn2: flattenedArea(diameterIn, flat, 0),
    modulusIn3: Math.min(toFlat, toRound),
    shearAreaIn2: shearArea(diameterIn, flat, 0),
    tell: (note) =>
      toFlat < toRound
        ? sectionModulusToward(diameterIn, flat, 0, note)
        : sectionModulusToward(diameterIn, 0, flat, note),
  };
}
