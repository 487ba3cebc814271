import type { CheckRow, Evaluation, PostReactions } from '../../engine/evaluation.ts';
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
      return told.evaluation.lines.flatMap(({ braces }) => braces).map((brace) => braceForces(brace, told));
    case 'post':
    case 'pier':
      return told.evaluation.lines.flatMap(({ posts }) => posts).map((post) => postForces(post, told));
    case 'swayAlong':
      return told.evaluation.lines.map((line) => lineSway(line.lineId, line.holdingLb, told)).filter((s) => s !== '');
    case 'swayAcross':
      return acrossSway(link, told);
  }
}

const shown = (value: number, unit: Unit, { system }: Told): string => showQuantity({ value, unit }, system);
const whole = (value: number, unit: Unit, told: Told): string => shown(Math.round(value), unit, told);

function onTheRoof(told: Told): readonly string[] {
  const figure = (name: string) => told.evaluation.loads.pressures.find((each) => each.name === name);
  const snow = figure('balancedSnow');
  const live = figure('unreducedRoofLive');
  const wind = figure('velocityPressure');
  const parts = [
    snow?.value == null ? 'Snow: not given.' : `Snow ${shown(snow.value, snow.unit, told)} of level area.`,
    live?.value == null ? 'Roof live load: not given.' : `Roof live load ${shown(live.value, live.unit, told)}.`,
    wind?.value == null
      ? 'Wind: not given.'
      : `Wind presses with ${shown(wind.value, wind.unit, told)} at roof height, before the factors of shape; it also lifts.`,
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

function braceForces(
  brace: { readonly braceId: string; readonly greatestPushLb: number; readonly greatestPullLb: number },
  told: Told,
): string {
  const pull = brace.greatestPullLb >= 1 ? `pulled by ${whole(brace.greatestPullLb, 'lb', told)}` : 'never pulled';
  return `${sentenceCase(told.names.get(brace.braceId) ?? brace.braceId)}: pushed by ${whole(brace.greatestPushLb, 'lb', told)}, ${pull}.`;
}

function postForces(post: PostReactions, told: Told): string {
  const up = post.greatestUpLb >= 1 ? `lifted by ${whole(post.greatestUpLb, 'lb', told)}` : 'never lifted';
  const along =
    post.greatestAlongLb >= 1 ? `, pushed sideways at the foot by ${whole(post.greatestAlongLb, 'lb', told)}` : '';
  return `${told.names.get(post.postId) ?? post.postId}: down ${whole(post.greatestDownLb, 'lb', told)}, ${up}${along}.`;
}

function lineSway(lineId: string, holdingLb: number, told: Told): string {
  const name = sentenceCase(told.names.get(lineId) ?? lineId);
  if (holdingLb < 1) return `${name} holds itself: nothing else is leaned on.`;
  return `${name} must be held along by something else against ${whole(holdingLb, 'lb', told)}.`;
}

function acrossSway(link: CordLink, told: Told): readonly string[] {
  const asked = link.checks.find(({ demand }) => demand?.unit === 'lb')?.demand;
  return asked
    ? [
        `Wind, or one per cent of the weight, pushes the shelter across its lines with ${whole(asked.value, 'lb', told)}.`,
      ]
    : [];
}

/** The combination behind the greatest ratio. */
function governing(link: CordLink, { evaluation }: Told): readonly string[] {
  const row: CheckRow | null = link.worst;
  const words = row ? combinationInWords(evaluation.loads, row) : '';
  return words === '' ? [] : [`Worst: ${lowerCase(words)}.`];
}
