import { housingCuts } from './geometry/beams.ts';
import type { BraceGeometry, PostGeometry, RafterGeometry, Shelter, Stick, TieGeometry } from './geometry/shelter.ts';
import type { Project } from './project/model.ts';
import { radiansFromDegrees } from './units.ts';

/** A cut that reaches over a place of a member, by its side: 0 up (of a post: +x), turning toward +y. */
export interface CutHere {
  readonly kind: 'flat' | 'dap' | 'notch' | 'housing';
  readonly madeBy: 'seat' | 'brace' | 'hand';
  /** middle of the cut and its length, along the member from its start [in] */
  readonly atIn: number;
  readonly lengthIn: number;
  /** where it is deepest, square to the member [in] */
  readonly depthIn: number;
  readonly angleDeg: number;
  /** of a cut that runs out to nothing both ways: where it is deepest, from the member's start [in] */
  readonly deepestAtIn?: number;
}

/** Every cut of a member: seats, housings of braces, bird's mouths, and what is cut by hand. */
export function cutsOfMember(project: Project, shelter: Shelter, memberId: string): readonly CutHere[] {
  const beam = shelter.beams.find(({ id }) => id === memberId);
  if (beam) return beam.cuts.map((cut) => ({ ...cut, atIn: cut.atXIn - beam.fromXIn }));
  const byHand = project.cuts
    .filter(({ member }) => member === memberId)
    .map((cut): CutHere => {
      const { kind, lengthIn, depthIn, angleDeg } = cut;
      return {
        kind,
        madeBy: 'hand',
        atIn: placeOnMember(shelter, memberId, cut.centreIn),
        lengthIn,
        depthIn,
        angleDeg,
      };
    });
  const post = shelter.posts.find(({ id }) => id === memberId);
  if (post) return [...shelter.braces.flatMap((brace) => housingIn(post, brace)), ...byHand];
  const tie = shelter.ties.find(({ id }) => id === memberId);
  if (tie) return [...housingsIn(tie, shelter.braces), ...byHand];
  const rafter = shelter.rafters.find(({ id }) => id === memberId);
  return rafter ? [...birdsMouths(shelter, rafter), ...byHand] : byHand;
}

/** How places on a member are told in the file: where its start lies, and how long the member runs for each inch of it. */
interface Told {
  readonly startIn: number;
  readonly alongPerIn: number;
}

/** Above the foot of a post, x on beams and purlins, y on ties and rafters; else from the start. */
function toldOn({ beams, posts, ties, rafters, purlins }: Shelter, memberId: string): Told {
  const isIt = ({ id }: { readonly id: string }): boolean => id === memberId;
  const post = posts.find(isIt);
  if (post) return { startIn: post.woodFromZIn - post.footZIn, alongPerIn: 1 };
  const rafter = rafters.find(isIt);
  if (rafter)
    return {
      startIn: rafter.eaveYIn,
      alongPerIn: -rafter.downY / Math.cos(radiansFromDegrees(rafter.slopeDeg)),
    };
  const level = beams.find(isIt) ?? purlins.find(isIt);
  return { startIn: level?.fromXIn ?? ties.find(isIt)?.fromYIn ?? 0, alongPerIn: 1 };
}

/** A place as the file tells it, from the member's start [in]. */
export function placeOnMember(shelter: Shelter, memberId: string, toldIn: number): number {
  const { startIn, alongPerIn } = toldOn(shelter, memberId);
  return (toldIn - startIn) * alongPerIn;
}

/** A place from the member's start, as the file tells it [in]. */
export function placeInFile(shelter: Shelter, memberId: string, atIn: number): number {
  const { startIn, alongPerIn } = toldOn(shelter, memberId);
  return startIn + atIn / alongPerIn;
}

function housingIn(post: PostGeometry, brace: BraceGeometry): readonly CutHere[] {
  const end = brace.ends.post;
  if (brace.postId !== post.id || end.kind === 'coped' || end.depthIn <= 0) return [];
  const toward = brace.side === 'plus' ? 0 : 180;
  return [
    {
      kind: 'housing',
      madeBy: 'brace',
      atIn: brace.postPoint.zIn - post.woodFromZIn,
      // as long as the brace is thick where it meets the post at its slope
      lengthIn: thicknessOf(brace.stick) / Math.max(Math.sin(radiansFromDegrees(brace.phiDeg)), 0.1),
      depthIn: end.depthIn,
      angleDeg: brace.plane === 'along' ? toward : toward + 90,
    },
  ];
}

/** Braces across run up to a tie log as those along run up to a beam: its y is their x. */
const housingsIn = (tie: TieGeometry, braces: readonly BraceGeometry[]): readonly CutHere[] =>
  housingCuts(
    tie.id,
    braces.map((brace) => ({ ...brace, topPoint: { ...brace.topPoint, xIn: brace.topPoint.yIn } })),
  ).map((cut) => ({ ...cut, atIn: cut.atXIn - tie.fromYIn }));

function thicknessOf(stick: Stick | null): number {
  if (stick?.kind === 'round') return stick.profile[0]?.diameterIn ?? 0;
  return stick?.kind === 'sawn' ? stick.depthIn : 0;
}

/** On a roof flatter than this a seat cut would run on for feet: it is drawn as long as what lies under it. */
const LEVEL_BELOW_RISE = 1 / 4;
const COMMON_BEARING_IN = 3.5;

/** Seat cuts of a rafter: plumb at the heel, level from there until they run out of the wood; the line under the middle. */
function birdsMouths({ planes }: Shelter, rafter: RafterGeometry): readonly CutHere[] {
  if (rafter.seatCutIn <= 0) return [];
  const theta = radiansFromDegrees(rafter.slopeDeg);
  const [sin, cos] = [Math.sin(theta), Math.cos(theta)];
  const isLevel = (planes.find(({ id }) => id === rafter.plane)?.risePer12 ?? 0) < LEVEL_BELOW_RISE;
  const seat = { kind: 'notch', madeBy: 'seat', depthIn: rafter.seatCutIn * cos, angleDeg: 180 } as const;
  return rafter.supports.map((support) => {
    const atIn = support.atIn / cos;
    if (isLevel) return { ...seat, atIn, lengthIn: COMMON_BEARING_IN };
    const heelIn = rafter.seatCutIn * sin;
    const lengthIn = rafter.seatCutIn / sin;
    // the middle of the level part lies over the line
    const fromIn = atIn - (heelIn + lengthIn) / 2;
    return { ...seat, atIn: fromIn + lengthIn / 2, lengthIn, deepestAtIn: fromIn + heelIn };
  });
}

/** An end of a brace that is cut to lie against its log. */
export interface ShapedEnd {
  /** where the cut meets the axis, from the member's start [in] */
  readonly atIn: number;
  /** how far it runs on along the member for each inch toward the upper side [in] */
  readonly lean: number;
  /** diameter of the log that a saddle lies round; null for a plane cut [in] */
  readonly roundIn: number | null;
}

/** Where the wood of a brace ends, short of its working points: lower end, upper end. Other members end square. */
export function shapedEnds(shelter: Shelter, memberId: string): readonly ShapedEnd[] {
  const brace = shelter.braces.find(({ id }) => id === memberId);
  if (!brace) return [];
  const { ends, lengthIn, postDiameterIn, topDiameterIn } = brace;
  const phi = radiansFromDegrees(brace.phiDeg);
  const [sin, cos] = [Math.sin(phi), Math.cos(phi)];
  const short = (diameterIn: number, { depthIn }: BraceGeometry['ends']['post']): number => diameterIn / 2 - depthIn;
  return [
    {
      atIn: short(postDiameterIn, ends.post) / sin,
      lean: cos / sin,
      roundIn: ends.post.kind === 'coped' ? postDiameterIn : null,
    },
    {
      atIn: lengthIn - short(topDiameterIn, ends.top) / cos,
      lean: -sin / cos,
      roundIn: ends.top.kind === 'coped' ? topDiameterIn : null,
    },
  ];
}
