import { ownOf, type LineFrame, type LineResponse } from '../frame/line-frame.ts';
import type { LineGeometry, Shelter } from '../geometry/shelter.ts';
import type { Stretch } from '../loads/stretches.ts';
import type { DesignValues, MaterialAnswer } from '../material/values.ts';
import { put, type Note, type Put, type Step } from '../note.ts';
import { clause } from '../../data/sources.ts';
import type { SitePressures } from '../loads/site/site-pressures.ts';
import type { Project } from '../project/model.ts';
import { quantity, type Unit } from '../units.ts';

/** What the checks of one frame line look at. Every member of an analysed line has wood and values. */
export interface LineCheckContext {
  readonly project: Project;
  readonly shelter: Shelter;
  readonly line: LineGeometry;
  readonly frame: LineFrame;
  readonly stretches: readonly Stretch[];
  readonly site: SitePressures;
  /** sway force of each case along x on this line [lb] */
  readonly alongLb: Readonly<Record<string, number>>;
  readonly valuesOf: (memberId: string) => MaterialAnswer;
  /** what frames across bring to its posts; left out where none stands */
  readonly across?: AcrossOnLine;
}

/** What frames across bring to the posts of a line. */
export interface AcrossOnLine {
  /** every response of the line, those that a frame across presses or lifts in its stead twice */
  readonly responses: readonly LineResponse[];
  /** null for a post that stands in no frame across, or in one whose forces are not known */
  readonly onPost: (postId: string) => PostInRow | null;
}

/** A post as it stands in a row across. */
export interface PostInRow {
  /** the hardest of every way in which the row is asked a combination, part by part; null where the row is not asked that combination */
  readonly in: (combinationId: string) => PostAcross | null;
}

/** What a row across does to one of its posts in one combination, the hardest of every way, each part by itself. */
export interface PostAcross {
  /** moment that stretches the +y face, and the -y face, at a distance from the post's start; first order [lb·in] */
  readonly momentAt: (atIn: number) => { readonly plusLbIn: number; readonly minusLbIn: number };
  /** what the push across adds to the push in the post there, and to its pull [lb] */
  readonly addedAt: (atIn: number) => { readonly pushLb: number; readonly pullLb: number };
  /** so many times its thrust until the row buckles, at least; null where that is not known */
  readonly bucklesAt: number | null;
  /** level push on the foot, moment of one that may not turn, and what the push across adds up and down; without sign */
  readonly foot: {
    readonly pushLb: number;
    readonly momentLbIn: number;
    readonly addedPushLb: number;
    readonly addedPullLb: number;
  };
}

/** What posts and piers are asked in: every response, with what frames across add. */
export const postResponses = ({ frame, across }: LineCheckContext): readonly LineResponse[] =>
  across?.responses ?? frame.responses;

/** Values of a member of an analysed line; a typed section has none and is judged by its maker's figures. */
export function valuesIn(context: LineCheckContext, memberId: string): DesignValues | null {
  const answer = context.valuesOf(memberId);
  return answer.ok ? answer.values : null;
}

export const isStrength = (r: LineResponse): boolean => r.combination.purpose === 'strength';

/** A force of the frame with what each load case brings to it, for the steps of a check. */
export function forcePut(
  context: LineCheckContext,
  response: LineResponse,
  index: number,
  symbol: string,
  unit: Unit,
  words: string,
): Put {
  const { layout } = context.frame;
  return put(
    symbol,
    response.values[index]!,
    unit,
    words,
    forceSteps(layout.parts(response, index), response, index, symbol, unit, words),
  );
}

function forceSteps(
  parts: readonly { readonly name: string; readonly factor: number; readonly value: number }[],
  response: LineResponse,
  index: number,
  symbol: string,
  unit: Unit,
  words: string,
): readonly Step[] {
  const { secondOrder } = response;
  const fromAcross = response.values[index]! - ownOf(response).values[index]!;
  return [
    ...(secondOrder ? [swayStep(secondOrder.times, response.buckling!.swayFactor)] : []),
    {
      symbol,
      words: `${words}, from the frame analysis`,
      formula: secondOrder ? 'sum of factor × case, the sway of each times B' : 'sum of factor × case',
      put: [
        ...parts.map((p) => put(`${p.factor} ×`, p.value, unit, p.name)),
        ...(fromAcross === 0 ? [] : [put('1 ×', fromAcross, unit, 'push across the lines, hardest way of holding it')]),
      ],
      result: quantity(response.values[index]!, unit),
      clause: clause('MECHANICS', secondOrder ? 'plane frame, second order' : 'plane frame, first order'),
    },
  ];
}

/** How often the sway of a response counts, where it counts more than once. */
export function tellSway({ secondOrder, buckling }: LineResponse, note: Note): void {
  if (secondOrder) note(swayStep(secondOrder.times, buckling!.swayFactor));
}

/** What the loads add to the sway of a free line. */
const swayStep = (times: number, swayFactor: number): Step => ({
  symbol: 'B',
  words: 'so many times its first-order sway counts, for what the loads do on the moved line',
  formula: '1 / (1 - 1 / λ)',
  put: [put('λ', swayFactor, '1', 'so many times the loads of this combination until the line sways over')],
  result: quantity(times, '1'),
  clause: clause('MECHANICS', 'second order of a frame from its critical load'),
});

/** Writes one force as a step of its own, ahead of the formula that uses it. */
export function tellForce(
  context: LineCheckContext,
  response: LineResponse,
  index: number,
  symbol: string,
  unit: Unit,
  words: string,
  note: Note,
): void {
  const { layout } = context.frame;
  for (const step of forceSteps(layout.parts(response, index), response, index, symbol, unit, words)) note(step);
}
