import { FASTENER_WORDS } from '../../data/words/fasteners-pulled.ts';
import { FASTENERS_WORDS, PLATE_WORDS } from '../../data/words/hardware.ts';
import type { FastenerRow } from '../../engine/project/model.ts';
import type { UnitSystem } from '../units/system.ts';
import { namedSizes, isSameSize, sizeInWords } from './hardware-sizes.ts';

/** A row of fasteners in a few words: `2 lag screws, 1/2 in by 7 in, washers 1 3/8 in, flats 3/8 in deep, 2 in apart`. */
export function rowInWords(row: FastenerRow, system: UnitSystem): string {
  const size = (sizeIn: number): string => sizeInWords(sizeIn, system);
  const { count, spacingIn, endIn, washerIn, headFlatIn, plate, slanted } = row;
  const isSheet = plate?.widthIn === null;
  return [
    `${count} ${calledOf(row)}`,
    `${size(row.diameterIn)} by ${size(row.lengthIn)}`,
    ...(slanted ? ['driven slantwise'] : []),
    ...(spacingIn === null ? [] : [isSheet ? `in every ${size(spacingIn)}` : `${size(spacingIn)} apart`]),
    ...(row.rows > 1 ? [`in ${row.rows} lines`] : []),
    ...(washerIn === undefined ? [] : [`washer ${size(washerIn)}`]),
    ...(headFlatIn === undefined || headFlatIn === 0 ? [] : [`flat ${size(headFlatIn)} deep`]),
    ...(plate ? [plateInWords(plate, size)] : []),
    ...(endIn === null ? [] : [`the first ${size(endIn)} from the end`]),
  ].join(', ');
}

function calledOf({ fastener, count, diameterIn, lengthIn }: FastenerRow): string {
  if (fastener === 'strap') return count === 1 ? 'strap' : 'straps';
  const named = namedSizes(fastener).find(
    (each) => isSameSize(each.diameterIn, diameterIn) && isSameSize(each.lengthIn, lengthIn),
  );
  if (named) return count === 1 ? named.name : `${named.name}s`;
  return (count === 1 ? FASTENER_WORDS : FASTENERS_WORDS)[fastener];
}

function plateInWords(plate: NonNullable<FastenerRow['plate']>, size: (sizeIn: number) => string): string {
  const { steel, each, thicknessIn, widthIn } = plate;
  if (widthIn === null) return `sheet ${size(thicknessIn)}`;
  return `${PLATE_WORDS[`${steel}${each}`]} ${size(thicknessIn)} by ${size(widthIn)}`;
}
