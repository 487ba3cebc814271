import { CALCULATION_WORDS, SEEN_WORDS } from '../../data/words/calculation.ts';
import { fillIn } from '../../data/words/fill-in.ts';
import { SHEET_WORDS } from '../../data/words/sheet.ts';
import { SOURCES } from '../../data/source-list.ts';
import { groupBy } from '../sheet/group-by.ts';
import { line, text, type Block } from '../paper/blocks.ts';
import { clauseOnPaper, sourceName, type Use } from './step-book.ts';

/** Every clause that was used without being compared with the printed edition, and where it was used. */
export function memoryBlocks(uses: readonly Use[]): readonly Block[] {
  const remembered = groupBy(
    uses.filter(({ clause }) => clause.memory === true),
    ({ clause }) => clauseOnPaper(clause),
  );
  if (remembered.length === 0) return [text(CALCULATION_WORDS.noneRemembered)];
  return [
    text(fillIn(CALCULATION_WORDS.remembered, { mark: SHEET_WORDS.memoryMark }), { leads: true }),
    {
      kind: 'table',
      label: CALCULATION_WORDS.sections.memory,
      columns: [
        { head: 'clause', share: 150 },
        { head: 'used in', share: 390 },
      ],
      rows: remembered.map((alike) => ({
        cells: [line(clauseOnPaper(alike[0]!.clause)), line(placesOf(alike))],
      })),
    },
  ];
}

/** `steps 12, 45; beam A: shear`; numbers first. */
function placesOf(uses: readonly Use[]): string {
  const places = [...new Set(uses.map(({ where }) => where))];
  const numbers = places.filter(isStep).map((place) => place.slice(STEP.length));
  const others = places.filter((place) => !isStep(place));
  const steps = numbers.length === 0 ? [] : [`step${numbers.length > 1 ? 's' : ''} ${numbers.join(', ')}`];
  return [...steps, ...others].join('; ');
}
const STEP = 'step ';
const isStep = (place: string): boolean => place.startsWith(STEP);

/** Every document that a clause above points into. */
export function sourceTable(uses: readonly Use[]): Block {
  const keys = [...new Set(uses.map(({ clause }) => clause.source))];
  return {
    kind: 'table',
    label: CALCULATION_WORDS.sections.sources,
    columns: [
      { head: 'called here', share: 90 },
      { head: 'title', share: 250 },
      { head: 'edition', share: 60 },
      { head: 'publisher', share: 70 },
      { head: 'how it was read', share: 70 },
    ],
    rows: keys.map((key) => {
      const { title, edition, publisher, seen } = SOURCES[key];
      return {
        cells: [line(sourceName(key)), line(title), line(edition), line(publisher), line(SEEN_WORDS[seen])],
      };
    }),
  };
}
