import { clause, remembered } from '../../data/sources.ts';
import { GREEN_MOISTURE, WHOLE_TREE, type GreenMoisture } from '../../data/wood/moisture.ts';
import type { ClearWoodSpecies } from '../../data/wood/species.ts';
import { message, type Message } from '../message.ts';
import { put, stepsOf, type Note, type Step } from '../note.ts';
import { pcf, quantity, type Pcf } from '../units.ts';
import { cited, givenStep } from './citation.ts';
import type { WoodWeight } from './values.ts';

const WATER_PCF = 62.4;
/** Logs thinner than this, on the mean, are mostly sapwood (own rule). */
export const SAPWOOD_BELOW_IN = 10;
const AIR_DRY_PCT = 12;
/** Most moisture of wood that the standard calls dry in use. */
const DRY_USE_PCT = 19;

export type MoistureAnswer =
  { readonly ok: true; readonly step: Step } | { readonly ok: false; readonly reason: Message };

/** Moisture of wood that the standard calls dry in use, at its most. */
export const dryMoisture = (): MoistureAnswer => ({
  ok: true,
  step: givenStep('M', 'moisture, most for dry use', DRY_USE_PCT, '%', remembered('NDS', '4.1.4'), 'stated value'),
});

/** The largest listed moisture that applies: whole tree, heartwood, and for thin logs sapwood. */
export function greenMoisture(species: ClearWoodSpecies, meanDiameterIn: number): MoistureAnswer {
  const row = GREEN_MOISTURE.find((candidate) => candidate.species === species.name);
  const isThin = meanDiameterIn < SAPWOOD_BELOW_IN;
  const sapwood = row?.parts?.sapwoodPct ?? null;
  if (isThin && sapwood === null) {
    return { ok: false, reason: message('woodSapwoodUnknown', { species: species.name, diameterIn: meanDiameterIn }) };
  }
  const wettest = row ? moistureSteps(row, isThin).toSorted((a, b) => b.result.value - a.result.value)[0] : undefined;
  if (!wettest) return { ok: false, reason: message('woodWeightUnknown', { species: species.name }) };
  return { ok: true, step: wettest };
}

function moistureSteps(row: GreenMoisture, isThin: boolean): readonly Step[] {
  const { parts } = row;
  const step = (words: string, value: number | null, where: Step['clause']): readonly Step[] =>
    value === null ? [] : [givenStep('M', `green moisture, ${words}, ${row.species}`, value, '%', where)];
  const whole = step('whole tree', row.wholeTreePct, cited(WHOLE_TREE.source, WHOLE_TREE.where, WHOLE_TREE.seen));
  if (!parts) return whole;
  const where = cited(parts.source, parts.where, parts.seen);
  return [
    ...whole,
    ...step('heartwood', parts.heartwoodPct, where),
    ...(isThin ? step('sapwood of a log under 10 in. mean diameter', parts.sapwoodPct, where) : []),
  ];
}

/** Both weights of a species: heavy at the moisture given (never more than the wood can hold), light at 12 %. */
export function weightAt(species: ClearWoodSpecies, moisture: Step): WoodWeight {
  return {
    heavyPcf: heavyWeight(species, moisture),
    heavySteps: () => stepsOf((note) => heavyWeight(species, moisture, note)).steps,
    lightPcf: lightWeight(species),
    lightSteps: () => stepsOf((note) => lightWeight(species, note)).steps,
  };
}

const gravityStep = (species: ClearWoodSpecies): Step =>
  givenStep(
    'G',
    `specific gravity on green volume, ${species.name}`,
    species.green.specificGravity,
    '1',
    cited(species.source, species.where, species.seen),
  );

function heavyWeight(species: ClearWoodSpecies, moisture: Step, note?: Note): Pcf {
  const G = species.green.specificGravity;
  const most = (100 * (1.54 - G)) / (1.54 * G);
  const M = Math.min(moisture.result.value, most);
  const weight = WATER_PCF * G * (1 + M / 100);
  if (note) {
    note(gravityStep(species));
    note(moisture);
    note({
      symbol: 'M_most',
      words: 'most moisture that this wood can hold',
      formula: '100 × (1.54 − G) / (1.54 × G)',
      put: [put('G', G, '1', 'specific gravity')],
      result: quantity(most, '%'),
      clause: clause('WOOD_HANDBOOK', 'eq. 4-3'),
    });
    note({
      symbol: 'w_heavy',
      words: 'weight for gravity',
      formula: `${WATER_PCF} × G × (1 + min(M, M_most) / 100)`,
      put: [
        put('G', G, '1', 'specific gravity on green volume'),
        put('M', moisture.result.value, '%', moisture.words),
        put('M_most', most, '%', 'most moisture'),
      ],
      result: quantity(weight, 'pcf'),
      clause: clause('WOOD_HANDBOOK', 'chapter 4, density'),
    });
  }
  return pcf(weight);
}

function lightWeight(species: ClearWoodSpecies, note?: Note): Pcf {
  const G = species.green.specificGravity;
  const weight = WATER_PCF * G * (1 + AIR_DRY_PCT / 100);
  note?.(gravityStep(species));
  note?.({
    symbol: 'w_light',
    words: `weight for uplift, air-dry at ${AIR_DRY_PCT} %, on the volume measured green`,
    formula: `${WATER_PCF} × G × (1 + ${AIR_DRY_PCT} / 100)`,
    put: [put('G', G, '1', 'specific gravity on green volume')],
    result: quantity(weight, 'pcf'),
    clause: clause('WOOD_HANDBOOK', 'chapter 4, density'),
  });
  return pcf(weight);
}
