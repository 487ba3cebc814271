import { LOWEST_RATIOS } from '../../data/wood/strength-ratios.ts';
import { LUMBER_GROUPS, type LumberGroup } from '../../data/wood/lumber-groups.ts';
import { LUMBER, type LumberRow } from '../../data/wood/lumber.ts';
import { clause } from '../../data/sources.ts';
import type { SawnStick } from '../geometry/shelter.ts';
import { message, type Message } from '../message.ts';
import type { Step } from '../note.ts';
import { inches } from '../units.ts';
import { cited, givenStep } from './citation.ts';
import { derivedValues, type Ratios } from './derived-values.ts';
import { withFactorsAtOne } from './factors-at-one.ts';
import { lumberFactors } from './lumber-factors.ts';
import { lumberSize, type LumberSize } from './lumber-size.ts';
import { product } from './product.ts';
import { stickSizeFactor } from './size-factor.ts';
import { findSpecies, nameKey } from './species.ts';
import type { DesignValues, MaterialAnswer } from './values.ts';

/**
 * Reference design values of one sawn stick: from the grade tables, or without a grade as home-sawn.
 * Size, flat use and wet service are in; duration, stability and the repetitive factor are not.
 * @source NDS_SUPPLEMENT Tables 4A, 4B, 4D; home-sawn: {@link derivedValues} with the stated lowest strength ratios
 * @limits  no incising; grades and groups without a row are `notGiven`
 */
export function sawnValues(stick: SawnStick): MaterialAnswer {
  const isGraded = stick.grade !== null;
  const answer = isGraded ? gradedValues(stick, stick.grade) : homeSawnValues(stick);
  return answer.ok ? { ok: true, values: withFactorsAtOne(answer.values, isGraded ? 'usedDry' : 'green') } : answer;
}

const notGiven = (reason: Message): MaterialAnswer => ({ ok: false, status: 'notGiven', reason });

const GROUP_BY_NAME: ReadonlyMap<string, LumberGroup> = new Map(
  LUMBER_GROUPS.toReversed().map((group) => [nameKey(group.name), group]),
);

/** The stamp's group by its own name, or the group that holds the species. */
export function findLumberGroup(name: string): LumberGroup | null {
  const key = nameKey(name);
  const species = findSpecies(name);
  return (
    GROUP_BY_NAME.get(key) ??
    (species ? LUMBER_GROUPS.find((group) => group.species.includes(species.name)) : undefined) ??
    null
  );
}

function gradedValues(stick: SawnStick, grade: string): MaterialAnswer {
  const group = findLumberGroup(stick.species);
  if (!group) return notGiven(message('sawnSpeciesUnknown', { species: stick.species }));
  const size = lumberSize(stick);
  if (!size) {
    return notGiven(message('sawnTooThin', { thicknessIn: Math.min(stick.breadthIn, stick.depthIn) / stick.plies }));
  }
  const row = rowOf(group, grade, size);
  if (!row) return notGiven(message('sawnGradeUnknown', { grade, group: group.name }));
  return { ok: true, values: valuesOf(row, group, size, stick.use) };
}

/** Grades as people write them: 'No. 2', '#2', 'no2'; a row 'No.1/No.2' answers to both. */
const gradeKey = (grade: string): string =>
  grade
    .toLowerCase()
    .replace('#', 'no')
    .replace('better', 'btr')
    .replace(/\band\b/, '')
    .replace(/[^a-z0-9]/g, '')
    .replace(/^ss$/, 'selectstructural');

function rowOf(group: LumberGroup, grade: string, size: LumberSize): LumberRow | undefined {
  const key = gradeKey(grade);
  return LUMBER.find(
    (row) =>
      row.group === group.name &&
      row.size === size.sizeClass &&
      (gradeKey(row.grade) === key || row.grade.split('/').some((part) => gradeKey(part) === key)) &&
      isWidthOf(row, size),
  );
}

const isWidthOf = ({ nominalWidthIn }: LumberRow, size: LumberSize): boolean =>
  nominalWidthIn === null || (size.nominalWidthIn >= nominalWidthIn[0] && size.nominalWidthIn <= nominalWidthIn[1]);

function valuesOf(row: LumberRow, group: LumberGroup, size: LumberSize, use: 'wet' | 'dry'): DesignValues {
  const where = cited(row.source, `Table ${row.table}`, row.seen);
  const factors = lumberFactors(row, size, use);
  const adjusted = (symbol: string, words: string, base: number, by: readonly Step[]) =>
    product(
      symbol,
      words,
      givenStep(`${symbol}_table`, `${words}, ${row.group} ${row.grade}`, base, 'psi', where),
      by,
      clause('NDS', 'Table 4.3.1'),
    );
  const Fb = adjusted('Fb', 'bending', row.FbPsi, factors.Fb);
  const Fv = adjusted('Fv', 'shear', row.FvPsi, factors.Fv);
  const Fcp = adjusted('Fcp', 'compression across the grain', row.FcPerpPsi, factors.Fcp);
  const Fc = adjusted('Fc', 'compression along the grain', row.FcPsi, factors.Fc);
  const Ft = adjusted('Ft', 'tension along the grain', row.FtPsi, factors.Ft);
  const E = adjusted('E', 'stiffness', row.EPsi, factors.E);
  const Emin = adjusted('Emin', 'stiffness for buckling', row.EminPsi, factors.E);
  return {
    basis: 'graded',
    FbPsi: Fb.value,
    FvPsi: Fv.value,
    FcPerpPsi: Fcp.value,
    FcPsi: Fc.value,
    FtPsi: Ft.value,
    EPsi: E.value,
    EminPsi: Emin.value,
    cForColumns: 0.8,
    specificGravity: group.specificGravity,
    strengthRatioBending: null,
    strengthRatioCompression: null,
    steps: (of) => ({ Fb, Fv, Fcp, Fc, Ft, E, Emin })[of].steps,
    cautions: [],
  };
}

const LOWEST_CLAUSE = clause('OWN', 'home-sawn: stated lowest strength ratio');
const HOME_SAWN_WORDS = 'strength ratio, home-sawn without a grade';
const HOME_SAWN: Ratios = {
  ...LOWEST_RATIOS,
  bendingSteps: () => [givenStep('SR_b', HOME_SAWN_WORDS, LOWEST_RATIOS.bending, '1', LOWEST_CLAUSE, 'stated value')],
  compressionSteps: () => [
    givenStep('SR_c', HOME_SAWN_WORDS, LOWEST_RATIOS.compression, '1', LOWEST_CLAUSE, 'stated value'),
  ],
};

function homeSawnValues(stick: SawnStick): MaterialAnswer {
  const species = findSpecies(stick.species);
  if (!species) return notGiven(message('sawnHomeSawnSpecies', { species: stick.species }));
  const depth = inches(stick.lay === 'flat' ? stick.depthIn / stick.plies : stick.depthIn);
  const cautions = [message('sawnHomeSawnCaution')];
  return {
    ok: true,
    values: derivedValues('homeSawn', species, HOME_SAWN, (note) => stickSizeFactor(depth, note), cautions),
  };
}
