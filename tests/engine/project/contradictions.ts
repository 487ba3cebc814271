import { asGable, at, listAt, type Raw, splitBeam, withSecondPlane, withThirdLine, withTie } from './raw.ts';

/** What is spoilt, the path where the fault must stand, and its code. */
type Case = readonly [string, (raw: Raw) => void, string, string];

/** Spoilt from the firewood shed. */
export const SHED_CASES: readonly Case[] = [
  [
    'one id for a post and a brace',
    (r) => void (at(r, 'members', 'brace-1')['id'] = 'post-1'),
    'members[#6].id',
    'idTwice',
  ],
  [
    'an id that means something else',
    (r) => void (at(r, 'ownLoads', 'tool-rack')['id'] = 'line'),
    'ownLoads[line].id',
    'idReserved',
  ],
  [
    'an id that every object has',
    (r) => void (at(r, 'ownLoads', 'tool-rack')['id'] = 'toString'),
    'ownLoads[toString].id',
    'idReserved',
  ],
  [
    'a kind of joint listed twice',
    (r) => void listAt(r, 'joints', 'defaults').push({ kind: 'braceTop', capacity: null }),
    'joints.defaults[#8].kind',
    'jointTwice',
  ],
  [
    'a group that does not exist',
    (r) => void (at(r, 'members', 'post-2')['group'] = 'columns'),
    'members[post-2].group',
    'unknownReference',
  ],
  [
    'a group of another role',
    (r) => void (at(r, 'members', 'purlin-2')['group'] = 'rafters'),
    'members[purlin-2].group',
    'groupOfOtherRole',
  ],
  [
    'a log that does not exist',
    (r) => void (at(r, 'groups', 'posts', 'stock')['logId'] = 'log-9'),
    'groups[posts].stock.logId',
    'unknownReference',
  ],
  [
    'a wood that does not exist',
    (r) => void (at(r, 'logs', 'log-1')['woodId'] = 'oak'),
    'logs[log-1].woodId',
    'unknownReference',
  ],
  [
    'a brace on no post',
    (r) => void (at(r, 'members', 'brace-1')['post'] = 'beam-high'),
    'members[brace-1].post',
    'unknownReference',
  ],
  [
    'a brace to a purlin',
    (r) => void (at(r, 'members', 'brace-1')['to'] = 'purlin-1'),
    'members[brace-1].to',
    'unknownReference',
  ],
  [
    'a cut on nothing',
    (r) =>
      void listAt(r, 'cuts').push({
        id: 'cut-1',
        member: 'beam-9',
        kind: 'dap',
        centreIn: 0,
        lengthIn: 4,
        depthIn: 1,
        angleDeg: 0,
        by: 'hand',
      }),
    'cuts[cut-1].member',
    'unknownReference',
  ],
  [
    'a typed value of nothing',
    (r) => void listAt(r, 'instead').push({ what: 'columnC', of: 'post-9', value: 0.8, why: 'engineer' }),
    'instead[0].of',
    'unknownReference',
  ],
  [
    'knee braces on no line',
    (r) => void listAt(r, 'lateral', 'along', 0, 'lines').push('line-9'),
    'lateral.along[0].lines[2]',
    'unknownReference',
  ],
  [
    'level wind held by a line elsewhere',
    (r) => void (at(r, 'roofPlanes', 'plane-1')['horizontalHeldBy'] = 'best'),
    'roofPlanes[plane-1].horizontalHeldBy',
    'unknownReference',
  ],
  [
    'no height at all',
    (r) => void (at(r, 'supportLines', 'line-high')['height'] = null),
    'supportLines[line-high].height',
    'roofWithoutHeight',
  ],
  [
    'a line under no roof',
    (r) => {
      withThirdLine(r);
      listAt(r, 'roofPlanes', 'plane-1', 'onLines').pop();
    },
    'supportLines[line-3].id',
    'lineUnderNoRoof',
  ],
  ['two planes that disagree', (r) => withSecondPlane(r, 4), 'roofPlanes[plane-2].risePer12', 'roofDoesNotClose'],
  [
    'a slope without a ridge line to hang on',
    (r) => {
      asGable(r);
      at(r, 'roofPlanes', 'plane-2')['onLines'] = ['line-back'];
    },
    'roofPlanes[plane-2].onLines',
    'planeOnOneLine',
  ],
  [
    'a slope that reaches through the other one past the ridge',
    (r) => {
      asGable(r);
      at(r, 'roofPlanes', 'plane-2')['highOverhangIn'] = 2;
    },
    'roofPlanes[plane-2].highOverhangIn',
    'planePastRidge',
  ],
  [
    'two slopes that come to the ridge at different heights',
    (r) => {
      asGable(r);
      at(r, 'supportLines', 'line-back')['height'] = { of: 'bearing', zIn: 80 };
    },
    'supportLines[line-back].height',
    'roofWithTwoHeights',
  ],
  [
    'lines out of order',
    (r) => {
      withThirdLine(r);
      at(r, 'supportLines', 'line-3')['yIn'] = 50;
    },
    'roofPlanes[plane-1].onLines',
    'linesNotInOrder',
  ],
  [
    'a roof that ends before it starts',
    (r) => void (at(r, 'roofPlanes', 'plane-1')['toXIn'] = -40),
    'roofPlanes[plane-1].toXIn',
    'endsBeforeStart',
  ],
  [
    'covering on purlins that are not there',
    (r) => void (r['members'] = listAt(r, 'members').filter((m) => (m as Raw)['role'] !== 'purlin')),
    'roofPlanes[plane-1].sheetOn',
    'planeWithoutPurlins',
  ],
  [
    'no rafters',
    (r) => void (r['members'] = listAt(r, 'members').filter((m) => (m as Raw)['role'] !== 'rafter')),
    'roofPlanes[plane-1].id',
    'planeWithoutRafters',
  ],
  [
    'a rafter past the covering',
    (r) => void (at(r, 'members', 'rafter-10')['xIn'] = 187),
    'members[rafter-10].xIn',
    'rafterPastCovering',
  ],
  [
    'a rafter past the end of a beam',
    (r) => void (at(r, 'members', 'beam-high')['toXIn'] = 180),
    'members[rafter-10].xIn',
    'rafterPastLine',
  ],
  [
    'two rafters in one place',
    (r) => void (at(r, 'members', 'rafter-2')['xIn'] = -25.5),
    'members[rafter-2].xIn',
    'atSamePlace',
  ],
  [
    'a purlin past the ridge',
    (r) => void (at(r, 'members', 'purlin-6')['upSlopeIn'] = 150),
    'members[purlin-6].upSlopeIn',
    'purlinPastCovering',
  ],
  [
    'stations out of order',
    (r) => void (at(r, 'logs', 'size-post', 'stations', 1)['fromButtIn'] = 0),
    'logs[size-post].stations[1].fromButtIn',
    'stationsNotAscending',
  ],
  [
    'a log trimmed away',
    (r) => void (at(r, 'logs', 'size-post')['trim'] = { buttIn: 90, tipIn: 60 }),
    'logs[size-post].trim',
    'trimmedAway',
  ],
  [
    'bark thicker than the log',
    (r) => void (at(r, 'logs', 'log-2')['barkIn'] = 6),
    'logs[log-2].barkIn',
    'barkTooThick',
  ],
  [
    'a beam longer than its log',
    (r) => void (at(r, 'members', 'beam-low', 'own', 'stock')['fromButtIn'] = 30),
    'members[beam-low].own.stock.fromButtIn',
    'stretchPastLog',
  ],
  [
    'one stem in two beams',
    (r) => void (at(r, 'members', 'beam-low', 'own', 'stock')['logId'] = 'log-1'),
    'members[beam-high].own.stock.fromButtIn',
    'logUsedTwice',
  ],
  [
    'a line without beam',
    (r) => void (r['members'] = listAt(r, 'members').filter((m) => (m as Raw)['id'] !== 'beam-low')),
    'supportLines[line-low].id',
    'lineWithoutBeam',
  ],
  ['beams that overlap', (r) => splitBeam(r, 80, 70), 'members[beam-more].fromXIn', 'beamsOverlap'],
  ['beams that do not reach one another', (r) => splitBeam(r, 70, 80), 'members[beam-more].fromXIn', 'beamsApart'],
  ['beams that meet off a post', (r) => splitBeam(r, 78, 78), 'members[beam-more].fromXIn', 'beamsMeetOffPost'],
  [
    'a post beside its beam',
    (r) => void (at(r, 'members', 'post-2')['xIn'] = 190),
    'members[post-2].xIn',
    'postWithoutBeam',
  ],
  [
    'posts thicker than their distance',
    (r) => void listAt(r, 'members').push({ ...at(r, 'members', 'post-1'), id: 'post-9', xIn: 10 }),
    'members[post-9].xIn',
    'postsTooClose',
  ],
  [
    'a brace past the end of its beam',
    (r) =>
      void (
        (at(r, 'members', 'brace-1')['side'] = 'minus'),
        (at(r, 'groups', 'braces')['runIn'] = 31),
        (at(r, 'members', 'brace-4')['side'] = 'minus')
      ),
    'groups[braces].runIn',
    'bracePastBeam',
  ],
  [
    'two braces in one place',
    (r) => void listAt(r, 'members').push({ ...at(r, 'members', 'brace-1'), id: 'brace-9' }),
    'members[brace-9].side',
    'atSamePlace',
  ],
  [
    'a brace to a rafter beside its post',
    (r) => void (at(r, 'members', 'brace-1')['to'] = 'rafter-2'),
    'members[brace-1].to',
    'braceOffPost',
  ],
  [
    'a brace past the end of its tie',
    (r) => {
      withTie(r);
      at(r, 'members', 'brace-1')['to'] = 'tie-1';
      at(r, 'members', 'brace-1')['side'] = 'minus';
    },
    'groups[braces].runIn',
    'bracePastBeam',
  ],
  ['a tie along a line', (r) => withTie(r, { toPost: 'post-2' }), 'members[tie-1].toPost', 'tieAlongLine'],
  ['a tie out of square', (r) => withTie(r, { toPost: 'post-4' }), 'members[tie-1].toPost', 'tieNotSquare'],
  [
    'one side closed twice',
    (r) => void (at(r, 'surroundings')['closed'] = [1, 2].map(() => ({ side: 'xPlus', share: 1, heldBy: 'itself' }))),
    'surroundings.closed[1].side',
    'sideClosedTwice',
  ],
  [
    'a line held twice',
    (r) => void listAt(r, 'lateral', 'along').push({ by: 'ratedWalls', lines: ['line-low'] }),
    'lateral.along[1]',
    'heldTwice',
  ],
  [
    'nothing beside something',
    (r) => void listAt(r, 'lateral', 'along').push({ by: 'none' }),
    'lateral.along[1].by',
    'noneBesideOthers',
  ],
  [
    'a load past its beam',
    (r) => void (at(r, 'ownLoads', 'tool-rack', 'where')['toXIn'] = 200),
    'ownLoads[tool-rack].where',
    'loadOffMember',
  ],
  [
    'a load on a brace',
    (r) => void (at(r, 'ownLoads', 'tool-rack')['where'] = { on: 'member', member: 'brace-1', atIn: 3, lb: 50 }),
    'ownLoads[tool-rack].where.member',
    'loadOnRole',
  ],
  [
    'a cut past its beam',
    (r) =>
      void listAt(r, 'cuts').push({
        id: 'cut-1',
        member: 'beam-low',
        kind: 'dap',
        centreIn: 190,
        lengthIn: 4,
        depthIn: 1,
        angleDeg: 0,
        by: 'hand',
      }),
    'cuts[cut-1].centreIn',
    'cutOffMember',
  ],
  [
    'an effective length of nothing',
    (r) => void listAt(r, 'instead').push({ what: 'effectiveLengthAlongIn', of: 'posts', value: 0, why: 'engineer' }),
    'instead[0].value',
    'notAbove',
  ],
  [
    'a column factor above one',
    (r) => void listAt(r, 'instead').push({ what: 'columnC', of: null, value: 8, why: 'engineer' }),
    'instead[0].value',
    'tooBig',
  ],
  [
    'a value typed twice',
    (r) =>
      void listAt(r, 'instead').push(...[1, 2].map(() => ({ what: 'kd', of: null, value: 0.85, why: 'engineer' }))),
    'instead[1].what',
    'insteadTwice',
  ],
  [
    'weights swapped',
    (r) => void (at(r, 'roofPlanes', 'plane-1', 'dead', 'layers', 0)['lightPsf'] = 2),
    'roofPlanes[plane-1].dead.layers[0].heavyPsf',
    'heavyBelowLight',
  ],
];

/** Spoilt from the lean-to. */
export const LEAN_TO_CASES: readonly Case[] = [
  [
    'a ledger on no building',
    (r) => void (at(r, 'surroundings')['neighbour'] = null),
    'surroundings.neighbour',
    'ledgerWithoutBuilding',
  ],
  [
    'a building that carries a frame line',
    (r) => void (at(r, 'surroundings', 'neighbour')['ledgerLine'] = 'line-1'),
    'surroundings.neighbour.ledgerLine',
    'unknownReference',
  ],
  [
    'knee braces under a ledger',
    (r) => void listAt(r, 'lateral', 'along', 0, 'lines').push('ledger'),
    'lateral.along[0].lines[1]',
    'unknownReference',
  ],
];
