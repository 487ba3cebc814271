import { clause } from '../../../data/sources.ts';
import { notGiven, type Verdict } from '../../check.ts';
import { message } from '../../message.ts';
import { put, type Note } from '../../note.ts';
import type { Given, Site } from '../../project/model.ts';
import { quantity } from '../../units.ts';
import type { Grip } from '../ground/sliding.ts';

const soilNotGiven = (): Verdict => notGiven(message('soilNotGiven'));

/** No bearing is presumed for mud, peat and fill. */
export const whyNoBearing = ({ soil }: Site): Verdict | null =>
  soil.bearingPsf.value === null ? soilNotGiven() : null;
export const whyNoLateral = ({ soil }: Site): Verdict | null =>
  soil.lateralPsfPerFt.value === null ? soilNotGiven() : null;

/** Allowable bearing as somebody gave it. @source IBC Table 1806.2; no gain for short loads, none for depth or width */
export function allowableBearing({ soil }: Site, note?: Note): number {
  const q = soil.bearingPsf.value ?? NaN;
  note?.({
    symbol: 'qa',
    words: 'allowable bearing of the soil, with no gain for short loads',
    formula: 'as given',
    put: [put('qa', q, 'psf', `given by: ${soil.bearingPsf.givenBy}`)],
    result: quantity(q, 'psf'),
    clause: clause('IBC', 'Table 1806.2'),
  });
  return q;
}

/** What a base rubs with, as somebody answers for it: a guess counts as nothing. */
export function gripOf({ soil }: Site): Grip {
  const said = (given: Given<number> | undefined): number | null =>
    given && given.givenBy !== 'guess' ? given.value : null;
  return { friction: said(soil.friction), cohesionPsf: said(soil.cohesionPsf) };
}
