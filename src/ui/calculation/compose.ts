import { CALCULATION_WORDS } from '../../data/words/calculation.ts';
import { CAUTIONS, SHEET_WORDS } from '../../data/words/sheet.ts';
import { RULES, type Link } from '../../data/rules.ts';
import { LINK_WORDS } from '../../data/words/links.ts';
import type { Evaluation } from '../../engine/evaluation.ts';
import type { Project } from '../../engine/project/model.ts';
import { sentenceCase } from '../cord/letter-case.ts';
import { stepWords } from '../cord/step-words.ts';
import { complaints, headline } from '../sheet/headline.ts';
import { isJointRule } from '../sheet/joint-rules.ts';
import { assumed, heldSideways, titleBlock } from '../sheet/page-texts.ts';
import { pieceNames } from '../sheet/piece-names.ts';
import type { UnitSystem } from '../units/system.ts';
import { line, text, type Block, type Heading, type Table } from '../paper/blocks.ts';
import { checkBlocks, indexTable, type CheckPart } from './check-blocks.ts';
import { memoryBlocks, sourceTable } from './closing-blocks.ts';
import { forceBlocks } from './force-blocks.ts';
import { governingRows, type Governing } from './governing.ts';
import { inputBlocks } from './inputs.ts';
import { loadBlocks } from './load-blocks.ts';
import { createStepBook } from './step-book.ts';
import type { Told } from './tell-steps.ts';
import { woodBlocks } from './wood-blocks.ts';

type SectionId = keyof typeof CALCULATION_WORDS.sections;

/**
 * The whole calculation as a list of blocks, in the order in which it is read and in which its steps are numbered: from the
 * inputs down the load path to the ground, then sideways, then what it rests on.
 */
export function composeCalculation(
  project: Project,
  evaluation: Evaluation,
  told: Told,
  system: UnitSystem,
): readonly Block[] {
  const names = pieceNames(project, evaluation, system);
  const book = createStepBook(system, stepWords(evaluation));
  const part: CheckPart = { evaluation, told, names, system, book };
  const governing = governingRows(evaluation, names);
  const under = (wanted: SectionId): readonly Governing[] => governing.filter((g) => sectionOf(g) === wanted);
  const body: readonly Block[] = [
    section('inputs'),
    ...inputBlocks(project, names, system),
    section('loads'),
    ...loadBlocks(part),
    section('wood'),
    ...woodBlocks(evaluation, told, names, book),
    section('forces'),
    ...forceBlocks(part),
    section('index'),
    text(CALCULATION_WORDS.worstGroups, { leads: true }),
    indexTable(governing, part),
    ...partOf('site', checkBlocks(under('site'), part)),
    ...partOf('members', byLink(under('members'), part)),
    ...partOf('joints', byLink(under('joints'), part)),
    ...partOf('piers', checkBlocks(under('piers'), part)),
    section('sideways'),
    text(heldSideways(project, names, system)),
    ...byLink(under('sideways'), part),
    section('assumptions'),
    ...[...assumed(evaluation, names), CAUTIONS].map((words) => text(words)),
  ];
  const closing: readonly Block[] = [
    section('memory'),
    ...memoryBlocks(book.uses()),
    section('sources'),
    sourceTable(book.uses()),
  ];
  const all = [...body, ...closing];
  return [...front(project, evaluation, part), contents(all), ...all];
}

const section = (id: SectionId): Heading => ({
  kind: 'heading',
  id: `section-${id}`,
  level: 3,
  words: CALCULATION_WORDS.sections[id],
});

const partOf = (id: SectionId, blocks: readonly Block[]): readonly Block[] =>
  blocks.length === 0 ? [] : [section(id), ...blocks];

function sectionOf({ row }: Governing): SectionId {
  if (isJointRule(row.ruleId)) return 'joints';
  const { link } = RULES[row.ruleId];
  if (link === 'site') return 'site';
  if (link === 'pier') return 'piers';
  return link === 'swayAlong' || link === 'swayAcross' ? 'sideways' : 'members';
}

/** Under the name of each link of the load path. */
function byLink(governing: readonly Governing[], part: CheckPart): readonly Block[] {
  const links = [...new Set(governing.map(({ row }) => RULES[row.ruleId].link))];
  return links.flatMap((link: Link): readonly Block[] => {
    const own = governing.filter(({ row }) => RULES[row.ruleId].link === link);
    const id = `link-${link}-${sectionOf(own[0]!)}`;
    return [{ kind: 'heading', id, level: 4, words: sentenceCase(LINK_WORDS[link]) }, ...checkBlocks(own, part)];
  });
}

/** What it is, of which inputs, how it stands, what is open. */
function front(project: Project, evaluation: Evaluation, { names, system }: CheckPart): readonly Block[] {
  const { fingerprint, programVersion, dataVersion } = evaluation;
  const block: Table = {
    kind: 'table',
    label: 'Title block',
    columns: [
      { head: 'what', share: 120 },
      { head: 'as given', share: 420 },
    ],
    rows: [
      ['Project', project.title.name],
      ...titleBlock(project),
      ['Inputs', fingerprint],
      ['Program; data', `${programVersion}; ${dataVersion}`],
    ].map(([asked = '', answer = '']) => ({ cells: [line(asked), line(answer)] })),
  };
  return [
    { kind: 'heading', id: 'title', level: 2, words: CALCULATION_WORDS.title },
    block,
    text(SHEET_WORDS.prepared, { tone: 'quiet' }),
    text(headline(evaluation.counts), { tone: 'strong' }),
    ...complaints(evaluation, names, system).map(({ words }, i) => text(`${i + 1}. ${words}`)),
    text(CALCULATION_WORDS.behind, { tone: 'quiet' }),
  ];
}

/** Sections and their parts with the page of each. */
function contents(blocks: readonly Block[]): Table {
  const headings = blocks.filter((block): block is Heading => block.kind === 'heading' && block.level < 5);
  return {
    kind: 'table',
    label: CALCULATION_WORDS.contents,
    columns: [
      { head: CALCULATION_WORDS.contents.toLowerCase(), share: 480 },
      { head: 'page', share: 60, align: 'right' },
    ],
    rows: headings.map(({ id, level, words }) => ({
      cells: [line(words, level === 3 ? 'strong' : 'under'), [{ text: '', pageOf: id }]],
    })),
  };
}
