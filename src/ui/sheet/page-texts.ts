import type { Evaluation } from '../../engine/evaluation.ts';
import type { Shelter } from '../../engine/geometry/shelter.ts';
import type { Given, Lateral, Project } from '../../engine/project/model.ts';
import { quantity } from '../../engine/units.ts';
import { GIVEN_BY, HELD_BY, SHEET_WORDS } from '../../data/words/sheet.ts';
import { showLength } from '../units/show-length.ts';
import { showQuantity } from '../units/show-quantity.ts';
import type { UnitSystem } from '../units/system.ts';
import { clearLengths } from './clear-spans.ts';
import type { PieceNames } from './piece-names.ts';

/** What holds the shelter sideways, in both directions, as the person says it. */
export function heldSideways(project: Project, names: PieceNames, system: UnitSystem): string {
  const { along, across } = project.lateral;
  return `Along the lines: ${heldBy(along, names, system)}. Across the lines: ${heldBy(across, names, system)}.`;
}

function heldBy(systems: readonly Lateral[], names: PieceNames, system: UnitSystem): string {
  const decided = systems.flatMap((s) => (s.by === null ? [] : [{ ...s, by: s.by }]));
  if (decided.length === 0) return 'not given';
  return decided
    .map(({ by, lines, posts, ratedLb, givenBy }) => {
      const where = [...(lines ?? []), ...(posts ?? [])].map(names.nameOf);
      const rated =
        ratedLb === null || ratedLb === undefined ? '' : ` rated ${showQuantity(quantity(ratedLb, 'lb'), system)}`;
      const says = givenBy ? ` (${givenBy})` : '';
      return `${HELD_BY[by]}${where.length > 0 ? ` at ${where.join(', ')}` : ''}${rated}${says}`;
    })
    .join('; ');
}

/** Under the drawing of a frame line: what holds it along itself, and its clear lengths. */
export function underFront(
  project: Project,
  shelter: Shelter,
  lineId: string,
  names: PieceNames,
  system: UnitSystem,
): string {
  const own = project.lateral.along.filter(({ lines }) => lines === undefined || lines.includes(lineId));
  const lengths = clearLengths(shelter, lineId, (inches) => showLength(inches, system, { style: 'marks' }));
  const clear = lengths.length === 0 ? '' : ` ${SHEET_WORDS.clear} ${[...new Set(lengths)].join(', ')}.`;
  return `${SHEET_WORDS.heldAlong} ${heldBy(own.map(anywhere), names, system)}.${clear}`;
}

/** Under the section: what holds the shelter across its lines. */
export const underSection = ({ lateral }: Project, names: PieceNames, system: UnitSystem): string =>
  `${SHEET_WORDS.heldAcross} ${heldBy(lateral.across.map(anywhere), names, system)}.`;

const anywhere = (system: Lateral): Lateral => ({ ...system, lines: [], posts: [] });

/** What was assumed and what was left out, in the engine's own sentences. */
export function assumed(evaluation: Evaluation, names: PieceNames): readonly string[] {
  return [...evaluation.assumptions, ...evaluation.loads.leftOut].map(names.sayOf);
}

/** The title block: what is asked and what was typed; an empty answer is a line to write on. */
export function titleBlock(project: Project): readonly (readonly [asked: string, answer: string])[] {
  const { title, code } = project;
  const { number, date } = title.revision;
  return [
    ['Parcel', title.parcel],
    ['Revision, date', [number, date ?? ''].filter((part) => part !== '').join(', ')],
    ['Prepared by', title.preparedBy],
    ['Code adopted here', adopted(code.building)],
    ['Loads; wood', bothAdopted(code.loads, code.wood)],
    ['Computed to', SHEET_WORDS.computedTo],
  ];
}

/** Who said it is written once where both come from one source. */
function bothAdopted(loads: Given<string>, wood: Given<string>): string {
  const alike = loads.givenBy === wood.givenBy && loads.date === wood.date && loads.value !== null;
  return alike ? `${loads.value}; ${adopted(wood)}` : `${adopted(loads)}; ${adopted(wood)}`;
}

function adopted({ value, givenBy, date }: Given<string>): string {
  if (value === null || value === '') return 'not given';
  return `${value} (${GIVEN_BY[givenBy]}${date === null ? '' : `, ${date}`})`;
}
