import type { Stick } from '../geometry/shelter.ts';
import { put, type Note } from '../note.ts';
import { clause } from '../../data/sources.ts';
import { quantity } from '../units.ts';
import { flattenedArea, sectionModulusToward } from './wood/flat-section.ts';
import { shearArea } from './wood/flat-shear.ts';
import { roundArea, roundSectionModulus } from './wood/round-section.ts';

/** What is left of a stick at one place, for forces in its own plane. */
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
 * Section of a stick at a place: round less its planed flat and the cut there, or sawn less the cut.
 * A cut and a flat on opposite sides are taken as one flat of their summed depth (safe side).
 * @param diameterIn wood diameter there; of a sawn stick its depth [in]
 * @param cutIn      depth of the cut there, zero for none [in]
 * @returns a section of nothing where the cut goes through: stresses on it are infinite, so that no check can pass
 */
export function sectionAt(stick: Stick, diameterIn: number, cutIn: number): Section {
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
