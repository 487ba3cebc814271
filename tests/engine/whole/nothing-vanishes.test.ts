import { describe, expect, it } from 'vitest';
import type { Cut, Given, Project, SupportLine } from '../../../src/engine/project/model.ts';
import type { CheckRow } from '../../../src/engine/evaluation.ts';
import { exampleText, soundProject } from '../../support/files.ts';
import { evaluated, rowOf } from './whole.ts';

const shed: Project = soundProject(exampleText('firewood-shed'));
const blank: Given<never> = { value: null, givenBy: 'guess', date: null };

const passing = (project: Project, isOf: (row: CheckRow) => boolean): readonly string[] =>
  evaluated(project)
    .checks.filter((row) => row.status === 'pass' && isOf(row))
    .map((row) => row.key);

/** Rules that a slenderness, a depth or how straight a log is decides, whatever lies on the roof. */
const BY_SIZE: readonly string[] = ['post.slender', 'brace.slender', 'tie.slender', 'post.housing', 'beam.crook'];
const isByLoad = ({ ruleId, combinationId }: CheckRow): boolean => combinationId !== '' && !BY_SIZE.includes(ruleId);

describe('a load that is not known lets nothing pass', () => {
  it.each(['windMph', 'groundSnowPsf', 'exposure', 'snowThermalCt'] as const)(
    'without %s every row that loads decide is not given, with its demand so far',
    (field) => {
      const project: Project = { ...shed, site: { ...shed.site, [field]: blank } };
      expect(passing(project, isByLoad)).toEqual([]);
      const bending = rowOf(evaluated(project), 'beam.bending/beam-high/post-1~post-2');
      expect(bending.status).toBe('notGiven');
      expect(bending.demand!.value).toBeGreaterThan(0);
      expect(bending.ratio).toBeNull();
    },
  );

  it('a guess counts as known', () => {
    const guessed: Project = {
      ...shed,
      site: { ...shed.site, groundSnowPsf: { ...shed.site.groundSnowPsf, givenBy: 'guess' } },
    };
    expect(rowOf(evaluated(guessed), 'beam.bending/beam-high/post-1~post-2').status).toBe('pass');
  });
});

describe('a weight that is not known stops the line that it lies on', () => {
  const withoutStock = (role: 'rafter' | 'purlin'): Project => ({
    ...shed,
    groups: shed.groups.map((g) => (g.role === role ? { ...g, stock: null } : g)),
  });
  const withStrip = (strip: (line: SupportLine) => SupportLine): Project => ({
    ...shed,
    supportLines: shed.supportLines.map(strip),
  });
  const isOfFrame = ({ ruleId }: CheckRow): boolean =>
    (/^(beam|post|brace)\./.test(ruleId) && !['post.clearance', 'post.standOff'].includes(ruleId)) ||
    /^pier\.(bearing|uplift|sideways|sliding)/.test(ruleId);

  it.each([
    ['rafters', withoutStock('rafter')],
    ['purlins', withoutStock('purlin')],
    ['a strip', withStrip((l) => (l.kind === 'frame' && l.strip ? { ...l, strip: { ...l.strip, stock: null } } : l))],
    [
      'a strip of a wood that nobody knows',
      withStrip((l) =>
        l.kind === 'frame' && l.strip?.stock?.kind === 'sawn'
          ? { ...l, strip: { ...l.strip, stock: { ...l.strip.stock, species: 'Driftwood' } } }
          : l,
      ),
    ],
  ])('%s without weight', (_, project) => {
    expect(passing(project, isOfFrame)).toEqual([]);
    expect(rowOf(evaluated(project), 'frame.stands/line-high/whole').status).toBe('notGiven');
  });

  it('a typed weight of the strip, for every line at once, is enough', () => {
    const typed = withStrip((l) => (l.kind === 'frame' && l.strip ? { ...l, strip: { ...l.strip, stock: null } } : l));
    const project: Project = {
      ...typed,
      instead: [
        { what: 'stripHeavyPlf', of: null, value: 1.5, why: 'weighed' },
        { what: 'stripLightPlf', of: null, value: 1, why: 'weighed' },
      ],
    };
    expect(rowOf(evaluated(project), 'beam.bending/beam-high/post-1~post-2').status).toBe('pass');
  });
});

describe('a cut that is not computed says so', () => {
  it.each(['post-1', 'brace-1'])('a notch made by hand in %s is outside the method', (member) => {
    const cut: Cut = {
      id: 'notch',
      member,
      kind: 'notch',
      centreIn: 20,
      lengthIn: 4,
      depthIn: 3,
      angleDeg: 0,
      by: 'hand',
    };
    const rows = evaluated({ ...shed, cuts: [cut] }).checks.filter((row) => row.status === 'outside');
    expect(rows.map((row) => row.memberId)).toEqual([member]);
  });
});
