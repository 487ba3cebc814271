import { describe, expect, it } from 'vitest';
import { say } from '../../../src/data/words/say.ts';
import { parseProject } from '../../../src/engine/project/parse.ts';
import { readPath } from '../../../src/engine/project/paths.ts';
import { LEAN_TO_CASES, SHED_CASES } from './contradictions.ts';
import { at, type Raw, rawLeanTo, rawShed } from './raw.ts';

const faultsOf = (raw: Raw) => {
  const answer = parseProject(raw);
  return answer.ok ? [] : answer.faults;
};

const spoilt = (raw: Raw, spoil: (raw: Raw) => void): Raw => {
  spoil(raw);
  return raw;
};

describe('files of the right shape that contradict themselves', () => {
  it.each(SHED_CASES)('%s is named with its path', (_, spoil, path, code) => {
    expect(faultsOf(spoilt(rawShed(), spoil))).toContainEqual(expect.objectContaining({ path, code }));
  });

  it.each(LEAN_TO_CASES)('%s is named with its path', (_, spoil, path, code) => {
    expect(faultsOf(spoilt(rawLeanTo(), spoil))).toContainEqual(expect.objectContaining({ path, code }));
  });

  it('two heights on one roof are refused with both paths', () => {
    const raw = spoilt(
      rawShed(),
      (r) => void (at(r, 'supportLines', 'line-low')['height'] = { of: 'bearing', zIn: 87 }),
    );
    const faults = faultsOf(raw);
    expect(faults.map(({ path, code }) => [path, code])).toEqual([
      ['supportLines[line-high].height', 'roofWithTwoHeights'],
      ['supportLines[line-low].height', 'roofWithTwoHeights'],
    ]);
    expect(faults[0] && say(faults[0])).toContain('supportLines[line-low].height');
  });

  it('every sentence is whole: no blank is left unfilled', () => {
    const faults = [
      ...SHED_CASES.flatMap(([, spoil]) => faultsOf(spoilt(rawShed(), spoil))),
      ...LEAN_TO_CASES.flatMap(([, spoil]) => faultsOf(spoilt(rawLeanTo(), spoil))),
    ];
    expect(faults.length).toBeGreaterThanOrEqual(SHED_CASES.length + LEAN_TO_CASES.length);
    expect(faults.map((each) => say(each)).filter((sentence) => /[{}]/.test(sentence))).toEqual([]);
  });

  it('every path leads to a field of the file it came from', () => {
    const lost = SHED_CASES.flatMap(([, spoil]) => {
      const raw = spoilt(rawShed(), spoil);
      return faultsOf(raw).filter(({ path }) => readPath(raw, path) === null);
    });
    expect(lost).toEqual([]);
  });
});
