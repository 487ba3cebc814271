import { describe, expect, it } from 'vitest';
import { evaluate } from '../../../src/engine/evaluate.ts';
import type { Evaluation } from '../../../src/engine/evaluation.ts';
import type { Project } from '../../../src/engine/project/model.ts';
import { isJointRule, isPierRule } from '../../../src/ui/sheet/joint-rules.ts';
import { jointRows } from '../../../src/ui/sheet/joint-table.ts';
import { pieceNames } from '../../../src/ui/sheet/piece-names.ts';
import { postTable } from '../../../src/ui/sheet/post-table.ts';
import type { PlainRow } from '../../../src/ui/sheet/sheet-table.ts';
import { EXAMPLES, exampleText, soundProject, type Example } from '../../support/files.ts';
import { roundedUp } from '../../browser/support/figures.ts';

function evaluated(project: Project): Evaluation {
  const answer = evaluate(project);
  if (!answer.ok) throw new Error(JSON.stringify(answer.faults));
  return answer.evaluation;
}
const jointsOn = (project: Project, evaluation: Evaluation): readonly PlainRow[] =>
  jointRows(project, evaluation, pieceNames(project, evaluation), 'feet');
const example = (name: Example): { readonly project: Project; readonly evaluation: Evaluation } => {
  const project = soundProject(exampleText(name));
  return { project, evaluation: evaluated(project) };
};

/** Whole numbers as the sheet groups them, made here by hand. */
const grouped = (value: number): string => String(Math.round(value)).replace(/\B(?=(\d{3})+$)/g, ',');

/** Places of the columns of the joint schedule. */
const [WHAT, PULL, ALONG, ACROSS, RATIO, , STATUS] = [0, 1, 2, 3, 4, 5, 6];

describe('the joint schedule', () => {
  it.each(EXAMPLES)('leaves no hardware check of %s without a row that is as bad or worse', (name) => {
    const { project, evaluation } = example(name);
    const rows = jointsOn(project, evaluation);
    const byKey = new Map(evaluation.checks.map((c) => [c.key, c]));
    const printed = rows.map((row) => byKey.get(row.checkKey ?? '')!);
    const asked = evaluation.checks.filter((c) => isJointRule(c.ruleId));
    expect(asked.length).toBeGreaterThan(10);
    const seen = new Set(printed.map((c) => c.status));
    const hidden = asked.filter(({ status }) => status !== 'pass' && !seen.has(status) && !seen.has('fail'));
    expect(hidden.map((c) => c.key)).toEqual([]);
    // where one direction is not given, that is said of the joint, whatever the others come to
    const judged = printed.some((c) => c.status === 'notGiven') ? asked.filter((c) => c.status === 'fail') : asked;
    const worst = (list: typeof asked): number => Math.max(0, ...list.map((c) => c.ratio ?? 0));
    expect(worst(printed)).toBeGreaterThanOrEqual(worst(judged));
    expect(rows.map((row) => row.cells[RATIO])).toEqual(printed.map((c) => roundedUp(c.ratio)));
  });

  it.each(EXAMPLES)('prints of %s only demands and capacities that a check of a joint has', (name) => {
    const { project, evaluation } = example(name);
    const asked = evaluation.checks.filter((c) => isJointRule(c.ruleId));
    const known = new Set(
      asked.map(({ demand, capacity }) =>
        [demand ? grouped(demand.value) : '', capacity ? grouped(capacity.value) : '?'].join(' of '),
      ),
    );
    const cells = jointsOn(project, evaluation).flatMap(({ cells: row }) => [row[PULL]!, row[ALONG]!, row[ACROSS]!]);
    const inPounds = cells.filter((cell) => /^[\d,]+ of [\d,?]+$/.test(cell));
    expect(inPounds.length).toBeGreaterThan(5);
    expect(inPounds.filter((cell) => !known.has(cell))).toEqual([]);
  });

  it('prints the hardest pull of beams on their posts, found here among all rows', () => {
    const { project, evaluation } = example('undersized-shed');
    const hardest = Math.max(
      ...evaluation.checks.filter((c) => c.ruleId === 'beam.tie').map((c) => c.demand?.value ?? 0),
    );
    const row = jointsOn(project, evaluation).find(({ cells }) => cells[WHAT]!.startsWith('beam to post'));
    expect(hardest).toBeGreaterThan(1000);
    expect(row?.cells[PULL]).toBe(`${grouped(hardest)} of ?`);
    expect(row?.cells[STATUS]).toBe('not given');
  });

  it('tells fasteners by number, size and spacing, and the least wood about them', () => {
    const { project } = example('undersized-shed');
    const lags = {
      kind: 'fasteners' as const,
      shoulder: false,
      rows: [
        {
          fastener: 'lag' as const,
          diameterIn: 0.5,
          lengthIn: 10,
          count: 2,
          rows: 1,
          spacingIn: 4,
          endIn: null,
          washerIn: 1.375,
          acts: 'both' as const,
          driven: 'wet' as const,
        },
      ],
    };
    const held: Project = {
      ...project,
      joints: {
        ...project.joints,
        defaults: project.joints.defaults.map((d) => (d.kind === 'stripBeam' ? { ...d, capacity: lags } : d)),
      },
    };
    const row = jointsOn(held, evaluated(held)).find(({ cells }) => cells[WHAT]!.startsWith('strip to beam'));
    expect(row?.cells[WHAT]).toMatch(
      /: 2 lag screws, 1\/2 in by 10 in, 4 in apart, washer 1 3\/8 in, .* deep, .* to the edge, .* to the end$/,
    );
  });

  it('tells what a ledger asks on each foot while nobody has rated its fixings', () => {
    const { project, evaluation } = example('snow-lean-to');
    const values = evaluation.checks.find((c) => c.ruleId === 'ledger.fixing')!.reason!.values;
    const row = jointsOn(project, evaluation).find(({ cells }) => cells[WHAT]!.startsWith('ledger to wall'));
    const plf = (name: string): string => `${Number(values[name]).toFixed(1)} lb/ft`;
    expect(row?.cells[WHAT]).toContain(
      `down ${plf('downPlf')}, up ${plf('upPlf')}, out ${plf('outPlf')}, along ${plf('alongPlf')}`,
    );
    expect(row?.cells[PULL]).toBe(`${Number(values['outPlf']).toFixed(1)} of ? lb/ft`);
    // its rafters stand 21 in. apart, farther than its fixings: one right at a fixing is on it alone; a foot has 12 in.
    const onFixing = (name: string): string => `${grouped((Number(values[name]) * 21) / 12)} lb`;
    expect(row?.cells[WHAT]).toContain(`on each fixing down ${onFixing('downPlf')}, up ${onFixing('upPlf')}`);
  });

  it('tells what a ledger brings to its wall also where its fixings are rated', () => {
    const { project, evaluation } = example('snow-lean-to');
    const capacity = {
      kind: 'rated' as const,
      label: 'invented, of this test',
      parts: { pushLb: 9000, pullLb: 9000, alongLb: 9000, acrossLb: 9000 },
      durationIncluded: 1,
    };
    const defaults = project.joints.defaults.map((joint) =>
      joint.kind === 'ledgerWall' ? { ...joint, capacity } : joint,
    );
    const held = { ...project, joints: { ...project.joints, defaults } };
    const [open, rated] = [evaluation, evaluated(held)].map(({ ledgers }) => ledgers);
    expect(rated).toEqual(open);
    const row = jointsOn(held, evaluated(held)).find(({ cells }) => cells[WHAT]!.startsWith('ledger to wall'));
    expect(row?.cells[STATUS]).toBe('passes');
    expect(row?.cells[WHAT]).toContain(`down ${rated![0]!.forces[0]!.plf.toFixed(1)} lb/ft`);
  });
});

describe('reactions and piers', () => {
  it.each(EXAMPLES)('prints of %s the greatest reaction of every group and the worst ratio of its piers', (name) => {
    const { project, evaluation } = example(name);
    const { rows } = postTable(evaluation, pieceNames(project, evaluation), 'feet');
    const { posts } = evaluation.shelter;
    for (const { cells, checkKey } of rows) {
      const labels = cells[0]!.replace(/^posts? /, '').split(' ');
      const [first, last] = [labels[0]!, labels.at(-1)!];
      const line = posts.find((p) => p.label === first)!.line;
      const inGroup = posts.filter((p) => p.line === line && p.label >= first && p.label <= last).map((p) => p.id);
      const reactions = evaluation.lines.flatMap((l) => l.posts).filter((p) => inGroup.includes(p.postId));
      expect(cells[1]).toBe(grouped(Math.max(...reactions.map((r) => r.greatestDownLb))));
      expect(cells[2]).toBe(grouped(Math.max(...reactions.map((r) => r.greatestUpLb))));
      const piers = evaluation.checks.filter((c) => isPierRule(c.ruleId) && inGroup.includes(c.memberId));
      const worst = piers.find((c) => c.key === checkKey)!;
      const judged = worst.status === 'pass' ? piers : [worst];
      expect(worst.ratio).toBe(Math.max(...judged.map((c) => c.ratio ?? 0)));
      expect(cells[5]).toBe(roundedUp(worst.ratio));
    }
  });

  it('tells sliding, tilting and the concrete of a round pier: volume of a cylinder, bags of 0.45 and 0.6 ft3', () => {
    // closed form: pi/4 d2 h; what a bag makes is common practice, as such bags are marked
    const { project, evaluation } = example('gable');
    const foot = evaluation.shelter.posts[0]!.foot;
    if (foot.kind !== 'pier') throw new Error('it stands on a pier');
    const ft3 = (Math.PI * (foot.shaft.acrossIn / 24) ** 2 * foot.shaft.lengthIn) / 12;
    const [row] = postTable(evaluation, pieceNames(project, evaluation), 'feet').rows;
    expect(row?.below).toContain(
      `${ft3.toFixed(2)} ft³, ${Math.ceil(ft3 / 0.45)} × 60 lb or ${Math.ceil(ft3 / 0.6)} × 80 lb bags`,
    );
    for (const words of ['tilting, depth', 'sliding', 'bearing', 'uplift'])
      expect(row?.below).toMatch(new RegExp(`${words} \\d\\.\\d\\d`));
  });

  it('calls a reaction across not given while nobody has said what holds the shelter that way', () => {
    const { project, evaluation } = example('undersized-shed');
    const { rows } = postTable(evaluation, pieceNames(project, evaluation), 'feet');
    expect(evaluation.lines.flatMap((l) => l.posts).every((p) => p.greatestAcrossLb === null)).toBe(true);
    expect(rows.map(({ cells }) => cells[4])).toEqual(rows.map(() => 'not given'));
  });
});
