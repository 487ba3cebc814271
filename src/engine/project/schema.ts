import { z } from 'zod';
import {
  coordinateIn,
  day,
  diameterIn,
  given,
  id,
  jointKeyText,
  lbs,
  lengthIn,
  longText,
  positiveIn,
  psf,
  shortText,
  side,
  stress,
} from './schema-parts.ts';

/**
 * `name.shelter.json`, formatVersion 1. Axes: x along frame lines, y across, z up from the datum mark.
 * `null` = not given yet; an optional key that is absent = there is none, or "as the group says".
 * Start of a member: beam and purlin low x; tie low y; rafter its eave end; post its foot; brace its post end.
 * Places on the shelter are x on a line, y on a tie or rafter, height above the foot on a post.
 */
const title = z.strictObject({
  id,
  name: shortText.min(1),
  parcel: shortText,
  preparedBy: shortText,
  revision: z.strictObject({ number: z.string().max(20), date: day.nullable() }),
});

const code = z.strictObject({
  loads: given(z.enum(['ASCE 7-16', 'ASCE 7-22'])),
  wood: given(z.enum(['NDS 2018', 'NDS 2024'])),
  building: given(shortText),
});

const site = z.strictObject({
  altitudeFt: given(z.number().min(-300).max(20000)),
  riskCategory: given(z.enum(['I', 'II', 'III'])),
  groundSnowPsf: given(psf),
  leastRoofSnowPsf: given(psf),
  roofLivePsf: given(psf),
  snowExposureCe: given(z.number().min(0.7).max(1.2)),
  snowThermalCt: given(z.number().min(0.85).max(1.3)),
  windMph: given(z.number().min(60).max(250)),
  exposure: given(z.enum(['B', 'C', 'D'])),
  kzt: given(z.number().min(1).max(4)),
  ke: given(z.number().min(0.5).max(1)),
  seismic: z
    .strictObject({
      sds: z.number().min(0).max(5),
      sd1: z.number().min(0).max(5),
      r: z.number().min(1).max(8),
      rGivenBy: shortText,
    })
    .nullable(),
  soil: z.strictObject({
    bearingPsf: given(z.number().positive().max(20000)),
    lateralPsfPerFt: given(z.number().positive().max(2000)),
    soilPcf: z.number().min(50).max(150),
    kind: shortText,
  }),
  frostDepthIn: given(lengthIn),
});

const surroundings = z.strictObject({
  neighbour: z
    .strictObject({
      side,
      ledgerLine: id.nullable(),
      gapFt: z.number().min(0).max(200),
      stepFt: z.number().min(0).max(100),
      upperLengthFt: z.number().min(0).max(1000),
      eaveToRidgeFt: z.number().min(0).max(500),
      upperRisePer12: z.number().min(0).max(24).nullable(),
      upperSlippery: z.boolean(),
      upperCt: z.number().min(0.85).max(1.3),
      slidesThisWay: z.boolean(),
      ableBy: z.strictObject({ name: shortText, date: day }).nullable(),
    })
    .nullable(),
  closed: z
    .array(z.strictObject({ side, share: z.number().min(0).max(1), heldBy: z.enum(['frame', 'itself']) }))
    .max(4),
  goods: z
    .strictObject({ blockedShare: z.number().min(0).max(1), heightIn: lengthIn, leansOnLines: z.array(id).max(10) })
    .nullable(),
});

const fromLog = z.strictObject({
  kind: z.literal('log'),
  logId: id,
  fromButtIn: lengthIn,
  buttAt: z.enum(['start', 'end']),
});
const sawn = z.strictObject({
  kind: z.literal('sawn'),
  breadthIn: positiveIn,
  depthIn: positiveIn,
  lay: z.enum(['edge', 'flat']),
  plies: z.number().int().min(1).max(4),
  species: shortText,
  grade: shortText.nullable(),
  use: z.enum(['wet', 'dry']),
});
const typedStock = z.strictObject({
  kind: z.literal('typed'),
  name: shortText,
  FbSIn3Psi: z.number().positive().max(1e9),
  VallowLb: z.number().positive().max(1e7),
  EIPsiIn4: z.number().positive().max(1e12),
  heavyPlf: z.number().min(0).max(500),
  lightPlf: z.number().min(0).max(500),
});
const stock = z.discriminatedUnion('kind', [fromLog, sawn, typedStock]);

const height = z.strictObject({ of: z.enum(['bearing', 'beamAxis', 'underside']), zIn: coordinateIn });
const supportLine = z.discriminatedUnion('kind', [
  z.strictObject({
    kind: z.literal('frame'),
    id,
    yIn: coordinateIn,
    height: height.nullable(),
    set: z.enum(['top', 'axis', 'underside']),
    strip: z
      .strictObject({
        stock: stock.nullable(),
        thicknessIn: lengthIn,
        shims: z.enum(['shims', 'tapered', 'seats', 'none']),
      })
      .nullable(),
  }),
  z.strictObject({
    kind: z.literal('ledger'),
    id,
    yIn: coordinateIn,
    height: height.nullable(),
    stock: stock.nullable(),
    fromXIn: coordinateIn,
    toXIn: coordinateIn,
    wallFaceYIn: coordinateIn,
    fixingSpacingIn: positiveIn.nullable(),
  }),
]);

const roofDead = z.discriminatedUnion('by', [
  z.strictObject({
    by: z.literal('parts'),
    layers: z.array(z.strictObject({ name: shortText, heavyPsf: psf, lightPsf: psf })).max(20),
  }),
  z.strictObject({
    by: z.literal('total'),
    heavyPsf: psf,
    lightPsf: psf,
    includes: z.array(z.enum(['purlins', 'rafters'])).max(2),
  }),
]);
const roofPlane = z.strictObject({
  id,
  onLines: z.array(id).min(2).max(6),
  risePer12: z.number().min(0).max(24),
  highOverhangIn: lengthIn,
  lowOverhangIn: lengthIn,
  fromXIn: coordinateIn,
  toXIn: coordinateIn,
  rafters: z.enum(['simple', 'continuous']),
  horizontalHeldBy: z.string().max(60),
  covering: z.strictObject({
    kind: shortText,
    slippery: z.boolean(),
    unobstructed: z.boolean(),
    pastRafterIn: lengthIn,
    ratedSpanIn: positiveIn.nullable(),
  }),
  sheetOn: z.enum(['purlins', 'rafters']),
  dead: roofDead,
});

const basis = z.discriminatedUnion('kind', [
  z.strictObject({ kind: z.literal('derived') }),
  z.strictObject({ kind: z.literal('poles'), ticked: z.array(shortText).max(20), by: shortText, date: day.nullable() }),
  z.strictObject({
    kind: z.literal('typed'),
    by: shortText,
    date: day.nullable(),
    published: z.enum(['wet', 'dry']),
    asPoles: z.boolean(),
    factorsHeld: z.array(shortText).max(20),
    FbPsi: stress,
    FvPsi: stress,
    FcpPsi: stress,
    FcPsi: stress,
    FtPsi: stress,
    EPsi: z.number().positive().max(5e6),
    EminPsi: z.number().positive().max(5e6),
  }),
]);
const wood = z.strictObject({
  id,
  species: shortText,
  basis,
  weight: z.discriminatedUnion('by', [
    z.strictObject({ by: z.literal('species') }),
    z.strictObject({
      by: z.literal('typed'),
      heavyPcf: z.number().positive().max(100),
      lightPcf: z.number().positive().max(100),
    }),
  ]),
});

const station = z.strictObject({
  fromButtIn: lengthIn,
  diameterIn,
  acrossIn: diameterIn.optional(),
  read: z.enum(['diameter', 'girth']).optional(),
});
/** What the eye saw on the log; `knotsInWorstFootIn` lists every knot of the worst foot of length by its width. */
const seen = z.strictObject({
  worstKnotIn: lengthIn.nullable(),
  knotsInWorstFootIn: z.array(diameterIn).max(30).optional(),
  knotAtFromButtIn: lengthIn.optional(),
  grainSlope1In: z.number().positive().max(200).nullable(),
  spiral: z.enum(['none', 'left', 'right']).nullable(),
  checks: shortText,
  throughCheckAtEnd: z.boolean().optional(),
  straightIn: lengthIn.nullable(),
  by: shortText,
  date: day.nullable(),
});
const log = z.strictObject({
  id,
  woodId: id,
  stands: z.enum(['pattern', 'log']),
  pieceId: id.optional(),
  how: z.enum(['assumed', 'predicted', 'measured']),
  errorIn: z.number().min(0).max(6),
  bark: z.enum(['on', 'off']),
  barkIn: z.number().min(0).max(6).optional(),
  stations: z.array(station).min(2).max(40),
  seen: seen.nullable(),
  crownIn: z.number().min(0).max(24),
  trim: z.strictObject({ buttIn: lengthIn, tipIn: lengthIn }).optional(),
});

const fixedness = z.union([
  z.enum(['pinned', 'fixed']),
  z.strictObject({ lbInPerRad: z.number().positive().max(1e12) }),
]);
const fixity = z.strictObject({ along: fixedness, across: fixedness });
const foot = z.discriminatedUnion('kind', [
  z.strictObject({
    kind: z.literal('pier'),
    standOffIn: lengthIn,
    hardware: shortText.nullable(),
    shaft: z.strictObject({ shape: z.enum(['round', 'square']), acrossIn: positiveIn, lengthIn }),
    pad: z.strictObject({ acrossIn: positiveIn, thickIn: positiveIn, tied: z.boolean() }).nullable(),
    concretePcf: z.number().min(80).max(200),
    fixity,
  }),
  z.strictObject({
    kind: z.literal('embedded'),
    depthIn: positiveIn,
    holeIn: positiveIn,
    backfill: z.enum(['concrete', 'soil', 'gravel']),
    treatment: shortText.nullable(),
    fixedBelowGradeIn: lengthIn,
    fixity,
  }),
]);
const seat = z.strictObject({
  kind: z.enum(['flat', 'dap', 'saddle']),
  depthIn: lengthIn,
  lengthIn: positiveIn.nullable(),
});
const braceEnd = z.strictObject({ kind: z.enum(['housed', 'coped', 'flat']), depthIn: lengthIn });

const traits = {
  beam: { stock: stock.nullable(), crownTo: z.enum(['up', 'down', 'side']), topFlatIn: lengthIn, seat },
  post: { stock: stock.nullable(), foot, capIn: lengthIn, allowanceIn: lengthIn },
  brace: {
    stock: stock.nullable(),
    runIn: positiveIn,
    dropIn: positiveIn,
    ends: z.strictObject({ post: braceEnd, top: braceEnd }),
  },
  rafter: { stock: stock.nullable(), seatCutIn: lengthIn, tailEnd: z.enum(['plumb', 'square']), blocked: z.boolean() },
  purlin: { stock: stock.nullable() },
  tie: { stock: stock.nullable(), downIn: lengthIn, ends: z.enum(['between', 'beside']) },
};
const groupOf = <R extends keyof typeof traits>(role: R) =>
  z.strictObject({ id, role: z.literal(role), ...traits[role] });
const group = z.discriminatedUnion('role', [
  groupOf('beam'),
  groupOf('post'),
  groupOf('brace'),
  groupOf('rafter'),
  groupOf('purlin'),
  groupOf('tie'),
]);

const own = <R extends keyof typeof traits>(role: R) => z.strictObject(traits[role]).partial().optional();
const member = z.discriminatedUnion('role', [
  z.strictObject({
    id,
    role: z.literal('beam'),
    group: id,
    own: own('beam'),
    line: id,
    fromXIn: coordinateIn,
    toXIn: coordinateIn,
  }),
  z.strictObject({
    id,
    role: z.literal('post'),
    group: id,
    own: own('post'),
    line: id,
    xIn: coordinateIn,
    pierTopZIn: coordinateIn.nullable(),
    gradeZIn: coordinateIn,
  }),
  z.strictObject({
    id,
    role: z.literal('brace'),
    group: id,
    own: own('brace'),
    post: id,
    to: id,
    side: z.enum(['plus', 'minus']),
  }),
  z.strictObject({ id, role: z.literal('rafter'), group: id, own: own('rafter'), plane: id, xIn: coordinateIn }),
  z.strictObject({ id, role: z.literal('purlin'), group: id, own: own('purlin'), plane: id, upSlopeIn: lengthIn }),
  z.strictObject({
    id,
    role: z.literal('tie'),
    group: id,
    own: own('tie'),
    fromPost: id,
    toPost: id,
    pastFromIn: lengthIn,
    pastToIn: lengthIn,
  }),
]);

const jointKind = z.enum([
  'sheetPurlin',
  'sheetRafter',
  'purlinRafter',
  'rafterStrip',
  'rafterLedger',
  'stripBeam',
  'beamPost',
  'beamSplice',
  'braceTop',
  'bracePost',
  'tiePost',
  'postFoot',
  'ledgerWall',
  'rafterRafter',
]);
const fastenerRow = z.strictObject({
  fastener: z.enum(['lag', 'bolt', 'spike', 'screw', 'nail', 'strap', 'driftPin']),
  diameterIn: z.number().positive().max(2),
  lengthIn: positiveIn,
  count: z.number().int().min(1).max(100),
  rows: z.number().int().min(1).max(20),
  spacingIn: positiveIn.nullable(),
  endIn: positiveIn.nullable(),
  washerIn: positiveIn.optional(),
  acts: z.enum(['lateral', 'withdrawal', 'both']),
  driven: z.enum(['wet', 'dry']),
});
/** `null` = nobody said; `none` = nothing but contact, said. */
const capacity = z
  .discriminatedUnion('kind', [
    z.strictObject({ kind: z.literal('none') }),
    z.strictObject({
      kind: z.literal('rated'),
      label: shortText,
      parts: z.strictObject({
        pushLb: lbs.nullable(),
        pullLb: lbs.nullable(),
        alongLb: lbs.nullable(),
        acrossLb: lbs.nullable(),
      }),
      durationIncluded: z.number().min(0.9).max(2),
    }),
    z.strictObject({ kind: z.literal('fasteners'), rows: z.array(fastenerRow).max(10), shoulder: z.boolean() }),
  ])
  .nullable();
const joints = z.strictObject({
  defaults: z.array(z.strictObject({ kind: jointKind, capacity })).max(20),
  own: z.array(z.strictObject({ key: jointKeyText, capacity })).max(300),
});

const cut = z.strictObject({
  id,
  member: id,
  kind: z.enum(['flat', 'dap', 'notch', 'housing']),
  centreIn: coordinateIn,
  lengthIn: positiveIn,
  depthIn: positiveIn,
  angleDeg: z.number().min(-360).max(360),
  by: z.enum(['hand', 'override']),
  joint: z.string().max(200).optional(),
});

const lateral = z.strictObject({
  by: z.enum(['kneeBraces', 'embeddedPosts', 'transverseFrame', 'building', 'ratedWalls', 'none']).nullable(),
  lines: z.array(id).max(10).optional(),
  posts: z.array(id).max(20).optional(),
  ratedLb: lbs.nullable().optional(),
  givenBy: shortText.optional(),
});

const ownLoad = z.strictObject({
  id,
  name: shortText,
  kind: z.enum(['dead', 'live', 'snow', 'wind']),
  duration: z.enum(['permanent', 'tenYears', 'twoMonths', 'sevenDays', 'tenMinutes']),
  removable: z.boolean(),
  direction: z.enum(['down', 'up', 'xPlus', 'xMinus', 'yPlus', 'yMinus']),
  where: z.discriminatedUnion('on', [
    z.strictObject({ on: z.literal('line'), line: id, xIn: coordinateIn, lb: lbs }),
    z.strictObject({
      on: z.literal('stretch'),
      line: id,
      fromXIn: coordinateIn,
      toXIn: coordinateIn,
      plf: z.number().min(0).max(10000),
    }),
    z.strictObject({ on: z.literal('member'), member: id, atIn: coordinateIn, lb: lbs }),
    z.strictObject({
      on: z.literal('plane'),
      plane: id,
      fromXIn: coordinateIn,
      toXIn: coordinateIn,
      fromYIn: coordinateIn,
      toYIn: coordinateIn,
      psf,
    }),
  ]),
});

export const INSTEAD = [
  'meanRoofHeightFt',
  'swayAreaFt2',
  'swayPsf',
  'stripHeavyPlf',
  'stripLightPlf',
  'effectiveLengthAlongIn',
  'effectiveLengthAcrossIn',
  'columnTaperA',
  'columnC',
  'seatAreaIn2',
  'pierWeightLb',
  'roofLiveReducedPsf',
  'braceWeightPlf',
  'gustFactor',
  'kd',
  'acrossDragLb',
  'acrossMinAreaFt2',
] as const;
const instead = z.strictObject({
  what: z.enum(INSTEAD),
  of: id.nullable(),
  value: z.number().min(0).max(1e7),
  why: longText.min(1),
});

const asBuilt = z.strictObject({
  pierTops: z.array(z.strictObject({ post: id, zIn: coordinateIn, date: day })).max(100),
  pours: z.array(z.strictObject({ post: id, date: day, coldUntil: day.optional() })).max(100),
  cutLengths: z.array(z.strictObject({ member: id, lengthIn, date: day })).max(500),
  peeled: z
    .array(z.strictObject({ log: id, stations: z.array(station).min(2).max(40), date: day, by: shortText }))
    .max(100),
  cutsMade: z
    .array(
      z.strictObject({
        log: id,
        kind: z.enum(['flat', 'dap', 'notch', 'housing']),
        fromButtIn: lengthIn,
        lengthIn: positiveIn,
        depthIn: positiveIn,
        angleDeg: z.number().min(-360).max(360),
        date: day,
      }),
    )
    .max(300),
  visits: z
    .array(
      z.strictObject({
        date: day,
        by: shortText,
        found: z
          .array(
            z.strictObject({ member: id, atIn: coordinateIn, soundDiameterIn: diameterIn.nullable(), note: longText }),
          )
          .max(100),
      }),
    )
    .max(200),
});

export const projectSchema = z.strictObject({
  formatVersion: z.literal(1),
  title,
  code,
  site,
  surroundings,
  supportLines: z.array(supportLine).min(1).max(6),
  roofPlanes: z.array(roofPlane).min(1).max(4),
  woods: z.array(wood).max(20),
  logs: z.array(log).max(200),
  groups: z.array(group).max(60),
  members: z.array(member).max(400),
  joints,
  cuts: z.array(cut).max(300),
  lateral: z.strictObject({ along: z.array(lateral).max(10), across: z.array(lateral).max(10) }),
  ownLoads: z.array(ownLoad).max(50),
  instead: z.array(instead).max(100),
  calculation: z.strictObject({
    kcr: z.number().min(1).max(3),
    kz: z.enum(['formula', 'table']),
    soilAboveCountsInUplift: z.boolean(),
    doubledLateralSoil: z.boolean(),
  }),
  asBuilt,
  trees: z.array(z.unknown()).max(2000),
  pieces: z.array(z.unknown()).max(2000),
  notYetYours: z.array(z.string().max(200)).max(500),
  extras: z.record(z.string(), z.unknown()),
});
