import type { BraceEnd, Foot, Log, Member, Project, Stock } from '../../src/engine/project/model.ts';
import { emptyParts } from '../../src/engine/project/templates/parts.ts';

/** What the tests vary on an otherwise plain shed: lines of posts under one slope, every figure typed. */
export interface Measures {
  /** one frame line each, from the high one down; the plane rests on all of them */
  readonly lineYsIn: readonly number[];
  readonly risePer12: number;
  readonly overhangsIn: readonly [high: number, low: number];
  readonly bearing: { readonly line: number; readonly of: 'bearing' | 'beamAxis' | 'underside'; readonly zIn: number };
  readonly set: 'top' | 'axis' | 'underside';
  readonly stripIn: number;
  readonly postXsIn: readonly number[];
  /** level of the concrete under each post of a line */
  readonly pierTopsIn: readonly number[];
  readonly standOffIn: number;
  readonly capIn: number;
  readonly allowanceIn: number;
  /** ends of the beam pieces of a line */
  readonly beamEndsIn: readonly number[];
  readonly beamDiametersIn: readonly [butt: number, tip: number];
  readonly beamButtAt: 'start' | 'end';
  readonly crownIn: number;
  readonly crownTo: 'up' | 'down' | 'side';
  readonly topFlatIn: number;
  readonly seatIn: number;
  readonly seatLengthIn: number | null;
  readonly postDiametersIn: readonly [butt: number, tip: number];
  readonly braceDiametersIn: readonly [butt: number, tip: number];
  /** which posts (by number) carry a brace and toward which side */
  readonly bracesAt: readonly (readonly [post: number, side: 'plus' | 'minus'])[];
  readonly runIn: number;
  readonly dropIn: number;
  readonly braceEnd: BraceEnd;
  readonly fixity: Foot['fixity']['along'];
  readonly pad: { readonly acrossIn: number; readonly thickIn: number; readonly tied: boolean } | null;
  readonly rafterXsIn: readonly number[];
  readonly rafters: 'simple' | 'continuous';
  readonly horizontalHeldBy: string;
}

export const PLAIN: Measures = {
  lineYsIn: [0, 120],
  risePer12: 4,
  overhangsIn: [18, 24],
  bearing: { line: 0, of: 'bearing', zIn: 126 },
  set: 'top',
  stripIn: 1.5,
  postXsIn: [0, 144],
  pierTopsIn: [6, 6],
  standOffIn: 1,
  capIn: 0,
  allowanceIn: 0,
  beamEndsIn: [-24, 168],
  beamDiametersIn: [12, 10],
  beamButtAt: 'start',
  crownIn: 0,
  crownTo: 'up',
  topFlatIn: 0,
  seatIn: 1,
  seatLengthIn: null,
  postDiametersIn: [9, 8],
  braceDiametersIn: [5, 5],
  bracesAt: [
    [0, 'plus'],
    [1, 'minus'],
  ],
  runIn: 30,
  dropIn: 30,
  braceEnd: { kind: 'housed', depthIn: 1 },
  fixity: 'pinned',
  pad: null,
  rafterXsIn: [-20, 4, 28, 52, 76, 100, 124, 148, 164],
  rafters: 'simple',
  horizontalHeldBy: 'worse',
};

/** Design values of the plain shed's wood, typed so that a hand calculation can use them [psi]. */
export const WOOD = { Fb: 1000, Fv: 100, Fcp: 300, Fc: 800, Ft: 550, E: 1_200_000, Emin: 440_000 } as const;
/** Its weights, heavy and light [pcf]. */
export const WEIGHT = { heavy: 50, light: 30 } as const;
/** Weight of the covering, heavy and light [psf]; sawn sticks have none of their own here: the total holds them. */
export const COVERING = { heavy: 6, light: 3 } as const;

const given = <T>(value: T) => ({ value, givenBy: 'department', date: '2026-03-02' }) as const;

export const lineId = (i: number): string => `line-${i}`;
const beamId = (line: number, k = 0): string => `beam-${line}-${k}`;
export const postId = (line: number, k: number): string => `post-${line}-${k}`;
export const braceId = (line: number, k: number, side: 'plus' | 'minus'): string => `brace-${line}-${k}-${side}`;

const log = (id: string, lengthIn: number, [butt, tip]: readonly [number, number], crownIn = 0): Log => ({
  id,
  woodId: 'wood',
  stands: 'pattern',
  how: 'measured',
  errorIn: 0,
  bark: 'off',
  stations: [
    { fromButtIn: 0, diameterIn: butt },
    { fromButtIn: lengthIn, diameterIn: tip },
  ],
  seen: null,
  crownIn,
});

const fromLog = (logId: string, buttAt: 'start' | 'end' = 'start'): Stock => ({
  kind: 'log',
  logId,
  fromButtIn: 0,
  buttAt,
});

/** A strip whose weight is said to be none, so that the weight of a line is that of its logs and covering. */
const WEIGHTLESS: Stock = {
  kind: 'typed',
  name: 'strip',
  FbSIn3Psi: 1,
  VallowLb: 1,
  EIPsiIn4: 1,
  heavyPlf: 0,
  lightPlf: 0,
};

/** Length of every beam log of the plain shed [in]. */
export const BEAM_LOG_IN = 240;
export const POST_LOG_IN = 160;
const SITE: Project['site'] = {
  altitudeFt: given(1000),
  riskCategory: given('II'),
  groundSnowPsf: given(40),
  leastRoofSnowPsf: given(0),
  roofLivePsf: given(20),
  snowExposureCe: given(1),
  snowThermalCt: given(1.2),
  windMph: given(110),
  exposure: given('C'),
  kzt: given(1),
  ke: given(1),
  seismic: null,
  soil: { bearingPsf: given(1500), lateralPsfPerFt: given(150), soilPcf: 100, kind: 'sandy gravel' },
  frostDepthIn: given(24),
};

/** A sound shed by its measures; every line carries the same posts, beams and braces. */
export function plainShed(change: Partial<Measures> = {}): Project {
  const m = { ...PLAIN, ...change };
  const members = m.lineYsIn.flatMap((_, line): Member[] => [
    ...m.beamEndsIn.slice(1).map((toXIn, k): Member => ({
      id: beamId(line, k),
      role: 'beam',
      group: 'beams',
      line: lineId(line),
      fromXIn: m.beamEndsIn[k]!,
      toXIn,
    })),
    ...m.postXsIn.map((xIn, k): Member => ({
      id: postId(line, k),
      role: 'post',
      group: 'posts',
      line: lineId(line),
      xIn,
      pierTopZIn: m.pierTopsIn[k] ?? 6,
      gradeZIn: 0,
    })),
    ...m.bracesAt.map(([k, side]): Member => ({
      id: braceId(line, k, side),
      role: 'brace',
      group: 'braces',
      post: postId(line, k),
      to: 'line',
      side,
    })),
  ]);
  return {
    formatVersion: 1,
    title: { id: 'plain', name: 'Plain shed', parcel: '', preparedBy: '', revision: { number: '1', date: null } },
    ...emptyParts(),
    code: { loads: given('ASCE 7-16'), wood: given('NDS 2018'), building: given('IBC 2018') },
    site: SITE,
    surroundings: { neighbour: null, closed: [], goods: { blockedShare: 0, heightIn: 0, leansOnLines: [] } },
    supportLines: m.lineYsIn.map((yIn, i) => ({
      kind: 'frame',
      id: lineId(i),
      yIn,
      height: i === m.bearing.line ? { of: m.bearing.of, zIn: m.bearing.zIn } : null,
      set: m.set,
      strip: { stock: WEIGHTLESS, thicknessIn: m.stripIn, shims: 'shims' },
    })),
    roofPlanes: [
      {
        id: 'plane',
        onLines: m.lineYsIn.map((_, i) => lineId(i)),
        risePer12: m.risePer12,
        highOverhangIn: m.overhangsIn[0],
        lowOverhangIn: m.overhangsIn[1],
        fromXIn: -30,
        toXIn: 174,
        rafters: m.rafters,
        horizontalHeldBy: m.horizontalHeldBy,
        covering: { kind: 'ribbed steel', slippery: true, unobstructed: true, pastRafterIn: 1.5, ratedSpanIn: 24 },
        sheetOn: 'purlins',
        dead: {
          by: 'total',
          heavyPsf: COVERING.heavy,
          lightPsf: COVERING.light,
          includes: ['purlins', 'rafters'],
        },
      },
    ],
    woods: [
      {
        id: 'wood',
        species: 'Western larch',
        basis: {
          kind: 'typed',
          by: 'stamp',
          date: null,
          published: 'wet',
          asPoles: false,
          factorsHeld: [],
          FbPsi: WOOD.Fb,
          FvPsi: WOOD.Fv,
          FcpPsi: WOOD.Fcp,
          FcPsi: WOOD.Fc,
          FtPsi: WOOD.Ft,
          EPsi: WOOD.E,
          EminPsi: WOOD.Emin,
        },
        weight: { by: 'typed', heavyPcf: WEIGHT.heavy, lightPcf: WEIGHT.light },
      },
    ],
    logs: [
      log('beam-log', BEAM_LOG_IN, m.beamDiametersIn, m.crownIn),
      log('post-log', POST_LOG_IN, m.postDiametersIn),
      log('brace-log', 120, m.braceDiametersIn),
    ],
    groups: [
      {
        id: 'beams',
        role: 'beam',
        stock: fromLog('beam-log', m.beamButtAt),
        crownTo: m.crownTo,
        topFlatIn: m.topFlatIn,
        seat: { kind: 'flat', depthIn: m.seatIn, lengthIn: m.seatLengthIn },
      },
      {
        id: 'posts',
        role: 'post',
        stock: fromLog('post-log'),
        foot: {
          kind: 'pier',
          standOffIn: m.standOffIn,
          hardware: null,
          shaft: { shape: 'round', acrossIn: 18, lengthIn: 48 },
          pad: m.pad,
          concretePcf: 145,
          fixity: { along: m.fixity, across: 'pinned' },
        },
        capIn: m.capIn,
        allowanceIn: m.allowanceIn,
      },
      {
        id: 'braces',
        role: 'brace',
        stock: fromLog('brace-log'),
        runIn: m.runIn,
        dropIn: m.dropIn,
        ends: { post: m.braceEnd, top: m.braceEnd },
      },
      {
        id: 'rafters',
        role: 'rafter',
        stock: {
          kind: 'sawn',
          breadthIn: 2,
          depthIn: 8,
          lay: 'edge',
          plies: 1,
          species: 'Western larch',
          grade: null,
          use: 'wet',
        },
        seatCutIn: 0.5,
        tailEnd: 'plumb',
        blocked: true,
      },
      {
        id: 'purlins',
        role: 'purlin',
        stock: {
          kind: 'sawn',
          breadthIn: 4,
          depthIn: 2,
          lay: 'flat',
          plies: 1,
          species: 'Western larch',
          grade: null,
          use: 'wet',
        },
      },
    ],
    members: [
      ...members,
      ...m.rafterXsIn.map((xIn, i): Member => ({
        id: `rafter-${i}`,
        role: 'rafter',
        group: 'rafters',
        plane: 'plane',
        xIn,
      })),
      ...[4, 28, 52, 76, 100, 124, 148, 166].map((upSlopeIn, i): Member => ({
        id: `purlin-${i}`,
        role: 'purlin',
        group: 'purlins',
        plane: 'plane',
        upSlopeIn,
      })),
    ],
    joints: { defaults: [], own: [] },
    lateral: { along: [{ by: 'kneeBraces' }], across: [{ by: 'building', ratedLb: 20_000, givenBy: 'owner' }] },
  };
}
