import type { Cited } from './cited.ts';

// What is told of a species and decides nothing: it comes with the sentences about a log.

/** A species by its scientific name, and its clear wood at 12 % moisture. */
export interface DryWood extends Cited {
  readonly name: string;
  readonly scientificName: string;
  readonly specificGravity: number;
  readonly bendingPsi: number;
  readonly stiffnessPsi: number;
  readonly compressionAlongPsi: number;
  /** stress at the proportional limit */
  readonly compressionAcrossPsi: number;
  /** null where the table prints none */
  readonly shearPsi: number | null;
}

type Printed = readonly [
  specificGravity: number,
  bending: number,
  stiffness: number,
  compressionAlong: number,
  compressionAcross: number,
  shear: number | null,
];

const row = (
  name: string,
  scientificName: string,
  [g, bending, stiffness, along, across, shear]: Printed,
): DryWood => ({
  name,
  scientificName,
  specificGravity: g,
  bendingPsi: bending,
  stiffnessPsi: stiffness,
  compressionAlongPsi: along,
  compressionAcrossPsi: across,
  shearPsi: shear,
  source: 'WOOD_HANDBOOK',
  where: 'Table 5-3b',
  seen: 'public copy',
});

/**
 * Clear-wood means at 12 %, columns as in CLEAR_WOOD. Two printings disagree here for western hemlock, white spruce and
 * Engelmann spruce; the inch-pound one stands.
 * @source WOOD_HANDBOOK Table 5-3b (2021)
 */
export const DRY_WOOD: readonly DryWood[] = [
  row('Western redcedar', 'Thuja plicata', [0.32, 7500, 1110000, 4560, 460, 990]),
  row('Northern white-cedar', 'Thuja occidentalis', [0.31, 6500, 800000, 3960, 310, 850]),
  row('Port-Orford-cedar', 'Chamaecyparis lawsoniana', [0.43, 12700, 1700000, 6250, 720, 1370]),
  row('Yellow-cedar', 'Callitropsis nootkatensis', [0.44, 11100, 1420000, 6310, 620, 1130]),
  row('Incense-cedar', 'Calocedrus decurrens', [0.37, 8000, 1040000, 5200, 590, 880]),
  row('Atlantic white-cedar', 'Chamaecyparis thyoides', [0.32, 6800, 930000, 4700, 410, 800]),
  row('Eastern redcedar', 'Juniperus virginiana', [0.47, 8800, 880000, 6020, 920, null]),
  row('Redwood, old-growth', 'Sequoia sempervirens', [0.4, 10000, 1340000, 6150, 700, 940]),
  row('Redwood, young-growth', 'Sequoia sempervirens', [0.35, 7900, 1100000, 5220, 520, 1110]),
  row('Baldcypress', 'Taxodium distichum', [0.46, 10600, 1440000, 6360, 730, 1000]),
  row('Douglas-fir, Coast', 'Pseudotsuga menziesii', [0.48, 12400, 1950000, 7230, 800, 1130]),
  row('Douglas-fir, Interior West', 'Pseudotsuga menziesii', [0.5, 12600, 1830000, 7430, 760, 1290]),
  row('Douglas-fir, Interior North', 'Pseudotsuga menziesii', [0.48, 13100, 1790000, 6900, 770, 1400]),
  row('Douglas-fir, Interior South', 'Pseudotsuga menziesii', [0.46, 11900, 1490000, 6230, 740, 1510]),
  row('Western larch', 'Larix occidentalis', [0.52, 13000, 1870000, 7620, 930, 1360]),
  row('Tamarack', 'Larix laricina', [0.53, 11600, 1640000, 7160, 800, 1280]),
  row('Lodgepole pine', 'Pinus contorta', [0.41, 9400, 1340000, 5370, 610, 880]),
  row('Ponderosa pine', 'Pinus ponderosa', [0.4, 9400, 1290000, 5320, 580, 1130]),
  row('Eastern white pine', 'Pinus strobus', [0.35, 8600, 1240000, 4800, 440, 900]),
  row('Red pine', 'Pinus resinosa', [0.46, 11000, 1630000, 6070, 600, 1210]),
  row('Jack pine', 'Pinus banksiana', [0.43, 9900, 1350000, 5660, 580, 1170]),
  row('Loblolly pine', 'Pinus taeda', [0.51, 12800, 1790000, 7130, 790, 1390]),
  row('Shortleaf pine', 'Pinus echinata', [0.51, 13100, 1750000, 7270, 820, 1390]),
  row('Longleaf pine', 'Pinus palustris', [0.59, 14500, 1980000, 8470, 960, 1510]),
  row('Slash pine', 'Pinus elliottii', [0.59, 16300, 1980000, 8140, 1020, 1680]),
  row('Western hemlock', 'Tsuga heterophylla', [0.45, 11300, 1630000, 7200, 550, 1290]),
  row('Eastern hemlock', 'Tsuga canadensis', [0.4, 8900, 1200000, 5410, 650, 1060]),
  row('Grand fir', 'Abies grandis', [0.37, 8900, 1570000, 5290, 500, 900]),
  row('White fir', 'Abies concolor', [0.39, 9800, 1500000, 5800, 530, 1100]),
  row('Engelmann spruce', 'Picea engelmannii', [0.35, 9300, 1300000, 4480, 410, 1200]),
  row('Sitka spruce', 'Picea sitchensis', [0.4, 10200, 1570000, 5610, 580, 1150]),
  row('White spruce', 'Picea glauca', [0.36, 9400, 1430000, 5180, 430, 970]),
  row('Black spruce', 'Picea mariana', [0.42, 10800, 1610000, 5960, 550, 1230]),
  row('Yellow-poplar', 'Liriodendron tulipifera', [0.42, 10100, 1580000, 5540, 500, 1190]),
  row('White oak', 'Quercus alba', [0.68, 15200, 1780000, 7440, 1070, 2000]),
  row('Northern red oak', 'Quercus rubra', [0.63, 14300, 1820000, 6760, 1010, 1780]),
  row('Black locust', 'Robinia pseudoacacia', [0.69, 19400, 2050000, 10180, 1830, 2480]),
  row('Balsam fir', 'Abies balsamea', [0.35, 9200, 1450000, 5280, 400, 940]),
  row('Subalpine fir', 'Abies lasiocarpa', [0.32, 8600, 1290000, 4860, 390, 1070]),
  row('Red spruce', 'Picea rubens', [0.4, 10800, 1660000, 5540, 550, 1290]),
  row('Western white pine', 'Pinus monticola', [0.38, 9700, 1460000, 5040, 470, 1040]),
];
