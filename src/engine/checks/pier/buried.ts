import type { LineResponse } from '../../frame/line-frame.ts';
import type { PostChain } from '../../frame/read-response.ts';
import type { PostGeometry, RoundStick, SawnStick } from '../../geometry/shelter.ts';
import type { EmbeddedFoot } from '../../project/model.ts';
import type { LineCheckContext } from '../line-context.ts';
import type { CheckSite } from '../site-of-check.ts';
import type { FootForces } from './foot-forces.ts';

/** A post in the ground with what it brings down there. */
export interface Buried {
  readonly context: LineCheckContext;
  readonly chain: PostChain;
  readonly foot: EmbeddedFoot;
  readonly stick: RoundStick | SawnStick;
  readonly forces: FootForces;
  readonly at: Pick<CheckSite<LineResponse>, 'memberId' | 'place' | 'purpose'>;
}

/** Wood below finished ground [in]. */
export const depthOf = (post: PostGeometry): number => post.gradeZIn - post.woodFromZIn;
