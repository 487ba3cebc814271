import type { Seen, SourceKey } from '../sources.ts';

export interface RoofMaterial {
  readonly key: string;
  readonly words: string;
  readonly psf: number;
  readonly source: SourceKey;
  readonly seen: Seen;
}

const row = (key: string, words: string, psf: number, source: SourceKey, seen: Seen): RoofMaterial => ({
  key,
  words,
  psf,
  source,
  seen,
});

/** What lies on a roof, per square foot of its own surface. A layer's heavy and light weight are the person's choice. */
export const ROOF_MATERIALS: readonly RoofMaterial[] = [
  row('ribbedSteel29', 'Ribbed steel 29 ga, laps and screws', 0.8, 'OWN', 'own'),
  row('ribbedSteel26', 'Ribbed steel 26 ga, laps and screws', 1.0, 'OWN', 'own'),
  row('corrugatedSteel26', 'Corrugated steel 26 ga', 1.0, 'KIDDER', 'public copy'),
  row('corrugatedSteel24', 'Corrugated steel 24 ga', 1.3, 'KIDDER', 'public copy'),
  row('corrugatedSteel22', 'Corrugated steel 22 ga', 1.6, 'KIDDER', 'public copy'),
  row('corrugatedSteel20', 'Corrugated steel 20 ga', 1.9, 'KIDDER', 'public copy'),
  row('standingSeam', 'Standing-seam steel', 1.0, 'KIDDER', 'public copy'),
  row('corrugatedSteel06mm', 'Corrugated steel 0.6 mm, laps and fastenings', 1.61, 'BNBC', 'public copy'),
  row('corrugatedSteel08mm', 'Corrugated steel 0.8 mm, laps and fastenings', 2.0, 'BNBC', 'public copy'),
  row('corrugatedSteel10mm', 'Corrugated steel 1.0 mm, laps and fastenings', 2.51, 'BNBC', 'public copy'),
  row('asphaltShingle', 'Asphalt shingles, one layer', 2.5, 'PERMIT_RECORD', 'public copy'),
  row('woodShingle', 'Wood shingles', 3.0, 'KIDDER', 'public copy'),
  row('felt', 'Roofing felt', 0.5, 'PERMIT_RECORD', 'public copy'),
  row('plywoodHalf', 'Plywood sheathing, half-inch class', 1.5, 'PERMIT_RECORD', 'public copy'),
  row('plywoodThreeQuarter', 'Plywood 3/4 in', 3.0, 'LEET', 'public copy'),
  row('boardsOneInch', 'Board sheathing 1 in, softwood', 3.0, 'KIDDER', 'public copy'),
  row('boardsYellowPine', 'Board sheathing 1 in, yellow pine', 4.0, 'KIDDER', 'public copy'),
  row('gypsumHalf', 'Gypsum board 1/2 in, as a ceiling', 2.2, 'PERMIT_RECORD', 'public copy'),
  row('slate', 'Slate 3/16 in', 7.25, 'KIDDER', 'public copy'),
  row('feltAndGravel', 'Five-ply felt and gravel', 6.0, 'KIDDER', 'public copy'),
];
