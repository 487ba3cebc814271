import { RULES } from '../../data/rules.ts';
import type { CheckRow, Evaluation, LineReport } from '../../engine/evaluation.ts';
import { showLength } from '../units/show-length.ts';
import { showQuantity } from '../units/show-quantity.ts';
import type { Unit } from '../../engine/units.ts';
import type { UnitSystem } from '../units/system.ts';
import { combinationInWords } from './combination.ts';
import type { CordLink } from './links.ts';
import type { Names } from './places.ts';
import { lowerCase, sentenceCase } from './letter-case.ts';

interface Told {
  readonly evaluation: Evaluation;
  readonly names: Names;
  readonly system: UnitSystem;
}

/** What arrives at a link from above, in sentences; every number is the engine's. */
export function whatComesDown(link: CordLink, told: Told): readonly string[] {
  return [...arriving(link, told), ...governing(link, told)];
}

function arriving(link: CordLink, told: Told): readonly string[] {
  switch (link.link) {
    case 'site':
      return [];
    case 'sheet':
    case 'purlin':
    case 'rafter':
      return onTheRoof(told);
    case 'ledger':
    case 'strip':
      return [];
    case 'beam':
      return onTheBeam(link, told);
    case 'brace':
      return forcesOnBraces(told);
    case 'post':
    case 'pier':
      return forcesOnPosts(told);
    case 'swayAlong':
      return told.evaluation.lines.map((line) => lineSway(line, told));
    case 'swayAcross':
      return acrossSway(link, told);
  }
}

const shown = (value: number, unit: Unit, { system }: Told): string => showQuantity({ value, unit }, system);
const whole = (value: number, unit: Unit, told: Told): string => shown(Math.round(value), unit, told);

function onTheRoof(told: Told): readonly string[] {
  const figure = (name: string): string | null => {
    const found = told.evaluation.loads.pressures.find((each) => each.name === name);
    return found === undefined || found.value === null ? null : shown(found.value, found.unit, told);
  };
  const snow = figure('balancedSnow');
  const live = figure('unreducedRoofLive');
  const wind = figure('velocityPressure');
  const parts = [
    snow === null ? 'Snow: not given.' : `Snow ${snow} of level area.`,
    live === null ? 'Roof live load: not given.' : `Roof live load ${live}.`,
    wind === null
      ? 'Wind: not given.'
      : `Wind presses with ${wind} at roof height, before the factors of shape; it also lifts.`,
  ];
  return [parts.join(' ')];
}

function onTheBeam(link: CordLink, told: Told): readonly string[] {
  const { shelter, lines } = told.evaluation;
  const rafters = shelter.rafters.filter((rafter) => rafter.supports.some(({ line }) => line === link.lineId));
  const widest = Math.max(0, ...rafters.map(({ tributaryWidthIn }) => tributaryWidthIn));
  const posts = lines.find(({ lineId }) => lineId === link.lineId)?.posts ?? [];
  const said = [
    `${rafters.length} rafters rest on it; the widest strip of roof that one of them carries is ${showLength(widest, told.system)}.`,
  ];
  if (posts.length > 0) {
    const each = posts.map(
      ({ postId, greatestDownLb }) => `${told.names.get(postId) ?? postId} with ${whole(greatestDownLb, 'lb', told)}`,
    );
    said.push(`Its posts push back, at the worst each, ${each.join(', ')}.`);
  }
  return [said.join(' ')];
}

/** So many alike pieces are told one by one; of more only the worst are named. */
export const FEW = 4;

interface Force {
  readonly id: string;
  readonly lb: number;
}
const named = (id: string, { names }: Told): string => names.get(id) ?? id;
const forceWords = (lb: number, done: string, never: string, told: Told): string =>
  lb >= 1 ? `${done} ${whole(lb, 'lb', told)}` : never;

function greatest(forces: readonly Force[], done: string, told: Told): readonly string[] {
  const most = forces.reduce<Force | null>((a, b) => (a === null || b.lb > a.lb ? b : a), null);
  return most && most.lb >= 1 ? [`${named(most.id, told)} is ${done} ${whole(most.lb, 'lb', told)}`] : [];
}

function forcesOnBraces(told: Told): readonly string[] {
  const braces = told.evaluation.lines.flatMap((line) => line.braces);
  if (braces.length > FEW) {
    const pushed = greatest(
      braces.map((b) => ({ id: b.braceId, lb: b.greatestPushLb })),
      'pushed most, by',
      told,
    );
    const pulled = greatest(
      braces.map((b) => ({ id: b.braceId, lb: b.greatestPullLb })),
      'pulled most, by',
      told,
    );
    return [`Of ${braces.length} braces, ${[...pushed, ...pulled].join('; ')}.`];
  }
  return braces.map(({ braceId, greatestPushLb, greatestPullLb }) => {
    const push = forceWords(greatestPushLb, 'pushed by', 'never pushed', told);
    const pull = forceWords(greatestPullLb, 'pulled by', 'never pulled', told);
    return `${sentenceCase(named(braceId, told))}: ${push}, ${pull}.`;
  });
}

function forcesOnPosts(told: Told): readonly string[] {
  const posts = told.evaluation.lines.flatMap((line) => line.posts);
  if (posts.length > FEW) {
    const down = greatest(
      posts.map((p) => ({ id: p.postId, lb: p.greatestDownLb })),
      'pressed down most, by',
      told,
    );
    const up = greatest(
      posts.map((p) => ({ id: p.postId, lb: p.greatestUpLb })),
      'lifted most, by',
      told,
    );
    const along = greatest(
      posts.map((p) => ({ id: p.postId, lb: p.greatestAlongLb })),
      'pushed sideways most, by',
      told,
    );
    return [`Of ${posts.length} posts, ${[...down, ...up, ...along].join('; ')}.`];
  }
  return posts.map(({ postId, greatestDownLb, greatestUpLb, greatestAlongLb }) => {
    const up = forceWords(greatestUpLb, 'lifted by', 'never lifted', told);
    const along = forceWords(greatestAlongLb, ', pushed sideways at the foot by', '', told);
    return `${named(postId, told)}: down ${whole(greatestDownLb, 'lb', told)}, ${up}${along}.`;
  });
}

/** A line with braces or fixed feet carries the push to its own feet; another must be held by something else. */
function lineSway({ lineId, braces, posts, holdingLb }: LineReport, told: Told): string {
  const name = sentenceCase(named(lineId, told));
  if (braces.length === 0 && holdingLb >= 1) {
    return `${name} must be held along by something else against ${whole(holdingLb, 'lb', told)}.`;
  }
  const most = greatest(
    posts.map((p) => ({ id: p.postId, lb: p.greatestAlongLb })),
    'pushed sideways most, by',
    told,
  );
  return most.length === 0
    ? `${name} is not pushed along.`
    : `${name} carries the push along it to its feet; ${most.join('')}.`;
}

function acrossSway(link: CordLink, told: Told): readonly string[] {
  const asked = link.checks.find(({ demand }) => demand?.unit === 'lb')?.demand;
  return asked
    ? [
        `Wind, or one per cent of the weight, pushes the shelter across its lines with ${whole(asked.value, 'lb', told)}.`,
      ]
    : [];
}

/** The combination behind the greatest ratio that any load decides; a depth or a slenderness has none. */
function governing(link: CordLink, { evaluation }: Told): readonly string[] {
  const row = link.checks
    .filter(isDecidedByLoad)
    .reduce<CheckRow | null>((a, b) => (a === null || (b.ratio ?? 0) > (a.ratio ?? 0) ? b : a), null);
  const words = row ? combinationInWords(evaluation.loads, row) : '';
  return row === null || words === '' ? [] : [`Worst, for ${lowerCase(RULES[row.ruleId].words)}: ${lowerCase(words)}.`];
}

function isDecidedByLoad({ ratio, ratios }: CheckRow): boolean {
  if (ratio === null) return false;
  const judged = ratios.values.filter((each) => !Number.isNaN(each));
  return judged.some((each) => each !== judged[0]);
}
