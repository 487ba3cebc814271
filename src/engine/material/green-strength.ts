import { remembered } from '../../data/sources.ts';
import type { ClearWoodSpecies } from '../../data/wood/species.ts';
import { CRUSHING_LINE, FIVE_PERCENT } from '../../data/wood/strength-ratios.ts';
import { AVERAGE_COV, LOWER_MEANS_ACROSS, SURVEYED, type SurveyedSpecies } from '../../data/wood/variability.ts';
import { put, type Note, type Step } from '../note.ts';
import { psi, quantity, type Psi } from '../units.ts';
import { cited, givenStep } from './citation.ts';

/** Strengths that are taken at their 5 % exclusion limit. */
export type LimitedProperty = 'bending' | 'compressionAlong' | 'shear';

const WORDS: Record<LimitedProperty, string> = {
  bending: 'bending strength',
  compressionAlong: 'strength in compression along the grain',
  shear: 'shear strength',
};

const surveyed = (species: ClearWoodSpecies): SurveyedSpecies | undefined =>
  SURVEYED.find((row) => row.species === species.name);

const printedMean = (species: ClearWoodSpecies, property: LimitedProperty): number =>
  ({
    bending: species.green.bendingPsi,
    compressionAlong: species.green.compressionAlongPsi,
    shear: species.green.shearPsi,
  })[property];

/**
 * Strength that 95 of 100 small clear green pieces of the species exceed.
 * Mean and deviation come from one row where both are printed; else the species' mean and the average scatter.
 * @returns near-minimum strength [psi]
 * @source D2555 (2006): mean less 1.645 standard deviations; WOOD_HANDBOOK_2010 Table 5-6
 */
export function exclusionLimit(species: ClearWoodSpecies, property: LimitedProperty, note?: Note): Psi {
  const survey = surveyed(species);
  const mean = survey ? survey[property].meanPsi : printedMean(species, property);
  const sd = survey ? survey[property].sdPsi : AVERAGE_COV[property] * mean;
  const limit = mean - FIVE_PERCENT * sd;
  if (note) {
    for (const step of scatterSteps(species, property, survey, mean, sd)) note(step);
    note({
      symbol: 'X_05',
      words: `${WORDS[property]} that 95 of 100 clear green pieces exceed`,
      formula: `X_mean − ${FIVE_PERCENT} × s`,
      put: [put('X_mean', mean, 'psi', 'mean'), put('s', sd, 'psi', 'standard deviation')],
      result: quantity(limit, 'psi'),
      clause: remembered('D2555', '5 % exclusion limit'),
    });
  }
  return psi(limit);
}

function scatterSteps(
  species: ClearWoodSpecies,
  property: LimitedProperty,
  survey: SurveyedSpecies | undefined,
  mean: number,
  sd: number,
): readonly Step[] {
  const meanWords = `mean ${WORDS[property]} of clear green wood, ${species.name}`;
  if (survey) {
    const where = cited(survey.source, survey.where, survey.seen);
    return [
      givenStep('X_mean', meanWords, mean, 'psi', where),
      givenStep('s', 'standard deviation of the species', sd, 'psi', where),
    ];
  }
  return [
    givenStep('X_mean', meanWords, mean, 'psi', cited(species.source, species.where, species.seen)),
    {
      symbol: 's',
      words: 'standard deviation from the average scatter of 50 species',
      formula: `${AVERAGE_COV[property]} × X_mean`,
      put: [put('X_mean', mean, 'psi', 'mean')],
      result: quantity(sd, 'psi'),
      clause: cited(AVERAGE_COV.source, AVERAGE_COV.where, AVERAGE_COV.seen),
    },
  ];
}

/**
 * Stress across the grain at 0.04 in. of crushing from the stress at the proportional limit.
 * @param proportionalLimit mean of clear green wood [psi]
 * @source a straight line through nine printed pairs of D2555 (2006) Table 1, nearest psi
 */
export const crushingStress = (proportionalLimit: number): Psi =>
  psi(CRUSHING_LINE.at0Psi + CRUSHING_LINE.slope * proportionalLimit);

/**
 * Mean stress across the grain at 0.04 in. of crushing, clear green wood of the species.
 * Where the stress itself is printed it is used (western hemlock does not follow the line), elsewhere the line.
 * @returns stress [psi]
 */
export function crushingStressOf(species: ClearWoodSpecies, note?: Note): Psi {
  const survey = surveyed(species);
  const printed = survey?.compressionAcrossAtFourHundredthsPsi ?? null;
  if (survey && printed !== null) {
    note?.(
      givenStep(
        'X_04',
        `mean stress across the grain at 0.04 in. of crushing, ${species.name}`,
        printed,
        'psi',
        cited(survey.source, survey.where, survey.seen),
      ),
    );
    return psi(printed);
  }
  const lower = LOWER_MEANS_ACROSS.rows.find((row) => row.species === species.name);
  const mean = lower?.compressionAcrossPsi ?? species.green.compressionAcrossPsi;
  const stress = crushingStress(mean);
  if (note) {
    note(
      givenStep(
        'X_mean',
        `mean stress across the grain at the proportional limit, clear green wood, ${species.name}`,
        mean,
        'psi',
        lower
          ? cited(LOWER_MEANS_ACROSS.source, LOWER_MEANS_ACROSS.where, LOWER_MEANS_ACROSS.seen)
          : cited(species.source, species.where, species.seen),
      ),
    );
    note({
      symbol: 'X_04',
      words: 'stress at 0.04 in. of crushing',
      formula: `${CRUSHING_LINE.at0Psi} + ${CRUSHING_LINE.slope} × X_mean`,
      put: [put('X_mean', mean, 'psi', 'mean at the proportional limit')],
      result: quantity(stress, 'psi'),
      clause: cited('D2555', 'Table 1, line through its pairs', 'public copy'),
    });
  }
  return stress;
}

/** Mean stiffness of clear green wood of the species [psi]. */
export function meanStiffness(species: ClearWoodSpecies, note?: Note): Psi {
  const survey = surveyed(species);
  const mean = survey ? survey.stiffnessPsi : species.green.stiffnessPsi;
  note?.(
    givenStep(
      'E_mean',
      `mean stiffness of clear green wood, ${species.name}`,
      mean,
      'psi',
      survey ? cited(survey.source, survey.where, survey.seen) : cited(species.source, species.where, species.seen),
    ),
  );
  return psi(mean);
}
