import type { LineResponse } from '../../frame/line-frame.ts';
import type { PostChain } from '../../frame/read-response.ts';
import { diameterAt, type PostGeometry, type RoundStick, type SawnStick } from '../../geometry/shelter.ts';
import type { EmbeddedFoot } from '../../project/model.ts';
import type { LineCheckContext } from '../line-context.ts';
import type { CheckSite } from '../site-of-check.ts';
import { roundArea } from '../wood/round-section.ts';
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

/** Area of the butt [in2]. */
export const buttAreaIn2 = (stick: RoundStick | SawnStick): number =>
  stick.kind === 'round' ? roundArea(diameterAt(stick, 0)!) : stick.breadthIn * stick.depthIn;

/** Wood below finished ground [in]. */
export const depthOf = (post: PostGeometry): number => post.gradeZIn - post.woodFromZIn;
