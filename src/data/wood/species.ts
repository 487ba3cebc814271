import type { Cited } from './cited.ts';

/** Mean values of small clear straight-grained specimens, green. */
export interface ClearWoodMeans {
  /** oven-dry weight over green volume */
  readonly specificGravity: number;
  readonly bendingPsi: number;
  readonly stiffnessPsi: number;
  readonly compressionAlongPsi: number;
  /** stress at the proportional limit */
  readonly compressionAcrossPsi: number;
  readonly shearPsi: number;
}

export interface ClearWoodSpecies extends Cited {
  readonly name: string;
  readonly kind: 'softwood' | 'hardwood';
  readonly green: ClearWoodMeans;
}

type Printed = readonly [
  specificGravity: number,
  bending: number,
  stiffness: number,
  compressionAlong: number,
  compressionAcross: number,
  shear: number,
];

const row =
  (kind: ClearWoodSpecies['kind']) =>
  (name: string, [g, bending, stiffness, along, across, shear]: Printed): ClearWoodSpecies => ({
    name,
    kind,
    green: {
      specificGravity: g,
      bendingPsi: bending,
      stiffnessPsi: stiffness,
      compressionAlongPsi: along,
      compressionAcrossPsi: across,
      shearPsi: shear,
    },
    source: 'WOOD_HANDBOOK',
    where: 'Table 5-3b',
    seen: 'public copy',
  });
const softwood = row('softwood');
const hardwood = row('hardwood');

/**
 * Clear-wood means, green: specific gravity, bending strength, stiffness, compression along and across the grain, shear
 * [psi]. Logs are judged green; the same species at 12 % are in DRY_WOOD.
 * @source WOOD_HANDBOOK Table 5-3b (2021)
 */
export const CLEAR_WOOD: readonly ClearWoodSpecies[] = [
  softwood('Western redcedar', [0.31, 5200, 940000, 2770, 240, 770]),
  softwood('Northern white-cedar', [0.29, 4200, 640000, 1990, 230, 620]),
  softwood('Port-Orford-cedar', [0.39, 6600, 1300000, 3140, 300, 840]),
  softwood('Yellow-cedar', [0.42, 6400, 1140000, 3050, 350, 840]),
  softwood('Incense-cedar', [0.35, 6200, 840000, 3150, 370, 830]),
  softwood('Atlantic white-cedar', [0.31, 4700, 750000, 2390, 240, 690]),
  softwood('Eastern redcedar', [0.44, 7000, 650000, 3570, 700, 1010]),
  softwood('Redwood, old-growth', [0.38, 7500, 1180000, 4200, 420, 800]),
  softwood('Redwood, young-growth', [0.34, 5900, 960000, 3110, 270, 890]),
  softwood('Baldcypress', [0.42, 6600, 1180000, 3580, 400, 810]),
  softwood('Douglas-fir, Coast', [0.45, 7700, 1560000, 3780, 380, 900]),
  softwood('Douglas-fir, Interior West', [0.46, 7700, 1510000, 3870, 420, 940]),
  softwood('Douglas-fir, Interior North', [0.45, 7400, 1410000, 3470, 360, 950]),
  softwood('Douglas-fir, Interior South', [0.43, 6800, 1160000, 3110, 340, 950]),
  softwood('Western larch', [0.48, 7700, 1460000, 3760, 400, 870]),
  softwood('Tamarack', [0.49, 7200, 1240000, 3480, 390, 860]),
  softwood('Lodgepole pine', [0.38, 5500, 1080000, 2610, 250, 680]),
  softwood('Ponderosa pine', [0.38, 5100, 1000000, 2450, 280, 700]),
  softwood('Eastern white pine', [0.34, 4900, 990000, 2440, 220, 680]),
  softwood('Red pine', [0.41, 5800, 1280000, 2730, 260, 690]),
  softwood('Jack pine', [0.4, 6000, 1070000, 2950, 300, 750]),
  softwood('Loblolly pine', [0.47, 7300, 1400000, 3510, 390, 860]),
  softwood('Shortleaf pine', [0.47, 7400, 1390000, 3530, 350, 910]),
  softwood('Longleaf pine', [0.54, 8500, 1590000, 4320, 480, 1040]),
  softwood('Slash pine', [0.54, 8700, 1530000, 3820, 530, 960]),
  softwood('Western hemlock', [0.42, 6600, 1310000, 3360, 280, 860]),
  softwood('Eastern hemlock', [0.38, 6400, 1070000, 3080, 360, 850]),
  softwood('Grand fir', [0.35, 5800, 1250000, 2940, 270, 740]),
  softwood('White fir', [0.37, 5900, 1160000, 2900, 280, 760]),
  softwood('Engelmann spruce', [0.33, 4700, 1030000, 2180, 200, 640]),
  softwood('Sitka spruce', [0.37, 5700, 1230000, 2670, 280, 760]),
  softwood('White spruce', [0.33, 5000, 1140000, 2350, 210, 640]),
  softwood('Black spruce', [0.38, 6100, 1380000, 2840, 240, 740]),
  hardwood('Yellow-poplar', [0.4, 6000, 1220000, 2660, 270, 790]),
  hardwood('White oak', [0.6, 8300, 1250000, 3560, 670, 1250]),
  hardwood('Northern red oak', [0.56, 8300, 1350000, 3440, 610, 1210]),
  hardwood('Black locust', [0.66, 13800, 1850000, 6800, 1160, 1760]),
  softwood('Balsam fir', [0.33, 5500, 1250000, 2630, 190, 660]),
  softwood('Subalpine fir', [0.31, 4900, 1050000, 2300, 190, 700]),
  softwood('Red spruce', [0.37, 6000, 1330000, 2720, 260, 750]),
  softwood('Western white pine', [0.35, 4700, 1190000, 2430, 190, 680]),
];
