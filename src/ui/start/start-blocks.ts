import { ENGINEERED_CLAUSE, PERMIT_SIZES, PRESCRIPTIVE_SNOW_CLAUSE, SOIL_CLAUSE } from '../../data/permit.ts';
import type { ClauseRef } from '../../data/sources.ts';
import { fillIn } from '../../data/words/fill-in.ts';
import { CAUTIONS, GIVEN_BY, SHEET_WORDS } from '../../data/words/sheet.ts';
import { ANSWER_WORDS, OFFICE_ASIDES, OFFICE_QUESTIONS, SIGN_WORDS, START_WORDS } from '../../data/words/start.ts';
import type { Evaluation } from '../../engine/evaluation.ts';
import type { Given, Project } from '../../engine/project/model.ts';
import { quantity } from '../../engine/units.ts';
import { inWords } from '../calculation/input-words.ts';
import { showFigure } from '../calculation/show-figure.ts';
import { clauseOnPaper } from '../calculation/step-book.ts';
import { line, text, type Block, type Row } from '../paper/blocks.ts';
import { valueAt } from '../state/value-at.ts';
import { showQuantity } from '../units/show-quantity.ts';
import type { UnitSystem } from '../units/system.ts';
import { signsOf, type Sign } from './signs.ts';
import { sizesOf } from './sizes.ts';

/** The page that is read before anything is cut, dug or handed in. */
export function startBlocks(project: Project, evaluation: Evaluation, system: UnitSystem): readonly Block[] {
  const heading = (id: keyof typeof START_WORDS): Block => ({ kind: 'heading', id, level: 4, words: START_WORDS[id] });
  return [
    { kind: 'heading', id: 'title', level: 2, words: `${START_WORDS.title}: ${project.title.name}` },
    heading('permit'),
    text(fillIn(START_WORDS.permitLead, { mark: SHEET_WORDS.memoryMark }), { leads: true }),
    ...permitBlocks(evaluation, system),
    heading('questions'),
    text(START_WORDS.questionsLead, { leads: true }),
    questionTable(project, system),
    text(`${START_WORDS.toAsk}: ${OFFICE_ASIDES.join(' ')}`),
    heading('signs'),
    text(START_WORDS.signsLead, { leads: true }),
    signTable(project, evaluation),
    heading('dig'),
    text(START_WORDS.digWords),
    heading('cautions'),
    text(CAUTIONS),
  ];
}

function permitBlocks({ shelter }: Evaluation, system: UnitSystem): readonly Block[] {
  const { underRoofFt2, insidePostsFt2, heightFt, isAttached } = sizesOf(shelter);
  const area = (ft2: number): string => showFigure(quantity(ft2, 'ft2'), system);
  const against = (ft2: number, limit: number): string => `${area(ft2)}: ${ft2 > limit ? 'over' : 'not over'}`;
  return [
    {
      kind: 'table',
      label: START_WORDS.permit,
      columns: [
        { head: 'no permit asked', share: 190 },
        { head: 'up to', share: 60, align: 'right' },
        { head: 'under the roof', share: 90, align: 'right' },
        { head: 'posts, axis to axis', share: 90, align: 'right' },
        { head: 'clause', share: 110 },
      ],
      rows: PERMIT_SIZES.map(({ words, areaFt2, clause }) => ({
        cells: [
          line(words),
          line(area(areaFt2)),
          line(against(underRoofFt2, areaFt2), 'strong'),
          line(against(insidePostsFt2, areaFt2), 'strong'),
          line(clauseOnPaper(clause)),
        ],
      })),
    },
    text(
      `The roof stands ${showQuantity(quantity(heightFt, 'ft'), system)} above the lowest ground at a post. ` +
        [START_WORDS.height, ...(isAttached ? [START_WORDS.attached] : [])].join(' '),
    ),
  ];
}

function questionTable(project: Project, system: UnitSystem): Block {
  return {
    kind: 'table',
    label: START_WORDS.questions,
    columns: [
      { head: 'question', share: 220 },
      { head: 'so far', share: 70 },
      { head: 'who said so, when', share: 120 },
      { head: 'they say', share: 130 },
    ],
    rows: OFFICE_QUESTIONS.map(([path, words]) => questionRow(project, path, words, system)),
  };
}

/** A value that somebody gave stands; a guess stands too, and is asked all the same. */
function questionRow(project: Project, path: string, words: string, system: UnitSystem): Row {
  const given = valueAt(project, path);
  const value = isGiven(given) && given.value !== null && given.value !== '' ? given : null;
  const key = path.slice(path.lastIndexOf('.') + 1);
  const shown = value ? inWords(value.value, key, { system, nameOf: (id) => id }) : '';
  const isAnswered = value !== null && value.givenBy === 'department';
  return {
    cells: [
      line(words),
      line(shown),
      line(value ? [GIVEN_BY[value.givenBy], value.date ?? ''].filter((part) => part !== '').join(', ') : ''),
      line(isAnswered ? '' : START_WORDS.blank),
    ],
  };
}

const isGiven = (value: unknown): value is Given<string | number> =>
  typeof value === 'object' && value !== null && 'givenBy' in value && 'value' in value;

const SIGN_CLAUSES: Readonly<Partial<Record<Sign['sign'], ClauseRef>>> = {
  snow: PRESCRIPTIVE_SNOW_CLAUSE,
  soil: SOIL_CLAUSE,
  logs: ENGINEERED_CLAUSE,
};

function signTable(project: Project, evaluation: Evaluation): Block {
  return {
    kind: 'table',
    label: START_WORDS.signs,
    columns: [
      { head: 'sign', share: 330 },
      { head: 'this shelter', share: 90 },
      { head: 'clause', share: 120 },
    ],
    rows: signsOf(project, evaluation).map(({ sign, limit, isHere }) => {
      const clause = SIGN_CLAUSES[sign];
      return {
        cells: [
          line(fillIn(SIGN_WORDS[sign], { limit: limit ?? '' })),
          line(
            isHere === null ? ANSWER_WORDS.yours : isHere ? ANSWER_WORDS.here : ANSWER_WORDS.not,
            isHere ? 'strong' : undefined,
          ),
          line(clause ? clauseOnPaper(clause) : START_WORDS.practice),
        ],
      };
    }),
  };
}
