import { GIVEN_BY, UNEVEN_SNOW_WORDS } from '../../data/words/sheet.ts';
import type { Evaluation } from '../../engine/evaluation.ts';
import type { Given, OwnLoad, Project } from '../../engine/project/model.ts';
import { quantity } from '../../engine/units.ts';
import type { MeasureKind } from '../units/measures.ts';
import { showMeasure } from '../units/show-measure.ts';
import { showLength } from '../units/show-length.ts';
import { showNumber, showQuantity } from '../units/show-quantity.ts';
import type { UnitSystem } from '../units/system.ts';
import { leftOut, type PlainRow, type PlainTable } from './sheet-table.ts';

/** Design criteria with who gave each and when; what was computed from them; what the roof weighs. */
export function siteTable(project: Project, evaluation: Evaluation, system: UnitSystem): PlainTable {
  const { site } = project;
  const { soil } = site;
  const typed = (kind: MeasureKind) => (value: number) => showMeasure(kind, value, system);
  const psf = typed('psf');
  const computed = (name: string, words: string, how: string): readonly PlainRow[] => {
    const found = evaluation.loads.pressures.find((p) => p.name === name);
    return found
      ? [row(words, found.value === null ? NOT_GIVEN : showQuantity(quantity(found.value, 'psf'), system), how)]
      : [];
  };
  const orNone = (value: number): string => (value === 0 ? 'none set' : psf(value));
  return {
    caption: 'Site and loads',
    columns: [
      { head: 'what', share: 88, lines: 3 },
      { head: 'value', align: 'right' },
      { head: 'who gave it, when', share: 112, lines: 3 },
    ],
    rows: [
      given('Ground snow', [site.groundSnowPsf], psf),
      ...(site.roofSnowPsf ? [given('Snow on the roof itself', [site.roofSnowPsf], psf)] : []),
      ...computed('balancedSnow', 'Roof snow to design for', 'computed, 7.3, 7.4'),
      ...UNEVEN_SNOW.flatMap(([name, clause]) => computed(name, UNEVEN_SNOW_WORDS[name], `more, computed, ${clause}`)),
      given('Snow factors Ce, Ct', [site.snowExposureCe, site.snowThermalCt], String),
      given('County: roof snow; live', [site.leastRoofSnowPsf, site.roofLivePsf], orNone),
      given('Wind, 3-second gust', [site.windMph], typed('mph')),
      given('Exposure; hills Kzt', [site.exposure, site.kzt], String),
      ...computed('velocityPressure', 'Velocity pressure', 'computed, 26.10'),
      given('Risk category', [site.riskCategory], String),
      ...(site.seismic ? [earthquake(site.seismic)] : []),
      roofWeight(project, psf),
      given('Frost depth', [site.frostDepthIn], (value) => showLength(value, system, { style: 'marks' })),
      given('Soil, bearing', [soil.bearingPsf], psf),
      given('Soil, sideways', [soil.lateralPsfPerFt], typed('psfPerFt')),
      ...(soil.friction ? [given('Soil, friction', [soil.friction], String)] : []),
      ...(soil.cohesionPsf ? [given('Soil, cohesion', [soil.cohesionPsf], psf)] : []),
      given('Altitude; thin air Ke', [inWords(site.altitudeFt, typed('feet')), inWords(site.ke, String)], String),
      windFlow(project, evaluation, system),
      ...project.ownLoads.map((own) => ownLoad(own, system)),
    ],
    further: (left) => leftOut(left, 'value'),
  };
}

/** Each kind of uneven snow with the clause that it is computed to. */
const UNEVEN_SNOW = [
  ['snowDrift', '7.7'],
  ['snowDriftLee', '7.7'],
  ['snowDriftWindward', '7.7'],
  ['snowSliding', '7.9'],
] as const;

const earthquake = ({ sds, sd1, r, rGivenBy }: NonNullable<Project['site']['seismic']>): PlainRow =>
  row('Earthquake SDS, SD1; R', `${sds}, ${sd1}; ${r}`, rGivenBy === '' ? 'typed' : `typed; R by ${rGivenBy}`);

/** Which flows of the wind are run, and what is said to stand in its way. */
function windFlow({ surroundings: { goods, closed } }: Project, { loads }: Evaluation, system: UnitSystem): PlainRow {
  const inTheWay = [
    ...(goods
      ? [`goods ${showLength(goods.heightIn, system, { style: 'marks' })} high, ${percent(goods.blockedShare)}`]
      : []),
    ...closed.map(({ share }) => `a side closed, ${percent(share)}`),
  ];
  return row(
    'Wind flow under it',
    loads.flows.join(', '),
    inTheWay.length > 0 ? inTheWay.join('; ') : 'open on all sides',
  );
}

const percent = (share: number): string => `${showNumber(share * 100, 0)} %`;

/** What the person hangs there, as it is judged: its size, its direction, and whether it stays. */
function ownLoad({ name, where, direction, removable }: OwnLoad, system: UnitSystem): PlainRow {
  const size =
    where.on === 'plane'
      ? showMeasure('psf', where.psf, system)
      : where.on === 'stretch'
        ? showMeasure('plf', where.plf, system)
        : showMeasure('lb', where.lb, system);
  return row(`Own load: ${name}`, size, `${WAYS[direction]}, ${removable ? 'may be gone' : 'always there'}`);
}

const WAYS: Readonly<Record<OwnLoad['direction'], string>> = {
  down: 'down',
  up: 'up',
  xPlus: 'to the right',
  xMinus: 'to the left',
  yPlus: 'to the front',
  yMinus: 'to the back',
};

/** One of several values that are not shown alike. */
const inWords = <T>(typed: Given<T>, show: (value: T) => string): Given<string> => ({
  ...typed,
  value: typed.value === null ? null : show(typed.value),
});

const NOT_GIVEN = 'not given';

const row = (...cells: readonly string[]): PlainRow => ({ cells });

/** One or two values that belong together; a guess is named first, where nothing cuts it off. */
function given<T>(what: string, values: readonly Given<T>[], show: (value: T) => string): PlainRow {
  const shown = values.map((v) => (v.value === null ? NOT_GIVEN : show(v.value)));
  const givers = values
    .filter((v) => v.value !== null)
    .toSorted((a, b) => Number(b.givenBy === 'guess') - Number(a.givenBy === 'guess'))
    .map(giver);
  return row(what, new Set(shown).size === 1 ? shown[0]! : shown.join('; '), [...new Set(givers)].join('; '));
}

const giver = ({ givenBy, date }: Given<unknown>): string =>
  date === null || givenBy === 'guess' ? GIVEN_BY[givenBy] : `${GIVEN_BY[givenBy]}, ${date}`;

/** Heavy for what presses down, light for what holds against lifting wind. */
function roofWeight(project: Project, psf: (value: number) => string): PlainRow {
  const pairs = project.roofPlanes.map(({ dead }) =>
    dead.by === 'total'
      ? { heavy: dead.heavyPsf, light: dead.lightPsf }
      : {
          heavy: dead.layers.reduce((sum, l) => sum + l.heavyPsf, 0),
          light: dead.layers.reduce((sum, l) => sum + l.lightPsf, 0),
        },
  );
  const heavy = Math.max(...pairs.map((p) => p.heavy));
  const light = Math.min(...pairs.map((p) => p.light));
  const typed = project.roofPlanes.some((p) => p.dead.by === 'total');
  return row('Covering, heavy; light', `${psf(heavy)}; ${psf(light)}`, typed ? 'typed total' : 'parts; wood is added');
}
