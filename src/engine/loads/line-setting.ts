import type { BraceGeometry, LineGeometry, PostGeometry, RafterGeometry, Shelter } from '../geometry/shelter.ts';
import type { Project } from '../project/model.ts';
import type { RunOf } from './roof-cases.ts';
import type { Stretch } from './stretches.ts';
import type { MemberWeights } from './weights.ts';

/** One frame line with what stands on it, what lies on it and what everything weighs. */
export interface LineSetting {
  readonly project: Project;
  readonly shelter: Shelter;
  readonly line: LineGeometry;
  readonly posts: readonly PostGeometry[];
  readonly braces: readonly BraceGeometry[];
  readonly rafters: readonly RafterGeometry[];
  readonly stretches: readonly Stretch[];
  readonly runOf: RunOf;
  readonly weights: MemberWeights;
}
