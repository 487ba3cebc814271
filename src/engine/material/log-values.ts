import { message, type Message } from '../message.ts';
import { isNamed } from '../project/is-named.ts';
import type { Log, Wood } from '../project/model.ts';
import { inches } from '../units.ts';
import { derivedValues } from './derived-values.ts';
import { withFactorsAtOne, type WetReason } from './factors-at-one.ts';
import { largestDiameterOf } from './log-diameter.ts';
import { poleValues } from './pole-values.ts';
import { logSizeFactor } from './size-factor.ts';
import { findSpecies } from './species.ts';
import { areKnotsMeasured, isFootUnlisted, isGrainRead, strengthRatio } from './strength-ratio.ts';
import { holdsWetService, typedValues } from './typed-values.ts';
import type { MaterialAnswer } from './values.ts';

/**
 * Reference design values of one log, by the way its wood says: typed from a stamp or letter, published for poles after an
 * inspection, or (the usual way) derived from clear wood and what was seen.
 * @returns values, or `outside` / `notGiven` with the reason
 * @source see {@link typedValues}, {@link poleValues} and {@link derivedValues}
 * @limits  a check or shake through at an end is past the method, whoever gave the values
 */
export function logValues(log: Log, wood: Wood): MaterialAnswer {
  if (log.seen?.throughCheckAtEnd) return outside(message('logThroughCheck'));
  const answer = valuesByBasis(log, wood);
  return answer.ok ? { ok: true, values: withFactorsAtOne(answer.values, wetReasonOf(wood)) } : answer;
}

function valuesByBasis(log: Log, wood: Wood): MaterialAnswer {
  switch (wood.basis.kind) {
    case 'typed':
      return isNamed(wood.basis.by)
        ? { ok: true, values: typedValues(wood, wood.basis) }
        : { ok: false, status: 'notGiven', reason: message('woodTypedByNobody') };
    case 'poles': {
      const species = findSpecies(wood.species);
      return species ? poleValues(log, species, wood.basis) : unlisted(wood);
    }
    case 'derived':
      return valuesFromClearWood(log, wood);
  }
}

function wetReasonOf({ basis }: Wood): WetReason {
  if (basis.kind !== 'typed') return basis.kind === 'poles' ? 'poles' : 'green';
  if (basis.published === 'wet') return 'typedWet';
  return holdsWetService(basis) ? 'typedHeld' : 'timber';
}

const unlisted = ({ species }: Wood): MaterialAnswer => ({
  ok: false,
  status: 'notGiven',
  reason: message('woodSpeciesUnknown', { species }),
});

const outside = (reason: Message): MaterialAnswer => ({ ok: false, status: 'outside', reason });

function valuesFromClearWood(log: Log, wood: Wood): MaterialAnswer {
  const species = findSpecies(wood.species);
  if (!species) return unlisted(wood);
  const ratio = strengthRatio(log);
  if (!ratio.ok) return outside(ratio.reason);
  const largest = inches(largestDiameterOf(log));
  const cautions = [
    message('woodCompressionCaution'),
    ...(areKnotsMeasured(log) ? [] : [message(isFootUnlisted(log) ? 'logFootUnlisted' : 'logKnotsNotMeasured')]),
    ...(isGrainRead(log) ? [] : [message('logGrainNotRead')]),
    ...(isUnsigned(log) ? [message('logLookUnsigned')] : []),
  ];
  return {
    ok: true,
    values: derivedValues('derived', species, ratio.ratios, (note) => logSizeFactor(largest, note), cautions),
  };
}

/** Somebody looked, but who and when is not written down. */
const isUnsigned = ({ seen }: Log): boolean => seen !== null && (!isNamed(seen.by) || seen.date === null);
