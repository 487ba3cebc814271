import { describe, expect, it } from 'vitest';
import { commonPath, grainAngleDeg, type JointSetting } from '../../../../src/engine/checks/joints/joint-setting.ts';
import { demandsOf } from '../../../../src/engine/checks/joints/joint-demands.ts';
import { jointsOf } from '../../../../src/engine/checks/joints/joints.ts';
import type { Evaluation } from '../../../../src/engine/evaluation.ts';
import type { Member, MemberOf, Project } from '../../../../src/engine/project/model.ts';
import { EXAMPLES, everythingGivenText, exampleText, soundProject } from '../../../support/files.ts';
import { plainShed } from '../../../support/plain-shed.ts';
import { evaluated } from '../../whole/whole.ts';

/** Every two things of a file that touch, read off the file itself: upper, lower. */
function contactsOf(project: Project): readonly (readonly [upper: string, lower: string])[] {
  const of = <R extends Member['role']>(role: R): readonly MemberOf<R>[] =>
    project.members.filter((m): m is MemberOf<R> => m.role === role);
  const spans = (from: number, x: number, to: number): boolean => from - 1e-6 <= x && x <= to + 1e-6;
  const beams = of('beam');
  const runOf = (brace: MemberOf<'brace'>): number => {
    const group = project.groups.find((g) => g.id === brace.group);
    const runIn = brace.own?.runIn ?? (group?.role === 'brace' ? group.runIn : NaN);
    return brace.side === 'plus' ? runIn : -runIn;
  };
  const contacts: (readonly [string, string])[] = [];
  for (const plane of project.roofPlanes) {
    const rafters = of('rafter').filter((r) => r.plane === plane.id);
    const purlins = of('purlin').filter((p) => p.plane === plane.id);
    for (const row of plane.sheetOn === 'purlins' ? purlins : rafters) contacts.push([plane.id, row.id]);
    for (const purlin of purlins) for (const rafter of rafters) contacts.push([purlin.id, rafter.id]);
    for (const rafter of rafters) for (const line of plane.onLines) contacts.push([rafter.id, line]);
  }
  const [one, other] = project.roofPlanes;
  if (one && other && one.onLines[0] === other.onLines[0])
    for (const a of of('rafter').filter((r) => r.plane === one.id))
      for (const b of of('rafter').filter((r) => r.plane === other.id))
        if (a.xIn === b.xIn) contacts.push([a.id, b.id]);
  for (const line of project.supportLines) {
    if (line.kind === 'ledger') contacts.push([line.id, 'wall']);
    else if (line.strip) for (const beam of beams.filter((b) => b.line === line.id)) contacts.push([line.id, beam.id]);
  }
  for (const post of of('post')) {
    const over = beams.filter((b) => b.line === post.line && spans(b.fromXIn, post.xIn, b.toXIn));
    for (const beam of over) contacts.push([beam.id, post.id]);
    const starts = over.toSorted((a, b) => a.fromXIn - b.fromXIn);
    if (starts.length === 2) contacts.push([starts[1]!.id, starts[0]!.id]);
    contacts.push([post.id, 'pier']);
  }
  for (const brace of of('brace')) {
    contacts.push([brace.id, brace.post]);
    const post = of('post').find((p) => p.id === brace.post)!;
    const x = post.xIn + runOf(brace);
    const top = beams.find((b) => b.line === post.line && spans(b.fromXIn, x, b.toXIn));
    contacts.push([brace.id, brace.to === 'line' ? top!.id : brace.to]);
  }
  for (const tie of of('tie')) contacts.push([tie.id, tie.fromPost], [tie.id, tie.toPost]);
  return contacts;
}

/** A joint by the two things that it joins: a rafter lies on what bears it, which the file names by its line. */
function touches(joint: JointSetting, [upper, lower]: readonly [string, string]): boolean {
  const under = joint.kind === 'rafterStrip' || joint.kind === 'rafterLedger' ? joint.place : joint.lower.id;
  const isGround = joint.lower.of === 'wall' || joint.lower.of === 'pier';
  return joint.upper.id === upper && (isGround ? joint.lower.of : under) === lower;
}

const spliced = plainShed({
  beamEndsIn: [-24, 72, 168],
  postXsIn: [0, 72, 144],
  pierTopsIn: [6, 6, 6],
  bracesAt: [
    [0, 'plus'],
    [2, 'minus'],
  ],
});
const shelters: readonly (readonly [string, Project])[] = [
  ...EXAMPLES.map((name) => [name, soundProject(exampleText(name))] as const),
  ['the file with everything given', soundProject(everythingGivenText())],
  ['a shed with a spliced beam', spliced],
];

describe('every place where two things meet', () => {
  it.each(shelters)('of %s is one joint, and there is no other', (_, project) => {
    const joints = jointsOf(project, evaluated(project).shelter);
    const contacts = contactsOf(project);
    const found = contacts.map((contact) => joints.filter((joint) => touches(joint, contact)).length);
    expect(contacts.filter((_contact, i) => found[i] !== 1)).toEqual([]);
    expect(joints.map((j) => j.id).filter((id, i, all) => all.indexOf(id) !== i)).toEqual([]);
    expect(joints).toHaveLength(contacts.length);
  });

  it.each(shelters)('of %s is asked in four directions, or says why not', (_, project) => {
    const evaluation = evaluated(project);
    const untold = jointsOf(project, evaluation.shelter).flatMap((joint) => {
      const demands = demandsOf(joint, evaluation);
      return (['push', 'pull', 'along', 'across'] as const).flatMap((part) => {
        const demand = demands[part];
        return demand.asked && !isTold(demand.row) ? [`${joint.id} ${part}`] : [];
      });
    });
    expect(untold).toEqual([]);
  });

  /** A row with a number, or with the reason why it has none. */
  const isTold = ({ demand, reason }: Evaluation['checks'][number]): boolean => demand !== null || reason !== undefined;

  it('nothing is left to no reason of its own where all is given', () => {
    const project = soundProject(everythingGivenText());
    const evaluation = evaluated(project);
    const silent = jointsOf(project, evaluation.shelter).flatMap((joint) =>
      Object.entries(demandsOf(joint, evaluation)).flatMap(([part, demand]) =>
        !demand.asked && demand.reason.code === 'jointNotAsked' ? [`${joint.id} ${part}`] : [],
      ),
    );
    expect(silent).toEqual([]);
  });
});

describe('the geometry of a joint', () => {
  const project = plainShed();
  const { shelter } = evaluated(project);
  const joints = jointsOf(project, shelter);
  const first = (kind: JointSetting['kind']): JointSetting => joints.find((j) => j.kind === kind)!;

  it('crosses grains square where sticks cross square, and at the angle of the brace', () => {
    expect(grainAngleDeg(first('purlinRafter'))!).toBeCloseTo(90, 9);
    expect(grainAngleDeg(first('beamPost'))!).toBeCloseTo(90, 9);
    const { phiDeg, id } = shelter.braces[0]!;
    const ends = joints.filter((j) => j.upper.id === id).map((j) => grainAngleDeg(j)!);
    expect(ends[0]!).toBeCloseTo(phiDeg, 9);
    expect(ends[1]!).toBeCloseTo(90 - phiDeg, 9);
  });

  // By hand: a fastener square to the post enters the brace where half of its way lies below the brace's axis: its thickness
  // from the face of the housing outward is r / cos(phi), and 9 in. less taper and 1 in. of housing lie behind.
  it('a fastener at a brace goes through half the brace, aslant, and into the post behind the housing', () => {
    const joint = first('bracePost');
    const path = commonPath(joint)!;
    if (!path.ok) throw new Error(path.reason.code);
    const { phiDeg, postDiameterIn } = shelter.braces[0]!;
    expect(path.side.thicknessIn).toBeCloseTo(2.5 / Math.cos((phiDeg * Math.PI) / 180), 6);
    expect(path.main.thicknessIn).toBeCloseTo(postDiameterIn - 1, 6);
    expect(path.main.angleToGrainDeg).toBeCloseTo(90, 9);
    expect(joint.shoulderIn).toBe(1);
    expect(path.main.edgeHalfWayIn!).toBeGreaterThan(path.main.edgeAtFaceIn!);
  });

  // Beam 12 to 10 in. over 240 in.; 1 in. of seat cut off: from its top to the seat it is its diameter less 1.
  it('a fastener down through a seated beam meets the end grain of the post', () => {
    const path = commonPath(first('beamPost'))!;
    if (!path.ok) throw new Error(path.reason.code);
    const seat = shelter.posts[0]!.seats[0]!;
    expect(path.side.thicknessIn).toBeCloseTo(seat.beamDiameterIn - seat.depthIn, 6);
    expect(path.main.angleToGrainDeg).toBe(0);
  });

  it('sticks that lie on one another touch: no gap between purlin and rafter', () => {
    const path = commonPath(first('purlinRafter'))!;
    if (!path.ok) throw new Error(path.reason.code);
    expect([path.gapIn, path.side.thicknessIn, path.main.thicknessIn].map((x) => x.toFixed(6))).toEqual([
      '0.000000',
      '2.000000',
      '8.000000',
    ]);
  });
});
