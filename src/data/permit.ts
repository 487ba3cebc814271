import { clause, remembered, type ClauseRef } from './sources.ts';

/** Floor area up to which a code asks for no permit for a small building that stands by itself. */
export interface PermitSize {
  readonly words: string;
  readonly areaFt2: number;
  readonly clause: ClauseRef;
}

/** Work exempt from permit in the model codes; what a department adopted may differ. Neither names a height beside one story. */
export const PERMIT_SIZES: readonly PermitSize[] = [
  {
    words: 'beside a one- or two-family house: one story, detached',
    areaFt2: 200,
    clause: remembered('IRC', 'R105.2, building, item 1'),
  },
  {
    words: 'anywhere else: one story, detached, a tool or storage shed or the like',
    areaFt2: 120,
    clause: remembered('IBC', '105.2, building, item 1'),
  },
];

/** Ground snow above which the residential code asks for an engineered design [psf]. */
export const MOST_PRESCRIPTIVE_SNOW_PSF = 70;
export const PRESCRIPTIVE_SNOW_CLAUSE = remembered('IRC', 'R301.2.3');

/** Distance between posts from which a designer is usually asked (common practice) [ft]. */
export const LONG_SPAN_FT = 20;

/** What neither residential nor prescriptive rules speak of is designed. */
export const ENGINEERED_CLAUSE = remembered('IRC', 'R301.1.3');
export const SOIL_CLAUSE = clause('IBC', 'Table 1806.2');
