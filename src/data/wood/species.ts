import type { Seen, SourceKey } from '../sources.ts';

// One printed table in one file, species by species, so that it can be held beside the page: long on purpose.

/** Mean values of small clear straight-grained specimens at one moisture content. */
export interface ClearWoodMeans {
  /** oven-dry weight over volume at this moisture content */
  readonly specificGravity: number;
  readonly bendingPsi: number;
  readonly stiffnessPsi: number;
  readonly compressionAlongPsi: number;
  /** stress at the proportional limit */
  readonly compressionAcrossPsi: number;
  /** null where the table prints none */
  readonly shearPsi: number | null;
}

export interface ClearWoodSpecies {
  readonly name: string;
  readonly scientificName: string;
  readonly kind: 'softwood' | 'hardwood';
  readonly green: ClearWoodMeans & { readonly shearPsi: number };
  /** at 12 % moisture content */
  readonly dry: ClearWoodMeans;
  readonly source: SourceKey;
  readonly table: string;
  readonly seen: Seen;
}

type Printed<Shear> = readonly [
  specificGravity: number,
  bending: number,
  stiffness: number,
  compressionAlong: number,
  compressionAcross: number,
  shear: Shear,
];

const means = <Shear>([g, bending, stiffness, along, across, shear]: Printed<Shear>) => ({
  specificGravity: g,
  bendingPsi: bending,
  stiffnessPsi: stiffness,
  compressionAlongPsi: along,
  compressionAcrossPsi: across,
  shearPsi: shear,
});

const row = (
  name: string,
  scientificName: string,
  kind: ClearWoodSpecies['kind'],
  green: Printed<number>,
  dry: Printed<number | null>,
): ClearWoodSpecies => ({
  name,
  scientificName,
  kind,
  green: means(green),
  dry: means(dry),
  source: 'WOOD_HANDBOOK',
  table: 'Table 5-3b',
  seen: 'public copy',
});

/**
 * Clear-wood means, green and at 12 %: specific gravity, bending strength, stiffness, compression along and across the
 * grain, shear [psi]. Two printings disagree at 12 % for western hemlock, white spruce and Engelmann spruce; the
 * inch-pound one stands here (the 12 % strengths decide nothing, logs are judged green).
 * @source WOOD_HANDBOOK Table 5-3b (2021)
 */
export const CLEAR_WOOD: readonly ClearWoodSpecies[] = [
  row(
    'Western redcedar',
    'Thuja plicata',
    'softwood',
    [0.31, 5200, 940000, 2770, 240, 770],
    [0.32, 7500, 1110000, 4560, 460, 990],
  ),
  row(
    'Northern white-cedar',
    'Thuja occidentalis',
    'softwood',
    [0.29, 4200, 640000, 1990, 230, 620],
    [0.31, 6500, 800000, 3960, 310, 850],
  ),
  row(
    'Port-Orford-cedar',
    'Chamaecyparis lawsoniana',
    'softwood',
    [0.39, 6600, 1300000, 3140, 300, 840],
    [0.43, 12700, 1700000, 6250, 720, 1370],
  ),
  row(
    'Yellow-cedar',
    'Callitropsis nootkatensis',
    'softwood',
    [0.42, 6400, 1140000, 3050, 350, 840],
    [0.44, 11100, 1420000, 6310, 620, 1130],
  ),
  row(
    'Incense-cedar',
    'Calocedrus decurrens',
    'softwood',
    [0.35, 6200, 840000, 3150, 370, 830],
    [0.37, 8000, 1040000, 5200, 590, 880],
  ),
  row(
    'Atlantic white-cedar',
    'Chamaecyparis thyoides',
    'softwood',
    [0.31, 4700, 750000, 2390, 240, 690],
    [0.32, 6800, 930000, 4700, 410, 800],
  ),
  row(
    'Eastern redcedar',
    'Juniperus virginiana',
    'softwood',
    [0.44, 7000, 650000, 3570, 700, 1010],
    [0.47, 8800, 880000, 6020, 920, null],
  ),
  row(
    'Redwood, old-growth',
    'Sequoia sempervirens',
    'softwood',
    [0.38, 7500, 1180000, 4200, 420, 800],
    [0.4, 10000, 1340000, 6150, 700, 940],
  ),
  row(
    'Redwood, young-growth',
    'Sequoia sempervirens',
    'softwood',
    [0.34, 5900, 960000, 3110, 270, 890],
    [0.35, 7900, 1100000, 5220, 520, 1110],
  ),
  row(
    'Baldcypress',
    'Taxodium distichum',
    'softwood',
    [0.42, 6600, 1180000, 3580, 400, 810],
    [0.46, 10600, 1440000, 6360, 730, 1000],
  ),
  row(
    'Douglas-fir, Coast',
    'Pseudotsuga menziesii',
    'softwood',
    [0.45, 7700, 1560000, 3780, 380, 900],
    [0.48, 12400, 1950000, 7230, 800, 1130],
  ),
  row(
    'Douglas-fir, Interior West',
    'Pseudotsuga menziesii',
    'softwood',
    [0.46, 7700, 1510000, 3870, 420, 940],
    [0.5, 12600, 1830000, 7430, 760, 1290],
  ),
  row(
    'Douglas-fir, Interior North',
    'Pseudotsuga menziesii',
    'softwood',
    [0.45, 7400, 1410000, 3470, 360, 950],
    [0.48, 13100, 1790000, 6900, 770, 1400],
  ),
  row(
    'Douglas-fir, Interior South',
    'Pseudotsuga menziesii',
    'softwood',
    [0.43, 6800, 1160000, 3110, 340, 950],
    [0.46, 11900, 1490000, 6230, 740, 1510],
  ),
  row(
    'Western larch',
    'Larix occidentalis',
    'softwood',
    [0.48, 7700, 1460000, 3760, 400, 870],
    [0.52, 13000, 1870000, 7620, 930, 1360],
  ),
  row(
    'Tamarack',
    'Larix laricina',
    'softwood',
    [0.49, 7200, 1240000, 3480, 390, 860],
    [0.53, 11600, 1640000, 7160, 800, 1280],
  ),
  row(
    'Lodgepole pine',
    'Pinus contorta',
    'softwood',
    [0.38, 5500, 1080000, 2610, 250, 680],
    [0.41, 9400, 1340000, 5370, 610, 880],
  ),
  row(
    'Ponderosa pine',
    'Pinus ponderosa',
    'softwood',
    [0.38, 5100, 1000000, 2450, 280, 700],
    [0.4, 9400, 1290000, 5320, 580, 1130],
  ),
  row(
    'Eastern white pine',
    'Pinus strobus',
    'softwood',
    [0.34, 4900, 990000, 2440, 220, 680],
    [0.35, 8600, 1240000, 4800, 440, 900],
  ),
  row(
    'Red pine',
    'Pinus resinosa',
    'softwood',
    [0.41, 5800, 1280000, 2730, 260, 690],
    [0.46, 11000, 1630000, 6070, 600, 1210],
  ),
  row(
    'Jack pine',
    'Pinus banksiana',
    'softwood',
    [0.4, 6000, 1070000, 2950, 300, 750],
    [0.43, 9900, 1350000, 5660, 580, 1170],
  ),
  row(
    'Loblolly pine',
    'Pinus taeda',
    'softwood',
    [0.47, 7300, 1400000, 3510, 390, 860],
    [0.51, 12800, 1790000, 7130, 790, 1390],
  ),
  row(
    'Shortleaf pine',
    'Pinus echinata',
    'softwood',
    [0.47, 7400, 1390000, 3530, 350, 910],
    [0.51, 13100, 1750000, 7270, 820, 1390],
  ),
  row(
    'Longleaf pine',
    'Pinus palustris',
    'softwood',
    [0.54, 8500, 1590000, 4320, 480, 1040],
    [0.59, 14500, 1980000, 8470, 960, 1510],
  ),
  row(
    'Slash pine',
    'Pinus elliottii',
    'softwood',
    [0.54, 8700, 1530000, 3820, 530, 960],
    [0.59, 16300, 1980000, 8140, 1020, 1680],
  ),
  row(
    'Western hemlock',
    'Tsuga heterophylla',
    'softwood',
    [0.42, 6600, 1310000, 3360, 280, 860],
    [0.45, 11300, 1630000, 7200, 550, 1290],
  ),
  row(
    'Eastern hemlock',
    'Tsuga canadensis',
    'softwood',
    [0.38, 6400, 1070000, 3080, 360, 850],
    [0.4, 8900, 1200000, 5410, 650, 1060],
  ),
  row(
    'Grand fir',
    'Abies grandis',
    'softwood',
    [0.35, 5800, 1250000, 2940, 270, 740],
    [0.37, 8900, 1570000, 5290, 500, 900],
  ),
  row(
    'White fir',
    'Abies concolor',
    'softwood',
    [0.37, 5900, 1160000, 2900, 280, 760],
    [0.39, 9800, 1500000, 5800, 530, 1100],
  ),
  row(
    'Engelmann spruce',
    'Picea engelmannii',
    'softwood',
    [0.33, 4700, 1030000, 2180, 200, 640],
    [0.35, 9300, 1300000, 4480, 410, 1200],
  ),
  row(
    'Sitka spruce',
    'Picea sitchensis',
    'softwood',
    [0.37, 5700, 1230000, 2670, 280, 760],
    [0.4, 10200, 1570000, 5610, 580, 1150],
  ),
  row(
    'White spruce',
    'Picea glauca',
    'softwood',
    [0.33, 5000, 1140000, 2350, 210, 640],
    [0.36, 9400, 1430000, 5180, 430, 970],
  ),
  row(
    'Black spruce',
    'Picea mariana',
    'softwood',
    [0.38, 6100, 1380000, 2840, 240, 740],
    [0.42, 10800, 1610000, 5960, 550, 1230],
  ),
  row(
    'Yellow-poplar',
    'Liriodendron tulipifera',
    'hardwood',
    [0.4, 6000, 1220000, 2660, 270, 790],
    [0.42, 10100, 1580000, 5540, 500, 1190],
  ),
  row(
    'White oak',
    'Quercus alba',
    'hardwood',
    [0.6, 8300, 1250000, 3560, 670, 1250],
    [0.68, 15200, 1780000, 7440, 1070, 2000],
  ),
  row(
    'Northern red oak',
    'Quercus rubra',
    'hardwood',
    [0.56, 8300, 1350000, 3440, 610, 1210],
    [0.63, 14300, 1820000, 6760, 1010, 1780],
  ),
  row(
    'Black locust',
    'Robinia pseudoacacia',
    'hardwood',
    [0.66, 13800, 1850000, 6800, 1160, 1760],
    [0.69, 19400, 2050000, 10180, 1830, 2480],
  ),
  row(
    'Balsam fir',
    'Abies balsamea',
    'softwood',
    [0.33, 5500, 1250000, 2630, 190, 660],
    [0.35, 9200, 1450000, 5280, 400, 940],
  ),
  row(
    'Subalpine fir',
    'Abies lasiocarpa',
    'softwood',
    [0.31, 4900, 1050000, 2300, 190, 700],
    [0.32, 8600, 1290000, 4860, 390, 1070],
  ),
  row(
    'Red spruce',
    'Picea rubens',
    'softwood',
    [0.37, 6000, 1330000, 2720, 260, 750],
    [0.4, 10800, 1660000, 5540, 550, 1290],
  ),
  row(
    'Western white pine',
    'Pinus monticola',
    'softwood',
    [0.35, 4700, 1190000, 2430, 190, 680],
    [0.38, 9700, 1460000, 5040, 470, 1040],
  ),
];
