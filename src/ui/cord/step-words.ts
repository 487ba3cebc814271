import { say } from '../../data/words/say.ts';
import type { Evaluation } from '../../engine/evaluation.ts';
import { readRowCase } from '../../engine/transverse/case-ids.ts';
import { sayCase } from './combination.ts';
import { lowerCase } from './letter-case.ts';
import { namesOf, stretchInWords } from './places.ts';

/** Puts what a step names by id (a load case, a stretch of a line, a post) into the words of the drawing. */
export function stepWords(evaluation: Evaluation | null): (words: string) => string {
  if (!evaluation) return (words) => words;
  const names = namesOf(evaluation);
  const cases = new Map(evaluation.loads.cases.map(({ id, words }) => [id, lowerCase(say(sayCase(words)))]));
  return (words) =>
    cases.get(words) ??
    rowCase(words, cases) ??
    words.replace(/[\w.-]+~[\w.-]+/, (stretch) => {
      const kind = /^minus~|~plus$/.test(stretch) ? 'overhang' : 'span';
      return stretchInWords(kind, stretch, names, 'feet') || stretch;
    });
}

/** A case of a row across, by the case of the shelter that it comes with. */
function rowCase(id: string, cases: ReadonlyMap<string, string>): string | null {
  const found = readRowCase(id);
  if (found?.kind === 'pressed') return 'what the lines press on the posts';
  const words = found && cases.get(found.comesWith);
  if (!words) return null;
  return found.kind === 'push' ? `push across, ${words}` : `level wind on the rafter where it blows, ${words}`;
}

/** Symbols of a formula as they are written by hand. */
const RAISED: Readonly<Record<string, string>> = { '2': '²', '3': '³', '4': '⁴' };
export const formulaText = (formula: string): string =>
  formula.replace(/\^([234])(?![\d.])/g, (_, digit: string) => RAISED[digit] ?? digit);
