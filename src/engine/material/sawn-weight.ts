import { CLEAR_WOOD } from '../../data/wood/species.ts';
import type { SawnStick } from '../geometry/shelter.ts';
import { message } from '../message.ts';
import { dryMoisture, greenMoisture, SAPWOOD_BELOW_IN, weightAt } from './density.ts';
import { findLumberGroup } from './sawn-values.ts';
import { findSpecies } from './species.ts';
import type { WeightAnswer } from './values.ts';

/** As of a log under 10 in., whose sapwood counts; without a figure for sapwood the heartwood's. */
function wetMoisture(species: (typeof CLEAR_WOOD)[number]) {
  const withSapwood = greenMoisture(species, 0);
  return withSapwood.ok ? withSapwood : greenMoisture(species, SAPWOOD_BELOW_IN);
}

/**
 * Heavy and light weight of a sawn stick: of its species, or the heaviest and the lightest species of its stamp's group.
 * Heavy is green for wet use (sapwood where it is listed: a stick from a small log is mostly that), 19 % moisture for dry
 * use.
 */
export function sawnWeight(stick: SawnStick): WeightAnswer {
  const named = findSpecies(stick.species);
  const members = named
    ? [named]
    : CLEAR_WOOD.filter((species) => findLumberGroup(stick.species)?.species.includes(species.name));
  const weights = members.flatMap((species) => {
    const moisture = stick.use === 'dry' ? dryMoisture() : wetMoisture(species);
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
