import { SYSTEM_WORDS } from '../../data/words/lateral.ts';
import { say } from '../../data/words/say.ts';
import type { BracedPost } from '../../engine/stages/braced-post.ts';
import type { Holder } from '../../engine/stages/holders.ts';
import type { RaisingStage, StageWay } from '../../engine/stages/raising-stages.ts';
import { groupBy } from '../sheet/group-by.ts';
import { showLength } from '../units/show-length.ts';
import { showQuantity } from '../units/show-quantity.ts';
import type { UnitSystem } from '../units/system.ts';
import { sentenceCase } from './letter-case.ts';
import type { Names } from './places.ts';

/** A force that something must hold at least: rounded up. */
export const leastForce = (lb: number, system: UnitSystem): string =>
  showQuantity({ value: Math.ceil(lb), unit: 'lb' }, system);

export const windInWords = ({ windLb }: StageWay, way: 'along' | 'across', system: UnitSystem): string =>
  `Wind ${way} pushes what stands with ${leastForce(windLb, system)} in all.`;

/** Where the hardest brace stands, where its stake goes and what it leaves to the foot of its post. */
export function hardestInWords(post: BracedPost, names: Names, system: UnitSystem): string {
  const where = `Hardest on post ${names.get(post.postId) ?? post.postId}`;
  const setOut = (lengthIn: number): string => showLength(Math.round(lengthIn), system);
  const stake = `stake ${setOut(post.stakeAwayIn)} away, brace ${setOut(post.braceLengthIn)} long`;
  const lift = post.liftLb >= 1 ? ` and lifted ${leastForce(post.liftLb, system)}` : '';
  return `${where}: ${stake}; the foot is pushed ${leastForce(post.footLb, system)} sideways${lift}.`;
}

/** What holds lines without temporary braces, and what does not count yet with its reason. */
export function holdersInWords({ holders }: StageWay, names: Names): readonly string[] {
  const alike = groupBy(holders, ({ by, whyNot }) => [by, whyNot === null ? '' : say(whyNot)].join('|'));
  return alike.flatMap((group) => {
    const [first] = group;
    if (!first) return [];
    return [
      holderInWords(
        first,
        group.map(({ lineId }) => names.get(lineId) ?? lineId),
      ),
    ];
  });
}

function holderInWords({ by, whyNot }: Holder, held: readonly string[]): string {
  const name = SYSTEM_WORDS[by];
  const lines = held.join(' and ');
  return whyNot === null
    ? `By the figures ${lines} ${held.length > 1 ? 'are' : 'is'} held by ${name}.`
    : `${sentenceCase(name)} on ${lines}: not counted. ${say(whyNot)}`;
}

/** Whether a stage may be left overnight: by itself, by braces that hold so much, or not while figures are missing. */
export function overnightInWords({ ways, holdsItself }: RaisingStage, system: UnitSystem): string {
  if (!ways) return 'Overnight: without figures, do not leave it so.';
  if (holdsItself) return 'Overnight: held sideways both ways by what is computed.';
  const asked = (['along', 'across'] as const).flatMap((way) => {
    const hardest = ways[way].braced[0];
    return hardest ? [`${way} at least ${leastForce(hardest.braceLb, system)}`] : [];
  });
  return `Overnight: may be left if braced so, each brace and its stake holding ${asked.join(' and ')}.`;
}
