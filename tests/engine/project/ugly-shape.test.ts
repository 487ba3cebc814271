import { describe, expect, it } from 'vitest';
import { say } from '../../../src/data/words/say.ts';
import { parseProject } from '../../../src/engine/project/parse.ts';
import { exampleText } from '../../support/files.ts';
import { at, listAt, type Raw, rawShed } from './raw.ts';

const faultsOf = (input: unknown) => {
  const answer = parseProject(input);
  return answer.ok ? [] : answer.faults;
};
const found = (input: unknown) => faultsOf(input).map(({ path, code }) => [path, code]);

const spoilt = (spoil: (raw: Raw) => void): Raw => {
  const raw = rawShed();
  spoil(raw);
  return raw;
};

describe('a text that is no project', () => {
  const text = exampleText('firewood-shed');
  it.each([
    ['an empty file', '', 'fileEmpty'],
    ['a file of blanks', ' \n\t', 'fileEmpty'],
    ['a letter', 'Dear building department,', 'notJson'],
    ['a picture', '\u0089PNG\r\n\u001a', 'notJson'],
    ['a file cut in the middle', text.slice(0, Math.floor(text.length / 2)), 'fileCutOff'],
    ['a file cut at its last bracket', text.trimEnd().slice(0, -1), 'fileCutOff'],
    ['a file cut inside a word', text.slice(0, text.indexOf('Firewood') + 3), 'fileCutOff'],
    ['a file with a comma too many', text.replace('"formatVersion": 1,', '"formatVersion": 1,,'), 'notJson'],
    ['a list', '[1, 2]', 'notAnObject'],
    ['a number', '42', 'notAnObject'],
    ['the word null', 'null', 'notAnObject'],
    ['a file of three million characters', `"${'x'.repeat(3_000_000)}"`, 'fileTooLarge'],
    ['a million open brackets', '['.repeat(1_000_000), 'notJson'],
  ])('%s is refused by name', (_, input, code) => {
    expect(found(input)).toEqual([['', code]]);
  });

  it.each([undefined, 7, true, Symbol('x'), () => 1, new Date(0), []])(
    '%s is no project and does not throw',
    (input) => {
      expect(parseProject(input).ok).toBe(false);
    },
  );

  it('an object whose fields cannot be read is refused without a throw', () => {
    const trap = {
      formatVersion: 1,
      get title(): never {
        throw new Error('no');
      },
    };
    expect(found(trap)).toEqual([['', 'cannotBeRead']]);
  });
});

describe('versions', () => {
  it.each([
    ['missing', undefined, 'versionMissing'],
    ['newer', 2, 'versionNewer'],
    ['text', '1', 'versionUnknown'],
    ['zero', 0, 'versionUnknown'],
    ['broken', 1.5, 'versionUnknown'],
    ['null', null, 'versionUnknown'],
  ])('a formatVersion that is %s is refused by name', (_, version, code) => {
    expect(found(spoilt((raw) => void (raw['formatVersion'] = version)))).toEqual([['formatVersion', code]]);
  });
});

describe('values that no file should hold', () => {
  it('nesting past forty levels is refused, in a text or as an endless loop', () => {
    const deep = spoilt((raw) => void (raw['extras'] = JSON.parse(`${'{"a":'.repeat(60)}1${'}'.repeat(60)}`) as Raw));
    expect(found(deep)).toEqual([['extras.a.a', 'tooDeep']]);
    const loop = spoilt((raw) => void (at(raw, 'extras')['round'] = raw));
    expect(found(loop).map(([, code]) => code)).toEqual(['tooDeep']);
  });

  it('half a million values are refused', () => {
    const many = spoilt((raw) => void (raw['trees'] = Array.from({ length: 500_001 }, () => 0)));
    expect(found(many)).toEqual([['', 'tooManyValues']]);
  });

  it('keys that reach into the program are refused wherever they stand, and change nothing', () => {
    const text = exampleText('firewood-shed').replace(
      '"extras": {}',
      '"extras": { "a": { "__proto__": { "polluted": 1 } } }',
    );
    expect(found(text)).toEqual([['extras.a.__proto__', 'forbiddenKey']]);
    expect(found(spoilt((raw) => void (at(raw, 'extras')['constructor'] = 1)))).toEqual([
      ['extras.constructor', 'forbiddenKey'],
    ]);
    expect(Object.hasOwn(Object.prototype, 'polluted')).toBe(false);
  });

  it('numbers that are not finite and things that are not data are refused with their path', () => {
    const raw = rawShed();
    at(raw, 'members', 'post-2')['xIn'] = Infinity;
    at(raw, 'site', 'groundSnowPsf')['value'] = NaN;
    expect(found(raw).sort()).toEqual([
      ['members[post-2].xIn', 'notFiniteNumber'],
      ['site.groundSnowPsf.value', 'notFiniteNumber'],
    ]);
    expect(found({ ...rawShed(), extras: { when: new Date(0) } })).toEqual([['extras.when', 'notPlainData']]);
  });
});

describe('fields of the wrong shape', () => {
  const CASES: readonly (readonly [string, (raw: Raw) => void, string, string])[] = [
    ['a missing field', (r) => void delete at(r, 'members', 'post-2')['xIn'], 'members[post-2].xIn', 'missingField'],
    ['a missing part', (r) => void delete r['site'], 'site', 'missingField'],
    ['an unknown key at the top', (r) => void (r['colour'] = 'red'), 'colour', 'unknownKey'],
    [
      'an unknown key deep down',
      (r) => void (at(r, 'logs', 'log-1', 'stations', 1)['knots'] = 2),
      'logs[log-1].stations[1].knots',
      'unknownKey',
    ],
    [
      'an unknown key that is no plain word',
      (r) => void (at(r, 'site')['snow load'] = 2),
      'site["snow load"]',
      'unknownKey',
    ],
    [
      'text for a number',
      (r) => void (at(r, 'members', 'post-2')['xIn'] = '13 ft'),
      'members[post-2].xIn',
      'wrongType',
    ],
    [
      'null where something must be said',
      (r) => void (at(r, 'members', 'post-2')['xIn'] = null),
      'members[post-2].xIn',
      'wrongType',
    ],
    [
      'a number for yes or no',
      (r) => void (at(r, 'calculation')['doubledLateralSoil'] = 0),
      'calculation.doubledLateralSoil',
      'wrongType',
    ],
    ['an object for a list', (r) => void (r['logs'] = {}), 'logs', 'wrongType'],
    [
      'a broken number of plies',
      (r) => void (at(r, 'groups', 'rafters', 'stock')['plies'] = 1.5),
      'groups[rafters].stock.plies',
      'notWhole',
    ],
    ['an unknown word', (r) => void (at(r, 'site', 'exposure')['value'] = 'E'), 'site.exposure.value', 'notAllowed'],
    [
      'an unknown role',
      (r) => void (at(r, 'members', 'post-2')['role'] = 'column'),
      'members[post-2].role',
      'notAllowed',
    ],
    [
      'an unknown stock',
      (r) => void (at(r, 'groups', 'posts', 'stock')['kind'] = 'steel'),
      'groups[posts].stock.kind',
      'notAllowed',
    ],
    [
      'an unknown fixity',
      (r) => void (at(r, 'groups', 'posts', 'foot', 'fixity')['along'] = 'stiff'),
      'groups[posts].foot.fixity.along',
      'notAllowed',
    ],
    [
      'a fixity below zero',
      (r) => void (at(r, 'groups', 'posts', 'foot', 'fixity')['along'] = { lbInPerRad: -1 }),
      'groups[posts].foot.fixity.along.lbInPerRad',
      'notAbove',
    ],
    [
      'too much snow',
      (r) => void (at(r, 'site', 'groundSnowPsf')['value'] = 5500),
      'site.groundSnowPsf.value',
      'tooBig',
    ],
    [
      'snow below zero',
      (r) => void (at(r, 'site', 'groundSnowPsf')['value'] = -1),
      'site.groundSnowPsf.value',
      'tooSmall',
    ],
    [
      'a log of no thickness',
      (r) => void (at(r, 'logs', 'log-1', 'stations', 0)['diameterIn'] = 0),
      'logs[log-1].stations[0].diameterIn',
      'notAbove',
    ],
    [
      'a name too long for the sheet',
      (r) => void (at(r, 'title')['name'] = 'W'.repeat(121)),
      'title.name',
      'textTooLong',
    ],
    ['no name', (r) => void (at(r, 'title')['name'] = ''), 'title.name', 'textTooShort'],
    [
      'a log measured once',
      (r) => void listAt(r, 'logs', 'log-2', 'stations').splice(1),
      'logs[log-2].stations',
      'listTooShort',
    ],
    [
      'too many frame lines',
      (r) =>
        void listAt(r, 'supportLines').push(
          ...Array.from({ length: 6 }, (_, i) => ({ ...at(r, 'supportLines', 'line-low'), id: `line-${i}` })),
        ),
      'supportLines',
      'listTooLong',
    ],
    ['an id with a blank', (r) => void (at(r, 'members', 'post-2')['id'] = 'post 2'), 'members[#3].id', 'badId'],
    [
      'a day the calendar lacks',
      (r) => void (at(r, 'code', 'loads')['date'] = '2026-02-30'),
      'code.loads.date',
      'badDate',
    ],
    [
      'a joint that cannot be read',
      (r) => void listAt(r, 'joints', 'own').push({ key: 'braceTop', capacity: null }),
      'joints.own[braceTop].key',
      'badJointKey',
    ],
  ];
  it.each(CASES)('%s is named with its path', (_, spoil, path, code) => {
    expect(found(spoilt(spoil))).toEqual([[path, code]]);
  });

  it('all faults come at once, not one after another', () => {
    const raw = spoilt((r) => CASES.slice(7, 12).forEach(([, spoil]) => spoil(r)));
    expect(found(raw)).toHaveLength(5);
  });

  it('hundreds of faults are cut short and counted', () => {
    const faults = faultsOf(spoilt((r) => void (r['members'] = Array.from({ length: 399 }, () => ({ role: 'beam' })))));
    expect(faults.at(-1)).toMatchObject({ code: 'moreFaults' });
    expect(faults.length).toBeLessThan(320);
  });

  it('every sentence is whole: no blank is left unfilled', () => {
    const sentences = CASES.flatMap(([, spoil]) => faultsOf(spoilt(spoil)).map((each) => say(each)));
    expect(sentences).toHaveLength(CASES.length);
    expect(sentences.filter((sentence) => /[{}]/.test(sentence.replace(/"[^"]*"/g, '')))).toEqual([]);
  });

  it('a sentence says what stands there, what is allowed and what to do', () => {
    const [fault] = faultsOf(spoilt((r) => void (at(r, 'site', 'exposure')['value'] = 'E')));
    expect(fault && say(fault)).toBe('Here stands "E"; allowed are "B", "C", "D". Choose one of these.');
  });
});
