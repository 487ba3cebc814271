import { alongSystem } from './checks/sway/sway-checks.ts';
import { analyseLine, type LineFrame } from './frame/line-frame.ts';
import { membersOfLine, type LineMembers } from './frame/line-mesh.ts';
import { withSecondOrder } from './frame/second-order.ts';
import type { LineGeometry } from './geometry/shelter.ts';
import type { Givens } from './givens.ts';
import { elasticity, stabilityShare } from './line-stiffness.ts';
import type { LoadCase } from './loads/cases.ts';
import { combine, serviceCombinations } from './loads/combine.ts';
import type { Combination } from './loads/combination.ts';
import { lineLoads } from './loads/line-loads.ts';
import { pullIsGiven } from './pull-is-given.ts';
import { whyNotAnalysed, type Blocked } from './why-not-analysed.ts';

/** A frame line under all that comes down on it, before anything is asked of it. */
export interface AnalysedLine {
  readonly members: LineMembers;
  readonly cases: readonly LoadCase[];
  readonly combinations: readonly Combination[];
  /** one per cent of its dead load, or the earthquake on all that it shakes, strength level [lb] */
  readonly inertiaLb: number;
  /** sway force of each case along x [lb] */
  readonly alongLb: Readonly<Record<string, number>>;
  /** its own braces or fixed feet hold it along */
  readonly holdsItself: boolean;
  readonly answer:
    | {
        readonly ok: true;
        readonly frame: LineFrame;
        /** Emin over E of a member */
        readonly share: (memberId: string) => number;
      }
    | { readonly ok: false; readonly blocked: Blocked };
}

/** Loads and frame of one frame line; a line that cannot be analysed says why. */
export function analysedLine(givens: Givens, line: LineGeometry): AnalysedLine {
  const { project, shelter, site } = givens;
  const members = membersOfLine(shelter, line);
  const loading = lineLoads(project, shelter, line, site, givens.roof, givens.runOf, givens.weights, givens.earthquake);
  const combinations = combine(loading.cases);
  const by = alongSystem(project.lateral.along, line)?.by;
  const fixedFeet = members.posts.some((p) => p.foot.fixity.along !== 'pinned');
  const holdsItself = by !== 'building' && by !== 'ratedWalls' && (members.braces.length > 0 || fixedFeet);
  const known = {
    members,
    cases: loading.cases,
    combinations,
    inertiaLb: loading.loads.inertiaLb,
    alongLb: loading.loads.alongLb,
    holdsItself,
  };
  const blocked = whyNotAnalysed(givens, members);
  if (blocked) return { ...known, answer: { ok: false, blocked } };
  const answer = analyseLine(
    members,
    loading.loads,
    [...combinations, ...serviceCombinations(loading.cases, project.calculation.kcr)],
    elasticity(givens, members),
    {
      pullGiven: pullIsGiven({ project, shelter, valuesOf: givens.materials.of }, members.braces),
      // not decided: held for now, and a row says that it is not given
      holdsItself: holdsItself || by === 'kneeBraces' || by === 'embeddedPosts' || by === 'none',
    },
  );
  if (!answer.ok) return { ...known, answer: { ok: false, blocked: { status: 'outside', reason: answer.reason } } };
  const share = stabilityShare(givens, members);
  return { ...known, answer: { ok: true, frame: withSecondOrder(answer.frame, share), share } };
}
