import { LONG_SPAN_FT, MOST_PRESCRIPTIVE_SNOW_PSF } from '../../data/permit.ts';
import { SOIL_CLASSES, UNKNOWN_SOIL_KEY } from '../../data/loads/soil.ts';
import type { SIGN_WORDS } from '../../data/words/start.ts';
import type { Evaluation } from '../../engine/evaluation.ts';
import type { Project } from '../../engine/project/model.ts';
import { INCHES_PER_FOOT } from '../../engine/units.ts';

export interface Sign {
  readonly sign: keyof typeof SIGN_WORDS;
  /** the limit that its words name */
  readonly limit?: number;
  /** what the figures tell; null where only the owner can */
  readonly isHere: boolean | null;
}

const weakestSoilPsf = SOIL_CLASSES.find(({ key }) => key === UNKNOWN_SOIL_KEY)?.bearingPsf ?? 0;

/** Each sign with what this project tells of it. What a project says of people is only its risk category. */
export function signsOf({ site, woods }: Project, { counts, shelter }: Evaluation): readonly Sign[] {
  const over = (value: number | null, limit: number): boolean | null => (value === null ? null : value > limit);
  const bearing = site.soil.bearingPsf.value;
  return [
    { sign: 'outside', isHere: counts.fail + counts.outside > 0 },
    { sign: 'logs', isHere: woods.some(({ basis }) => basis.kind === 'derived') ? true : null },
    {
      sign: 'snow',
      limit: MOST_PRESCRIPTIVE_SNOW_PSF,
      isHere: over(site.groundSnowPsf.value, MOST_PRESCRIPTIVE_SNOW_PSF),
    },
    { sign: 'span', limit: LONG_SPAN_FT, isHere: widestBayIn(shelter) > LONG_SPAN_FT * INCHES_PER_FOOT },
    { sign: 'ledger', isHere: shelter.lines.some(({ kind }) => kind === 'ledger') },
    // a figure that carries does not say that nobody filled the ground
    { sign: 'soil', limit: weakestSoilPsf, isHere: bearing !== null && bearing < weakestSoilPsf ? true : null },
    { sign: 'earthquake', isHere: site.seismic ? true : null },
    { sign: 'people', isHere: site.riskCategory.value === 'III' ? true : null },
    { sign: 'other', isHere: null },
  ];
}

function widestBayIn({ lines, posts }: Evaluation['shelter']): number {
  const bays = lines.flatMap(({ postIds }) => {
    const places = posts.filter(({ id }) => postIds.includes(id)).map(({ xIn }) => xIn);
    const along = places.toSorted((a, b) => a - b);
    return along.slice(1).map((x, i) => x - along[i]!);
  });
  return Math.max(0, ...bays);
}
