import { ASD_COMBINATIONS } from '../../data/loads/combinations.ts';
import { MESSAGES } from '../../data/words/en.ts';
import { say } from '../../data/words/say.ts';
import type { CheckRow, LoadReport } from '../../engine/evaluation.ts';
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
    return found ? [say(found.words)] : [];
  });
  const patterns = cases.length > 0 ? `: ${cases.map(lowerCase).join('; ')}` : '';
  return `${head}${patterns}${scenario === '' || head === '' ? scenario : `; ${scenario}`}`;
}

/** What sag is asked of; these are not combinations of the standard. */
const SERVICE: Readonly<Record<string, string>> = {
  sag: MESSAGES.combinationSag,
  years: MESSAGES.combinationYears,
};
