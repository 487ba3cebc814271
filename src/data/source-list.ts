import type { Seen } from './sources.ts';

export interface Source {
  readonly title: string;
  readonly edition: string;
  readonly publisher: string;
  readonly seen: Seen;
}

/** Every document that a number of the workbench comes from. `seen` says how it was read. */
export const SOURCES = {
  ASCE7: {
    title: 'Minimum Design Loads and Associated Criteria for Buildings and Other Structures (ASCE/SEI 7)',
    edition: '7-16',
    publisher: 'ASCE',
    seen: 'public copy',
  },
  ASCE7_10: {
    title: 'Minimum Design Loads for Buildings and Other Structures (ASCE/SEI 7)',
    edition: '7-10',
    publisher: 'ASCE',
    seen: 'public copy',
  },
  ASCE7_22: {
    title: 'Minimum Design Loads and Associated Criteria for Buildings and Other Structures (ASCE/SEI 7)',
    edition: '7-22',
    publisher: 'ASCE',
    seen: 'public copy',
  },
  ASCE37: {
    title: 'Design Loads on Structures during Construction (ASCE/SEI 37)',
    edition: '37-14',
    publisher: 'ASCE',
    seen: 'memory',
  },
  BNBC: {
    title: 'Bangladesh National Building Code, Part 6 Chapter 2 (after ASCE 7-05)',
    edition: '2020',
    publisher: 'HBRI',
    seen: 'public copy',
  },
  NDS: {
    title: 'National Design Specification for Wood Construction',
    edition: '2018',
    publisher: 'AWC',
    seen: 'memory',
  },
  NDS_SUPPLEMENT: {
    title: 'NDS Supplement: Design Values for Wood Construction',
    edition: '2018',
    publisher: 'AWC',
    seen: 'memory',
  },
  NDS_COMMENTARY: {
    title: 'Commentary on the National Design Specification for Wood Construction',
    edition: '2018',
    publisher: 'AWC',
    seen: 'memory',
  },
  TR12: {
    title: 'General Dowel Equations for Calculating Lateral Connection Values (Technical Report 12)',
    edition: '2015',
    publisher: 'AWC',
    seen: 'memory',
  },
  A36: { title: 'ASTM A36 Carbon Structural Steel', edition: '2019', publisher: 'ASTM', seen: 'memory' },
  A307: {
    title: 'ASTM A307 Carbon Steel Bolts, Studs, and Threaded Rod, 60,000 psi Tensile Strength',
    edition: '2021',
    publisher: 'ASTM',
    seen: 'memory',
  },
  A653: {
    title: 'ASTM A653 Steel Sheet, Zinc-Coated (Galvanized) or Zinc-Iron Alloy-Coated by the Hot-Dip Process',
    edition: '2020',
    publisher: 'ASTM',
    seen: 'memory',
  },
  WOOD_HANDBOOK: {
    title: 'Wood Handbook: Wood as an Engineering Material (FPL-GTR-282)',
    edition: '2021',
    publisher: 'USDA Forest Products Laboratory',
    seen: 'public copy',
  },
  WOOD_HANDBOOK_2010: {
    title: 'Wood Handbook: Wood as an Engineering Material (FPL-GTR-190)',
    edition: '2010',
    publisher: 'USDA Forest Products Laboratory',
    seen: 'public copy',
  },
  D245: {
    title: 'ASTM D245 Establishing Structural Grades and Related Allowable Properties for Visually Graded Lumber',
    edition: '2006',
    publisher: 'ASTM',
    seen: 'memory',
  },
  D2555: {
    title: 'ASTM D2555 Establishing Clear Wood Strength Values',
    edition: '2006',
    publisher: 'ASTM',
    seen: 'public copy',
  },
  D2899: {
    title: 'ASTM D2899 Allowable Stresses for Round Timber Piles',
    edition: '2003',
    publisher: 'ASTM',
    seen: 'public copy',
  },
  D25: { title: 'ASTM D25 Round Timber Piles', edition: '1999', publisher: 'ASTM', seen: 'public copy' },
  IOWA_DOT: {
    title: 'Standard Specifications, section 4165: timber piles (after ASTM D25)',
    edition: 'as in force when read',
    publisher: 'Iowa Department of Transportation',
    seen: 'public copy',
  },
  MO312: {
    title: 'Wood Protection (MO-312), Table 2-1: heartwood by decay resistance',
    edition: 'not dated in the copy',
    publisher: 'Naval Facilities Engineering Command',
    seen: 'public copy',
  },
  TREE_WEIGHTS: {
    title: 'Specific Gravity and Other Properties of Wood and Bark for 156 Tree Species (Research Note NRS-38)',
    edition: '2009',
    publisher: 'USDA Forest Service',
    seen: 'public copy',
  },
  IBC: { title: 'International Building Code', edition: '2018', publisher: 'ICC', seen: 'public copy' },
  IRC: { title: 'International Residential Code', edition: '2018', publisher: 'ICC', seen: 'public copy' },
  IBC_2000: { title: 'International Building Code', edition: '2000', publisher: 'ICC', seen: 'public copy' },
  KIDDER: {
    title: 'Building Construction and Superintendence, Table IV: weights of roof surfaces',
    edition: 'not dated in the copy',
    publisher: 'F. E. Kidder',
    seen: 'public copy',
  },
  LEET: {
    title: 'Fundamentals of Structural Analysis',
    edition: '5th',
    publisher: 'Leet, Uang, Lanning, Gilbert',
    seen: 'public copy',
  },
  PERMIT_RECORD: {
    title: 'Roof weights and live load printed in a building permit record (Santa Ana, record 4854, p. 9)',
    edition: 'after ASCE 7-05',
    publisher: 'City of Santa Ana',
    seen: 'public copy',
  },
  AISI: {
    title: 'North American Specification for the Design of Cold-Formed Steel Structural Members (S100)',
    edition: '2016',
    publisher: 'AISI',
    seen: 'memory',
  },
  ASME_B18: {
    title:
      'Square, Hex, Heavy Hex, and Askew Head Bolts and Hex, Heavy Hex, Hex Flange, Lobed Head, and Lag Screws (B18.2.1)',
    edition: '2012',
    publisher: 'ASME',
    seen: 'public copy',
  },
  F1667: {
    title: 'ASTM F1667 Driven Fasteners: Nails, Spikes, and Staples',
    edition: '2015',
    publisher: 'ASTM',
    seen: 'memory',
  },
  MECHANICS: {
    title: 'Closed-form mechanics, derived in the tests',
    edition: '-',
    publisher: 'this project',
    seen: 'own',
  },
  OWN: {
    title: 'Own rule of this workbench, stated in DEVELOPERS.md',
    edition: '-',
    publisher: 'this project',
    seen: 'own',
  },
} as const satisfies Record<string, Source>;
