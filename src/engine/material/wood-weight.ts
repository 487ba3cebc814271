import { clause } from '../../data/sources.ts';
import { message } from '../message.ts';
import type { Wood } from '../project/model.ts';
import { givenStep } from './citation.ts';
import { greenMoisture, weightAt } from './density.ts';
import { findSpecies } from './species.ts';
import type { WeightAnswer } from './values.ts';

/**
 * Heavy and light weight of a log's wood.
 * Heavy, for gravity: green. Light, for uplift and overturning: air-dry at 12 %, on the volume measured green, because
 * diameters are taken from the green log and its later shrinkage takes no wood away. On the dry volume the weight would
 * be some 5 to 10 % more: the lower one is the safe side.
 * @param meanDiameterIn mean wood diameter of the log [in]; under 10 in. sapwood moisture counts too
 * @returns weights [pcf]; `ok: false` when no moisture is listed
 * @source WOOD_HANDBOOK Table 4-1, eq. 4-3 (most water that wood can hold); TREE_WEIGHTS (whole-tree moisture)
 */
export function woodWeight(wood: Wood, meanDiameterIn: number): WeightAnswer {
  if (wood.weight.by === 'typed') return typedWeight(wood.weight.heavyPcf, wood.weight.lightPcf);
  const species = findSpecies(wood.species);
  if (!species) return { ok: false, reason: message('woodWeightUnknown', { species: wood.species }) };
  const moisture = greenMoisture(species, meanDiameterIn);
  if (!moisture.ok) return moisture;
  return { ok: true, weight: weightAt(species, moisture.step) };
}

function typedWeight(heavyPcf: number, lightPcf: number): WeightAnswer {
  const where = clause('OWN', 'weight typed in');
  return {
    ok: true,
    weight: {
      heavyPcf,
      lightPcf,
      heavySteps: () => [givenStep('w_heavy', 'weight for gravity', heavyPcf, 'pcf', where, 'as typed')],
      lightSteps: () => [givenStep('w_light', 'weight for uplift', lightPcf, 'pcf', where, 'as typed')],
    },
  };
}
