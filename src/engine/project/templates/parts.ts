import type {
  FrameLine,
  GroupOf,
  Id,
  JointKind,
  Log,
  MemberOf,
  NewId,
  Project,
  RoofPlane,
  SawnStock,
  Site,
  Station,
  Stock,
} from '../model.ts';

/** What the templates are made of. Sizes are places to start from, not answers: every one is there to be changed. */
export const START_SPECIES = 'Western larch';

/** A site that nobody has been asked about; what the method has to begin with is marked as a guess. */
export function siteToAskFor(): Site {
  const unknown = { value: null, givenBy: 'guess', date: null } as const;
  const guess = <T>(value: T) => ({ value, givenBy: 'guess', date: null }) as const;
  const presumptive = <T>(value: T) =>
    ({ value, givenBy: 'owner', date: null, from: 'presumptive value of the code for unknown soil' }) as const;
  return {
    altitudeFt: unknown,
    riskCategory: guess('II'),
    groundSnowPsf: unknown,
    leastRoofSnowPsf: unknown,
    roofLivePsf: guess(20),
    snowExposureCe: guess(1),
    snowThermalCt: guess(1.2),
    windMph: unknown,
    exposure: guess('C'),
    kzt: guess(1),
    ke: guess(1),
    seismic: null,
    soil: { bearingPsf: presumptive(1500), lateralPsfPerFt: presumptive(100), soilPcf: 100, kind: 'unknown' },
    frostDepthIn: unknown,
  };
}

export const startTitle = (newId: NewId, name: string): Project['title'] => ({
  id: newId('project'),
  name,
  parcel: '',
  preparedBy: '',
  revision: { number: '1', date: null },
});

/** The parts of a project that a template leaves empty. */
export const emptyParts = (): Pick<
  Project,
  'cuts' | 'ownLoads' | 'instead' | 'asBuilt' | 'trees' | 'pieces' | 'notYetYours' | 'extras' | 'calculation' | 'code'
> => ({
  code: {
    loads: { value: 'ASCE 7-16', givenBy: 'guess', date: null },
    wood: { value: 'NDS 2018', givenBy: 'guess', date: null },
    building: { value: 'IBC 2018', givenBy: 'guess', date: null },
  },
  cuts: [],
  ownLoads: [],
  instead: [],
  calculation: { kcr: 2, kz: 'formula', soilAboveCountsInUplift: false, doubledLateralSoil: false },
  asBuilt: { pierTops: [], pours: [], cutLengths: [], peeled: [], cutsMade: [], visits: [] },
  trees: [],
  pieces: [],
  notYetYours: [],
  extras: {},
});

export const sawnStick = (
  breadthIn: number,
  depthIn: number,
  lay: 'edge' | 'flat',
  grade: string | null,
): SawnStock => ({
  kind: 'sawn',
  breadthIn,
  depthIn,
  lay,
  plies: 1,
  species: START_SPECIES,
  grade,
  use: 'wet',
});

/** A size of log that any number of members may take, assumed until somebody measures. */
const sizeOfLog = (id: Id, woodId: Id, stations: readonly Station[]): Log => ({
  id,
  woodId,
  stands: 'pattern',
  how: 'assumed',
  errorIn: 0.5,
  bark: 'off',
  stations,
  seen: null,
  crownIn: 0,
});

const fromSize = (logId: Id): Stock => ({ kind: 'log', logId, fromButtIn: 0, buttAt: 'start' });

export interface StartGroups {
  readonly beams: GroupOf<'beam'>;
  readonly posts: GroupOf<'post'>;
  readonly braces: GroupOf<'brace'>;
  readonly rafters: GroupOf<'rafter'>;
  readonly purlins: GroupOf<'purlin'>;
}

/** One group for each role, with logs of assumed size for beams, posts and braces. */
export function startGroups(newId: NewId, woodId: Id): { readonly groups: StartGroups; readonly logs: readonly Log[] } {
  const size = (what: string, lengthIn: number, buttIn: number, tipIn: number): Log =>
    sizeOfLog(newId(what), woodId, [
      { fromButtIn: 0, diameterIn: buttIn },
      { fromButtIn: lengthIn, diameterIn: tipIn },
    ]);
  const beamLog = size('size-beam', 240, 14, 12);
  const postLog = size('size-post', 144, 10, 9);
  const braceLog = size('size-brace', 72, 6, 5.5);
  const groups: StartGroups = {
    beams: {
      id: newId('beams'),
      role: 'beam',
      stock: fromSize(beamLog.id),
      crownTo: 'up',
      topFlatIn: 0,
      seat: { kind: 'flat', depthIn: 0.75, lengthIn: null },
    },
    posts: {
      id: newId('posts'),
      role: 'post',
      stock: fromSize(postLog.id),
      foot: {
        kind: 'pier',
        standOffIn: 1,
        hardware: 'stand-off base',
        shaft: { shape: 'round', acrossIn: 24, lengthIn: 48 },
        pad: null,
        concretePcf: 145,
        fixity: { along: 'pinned', across: 'pinned' },
      },
      capIn: 0,
      allowanceIn: 0,
    },
    braces: {
      id: newId('braces'),
      role: 'brace',
      stock: fromSize(braceLog.id),
      runIn: 30,
      dropIn: 30,
      // a housing would weaken the stretched underside of the beam: the top end is saddled to the whole log
      ends: { post: { kind: 'housed', depthIn: 1 }, top: { kind: 'coped', depthIn: 0 } },
    },
    rafters: {
      id: newId('rafters'),
      role: 'rafter',
      stock: sawnStick(2, 8, 'edge', 'No. 2'),
      seatCutIn: 0.75,
      tailEnd: 'plumb',
      blocked: true,
    },
    purlins: { id: newId('purlins'), role: 'purlin', stock: sawnStick(3.5, 1.5, 'flat', null) },
  };
  return { groups, logs: [beamLog, postLog, braceLog] };
}

/** A frame line whose beam lies level on top, under a strip that is shimmed. */
export const startLine = (newId: NewId, yIn: number, height: FrameLine['height']): FrameLine => ({
  id: newId('line'),
  kind: 'frame',
  yIn,
  height,
  set: 'top',
  strip: { stock: sawnStick(3.5, 1.5, 'flat', null), thicknessIn: 1.5, shims: 'shims' },
});

/** A plane under ribbed steel on purlins, over lines from high to low. */
export const startPlane = (
  id: Id,
  onLines: readonly Id[],
  highOverhangIn: number,
  fromXIn: number,
  toXIn: number,
): RoofPlane => ({
  id,
  onLines,
  risePer12: 3,
  highOverhangIn,
  lowOverhangIn: 18,
  fromXIn,
  toXIn,
  rafters: 'simple',
  horizontalHeldBy: 'worse',
  covering: { kind: 'ribbed steel 29 ga', slippery: true, unobstructed: true, pastRafterIn: 1.5, ratedSpanIn: null },
  sheetOn: 'purlins',
  dead: { by: 'parts', layers: [{ name: 'ribbed steel 29 ga, laps and screws', heavyPsf: 1, lightPsf: 0.8 }] },
});

/** Rafters evenly from one x to another, both ends taken. */
export const evenRafters = (
  newId: NewId,
  { group, plane, fromXIn, toXIn, count }: { group: Id; plane: Id; fromXIn: number; toXIn: number; count: number },
): readonly MemberOf<'rafter'>[] =>
  Array.from({ length: count }, (_, i) => ({
    id: newId('rafter'),
    role: 'rafter',
    group,
    plane,
    xIn: fromXIn + ((toXIn - fromXIn) * i) / (count - 1),
  }));

export const purlinRows = (
  newId: NewId,
  { group, plane, upSlopeIn }: { group: Id; plane: Id; upSlopeIn: readonly number[] },
): readonly MemberOf<'purlin'>[] =>
  upSlopeIn.map((up) => ({ id: newId('purlin'), role: 'purlin', group, plane, upSlopeIn: up }));

/** A beam on two posts, each with a brace inward. */
export function lineOfTwoPosts(
  newId: NewId,
  groups: StartGroups,
  { line, firstXIn, lastXIn, pastIn }: { line: Id; firstXIn: number; lastXIn: number; pastIn: number },
): Project['members'] {
  const post = (xIn: number): MemberOf<'post'> => ({
    id: newId('post'),
    role: 'post',
    group: groups.posts.id,
    line,
    xIn,
    pierTopZIn: 6,
    gradeZIn: 0,
  });
  const first = post(firstXIn);
  const last = post(lastXIn);
  const brace = (at: MemberOf<'post'>, side: 'plus' | 'minus'): MemberOf<'brace'> => ({
    id: newId('brace'),
    role: 'brace',
    group: groups.braces.id,
    post: at.id,
    to: 'line',
    side,
  });
  return [
    {
      id: newId('beam'),
      role: 'beam',
      group: groups.beams.id,
      line,
      fromXIn: firstXIn - pastIn,
      toXIn: lastXIn + pastIn,
    },
    first,
    last,
    brace(first, 'plus'),
    brace(last, 'minus'),
  ];
}

/** Nobody has said yet what any joint holds. */
export const jointsToAskFor = (kinds: readonly JointKind[]): Project['joints'] => ({
  defaults: kinds.map((kind) => ({ kind, capacity: null })),
  own: [],
});
