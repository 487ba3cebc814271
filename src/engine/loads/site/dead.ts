import { clause } from '../../../data/sources.ts';
import { positive } from '../../errors.ts';
import { put, type Note } from '../../note.ts';
import { SQUARE_INCHES_PER_SQUARE_FOOT, type Plf, type Psf } from '../../units.ts';
import { notNegative } from './givens.ts';

/**
 * Weight of a roof's layers, per square foot of its own surface. Call it once with the heavy and once with the light
 * weights: heavy for gravity, light for uplift.
 * @param layers  name and weight [psf] of each
 * @returns sum [psf] of sloped area; zero without layers
 * @throws MisuseError  if a weight is negative or not finite
 * @source ASCE7 3.1
 */
export function layersWeight(layers: readonly { readonly name: string; readonly psf: number }[], note?: Note): Psf {
  let sum = 0;
  for (const layer of layers) sum += notNegative('layerPsf', layer.psf);
  note?.({
    symbol: 'D',
    words: 'Weight of the covering, of sloped area',
    formula: 'sum of the layers',
    put: layers.map((layer, i) => put(`D${i + 1}`, layer.psf, 'psf', layer.name)),
    result: { value: sum, unit: 'psf' },
    clause: clause('ASCE7', '3.1'),
  });
  return sum as Psf;
}

/**
 * Weight of a straight stick per foot of its length.
 * @param givens  density [pcf] and cross section [in2]
 * @returns w [lb/ft]
 * @throws MisuseError  if a given is not finite and above zero
 * @source MECHANICS density times area
 */
export function stickWeight(
  { densityPcf, areaIn2 }: { readonly densityPcf: number; readonly areaIn2: number },
  note?: Note,
): Plf {
  const w = (positive('densityPcf', densityPcf) * positive('areaIn2', areaIn2)) / SQUARE_INCHES_PER_SQUARE_FOOT;
  note?.({
    symbol: 'w',
    words: 'Weight per foot',
    formula: 'ρ A / 144',
    put: [put('ρ', densityPcf, 'pcf', 'density'), put('A', areaIn2, 'in2', 'cross section')],
    result: { value: w, unit: 'lb/ft' },
    clause: clause('MECHANICS', 'density times area'),
  });
  return w as Plf;
}
