import type { LoadPicture } from '../../engine/load-pictures/picture.ts';
import type { Shelter } from '../../engine/geometry/shelter.ts';
import { lowerCase, sentenceCase } from '../cord/letter-case.ts';
import type { Names } from '../cord/places.ts';
import { showLength } from '../units/show-length.ts';
import { showQuantity } from '../units/show-quantity.ts';
import type { UnitSystem } from '../units/system.ts';
import type { Unit } from '../../engine/units.ts';
import { cutAtX, differsAlong } from './load-room.ts';

interface Told {
  readonly shelter: Shelter;
  readonly names: Names;
  readonly system: UnitSystem;
}

/** What a picture shows, in sentences; every number is the engine's. */
export function loadSentences(picture: LoadPicture, told: Told): readonly string[] {
  return [
    ...wind(picture),
    ...onStrips(picture, told),
    ...weights(picture, told),
    ...hung(picture, told),
    ...pushes(picture, told),
    ...(picture.kind === 'seismic' ? ['At strength level: the combinations count 0.7 of it, or less.'] : []),
    ...across(picture, told),
    ...countsFor(picture, told),
  ];
}

const shown = (value: number, unit: Unit, { system }: Told): string => showQuantity({ value, unit }, system);
const pounds = (lb: number, told: Told): string => shown(Math.abs(lb), 'lb', told);

const WIND_WORDS = {
  xPlus: 'On the plan the wind blows from left to right.',
  xMinus: 'On the plan the wind blows from right to left.',
  yPlus: 'On the section the wind blows from left to right.',
  yMinus: 'On the section the wind blows from right to left.',
} as const;
const wind = ({ windToward }: LoadPicture): readonly string[] => (windToward ? [WIND_WORDS[windToward]] : []);

/** Where on the roof a pressure counts. */
const AREAS = { level: 'of level area', slope: 'of the slope', square: 'square to the slope' } as const;

function onStrips({ strips, kind }: LoadPicture, told: Told): readonly string[] {
  const [first] = strips;
  if (!first) return [];
  const ends = strips.flatMap((s) => [s.lowPsf, s.highPsf]);
  const pressed = ends.filter((psf) => psf > 0);
  const lifted = ends.filter((psf) => psf < 0).map((psf) => -psf);
  const verb = kind === 'dead' ? 'Covering and purlins lie on the roof with' : 'Presses on the roof with';
  return [
    ...(pressed.length > 0 ? [`${verb} ${range(pressed, told)} ${AREAS[first.acts]}.`] : []),
    ...(lifted.length > 0 ? [`Lifts the roof with ${range(lifted, told)} ${AREAS[first.acts]}.`] : []),
    ...(kind === 'wind' ? ['At strength level: the combinations count 0.6 of it, or less.'] : []),
  ];
}

function range(values: readonly number[], told: Told): string {
  const least = shown(Math.min(...values), 'psf', told);
  const most = shown(Math.max(...values), 'psf', told);
  return least === most ? most : `${least} to ${most}`;
}

function weights({ rafters, lines }: LoadPicture, told: Told): readonly string[] {
  const each = rafters.map((r) => r.downLbPerFt).filter((w) => w > 0);
  const [least, most] = [Math.min(...each), Math.max(...each)].map((w) => shown(w, 'lb/ft', told));
  return [
    ...(each.length > 0 ? [`A rafter weighs ${least === most ? least : `${least} to ${most}`}.`] : []),
    ...lines.map(
      ({ lineId, downLb }) =>
        `With its beams, posts and braces ${told.names.get(lineId) ?? lineId} carries ${pounds(downLb, told)}.`,
    ),
  ];
}

function hung({ points }: LoadPicture, told: Told): readonly string[] {
  return [...new Set(points.map((p) => p.lineId))].map((lineId) => {
    const lb = points.filter((p) => p.lineId === lineId).reduce((sum, p) => sum + p.downLb, 0);
    const name = told.names.get(lineId) ?? lineId;
    return `${sentenceCase(name)} is ${lb < 0 ? 'lifted' : 'pulled down'} by ${pounds(lb, told)}.`;
  });
}

/** What the wind along the lines presses on. */
const PART_WORDS: Readonly<Record<LoadPicture['pushes'][number]['parts'][number]['name'], string>> = {
  roofEdge: 'roof edge and rafters',
  beam: 'beam end',
  posts: 'posts',
  braces: 'braces',
  ties: 'what runs across',
  gable: 'what the rule for open gables asks beyond that',
  goods: 'goods that lean on it',
  typed: 'the area that is typed in',
};

function pushes(picture: LoadPicture, told: Told): readonly string[] {
  return picture.pushes.map(({ lineId, alongLb, parts }) => {
    const name = sentenceCase(told.names.get(lineId) ?? lineId);
    const way = alongLb > 0 ? 'to the right' : 'to the left';
    const each = parts.map((p) => `${PART_WORDS[p.name]} ${pounds(p.forceLb, told)}`);
    return `${name} is pushed ${way} with ${pounds(alongLb, told)}${each.length > 0 ? `: ${each.join(', ')}` : ''}.`;
  });
}

function across({ across: push }: LoadPicture, told: Told): readonly string[] {
  if (!push) return [];
  return [
    `The checks ask for ${pounds(push.asdLb, told)}, from either side.`,
    `At strength level: level part of the wind on the roof ${pounds(push.roofLb, told)}, wind on all that is solid ` +
      `${pounds(push.dragLb, told)}; at least ${pounds(push.leastLb, told)} on the projected area; ` +
      `one per cent of the weight, or the earthquake, ${pounds(push.inertiaLb, told)}.`,
  ];
}

function countsFor(picture: LoadPicture, told: Told): readonly string[] {
  const left = Math.min(...told.shelter.planes.map((p) => p.fromXIn));
  const cut = showLength(cutAtX(picture, told.shelter) - left, told.system);
  const line = picture.forLine === null ? null : (told.names.get(picture.forLine) ?? picture.forLine);
  return [
    ...(line === null ? [] : [`This is how it counts for ${lowerCase(line)}; another line has its own.`]),
    ...(differsAlong(picture, told.shelter)
      ? [`The section is cut where it is greatest, ${cut} from the left edge of the roof.`]
      : []),
    ...(picture.alsoFor.some((id) => id.endsWith('-opposed'))
      ? ['It is run again with the other sign of its reactions, as another line may hold its level part.']
      : []),
  ];
}
