import { ASD_COMBINATIONS } from '../../data/loads/combinations.ts';
import { CALCULATION_WORDS } from '../../data/words/calculation.ts';
import { FIGURE_WORDS } from '../../data/words/cord.ts';
import { say } from '../../data/words/say.ts';
import { STATUS_WORDS } from '../../data/words/status.ts';
import type { CombinationReport, Evaluation } from '../../engine/evaluation.ts';
import { sayCase } from '../cord/combination.ts';
import { groupBy } from '../sheet/group-by.ts';
import { loadWords } from '../sheet/load-words.ts';
import type { PieceNames } from '../sheet/piece-names.ts';
import { showNumber } from '../units/show-quantity.ts';
import type { UnitSystem } from '../units/system.ts';
import { line, type Block } from '../paper/blocks.ts';
import { showFigure } from './show-figure.ts';
import { STEP_COLUMNS, type StepBook } from './step-book.ts';
import type { Told } from './tell-steps.ts';

interface LoadPart {
  readonly evaluation: Evaluation;
  readonly told: Told;
  readonly names: PieceNames;
  readonly system: UnitSystem;
  readonly book: StepBook;
}

/** What the site puts on the roof: each figure with its steps, every case, every combination that was asked. */
export function loadBlocks(part: LoadPart): readonly Block[] {
  return [
    { kind: 'heading', id: 'loads-figures', level: 4, words: CALCULATION_WORDS.figures },
    ...figures(part),
    { kind: 'heading', id: 'loads-cases', level: 4, words: CALCULATION_WORDS.cases },
    caseTable(part),
    { kind: 'heading', id: 'loads-combinations', level: 4, words: CALCULATION_WORDS.combinations },
    combinationTable(part),
  ];
}

function figures({ evaluation, told, system, book }: LoadPart): readonly Block[] {
  const { pressures } = evaluation.loads;
  const list: Block = {
    kind: 'table',
    label: CALCULATION_WORDS.figures,
    columns: [
      { head: 'figure', share: 420 },
      { head: 'value', share: 120, align: 'right' },
    ],
    rows: pressures.map(({ name, value, unit }) => ({
      cells: [
        line(FIGURE_WORDS[name] ?? name),
        line(value === null ? STATUS_WORDS.notGiven : showFigure({ value, unit }, system), 'strong'),
      ],
    })),
  };
  return [
    list,
    ...pressures.flatMap(({ name }): readonly Block[] => {
      const rows = book.tell(told.pressures[name] ?? []);
      const label = FIGURE_WORDS[name] ?? name;
      return rows.length === 0
        ? []
        : [
            { kind: 'heading', id: `loads-${name}`, level: 5, words: label },
            { kind: 'table', label, columns: STEP_COLUMNS, rows },
          ];
    }),
  ];
}

function caseTable({ evaluation, names }: LoadPart): Block {
  return {
    kind: 'table',
    label: CALCULATION_WORDS.cases,
    columns: [
      { head: 'case', share: 120 },
      { head: 'what it is', share: 420 },
    ],
    rows: evaluation.loads.cases.map(({ id, words }) => ({
      cells: [line(id), line(names.sayOf(sayCase(words)))],
    })),
  };
}

/** Combinations of one rule stand together: they differ in the cases that the rule's factors are put on. */
function combinationTable({ evaluation, book }: LoadPart): Block {
  const rules = groupBy(evaluation.loads.combinations, ruleOf);
  return {
    kind: 'table',
    label: CALCULATION_WORDS.combinations,
    columns: [
      { head: 'rule', share: 40 },
      { head: 'what', share: 130 },
      { head: 'factors', share: 150 },
      { head: 'CD', share: 40, align: 'right' },
      { head: 'how many', share: 44, align: 'right' },
      { head: 'clause', share: 140 },
    ],
    rows: rules.map((alike) => {
      const [first] = alike as readonly [CombinationReport, ...CombinationReport[]];
      const rule = ruleOf(first);
      const standard = ASD_COMBINATIONS.find(({ id }) => id === rule);
      const durations = [...new Set(alike.map(({ duration }) => duration))].toSorted((a, b) => a - b);
      return {
        cells: [
          line(rule),
          line(say(first.words)),
          line([...new Set(alike.map(({ id }) => loadWords(id)))].join('; ')),
          line(durations.map((duration) => showNumber(duration, 2)).join(', ')),
          line(`${alike.length}`),
          line(standard ? book.cite(standard.clause, `combination ${rule}`) : ''),
        ],
      };
    }),
  };
}

const ruleOf = ({ id }: CombinationReport): string => id.split('+')[0] ?? id;
