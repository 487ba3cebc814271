import { CLEAR_WOOD } from '../../data/wood/species.ts';
import type { SawnStick } from '../geometry/shelter.ts';
import { message } from '../message.ts';
import { dryMoisture, greenMoisture, SAPWOOD_BELOW_IN, weightAt } from './density.ts';
import { findLumberGroup } from './sawn-values.ts';
import { findSpecies } from './species.ts';
import type { WeightAnswer } from './values.ts';

/**
 * Heavy and light weight of a sawn stick: of its species, or the heaviest and the lightest species of its stamp's group.
 * Heavy is green for wet use, 19 % moisture for dry use.
 */
export function sawnWeight(stick: SawnStick): WeightAnswer {
  const named = findSpecies(stick.species);
  const members = named
    ? [named]
    : CLEAR_WOOD.filter((species) => findLumberGroup(stick.species)?.species.includes(species.name));
  const weights = members.flatMap((species) => {
    const moisture = stick.use === 'dry' ? dryMoisture() : greenMoisture(species, SAPWOOD_BELOW_IN);
    return moisture.ok ? [weightAt(species, moisture.step)] : [];
  });
  const first = weights[0];
  if (!first) return { ok: false, reason: message('woodWeightUnknown', { species: stick.species }) };
  const heavy = weights.reduce((most, next) => (next.heavyPcf > most.heavyPcf ? next : most), first);
  const light = weights.reduce((least, next) => (next.lightPcf < least.lightPcf ? next : least), first);
  return {
    ok: true,
    weight: {
      heavyPcf: heavy.heavyPcf,
      heavySteps: heavy.heavySteps,
      lightPcf: light.lightPcf,
      lightSteps: light.lightSteps,
    },
  };
}
