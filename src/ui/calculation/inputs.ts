import { CALCULATION_WORDS } from '../../data/words/calculation.ts';
import { JOINT_WORDS } from '../../data/words/cord.ts';
import { GIVEN_BY } from '../../data/words/sheet.ts';
import type { Project } from '../../engine/project/model.ts';
import type { PieceNames } from '../sheet/piece-names.ts';
import type { UnitSystem } from '../units/system.ts';
import { line, text, type Block, type Column, type Heading, type Row } from '../paper/blocks.ts';
import { inWords, nameOfKey, partsInWords, type Reading } from './input-words.ts';

const GIVEN_COLUMNS: readonly Column[] = [
  { head: 'what', share: 170 },
  { head: 'value', share: 190 },
  { head: 'who gave it, when', share: 180 },
];
const ITEM_COLUMNS: readonly Column[] = [
  { head: 'of', share: 100 },
  { head: 'as it was typed', share: 440 },
];
/** A row stays well below a page, however much is written down of a log. */
const MOST_LETTERS = 800;

interface InputGroup {
  readonly id: string;
  readonly words: string;
  readonly columns: readonly Column[];
  readonly rows: readonly Row[];
}

/** Every input of the file, group by group; a group without any is left out. */
export function inputBlocks(project: Project, names: PieceNames, system: UnitSystem): readonly Block[] {
  const untouched = project.notYetYours.length;
  return [
    ...inputGroups(project, names, system)
      .filter(({ rows }) => rows.length > 0)
      .flatMap(({ id, words, columns, rows }): readonly Block[] => [
        { kind: 'heading', id: `inputs-${id}`, level: 4, words } satisfies Heading,
        { kind: 'table', label: words, columns, rows },
      ]),
    ...(untouched > 0 ? [text(`${untouched} ${CALCULATION_WORDS.notYetYours}`, { tone: 'quiet' })] : []),
  ];
}

function inputGroups(project: Project, names: PieceNames, system: UnitSystem): readonly InputGroup[] {
  const reading: Reading = { system, nameOf: nameIn(project, names) };
  const given = (id: string, words: string, values: object): InputGroup => ({
    id,
    words,
    columns: GIVEN_COLUMNS,
    rows: givenRows(values, reading),
  });
  const items = (id: string, words: string, list: readonly (readonly [string, object])[]): InputGroup => ({
    id,
    words,
    columns: ITEM_COLUMNS,
    rows: list.flatMap(([name, item]) => itemRows(name, partsInWords(item, reading))),
  });
  const named = <T extends { readonly id: string }>(list: readonly T[]) =>
    list.map(({ id, ...item }) => [reading.nameOf(id), item] as const);
  const counted = (word: string, list: readonly object[]) => list.map((item, i) => [`${word} ${i + 1}`, item] as const);
  const { joints, lateral, asBuilt, surroundings } = project;
  return [
    given('site', 'Site and codes', { ...project.code, ...project.site }),
    items('around', 'Around and below it', [
      ['higher building', surroundings.neighbour ?? { neighbour: null }],
      ...counted('closed side', surroundings.closed),
      ['goods', surroundings.goods ?? { goods: null }],
    ]),
    items('roof', 'Roof', named(project.roofPlanes)),
    items('lines', 'Lines', named(project.supportLines)),
    items('woods', 'Woods', named(project.woods)),
    items('logs', 'Logs', named(project.logs)),
    items('groups', 'Alike members', named(project.groups)),
    items('members', 'Members', named(project.members)),
    items('joints', 'Joints', [
      ...joints.defaults.map(({ kind, capacity }) => [reading.nameOf(kind), { capacity }] as const),
      ...joints.own.map(({ key, capacity }) => [jointName(key, reading), { capacity }] as const),
    ]),
    items(
      'cuts',
      'Cuts',
      project.cuts.map(({ id: _id, ...cut }, i) => [`cut ${i + 1}`, cut] as const),
    ),
    items('lateral', 'What holds it sideways', [
      ...counted('along', lateral.along),
      ...counted('across', lateral.across),
    ]),
    items('own', 'Own loads', named(project.ownLoads)),
    items('instead', 'Typed instead of computed', counted('value', project.instead)),
    items('choices', 'Choices of the calculation', [['choices', project.calculation]]),
    items('built', 'As built', [
      ...counted('pier top', asBuilt.pierTops),
      ...counted('pour', asBuilt.pours),
      ...counted('cut length', asBuilt.cutLengths),
      ...counted('peeled log', asBuilt.peeled),
      ...counted('cut made', asBuilt.cutsMade),
      ...counted('visit', asBuilt.visits),
    ]),
  ];
}

interface GivenLike {
  readonly value: unknown;
  readonly givenBy: keyof typeof GIVEN_BY;
  readonly date: string | null;
  readonly from?: string;
}
const isGiven = (value: unknown): value is GivenLike =>
  typeof value === 'object' && value !== null && 'givenBy' in value && 'value' in value;

/** One row for every value of the site, with who gave it and when; what is grouped there follows with its own. */
function givenRows(values: object, reading: Reading): readonly Row[] {
  return Object.entries(values).flatMap(([key, value]: [string, unknown]): readonly Row[] => {
    if (value === undefined) return [];
    if (isGiven(value)) {
      const who = value.value === null ? '' : GIVEN_BY[value.givenBy];
      const giver = [who, value.date ?? '', value.from ?? ''].filter((part) => part !== '').join(', ');
      return [{ cells: [line(nameOfKey(key)), line(inWords(value.value, key, reading)), line(giver)] }];
    }
    if (typeof value === 'object' && value !== null) return givenRows(value, reading);
    return [{ cells: [line(nameOfKey(key)), line(inWords(value, key, reading)), line('')] }];
  });
}

/** An item in as many rows as its texts need. */
function itemRows(name: string, parts: readonly string[]): readonly Row[] {
  const rows: string[] = [];
  let open = '';
  for (const part of parts) {
    if (open !== '' && open.length + part.length > MOST_LETTERS) {
      rows.push(open);
      open = '';
    }
    open = open === '' ? part : `${open}; ${part}`;
  }
  return [...rows, open].map((words, i) => ({ cells: [line(i === 0 ? name : `${name}, continued`), line(words)] }));
}

/** What the sheet calls things, and what only the file knows: kinds of joints, woods, groups. */
function nameIn(project: Project, names: PieceNames): (id: string) => string {
  const own = new Map<string, string>([
    ...Object.entries(JOINT_WORDS),
    ...project.woods.map((wood) => [wood.id, wood.species] as const),
    ...project.groups.map((group) => {
      const ids = project.members.filter((member) => member.group === group.id).map(({ id }) => id);
      return [group.id, ids.length === 0 ? `${group.role}, none` : names.inShort(ids)] as const;
    }),
    ...project.logs
      .filter(({ id }) => names.nameOf(id) === id)
      .map(({ id }, i) => [id, `${CALCULATION_WORDS.unusedLog} ${i + 1}`] as const),
  ]);
  return (id) => own.get(id) ?? names.nameOf(id);
}

/** `beamPost/beam-1/post-2`: the kind, then the members. */
const jointName = (key: string, reading: Reading): string => key.split('/').map(reading.nameOf).join(', ');
