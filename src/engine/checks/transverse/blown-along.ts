import { clause } from '../../../data/sources.ts';
import type { BeamGeometry, PostGeometry } from '../../geometry/shelter.ts';
import type { Combination } from '../../loads/combination.ts';
import { earthquakeOf, highestFt } from '../../loads/earthquake.ts';
import { NOTIONAL_SHARE } from '../../loads/inertia.ts';
import { roundDiameter, soliditySeen, widthSeen, windOnSolid } from '../../loads/solid-wind.ts';
import { weightAlong } from '../../loads/weights.ts';
import { put, type Note } from '../../note.ts';
import { quantity } from '../../units.ts';
import type { LineCheckContext } from '../line-context.ts';

/** What pushes a tie log sideways, square to its row, when the shelter is pushed along its lines. */
export interface BlownTie {
  /** so much of it acts in a combination; zero where nothing pushes along the lines [lb/in] */
  readonly pushIn: (combination: Combination, note?: Note) => number;
  /** moment, shear and what comes to a post for one pound on each inch, as a beam on the two posts, without sign */
  readonly momentAt: (atIn: number) => number;
  readonly shearAt: (atIn: number) => number;
  readonly onPost: (postId: string) => number;
}

/**
 * A tie log as the push along the lines meets it: wind on its own broad side by the rule of an open frame, its own weight in
 * an earthquake, one per cent of it. A brace under it leans on it with half of the wind on its own side: twice that spread over
 * the whole tie bends it as much where the brace is, and more everywhere else.
 * @source ASCE7 29.4, 27.1.5 (7-16), 12.8, 1.4.1; MECHANICS beam on two supports with overhanging ends
 */
export function blownTie(context: LineCheckContext, tie: BeamGeometry): BlownTie {
  const { project, shelter, site, frame } = context;
  const solidity = soliditySeen(shelter, 'end');
  const sideOf = ({ stick }: Pick<BeamGeometry, 'stick'>): number =>
    (widthSeen(stick, 'side') * windOnSolid(site, solidity, roundDiameter(stick))) / 144;
  const lengthIn = tie.toXIn - tie.fromXIn;
  const braces = frame.members.braces.filter((b) => b.toId === tie.id);
  const windLbPerIn = sideOf(tie) + braces.reduce((sum, b) => sum + sideOf(b) * b.lengthIn, 0) / lengthIn;
  const weight = tie.stick ? weightAlong(project, tie.stick) : null;
  const heavyLbPerIn = weight?.ok ? Math.max(weight.at(0).heavy, weight.at(lengthIn).heavy) : 0;
  const shaken = earthquakeOf(project.site, highestFt(shelter), site.figures.balancedSnow.value)?.pushShare ?? 0;
  const unitOf = (caseId: string): number => {
    if (caseId.startsWith('wind-along')) return windLbPerIn;
    if (caseId === 'seismic-plus' || caseId === 'seismic-minus') return shaken * heavyLbPerIn;
    return caseId === 'notional-plus' || caseId === 'notional-minus' ? NOTIONAL_SHARE * heavyLbPerIn : 0;
  };
  const known = new Map<Combination, number>();
  const pushIn = (combination: Combination, note?: Note): number => {
    const found = note ? undefined : known.get(combination);
    if (found !== undefined) return found;
    const pushing = combination.factors.find(({ caseId }) => unitOf(caseId) > 0);
    const p = pushing ? pushing.factor * unitOf(pushing.caseId) : 0;
    known.set(combination, p);
    if (pushing)
      note?.({
        symbol: 'p',
        words: 'push along the lines on each inch of the tie log',
        formula: 'f × p1',
        put: [
          put('f', pushing.factor, '1', 'factor of this load in the combination'),
          put('p1', unitOf(pushing.caseId), 'lb/in', 'wind on its side and its braces, or a share of its weight'),
        ],
        result: quantity(p, 'lb/in'),
        clause: clause('ASCE7', '29.4, 27.1.5, 12.8'),
      });
    return p;
  };
  return {
    pushIn,
    ...onTwoPosts(
      tie,
      frame.mesh.posts.filter((p) => p.beamNodes.some((n) => n.beamId === tie.id)).map((p) => p.post),
    ),
  };
}

/** A pound on each inch of a beam on two posts, both ends of which may reach past them. */
function onTwoPosts(
  { fromXIn, toXIn }: Pick<BeamGeometry, 'fromXIn' | 'toXIn'>,
  under: readonly PostGeometry[],
): Pick<BlownTie, 'momentAt' | 'shearAt' | 'onPost'> {
  const [left, right] = [under[0]!, under.at(-1)!];
  const lengthIn = toXIn - fromXIn;
  const onRight = (lengthIn * ((fromXIn + toXIn) / 2 - left.xIn)) / (right.xIn - left.xIn);
  const onLeft = lengthIn - onRight;
  const shear = (x: number, from: boolean): number =>
    (x > left.xIn || (from && x === left.xIn) ? onLeft : 0) + (x > right.xIn ? onRight : 0) - (x - fromXIn);
  return {
    momentAt: (atIn) => {
      const x = fromXIn + atIn;
      return Math.abs(
        onLeft * Math.max(0, x - left.xIn) + onRight * Math.max(0, x - right.xIn) - (x - fromXIn) ** 2 / 2,
      );
    },
    shearAt: (atIn) => Math.max(...[true, false].map((from) => Math.abs(shear(fromXIn + atIn, from)))),
    onPost: (postId) => Math.abs(postId === left.id ? onLeft : postId === right.id ? onRight : 0),
  };
}
