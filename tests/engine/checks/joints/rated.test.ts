import * as fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { ratedHolder } from '../../../../src/engine/checks/joints/holder.ts';
import { ratedPart, type SaidCapacity } from '../../../../src/engine/checks/joints/rated.ts';
import { fromFrame, ratedSite } from '../../../../src/engine/checks/joints/rated-site.ts';
import { MisuseError } from '../../../../src/engine/errors.ts';
import type { LineResponse } from '../../../../src/engine/frame/line-frame.ts';
import { capacityOf, jointKey } from '../../../../src/engine/project/joint-capacity.ts';
import type { Project } from '../../../../src/engine/project/model.ts';
import { plainShed } from '../../../support/plain-shed.ts';
import { lineBench } from '../../frame/line-bench.ts';
import { redoFaults } from '../redo-step.ts';
import { handResponse, rowOver } from '../sites.ts';

const rated = (pullLb: number | null, durationIncluded = 1): SaidCapacity => ({
  kind: 'rated',
  label: 'plate, invented',
  parts: { pushLb: 900, pullLb, alongLb: 500, acrossLb: 300 },
  durationIncluded,
});

/** Capacity of a part; NaN where there is none. */
const capacity = (given: SaidCapacity, part: 'push' | 'pull' | 'along' | 'across', CD: number): number => {
  const answer = ratedPart(given, part, CD);
  return answer.ok ? answer.capacityLb : NaN;
};

describe('a rated joint', () => {
  // Own rule: min(1, CD / CD held). NDS 2018 Table 2.3.2: 0.9 permanent, 1.15 snow, 1.6 wind.
  it.each([
    [1, 0.9, 900],
    [1, 1, 1000],
    [1, 1.6, 1000],
    [1.15, 0.9, 782.609],
    [1.15, 1.15, 1000],
    [1.6, 1.15, 718.75],
    [1.6, 0.9, 562.5],
  ])('rated at %d is cut for longer loads and never raised for shorter ones: CD %d', (held, CD, expected) => {
    expect(capacity(rated(1000, held), 'pull', CD)).toBeCloseTo(expected, 3);
  });

  it('has a value of its own for each direction', () => {
    expect((['push', 'pull', 'along', 'across'] as const).map((part) => capacity(rated(700), part, 1))).toEqual([
      900, 700, 500, 300,
    ]);
  });

  it('a shorter load never has less capacity, and none has more than was typed', () => {
    const CD = fc.double({ min: 0.9, max: 2, noNaN: true });
    fc.assert(
      fc.property(CD, CD, CD, (held, one, other) => {
        const [longer, shorter] = [Math.min(one, other), Math.max(one, other)];
        const given = rated(1000, held);
        expect(capacity(given, 'pull', longer)).toBeLessThanOrEqual(capacity(given, 'pull', shorter));
        expect(capacity(given, 'pull', shorter)).toBeLessThanOrEqual(1000);
      }),
      { seed: 161 },
    );
  });

  it('refuses a duration that is none', () => {
    expect(() => ratedPart(rated(1000), 'pull', 0)).toThrow(MisuseError);
  });

  it('each step can be redone by hand', () => {
    const given = rated(1000, 1.6);
    expect(redoFaults((note) => capacityWith(given, note))).toEqual([]);
  });
});

const capacityWith = (given: SaidCapacity, note: Parameters<typeof ratedPart>[3]): number => {
  const answer = ratedPart(given, 'pull', 1.15, note);
  return answer.ok ? answer.capacityLb : NaN;
};

describe('a joint that cannot be judged says why', () => {
  const reasonOf = (given: SaidCapacity, demandLb: number): readonly [string, string] | null => {
    const answer = ratedPart(given, 'pull', 1.15);
    const verdict = answer.ok ? null : answer.verdict(demandLb);
    return verdict ? [verdict.status, verdict.reason!.code] : null;
  };

  it('nobody said, a direction left out', () => {
    expect(reasonOf(null, 100)).toEqual(['notGiven', 'capacityNotGiven']);
    expect(reasonOf(rated(null), 100)).toEqual(['notGiven', 'partNotGiven']);
  });

  it('bare contact, or a pull of zero, fails as soon as it is pulled and is no question before', () => {
    for (const given of [{ kind: 'none' } as const, rated(0)]) {
      expect(reasonOf(given, 100)).toEqual(['fail', 'contactOnly']);
      expect(reasonOf(given, 0)).toBeNull();
    }
  });
});

describe('a rated joint of a line', () => {
  const { context } = lineBench(plainShed());
  const site = (given: SaidCapacity, force: (duration: number) => number) =>
    ratedSite({
      ruleId: 'brace.tie',
      memberId: 'm',
      place: { kind: 'joint', name: 'j' },
      holder: ratedHolder(given),
      part: 'pull',
      force: fromFrame('pull', (r: LineResponse) => force(r.combination.durationFactor)),
    });
  const responses = [0.9, 1.15, 1.6].map((durationFactor) =>
    handResponse(context, [], { id: `CD-${durationFactor}`, durationFactor }),
  );

  it('is governed by ratio, not by force: a longer, smaller pull may be the worse one', () => {
    const row = rowOver(
      site(rated(1000, 1.6), (CD) => (CD === 1.6 ? 800 : CD === 0.9 ? 500 : 100)),
      responses,
    )!;
    expect(row.combinationId).toBe('CD-0.9');
    expect(row.ratio!).toBeCloseTo(500 / 562.5, 9);
    expect(row.spareLb!).toBeCloseTo(62.5, 9);
  });

  it('without a capacity shows the greatest demand of all', () => {
    const row = rowOver(
      site(null, (CD) => 100 * CD),
      responses,
    )!;
    expect([row.status, row.demand!.value]).toEqual(['notGiven', 160]);
  });

  it('does not take the rounding of the analysis for a demand', () => {
    const still = rowOver(
      site({ kind: 'none' }, () => 1e-9),
      responses,
    )!;
    expect(still).toMatchObject({ status: 'pass', demand: { value: 0, unit: 'lb' }, capacity: null, ratio: 0 });
    expect([still.reason?.code, still.spareLb]).toEqual(['nothingAsked', null]);
    expect(
      rowOver(
        site({ kind: 'none' }, () => 1e-3),
        responses,
      )!.status,
    ).toBe('fail');
  });
});

describe('which capacity a joint has', () => {
  const project: Project = {
    ...plainShed(),
    joints: {
      defaults: [{ kind: 'beamPost', capacity: rated(700) }],
      own: [{ key: 'beamPost/beam-0-0/post-0-0', capacity: null }],
    },
  };

  it('its own where it has one, else that of its kind, else nobody said', () => {
    expect(capacityOf(project, 'beamPost', jointKey('beamPost', 'beam-0-0', 'post-0-1'))).toEqual(rated(700));
    expect(capacityOf(project, 'beamPost', jointKey('beamPost', 'beam-0-0', 'post-0-0'))).toBeNull();
    expect(capacityOf(project, 'postFoot', jointKey('postFoot', 'post-0-0'))).toBeNull();
  });
});
