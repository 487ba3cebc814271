import * as fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { evaluate } from '../../../src/engine/evaluate.ts';
import type { EvaluateAnswer, Evaluation } from '../../../src/engine/evaluation.ts';
import { EXAMPLES, everythingGivenText, exampleText, soundProject } from '../../support/files.ts';
import { randomProject } from '../../support/random-project.ts';
import { standingProject } from './standing-project.ts';
import { evaluated, PATIENCE_MS, runs } from './whole.ts';

/** Why a row passes without a capacity: nothing pulls bare contact, nothing is missing of a distance. */
const ASKS_NOTHING: ReadonlySet<string> = new Set([
  'nothingAsked',
  'clearOfGround',
  'clearOverCover',
  'standsOff',
  'barrierLies',
]);

/** Everything that must hold of any evaluation; empty when it does. */
function broken({ checks, counts, departures, residual, lines }: Evaluation): readonly string[] {
  const keys = new Set(checks.map((c) => c.key));
  const total = counts.pass + counts.fail + counts.notGiven + counts.outside;
  return [
    ...(keys.size === checks.length ? [] : ['a key twice']),
    ...(total === checks.length ? [] : [`counts sum to ${total}, not ${checks.length}`]),
    ...(departures === checks.filter((c) => c.status === 'pass' && c.capacity && c.reason).length
      ? []
      : ['departures']),
    ...(residual <= 1e-9 ? [] : [`residual ${residual}`]),
    ...lines.flatMap((l) => (l.stands || l.reason ? [] : [`line ${l.lineId} does not stand and nobody says why`])),
    ...checks.flatMap(({ key, status, demand, capacity, ratio, reason, ratios }) => {
      const faults: string[] = [];
      const say = (what: string): void => void faults.push(`${key}: ${what}`);
      if (!key.includes('/')) say('key');
      if (status === 'pass' && !(ratio !== null && ratio <= 1)) say(`passes with ratio ${ratio}`);
      if (status === 'fail' && ratio !== null && !(ratio > 1)) say(`fails with ratio ${ratio}`);
      if (status !== 'pass' && ratio === null && !reason) say(`${status} without a reason`);
      if ((status === 'notGiven' || status === 'outside') && ratio !== null) say(`${status} with a ratio`);
      if (ratio !== null && capacity && ratio !== demand!.value / capacity.value)
        say('ratio is not demand over capacity');
      if (ratio !== null && !capacity && !(demand!.value === 0 && ratio === 0 && ASKS_NOTHING.has(reason?.code ?? '')))
        say('judged without a capacity');
      if (demand && capacity && demand.unit !== capacity.unit) say(`${demand.unit} against ${capacity.unit}`);
      if (demand && !Number.isFinite(demand.value)) say(`demand ${demand.value}`);
      if (ratios.labels.length !== ratios.values.length) say('labels and ratios');
      if (new Set(ratios.labels).size !== ratios.labels.length) say('a label twice');
      const most = ratios.values.reduce((m, r) => Math.max(m, Number.isNaN(r) ? -Infinity : r), -Infinity);
      if (ratios.labels.length > 0 && ratio !== null && most > ratio) say(`a combination has ${most}, row ${ratio}`);
      return faults;
    }),
  ];
}

/** A sound file can still be impossible to place: then every fault names a field. */
const wrongIn = (answer: EvaluateAnswer): readonly string[] =>
  answer.ok ? broken(answer.evaluation) : answer.faults.filter((f) => f.path === '').map((f) => f.code);

describe('evaluate', () => {
  it(
    'answers every random project soundly: four words, unique keys, counts, ratios, balance',
    () => {
      fc.assert(
        fc.property(randomProject(), (project) => {
          expect(wrongIn(evaluate(project))).toEqual([]);
        }),
        { seed: 2026, numRuns: runs(25, 400) },
      );
    },
    PATIENCE_MS,
  );

  it(
    'answers shelters of known wood soundly, most of whose lines stand and are judged',
    () => {
      const numRuns = runs(10, 200);
      let standing = 0;
      fc.assert(
        fc.property(standingProject(), (project) => {
          const answer = evaluate(project);
          const lines = answer.ok ? answer.evaluation.lines : [];
          standing += lines.filter((l) => l.stands && l.posts.length > 0).length;
          expect(wrongIn(answer)).toEqual([]);
        }),
        { seed: 2027, numRuns },
      );
      expect(standing).toBeGreaterThan(numRuns);
    },
    PATIENCE_MS,
  );

  it.each(EXAMPLES)('answers the example %s soundly', (name) => {
    expect(broken(evaluated(soundProject(exampleText(name))))).toEqual([]);
  });

  it('does not change the project that it is given', () => {
    const project = soundProject(exampleText('lean-to'));
    const before = JSON.stringify(project);
    evaluated(project);
    expect(JSON.stringify(project)).toBe(before);
  });
});

describe('the example files', () => {
  const counts = (text: string) => evaluated(soundProject(text)).counts;

  it('the demo passes: every count but that of passes is zero', () => {
    const { pass, ...others } = counts(exampleText('firewood-shed'));
    expect(Object.values(others)).toEqual([0, 0, 0]);
    expect(pass).toBeGreaterThan(500);
  });

  it('the lean-to fails nowhere under drifted and slid snow, and still lacks something', () => {
    const { fail, outside, notGiven } = counts(exampleText('lean-to'));
    expect([fail, outside]).toEqual([0, 0]);
    expect(notGiven).toBeGreaterThan(0);
  });

  it('the undersized shed fails on beams, braces, posts, piers and in sway', () => {
    const failing = evaluated(soundProject(exampleText('undersized-shed'))).checks.filter((c) => c.status === 'fail');
    const rules = new Set(failing.map((c) => c.ruleId.split('.')[0]));
    expect(['beam', 'brace', 'post', 'pier', 'sway'].filter((link) => !rules.has(link))).toEqual([]);
  });

  it('the fixture with everything given passes every check', () => {
    const { pass, ...others } = counts(everythingGivenText());
    expect(others).toEqual({ fail: 0, notGiven: 0, outside: 0 });
    expect(pass).toBeGreaterThan(200);
  });
});
