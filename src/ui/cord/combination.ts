import { ASD_COMBINATIONS } from '../../data/loads/combinations.ts';
import { MESSAGES, type MessageCode } from '../../data/words/en.ts';
import { say } from '../../data/words/say.ts';
import type { CheckRow, LoadReport } from '../../engine/evaluation.ts';
import type { Message } from '../../engine/message.ts';
import { lowerCase } from './letter-case.ts';

/** A combination as a sentence: its words, the patterns of load in it, and how the braces were taken. */
export function combinationInWords(
  loads: LoadReport,
  { combinationId, scenario }: Pick<CheckRow, 'combinationId' | 'scenario'>,
): string {
  if (combinationId === '') return '';
  const [rule, ...caseIds] = combinationId.split('+');
  const known = loads.combinations.find(({ id }) => id === combinationId);
  const standard = ASD_COMBINATIONS.find(({ id }) => id === rule);
  const service = rule === undefined ? undefined : SERVICE[rule];
  const head = known ? say(known.words) : standard ? MESSAGES[standard.words] : (service ?? '');
  const cases = caseIds.flatMap((id) => {
    const found = loads.cases.find((each) => each.id === id);
    return found ? [say(sayCase(found.words))] : [];
  });
  const patterns = cases.length > 0 ? `: ${cases.map(lowerCase).join('; ')}` : '';
  return `${head}${patterns}${scenario === '' || head === '' ? scenario : `; ${scenario}`}`;
}

/** Patterns of load are named by where the load lies: `endHalf-3`, `odd`. */
const PATTERNS: readonly (readonly [RegExp, MessageCode])[] = [
  [/^endFull-(\d+)$/, 'snowEndFull'],
  [/^endHalf-(\d+)$/, 'snowEndHalf'],
  [/^pairFull-(\d+)$/, 'snowPairFull'],
  [/^pair-(\d+)$/, 'livePairOnly'],
  [/^odd$/, 'liveOddOnly'],
  [/^even$/, 'liveEvenOnly'],
];

/** A load case whose pattern is said, not named. */
export function sayCase(words: Message): Message {
  const { pattern } = words.values;
  if (typeof pattern !== 'string') return words;
  for (const [shape, code] of PATTERNS) {
    const match = shape.exec(pattern);
    if (!match) continue;
    const segment = Number(match[1] ?? 0);
    const inWords = say({ code, values: { segment, next: segment + 1 } });
    return { ...words, values: { ...words.values, pattern: lowerCase(inWords) } };
  }
  return words;
}

/** What sag is asked of; these are not combinations of the standard. */
const SERVICE: Readonly<Record<string, string>> = {
  sag: MESSAGES.combinationSag,
  years: MESSAGES.combinationYears,
};
