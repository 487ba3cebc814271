import * as fc from 'fast-check';
import { POLE_ITEMS } from '../../src/data/wood/pole-items.ts';
import type { Capacity, Given, Log, OwnLoad, Project, Seen, Site, Stock } from '../../src/engine/project/model.ts';

/** Arbitraries of the parts that do not depend on where the shelter stands. */
type Maker<T> = fc.Arbitrary<T>;

/** Empty, ordinary, as long as allowed in words, and as long as allowed in one unbroken word. */
const textUpTo = (most: number, least = 0): Maker<string> =>
  fc.constantFrom(
    ...['', 'of the owner', 'Widest words make long lines '.repeat(20).slice(0, most), 'W'.repeat(most)].filter(
      (text) => text.length >= least && text.length <= most,
    ),
  );
const shortText = textUpTo(120);
const longText = textUpTo(400, 1);

/** A number to a sixteenth, as a builder would type it. */
export const sixteenths = (least: number, most: number): Maker<number> =>
  fc.integer({ min: Math.ceil(least * 16), max: Math.floor(most * 16) }).map((n) => n / 16);

const day = fc.constantFrom('2026-03-02', '2024-02-29', '2026-12-31');
const dayOrNone = fc.option(day);

const given = <T>(value: Maker<T>): Maker<Given<T>> =>
  fc
    .tuple(
      fc.option(value, { freq: 8 }),
      fc.constantFrom('department', 'map', 'owner', 'guess'),
      dayOrNone,
      fc.option(shortText),
    )
    .map(([known, givenBy, date, from]) => ({ value: known, givenBy, date, ...(from === null ? {} : { from }) }));

export const randomSite: Maker<Site> = fc.record({
  altitudeFt: given(sixteenths(0, 9000)),
  riskCategory: given(fc.constantFrom('I', 'II', 'III')),
  groundSnowPsf: given(sixteenths(0, 200)),
  leastRoofSnowPsf: given(sixteenths(0, 60)),
  roofLivePsf: given(sixteenths(12, 40)),
  snowExposureCe: given(fc.constantFrom(0.7, 0.9, 1, 1.2)),
  snowThermalCt: given(fc.constantFrom(1, 1.2, 1.3)),
  windMph: given(sixteenths(85, 180)),
  exposure: given(fc.constantFrom('B', 'C', 'D')),
  kzt: given(fc.constantFrom(1, 1.4)),
  ke: given(fc.constantFrom(1, 0.9)),
  seismic: fc.option(
    fc.record({ sds: sixteenths(0, 2), sd1: sixteenths(0, 1), r: fc.constant(1.5), rGivenBy: shortText }),
    { freq: 1 },
  ),
  soil: fc.record({
    bearingPsf: given(sixteenths(800, 5000)),
    lateralPsfPerFt: given(sixteenths(50, 400)),
    soilPcf: sixteenths(90, 130),
    kind: shortText,
  }),
  frostDepthIn: given(sixteenths(0, 72)),
});

const side = fc.constantFrom('xMinus', 'xPlus', 'yMinus', 'yPlus');
export const randomWalls: Maker<Project['surroundings']['closed']> = fc.uniqueArray(
  fc.record({ side, share: fc.constantFrom(0, 0.25, 1), heldBy: fc.constantFrom('frame', 'itself') }),
  { selector: (wall) => wall.side, maxLength: 3 },
);

/** Listed sizes; a strap has none of its own. */
const SHANKS = [
  ['lag', 0.25],
  ['lag', 0.5],
  ['bolt', 0.625],
  ['spike', 0.283],
  ['screw', 0.19],
  ['nail', 0.162],
  ['strap', 0.125],
  ['driftPin', 0.75],
] as const;

export const randomCapacity: Maker<Capacity> = fc.oneof(
  fc.constant(null),
  fc.constant({ kind: 'none' } as const),
  fc.record({
    kind: fc.constant('rated'),
    label: shortText,
    parts: fc.record({
      pushLb: fc.option(sixteenths(0, 9000)),
      pullLb: fc.option(sixteenths(0, 9000)),
      alongLb: fc.option(sixteenths(0, 9000)),
      acrossLb: fc.option(sixteenths(0, 9000)),
    }),
    durationIncluded: fc.constantFrom(1, 1.15, 1.6),
  }),
  fc.record({
    kind: fc.constant('fasteners'),
    shoulder: fc.boolean(),
    rows: fc.array(
      fc
        .tuple(
          fc.constantFrom(...SHANKS),
          fc.record(
            {
              lengthIn: sixteenths(2, 14),
              count: fc.integer({ min: 1, max: 8 }),
              rows: fc.integer({ min: 1, max: 2 }),
              spacingIn: fc.option(sixteenths(1, 24)),
              endIn: fc.option(sixteenths(1, 8)),
              acts: fc.constantFrom('lateral', 'withdrawal', 'both'),
              driven: fc.constantFrom('wet', 'dry'),
              washerIn: sixteenths(1, 3),
              headFlatIn: sixteenths(0, 1),
              plate: fc.record({
                thicknessIn: fc.constantFrom(0.0142, 0.05, 0.1875),
                widthIn: fc.option(sixteenths(1.5, 4)),
                steel: fc.constantFrom('plate', 'strap'),
                each: fc.constantFrom(1, 2),
              }),
            },
            { requiredKeys: ['lengthIn', 'count', 'rows', 'spacingIn', 'endIn', 'acts', 'driven'] },
          ),
        )
        .map(([[fastener, diameterIn], row]) => ({ ...row, fastener, diameterIn })),
      { maxLength: 3 },
    ),
  }),
);

const seen: Maker<Seen> = fc.record({
  worstKnotIn: fc.option(sixteenths(0, 3)),
  knotsInWorstFootIn: fc.array(sixteenths(0.25, 3), { maxLength: 6 }),
  grainSlope1In: fc.option(sixteenths(4, 40)),
  spiral: fc.option(fc.constantFrom('none', 'left', 'right')),
  checks: shortText,
  throughCheckAtEnd: fc.boolean(),
  straightIn: fc.option(sixteenths(0, 3)),
  by: shortText,
  date: dayOrNone,
});

/** A log of a length, its butt between two diameters, tapering to three quarters of it at most. */
export const randomLog = (
  id: string,
  woodId: string,
  stands: Log['stands'],
  lengthIn: number,
  [thinIn, thickIn]: readonly [number, number],
): Maker<Log> =>
  fc
    .record({
      buttIn: sixteenths(thinIn, thickIn),
      tipShare: fc.constantFrom(0.75, 0.9, 1),
      middle: fc.boolean(),
      how: fc.constantFrom('assumed', 'predicted', 'measured'),
      errorIn: sixteenths(0, 1),
      bark: fc.constantFrom('on', 'off'),
      seen: fc.option(seen),
      crownIn: sixteenths(0, 1),
    })
    .map(({ buttIn, tipShare, middle, bark, ...rest }) => ({
      id,
      woodId,
      stands,
      ...rest,
      bark,
      ...(bark === 'on' ? { barkIn: 0.25 } : {}),
      stations: [
        { fromButtIn: 0, diameterIn: buttIn },
        ...(middle
          ? [{ fromButtIn: lengthIn / 2, diameterIn: (buttIn * (1 + tipShare)) / 2, acrossIn: buttIn * tipShare }]
          : []),
        { fromButtIn: lengthIn, diameterIn: buttIn * tipShare },
      ],
    }));

export const randomWood = (id: string): Maker<Project['woods'][number]> =>
  fc.record({
    id: fc.constant(id),
    species: fc.constantFrom('Western larch', 'Lodgepole pine', 'White oak', 'Balsam fir', 'W'.repeat(120)),
    basis: fc.oneof(
      fc.constant({ kind: 'derived' } as const),
      fc.record({
        kind: fc.constant('poles'),
        ticked: fc.subarray([...POLE_ITEMS]),
        by: shortText,
        date: dayOrNone,
      }),
      fc.record({
        kind: fc.constant('typed'),
        by: shortText,
        date: dayOrNone,
        published: fc.constantFrom('wet', 'dry'),
        asPoles: fc.boolean(),
        factorsHeld: fc.array(shortText, { maxLength: 3 }),
        FbPsi: sixteenths(600, 2400),
        FvPsi: sixteenths(60, 200),
        FcpPsi: sixteenths(200, 700),
        FcPsi: sixteenths(500, 1500),
        FtPsi: sixteenths(300, 1200),
        EPsi: sixteenths(900_000, 1_900_000),
        EminPsi: sixteenths(300_000, 800_000),
      }),
    ),
    weight: fc.constantFrom(
      { by: 'species' } as const,
      { by: 'typed', heavyPcf: 60, lightPcf: 36 } as const,
      { by: 'typed', heavyPcf: 45, lightPcf: 45 } as const,
    ),
  });

const sawn = (breadthIn: readonly [number, number], depthIn: readonly [number, number]): Maker<Stock> =>
  fc.record({
    kind: fc.constant('sawn'),
    breadthIn: sixteenths(...breadthIn),
    depthIn: sixteenths(...depthIn),
    lay: fc.constantFrom('edge', 'flat'),
    plies: fc.constantFrom(1, 2),
    species: fc.constantFrom('Western larch', 'Lodgepole pine', 'W'.repeat(120)),
    grade: fc.constantFrom(null, 'No. 2', 'Select Structural', 'W'.repeat(120)),
    use: fc.constantFrom('wet', 'dry'),
  });
const typed: Maker<Stock> = fc.record({
  kind: fc.constant('typed'),
  name: shortText,
  FbSIn3Psi: sixteenths(20_000, 900_000),
  VallowLb: sixteenths(900, 20_000),
  EIPsiIn4: sixteenths(1_000_000, 900_000_000),
  heavyPlf: sixteenths(8, 40),
  lightPlf: sixteenths(0, 8),
});

/** Any stock that is not a log of the file, or not given. */
export const stockWithoutLog = (
  breadthIn: readonly [number, number],
  depthIn: readonly [number, number],
): Maker<Stock | null> => fc.oneof(sawn(breadthIn, depthIn), typed, fc.constant(null));

export const randomTitle: Maker<Project['title']> = fc.record({
  id: fc.constant('project'),
  name: textUpTo(120, 1),
  parcel: shortText,
  preparedBy: shortText,
  revision: fc.record({ number: textUpTo(20), date: dayOrNone }),
});

export const randomCode: Maker<Project['code']> = fc.record({
  loads: given(fc.constantFrom('ASCE 7-16', 'ASCE 7-22')),
  wood: given(fc.constantFrom('NDS 2018', 'NDS 2024')),
  building: given(shortText),
});

export const randomCalculation: Maker<Project['calculation']> = fc.record({
  kcr: fc.constantFrom(1.5, 2),
  kz: fc.constantFrom('formula', 'table'),
  soilAboveCountsInUplift: fc.boolean(),
  doubledLateralSoil: fc.boolean(),
});

export const randomLoadKind: Maker<Omit<OwnLoad, 'id' | 'where'>> = fc.record({
  name: shortText,
  kind: fc.constantFrom('dead', 'live', 'snow', 'wind'),
  duration: fc.constantFrom('permanent', 'tenYears', 'twoMonths', 'sevenDays', 'tenMinutes'),
  removable: fc.boolean(),
  direction: fc.constantFrom('down', 'up', 'xPlus', 'xMinus', 'yPlus', 'yMinus'),
});

export const randomInstead: Maker<Project['instead']> = fc.uniqueArray(
  fc.record({
    what: fc.constantFrom('gustFactor', 'kd', 'swayPsf', 'stripHeavyPlf', 'roofLiveReducedPsf'),
    of: fc.constant(null),
    value: fc.constantFrom(0.5, 0.85, 1),
    why: longText,
  }),
  { selector: ({ what }) => what, maxLength: 3 },
);
