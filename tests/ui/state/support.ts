import { say } from '../../../src/data/words/say.ts';
import type { EvaluateAnswer, Evaluation } from '../../../src/engine/evaluation.ts';
import { fault } from '../../../src/engine/message.ts';
import type { Project } from '../../../src/engine/project/model.ts';
import { setAt } from '../../../src/engine/project/edits/set-at.ts';
import { parseProject } from '../../../src/engine/project/parse.ts';
import { saveText } from '../../../src/engine/project/save-text.ts';
import { projectSchema } from '../../../src/engine/project/schema.ts';
import { readField } from '../../../src/ui/units/read-field.ts';
import type { Doors, Program } from '../../../src/ui/state/doors.ts';
import type { Shelf, ShelfRecord, View } from '../../../src/ui/state/shelf.ts';

const owner = <T>(value: T) => ({ value, givenBy: 'owner' as const, date: null });

/** The least project that is sound: two posts under one beam, and a ledger at the other end of the roof. */
export const smallProject = (): Project => projectSchema.parse(SMALL);

const SMALL = {
  formatVersion: 1,
  title: { id: 'small', name: 'Small', parcel: '', preparedBy: '', revision: { number: '1', date: null } },
  code: { loads: owner('ASCE 7-16'), wood: owner('NDS 2018'), building: owner('IBC 2018') },
  site: {
    altitudeFt: owner(3000),
    riskCategory: owner('I'),
    groundSnowPsf: owner(40),
    leastRoofSnowPsf: owner(20),
    roofLivePsf: owner(20),
    snowExposureCe: owner(1),
    snowThermalCt: owner(1.2),
    windMph: owner(100),
    exposure: owner('B'),
    kzt: owner(1),
    ke: owner(1),
    seismic: null,
    soil: { bearingPsf: owner(1500), lateralPsfPerFt: owner(100), soilPcf: 100, kind: '' },
    frostDepthIn: owner(36),
  },
  surroundings: {
    neighbour: {
      side: 'yMinus',
      ledgerLine: 'wall',
      gapFt: 0,
      stepFt: 4,
      upperLengthFt: 20,
      eaveToRidgeFt: 10,
      upperRisePer12: 4,
      upperSlippery: false,
      upperCt: 1,
      slidesThisWay: false,
      ableBy: null,
    },
    closed: [],
    goods: null,
  },
  supportLines: [
    { kind: 'frame', id: 'low', yIn: 120, height: { of: 'bearing', zIn: 96 }, set: 'top', strip: null },
    {
      kind: 'ledger',
      id: 'wall',
      yIn: 0,
      height: null,
      stock: null,
      fromXIn: -12,
      toXIn: 156,
      wallFaceYIn: -2,
      fixingSpacingIn: null,
    },
  ],
  roofPlanes: [
    {
      id: 'roof',
      onLines: ['wall', 'low'],
      risePer12: 3,
      highOverhangIn: 0,
      lowOverhangIn: 12,
      fromXIn: -12,
      toXIn: 156,
      rafters: 'simple',
      horizontalHeldBy: 'worse',
      covering: { kind: 'steel', slippery: true, unobstructed: true, pastRafterIn: 1, ratedSpanIn: null },
      sheetOn: 'rafters',
      dead: { by: 'total', heavyPsf: 4, lightPsf: 3, includes: [] },
    },
  ],
  woods: [{ id: 'larch', species: 'western larch', basis: { kind: 'derived' }, weight: { by: 'species' } }],
  logs: [
    {
      id: 'log-beam',
      woodId: 'larch',
      stands: 'log',
      how: 'measured',
      errorIn: 0.25,
      bark: 'off',
      stations: [
        { fromButtIn: 0, diameterIn: 12 },
        { fromButtIn: 180, diameterIn: 10 },
      ],
      seen: null,
      crownIn: 0,
    },
    {
      id: 'log-post',
      woodId: 'larch',
      stands: 'pattern',
      how: 'assumed',
      errorIn: 0.5,
      bark: 'off',
      stations: [
        { fromButtIn: 0, diameterIn: 9 },
        { fromButtIn: 120, diameterIn: 8 },
      ],
      seen: null,
      crownIn: 0,
    },
  ],
  groups: [
    {
      id: 'beams',
      role: 'beam',
      stock: { kind: 'log', logId: 'log-beam', fromButtIn: 0, buttAt: 'start' },
      crownTo: 'up',
      topFlatIn: 0,
      seat: { kind: 'flat', depthIn: 0.5, lengthIn: null },
    },
    {
      id: 'posts',
      role: 'post',
      stock: { kind: 'log', logId: 'log-post', fromButtIn: 0, buttAt: 'start' },
      capIn: 0,
      allowanceIn: 0,
      foot: {
        kind: 'pier',
        standOffIn: 1,
        hardware: null,
        shaft: { shape: 'round', acrossIn: 18, lengthIn: 42 },
        pad: null,
        concretePcf: 145,
        fixity: { along: 'pinned', across: 'pinned' },
      },
    },
    { id: 'rafters', role: 'rafter', stock: null, seatCutIn: 0, tailEnd: 'plumb', blocked: true },
  ],
  members: [
    { id: 'rafter-1', role: 'rafter', group: 'rafters', plane: 'roof', xIn: 0 },
    { id: 'rafter-2', role: 'rafter', group: 'rafters', plane: 'roof', xIn: 144 },
    { id: 'beam', role: 'beam', group: 'beams', line: 'low', fromXIn: -12, toXIn: 156 },
    { id: 'post-1', role: 'post', group: 'posts', line: 'low', xIn: 0, pierTopZIn: 4, gradeZIn: 0 },
    { id: 'post-2', role: 'post', group: 'posts', line: 'low', xIn: 144, pierTopZIn: 4, gradeZIn: 0 },
  ],
  joints: { defaults: [], own: [] },
  cuts: [],
  lateral: { along: [{ by: null }], across: [{ by: null }] },
  ownLoads: [],
  instead: [],
  calculation: { kcr: 2, kz: 'formula', soilAboveCountsInUplift: false, doubledLateralSoil: false },
  asBuilt: { pierTops: [], pours: [], cutLengths: [], peeled: [], cutsMade: [], visits: [] },
  trees: [],
  pieces: [],
  notYetYours: [],
  extras: {},
} as const;

const EMPTY_EVALUATION: Evaluation = {
  formatVersion: 1,
  fingerprint: '',
  programVersion: '0',
  dataVersion: '0',
  shelter: {
    lines: [],
    planes: [],
    posts: [],
    beams: [],
    braces: [],
    ties: [],
    rafters: [],
    purlins: [],
    lowestGradeZIn: 0,
    meanRoofHeightIn: 0,
    planAlongIn: 0,
    planAcrossIn: 0,
  },
  loads: { pressures: [], gustFactor: 0.85, flows: [], cases: [], combinations: [], leftOut: [] },
  logs: [],
  lines: [],
  rows: [],
  ledgers: [],
  checks: [],
  sections: [],
  counts: { pass: 0, fail: 0, notGiven: 0, outside: 0 },
  departures: 0,
  residual: 0,
  assumptions: [],
};

/** The real parser; figures are replaced by the project's name, a roof past 20 in 12 counts as impossible. */
export const testEngine: Program = {
  parse: parseProject,
  readField,
  setAt,
  saveText,
  say,
  evaluate: (project): EvaluateAnswer =>
    (project.roofPlanes[0]?.risePer12 ?? 0) > 20
      ? { ok: false, faults: [fault('roofPlanes[roof].risePer12', 'notFinite')] }
      : { ok: true, evaluation: { ...EMPTY_EVALUATION, fingerprint: project.title.name } },
};

/** The program is there from the start. */
export const testDoors: Doors = {
  prepared: () => null,
  program: () => testEngine,
  whenThere: async () => testEngine,
  onArrival: () => undefined,
};

/** A shelf in memory, which can be told to refuse as a full or forbidden storage does. */
export function memoryShelf(): Shelf & { readonly records: Map<string, ShelfRecord>; refuse: boolean } {
  const records = new Map<string, ShelfRecord>();
  let view: View | null = null;
  const shelf = {
    records,
    refuse: false,
    read: async (id: string) => records.get(id) ?? null,
    write: async (id: string, record: ShelfRecord, expected: number) => {
      if (shelf.refuse) throw new Error('quota exceeded');
      const old = records.get(id);
      if (old && old.counter !== expected) return 'elsewhere' as const;
      records.set(id, record);
      return 'written' as const;
    },
    list: async () => [...records].map(([id, { name, savedAt }]) => ({ id, name, savedAt })),
    readView: async () => view,
    writeView: async (next: View) => {
      view = next;
    },
  };
  return shelf;
}
