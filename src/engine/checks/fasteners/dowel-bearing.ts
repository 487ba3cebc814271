import { SHANK_ON_STEEL, type SteelGrade } from '../../../data/fasteners/steel.ts';
import { clause, remembered } from '../../../data/sources.ts';
import { MisuseError, notNegative, positive } from '../../errors.ts';
import { cited } from '../../material/citation.ts';
import { put, type Note } from '../../note.ts';
import { quantity, radiansFromDegrees } from '../../units.ts';

const THICK = clause('NDS', 'Table 12.3.3');
const THIN = remembered('NDS', 'Table 12.3.3');
const ANGLE = remembered('NDS', '12.3.4');

/** From this nominal diameter on the grain counts, and the factors of groups and places apply. @source NDS Table 12.3.3 */
export const THICK_FROM_IN = 0.25;

/**
 * How hard a shank may press on wood at an angle to the grain.
 * @param specificGravity G of the wood, oven-dry
 * @param nominalIn nominal diameter, also where the thread bears [in]
 * @param angleDeg between load and grain, 0 to 90; without meaning for a thin shank [deg]
 * @returns Fe [psi]
 * @throws MisuseError if a value is not above zero or the angle not from 0 to 90
 * @source NDS Table 12.3.3, equation 12.3-11 (from memory); the printed table is rounded to 50 psi, this is not
 */
export function dowelBearingOnWood(specificGravity: number, nominalIn: number, angleDeg: number, note?: Note): number {
  positive('specificGravity', specificGravity);
  positive('nominalIn', nominalIn);
  if (notNegative('angleDeg', angleDeg) > 90) throw new MisuseError('angleDeg', angleDeg, 'an angle from 0 to 90');
  if (nominalIn < THICK_FROM_IN) return onThinShank(specificGravity, note);
  if (angleDeg === 0) return alongGrain(specificGravity, note);
  if (angleDeg === 90) return acrossGrain(specificGravity, nominalIn, note);
  const along = alongGrain(specificGravity, note);
  const across = acrossGrain(specificGravity, nominalIn, note);
  const sin2 = Math.sin(radiansFromDegrees(angleDeg)) ** 2;
  const Fe = (along * across) / (along * sin2 + across * (1 - sin2));
  note?.({
    symbol: 'Feθ',
    words: 'dowel bearing strength at an angle to the grain',
    formula: 'Fe|| × Fe⊥ / (Fe|| × sin(θ)^2 + Fe⊥ × cos(θ)^2)',
    put: [
      put('Fe||', along, 'psi', 'along the grain'),
      put('Fe⊥', across, 'psi', 'across the grain'),
      put('θ', angleDeg, 'deg', 'between load and grain'),
    ],
    result: quantity(Fe, 'psi'),
    clause: ANGLE,
  });
  return Fe;
}

function onThinShank(G: number, note?: Note): number {
  const Fe = 16_600 * G ** 1.84;
  note?.({
    symbol: 'Fe',
    words: 'dowel bearing strength of a shank thinner than 1/4 in., any angle to the grain',
    formula: '16600 × G^1.84',
    put: [put('G', G, '1', 'specific gravity')],
    result: quantity(Fe, 'psi'),
    clause: THIN,
  });
  return Fe;
}

function alongGrain(G: number, note?: Note): number {
  const Fe = 11_200 * G;
  note?.({
    symbol: 'Fe||',
    words: 'dowel bearing strength along the grain',
    formula: '11200 × G',
    put: [put('G', G, '1', 'specific gravity')],
    result: quantity(Fe, 'psi'),
    clause: THICK,
  });
  return Fe;
}

function acrossGrain(G: number, D: number, note?: Note): number {
  const Fe = (6_100 * G ** 1.45) / Math.sqrt(D);
  note?.({
    symbol: 'Fe⊥',
    words: 'dowel bearing strength across the grain',
    formula: '6100 × G^1.45 / sqrt(D)',
    put: [put('G', G, '1', 'specific gravity'), put('D', D, 'in', 'nominal diameter')],
    result: quantity(Fe, 'psi'),
    clause: THICK,
  });
  return Fe;
}

/** A steel of which plates and straps are made. */
export type PlateSteel = SteelGrade & { readonly plate: 'hotRolled' | 'coldFormed' };

/**
 * How hard a shank may press on a steel plate or strap.
 * @returns Fe [psi]
 * @source NDS Appendix I, I.2
 */
export function dowelBearingOnSteel(steel: PlateSteel, note?: Note): number {
  const share = SHANK_ON_STEEL[steel.plate];
  const Fe = share * steel.FuPsi;
  note?.({
    symbol: 'Fe',
    words: `dowel bearing strength of ${steel.words}`,
    formula: 'k × Fu',
    put: [put('k', share, '1', 'how it is made'), put('Fu', steel.FuPsi, 'psi', 'least strength of the steel')],
    result: quantity(Fe, 'psi'),
    clause: cited(SHANK_ON_STEEL.source, SHANK_ON_STEEL.where, SHANK_ON_STEEL.seen),
  });
  return Fe;
}
