import type { Seen, SourceKey } from '../sources.ts';

export interface SoilClass {
  readonly key: string;
  readonly words: string;
  /** allowable bearing [psf]; null: none without an investigation */
  readonly bearingPsf: number | null;
  readonly lateralPsfPerFt: number | null;
  readonly friction: number | null;
  readonly cohesionPsf: number | null;
  readonly source: SourceKey;
  readonly seen: Seen;
}

const row = (
  key: string,
  words: string,
  bearingPsf: number | null,
  lateralPsfPerFt: number | null,
  friction: number | null,
  cohesionPsf: number | null,
): SoilClass => ({
  key,
  words,
  bearingPsf,
  lateralPsfPerFt,
  friction,
  cohesionPsf,
  source: 'IBC',
  seen: 'public copy',
});

/** Presumptive values of the building code, Table 1806.2, as reproduced from its 2012 edition in a textbook. */
export const SOIL_CLASSES: readonly SoilClass[] = [
  row('bedrock', 'Crystalline bedrock', 12000, 1200, 0.7, null),
  row('softRock', 'Sedimentary and foliated rock', 4000, 400, 0.35, null),
  row('gravel', 'Gravel and sandy gravel', 3000, 200, 0.35, null),
  row('sand', 'Sand, silty or clayey sand, silty or clayey gravel', 2000, 150, 0.25, null),
  row('clay', 'Clay, sandy clay, silty clay, clayey silt, silt, sandy silt', 1500, 100, null, 130),
  row('soft', 'Mud, organic silt or clay, peat, unprepared fill', null, null, null, null),
];

/** What the code allows where nobody has looked at the soil: its weakest class that carries a value. */
export const UNKNOWN_SOIL_KEY = 'clay';
