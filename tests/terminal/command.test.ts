import { describe, expect, it } from 'vitest';
import { answerCommand } from '../../src/terminal/command.ts';
import { explain } from '../../src/engine/explain.ts';
import { EXAMPLES, everythingGivenText, exampleText, soundProject } from '../support/files.ts';
import { evaluated, rowOf } from '../engine/whole/whole.ts';

const FILES: Readonly<Record<string, string>> = {
  ...Object.fromEntries(EXAMPLES.map((name) => [name, exampleText(name)])),
  'everything-given': everythingGivenText(),
  'cut-off': exampleText('firewood-shed').slice(0, 900),
  'not a project': '[1, 2]',
  'unknown wood': exampleText('firewood-shed').replace('"woodId": "larch"', '"woodId": "lead"'),
  'post beside the beam': exampleText('firewood-shed').replace('"xIn": 156', '"xIn": 500'),
};
const command = (...words: readonly string[]) =>
  answerCommand(words, (file) => (FILES[file] === undefined ? { reason: 'no such file' } : { text: FILES[file] }));
const KEY = 'beam.bending/beam-high/post-1~post-2';

describe('the number that the command ends with', () => {
  it.each([
    ['everything-given', 0, 'every check passes'],
    ['undersized-shed', 1, 'a check fails'],
    ['firewood-shed', 0, 'every check passes'],
    ['framed-shed', 3, 'something is not given'],
    ['lean-to', 3, 'something is outside the method'],
    ['gable', 3, 'something is not given'],
    ['snow-lean-to', 3, 'something is not given'],
    ['cut-off', 2, 'the file is cut off'],
    ['not a project', 2, 'the file is no project'],
    ['unknown wood', 2, 'the file contradicts itself'],
    ['post beside the beam', 2, 'the shelter cannot be placed'],
    ['nowhere', 2, 'there is no file'],
  ] as const)('for %s is %i: %s', (file, exit, _why) => {
    expect(command(file).exit).toBe(exit);
    expect(command(file, '--json').exit).toBe(exit);
  });

  it('is the same whether figures or the steps of one check are asked for', () => {
    expect(command('firewood-shed', '--steps', KEY).exit).toBe(0);
    expect(command('framed-shed', '--steps', KEY).exit).toBe(3);
  });

  it.each([
    [[]],
    [['firewood-shed', 'lean-to']],
    [['firewood-shed', '--colour']],
    [['firewood-shed', '--json', '--steps', KEY]],
    [['firewood-shed', '--combination', '1']],
  ])('is 2 with a word on how to ask, for %j', (words) => {
    const { exit, out, err } = command(...words);
    expect([exit, out]).toEqual([2, '']);
    expect(err).toContain('usage:');
  });
});

describe('a refused file', () => {
  it('is answered with the path of every fault in it, on the other stream', () => {
    const { out, err } = command('unknown wood');
    expect(out).toBe('');
    expect(err).toMatch(/logs\[.*\]\.woodId: .*lead/);
    expect(command('post beside the beam').err).toMatch(/members\[post-2\]\.xIn: /);
    expect(command('cut-off').err).toContain('cut off');
  });
});

describe('the plain output', () => {
  const lines = (file: string) => command(file).out.split('\n');

  it('begins with the name, the fingerprint and what the header of the sheet says', () => {
    const project = soundProject(exampleText('framed-shed'));
    const { fingerprint, counts, checks } = evaluated(project);
    const [first, second, third] = lines('framed-shed');
    expect(first).toContain('Shed that frames hold both ways');
    expect(second).toContain(fingerprint);
    expect(third).toContain(`not complete: ${counts.notGiven} not given`);
    expect(third).toContain(`${counts.pass} of ${checks.length} checks pass`);
    expect(lines('everything-given')[2]).not.toMatch(/not|outside/);
    expect(lines('undersized-shed')[2]).toMatch(/^does not pass: \d+; /);
  });

  it('names every row that does not pass, with its reason', () => {
    const { checks } = evaluated(soundProject(exampleText('undersized-shed')));
    const { out } = command('undersized-shed');
    const unnamed = checks.filter((c) => c.status !== 'pass' && !out.includes(c.key));
    expect(unnamed).toEqual([]);
    expect(out).toContain('Nobody has said what this joint can carry.');
  });

  it('lists the worst of every link from roof to ground and ends no line in blanks', () => {
    const all = lines('framed-shed');
    const links = all.slice(all.findIndex((l) => l.startsWith('Worst of each link')) + 1);
    const order = ['site', 'sheet', 'purlin', 'rafter', 'strip', 'beam', 'brace', 'post', 'pier', 'sway along'];
    const found = order.map((link) => links.findIndex((l) => l.startsWith(`  ${link}  `)));
    expect(found).toEqual([...found].sort((a, b) => a - b));
    expect(found[0]).toBe(0);
    expect(all.filter((l) => l.endsWith(' '))).toEqual([]);
  });

  it('never promises that anything is safe', () => {
    for (const file of ['firewood-shed', 'everything-given']) {
      expect(command(file).out).toContain('checks pass');
      expect(command(file).out).not.toMatch(/\bsafe\b/i);
    }
  });
});

describe('--json', () => {
  it.each([...EXAMPLES, 'everything-given'])('holds the whole evaluation of %s, numbers to the last digit', (file) => {
    const evaluation = evaluated(soundProject(FILES[file]!));
    const report: unknown = JSON.parse(command(file, '--json').out);
    expect(report).toMatchObject({
      formatVersion: 1,
      fingerprint: evaluation.fingerprint,
      programVersion: evaluation.programVersion,
      dataVersion: evaluation.dataVersion,
      counts: evaluation.counts,
      loads: {
        pressures: evaluation.loads.pressures.map(({ name, value, unit }) => ({ name, value, unit })),
        combinations: evaluation.loads.combinations.map(({ id, factors }) => ({ id, factors })),
      },
      lines: evaluation.lines.map(({ lineId, posts, members, braces }) => ({ lineId, posts, members, braces })),
      checks: evaluation.checks.map(({ key, ruleId, memberId, status, ratio, demand, capacity }) => ({
        key,
        ruleId,
        memberId,
        status,
        ratio,
        demand,
        capacity,
      })),
    });
  });

  it('gives every row its ratio in every combination and brace model, null where nothing was asked', () => {
    const row = rowOf(evaluated(soundProject(exampleText('firewood-shed'))), KEY);
    const report: { checks: { key: string; ratios: Record<string, number | null> }[] } = JSON.parse(
      command('firewood-shed', '--json').out,
    );
    const { ratios } = report.checks.find((c) => c.key === KEY)!;
    expect(Object.keys(ratios)).toEqual(row.ratios.labels);
    expect(Object.values(ratios)).toEqual(Array.from(row.ratios.values, (r) => (Number.isNaN(r) ? null : r)));
    expect(ratios[`${row.combinationId}|${row.scenario}`]).toBe(row.ratio);
  });
});

describe('--steps', () => {
  it('writes the steps one under the other, what a number comes from farther in', () => {
    const project = soundProject(exampleText('firewood-shed'));
    const answer = explain(project, KEY);
    const { out } = command('firewood-shed', '--steps', KEY);
    const steps = answer.ok ? answer.steps : [];
    expect(steps.length).toBeGreaterThan(5);
    for (const step of steps) expect(out).toContain(`\n${step.symbol} = ${step.formula}\n`);
    expect(out).toContain('\n        M = sum of factor × case\n');
    expect(out.trimEnd().split('\n').at(-1)).toMatch(/^ {2}= 0\.\d+ {4}/);
  });

  it('takes a combination, and tells its own ratio', () => {
    const governing = command('firewood-shed', '--steps', KEY).out;
    const dead = command('firewood-shed', '--steps', KEY, '--combination', '1').out;
    expect(dead).toContain('in combination 1');
    expect(dead).not.toBe(governing);
    expect(dead).toMatch(/\nratio 0\.\d\d\n/);
  });

  it('refuses a key or a combination that is not there, in words', () => {
    expect(command('firewood-shed', '--steps', 'beam.bending/nobody/whole')).toMatchObject({ exit: 2, out: '' });
    expect(command('firewood-shed', '--steps', KEY, '--combination', 'none').err).toContain('There is no check named');
  });

  it('says of a row without a number that none is computed', () => {
    expect(command('gable', '--steps', 'sway.across/shelter/whole').out).toContain(
      'No number is computed for this row.',
    );
  });
});
