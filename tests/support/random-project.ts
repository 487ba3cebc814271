import * as fc from 'fast-check';
import { hardwareFaults } from '../../src/engine/project/soundness/hardware.ts';
import type {
  Capacity,
  FastenerRow,
  Id,
  JointKind,
  Log,
  Member,
  Project,
  Stock,
} from '../../src/engine/project/model.ts';
import { bracesOf, groupsOf, lateralOf, linesOf, neighbourOf, planesOf, sticksOf, tiesOf } from './random-frame.ts';
import {
  randomCalculation,
  randomCapacity,
  randomCode,
  randomInstead,
  randomLoadKind,
  randomLog,
  randomSite,
  randomTitle,
  randomWalls,
  randomWood,
  stockWithoutLog,
} from './random-parts.ts';
import { layout, recipe, type Recipe } from './random-recipe.ts';

/**
 * Random sound projects: a shed on two or three lines, a lean-to on one or two, a gable; up to six posts on each of at
 * most three lines. Every stock kind, splices, ties with braces across, joints of every kind of capacity, texts and ids
 * from the shortest to the longest allowed.
 */
export const randomProject = (): fc.Arbitrary<Project> => recipe.chain(projectFrom).map(withHardwareThatFits);

/** Rows of fasteners that cannot fit any joint of their kind are left out. */
function withHardwareThatFits(project: Project): Project {
  const fitting = (kind: JointKind, capacity: Capacity): Capacity => {
    if (capacity?.kind !== 'fasteners') return capacity;
    const fits = (row: FastenerRow): boolean => {
      const defaults = [{ kind, capacity: { ...capacity, rows: [row] } }];
      return hardwareFaults({ ...project, joints: { defaults, own: [] } }).length === 0;
    };
    return { ...capacity, rows: capacity.rows.filter(fits) };
  };
  const { defaults, own } = project.joints;
  return {
    ...project,
    joints: {
      defaults: defaults.map(({ kind, capacity }) => ({ kind, capacity: fitting(kind, capacity) })),
      own: own.map(({ key, capacity }) => ({ key, capacity: fitting(key.split('/')[0] as JointKind, capacity) })),
    },
  };
}

const JOINTS: readonly JointKind[] = [
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
];

function projectFrom(r: Recipe): fc.Arbitrary<Project> {
  const at = layout(r);
  const { name } = at;
  const woods = [name('wood-0'), name('wood-1')];
  const beamLogs = at.beams.map(({ id }) => `${id}`.replace('beam', 'log'));
  const postLogs = at.posts.map(({ id }) => id.replace('post', 'stem'));
  const size = (what: string) => name(`size-${what}`);
  const logs: readonly fc.Arbitrary<Log>[] = [
    ...at.beams.map(({ fromXIn, toXIn }, i) =>
      randomLog(beamLogs[i]!, woods[0]!, r.stands, toXIn - fromXIn + 12, [9, 18]),
    ),
    ...postLogs.map((id) => randomLog(id, woods[1]!, r.stands, 400, [6, 14])),
    randomLog(size('post'), woods[1]!, 'pattern', 400, [6, 14]),
    randomLog(size('brace'), woods[0]!, 'pattern', 96, [4, 8]),
    randomLog(size('tie'), woods[0]!, 'pattern', 340, [6, 10]),
    randomLog(size('pole'), woods[1]!, 'pattern', 900, [5, 9]),
  ];
  return fc
    .record({
      title: randomTitle,
      code: randomCode,
      site: randomSite,
      closed: randomWalls,
      goods: fc.option(fc.constant({ blockedShare: 0.6, heightIn: 60, leansOnLines: at.frames.map(({ id }) => id) })),
      woods: fc.tuple(...woods.map(randomWood)),
      logs: fc.tuple(...logs),
      beamStock: fc.option(stockWithoutLog([5.5, 12], [7.5, 16]), { freq: 1 }),
      postStock: stockWithoutLog([5.5, 10], [5.5, 10]),
      stickStock: stockWithoutLog([1.5, 4], [3.5, 9.25]),
      ownPostLogs: fc.boolean(),
      poleRafters: fc.boolean(),
      heightOn: fc.nat({ max: at.lines.length - 1 }),
      defaults: fc
        .subarray([...JOINTS])
        .chain((kinds) => fc.tuple(...kinds.map((kind) => randomCapacity.map((capacity) => ({ kind, capacity }))))),
      own: fc.tuple(
        ...at.posts
          .slice(0, 4)
          .map(({ id }) => randomCapacity.map((capacity) => ({ key: `postFoot/${id}`, capacity }))),
      ),
      load: fc.option(randomLoadKind),
      instead: randomInstead,
      calculation: randomCalculation,
    })
    .map((parts): Project => {
      const logStock = (logId: Id): Stock => ({ kind: 'log', logId, fromButtIn: 0, buttAt: 'start' });
      const post = parts.ownPostLogs ? logStock(size('post')) : parts.postStock;
      const rafterStock = parts.poleRafters ? logStock(size('pole')) : parts.stickStock;
      const planes = planesOf(r, at);
      return {
        formatVersion: 1,
        title: parts.title,
        code: parts.code,
        site: parts.site,
        surroundings: { neighbour: neighbourOf(at), closed: parts.closed, goods: parts.goods },
        supportLines: linesOf(r, at, parts.heightOn, parts.stickStock),
        roofPlanes: planes,
        woods: parts.woods,
        logs: parts.logs,
        groups: groupsOf(r, at, { post, stick: parts.stickStock, rafter: rafterStock, size }),
        members: [
          ...at.beams.map(({ id, line, fromXIn, toXIn }, i): Member => {
            const stock = parts.beamStock ?? { ...logStock(beamLogs[i]!), buttAt: i % 2 === 0 ? 'start' : 'end' };
            return { id, role: 'beam', group: name('beams'), own: { stock }, line, fromXIn, toXIn };
          }),
          ...at.posts.map(({ id, line, xIn, i, k }, n): Member => {
            const own = parts.ownPostLogs ? { own: { stock: logStock(postLogs[n]!) } } : {};
            const pierTopZIn = r.embedded ? null : 6 - k / 4;
            return { id, role: 'post', group: name('posts'), ...own, line, xIn, pierTopZIn, gradeZIn: 0 - i };
          }),
          ...bracesOf(r, at),
          ...tiesOf(r, at),
          ...planes.flatMap((plane, p) => sticksOf(r, at, plane, p)),
        ],
        joints: { defaults: parts.defaults, own: parts.own },
        cuts: at.beams.slice(0, 1).map(({ id, fromXIn, toXIn }) => ({
          id: name('cut-0'),
          member: id,
          kind: 'dap',
          centreIn: (fromXIn + toXIn) / 2,
          lengthIn: 4,
          depthIn: 0.5,
          angleDeg: 0,
          by: 'hand',
        })),
        lateral: lateralOf(r, at),
        ownLoads: parts.load
          ? [
              {
                id: name('load-0'),
                ...parts.load,
                where: { on: 'line', line: at.frames[0]!.id, xIn: at.postXs[1]! / 2, lb: 100 },
              },
            ]
          : [],
        instead: parts.instead,
        calculation: parts.calculation,
        asBuilt: { pierTops: [], pours: [], cutLengths: [], peeled: [], cutsMade: [], visits: [] },
        trees: [],
        pieces: [],
        notYetYours: [],
        extras: {},
      };
    });
}
