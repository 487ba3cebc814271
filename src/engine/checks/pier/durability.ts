import { asksNothing, breaks, notGiven, outside, type Verdict } from '../../check.ts';
import type { CheckRow } from '../../evaluation.ts';
import type { PostGeometry } from '../../geometry/shelter.ts';
import { message } from '../../message.ts';
import type { EmbeddedFoot, PierFoot } from '../../project/model.ts';
import { plainRow } from '../site-of-check.ts';

/** Wood that is neither treated nor durable ends so high above exposed ground [in]. @source IRC R317.1 */
const ABOVE_GROUND_IN = 8;
/** A pier over covered earth may do with this, its post then need not be treated [in]. @source IRC R317.1.4 */
const PIER_ABOVE_COVER_IN = 6;
/** Hardware that carries a post clear of concrete lifts it so much [in]. @source IRC R317.1.4 */
const OFF_CONCRETE_IN = 1;
/** Concrete around a post reaches so far beyond it on both sides together [in]. @source IBC 1807.3.3, from memory */
const FILL_AROUND_IN = 4;
/** Lengths are measured to a sixteenth; what differs by less is alike. */
const CLOSE_IN = 1e-6;

const WHOLE = { kind: 'whole', name: '' } as const;
const reaches = (haveIn: number, needIn: number): boolean => haveIn >= needIn - CLOSE_IN;

/** How a post on a pier keeps dry: clear of the ground, and clear of the concrete. */
export function dryFootRows(post: PostGeometry, foot: PierFoot): readonly CheckRow[] {
  return [
    // where the pier ends nobody knows before it is measured: its own row says so
    ...(post.pierTopZIn === null
      ? []
      : [plainRow('post.clearance', post.id, WHOLE, clearance(post, post.pierTopZIn, foot))]),
    plainRow('post.standOff', post.id, WHOLE, standOff(foot)),
  ];
}

function clearance(post: PostGeometry, pierTopZIn: number, { earthCovered }: PierFoot): Verdict {
  const haveIn = post.woodFromZIn - post.gradeZIn;
  const pierIn = pierTopZIn - post.gradeZIn;
  if (reaches(haveIn, ABOVE_GROUND_IN))
    return asksNothing('in', message('clearOfGround', { haveIn, needIn: ABOVE_GROUND_IN }));
  if (reaches(pierIn, PIER_ABOVE_COVER_IN)) {
    if (earthCovered === true)
      return asksNothing('in', message('clearOverCover', { haveIn: pierIn, needIn: PIER_ABOVE_COVER_IN }));
    if (earthCovered === undefined) return notGiven(message('earthCoverNotSaid', { haveIn, needIn: ABOVE_GROUND_IN }));
  }
  return breaks(message('tooNearGround', { haveIn, pierIn, needIn: ABOVE_GROUND_IN, coverIn: PIER_ABOVE_COVER_IN }));
}

function standOff({ standOffIn, barrier }: PierFoot): Verdict {
  if (reaches(standOffIn, OFF_CONCRETE_IN))
    return asksNothing('in', message('standsOff', { haveIn: standOffIn, needIn: OFF_CONCRETE_IN }));
  if (barrier === true) return asksNothing('in', message('barrierLies'));
  const values = { needIn: OFF_CONCRETE_IN };
  return barrier === undefined
    ? notGiven(message('barrierNotSaid', values))
    : breaks(message('woodOnConcrete', values));
}

/** What is wrong with a post in the ground before any load comes: not treated for it, or the hole too narrow. */
export function buriedRows(post: PostGeometry, foot: EmbeddedFoot): readonly CheckRow[] {
  const untreated = whyNotTreated(foot);
  const narrow = holeTooNarrow(post, foot);
  return [
    ...(untreated ? [plainRow('pier.treatment', post.id, WHOLE, untreated)] : []),
    ...(narrow ? [plainRow('pier.backfill', post.id, WHOLE, narrow)] : []),
  ];
}

/** @source IBC 1807.3.1: posts in the ground treated for use category 4B */
function whyNotTreated({ treatment, useCategory }: EmbeddedFoot): Verdict | null {
  if (treatment === null || treatment.trim() === '') return outside(message('untreatedInSoil'));
  if (useCategory === undefined) return notGiven(message('useCategoryNotSaid'));
  return useCategory === 'UC4A' ? breaks(message('treatedTooWeakly', { category: useCategory })) : null;
}

/** Around the butt of a round post, the diagonal of a sawn one. */
function holeTooNarrow({ stick }: PostGeometry, { holeIn, backfill, pad }: EmbeddedFoot): Verdict | null {
  if (!stick || stick.kind === 'typed') return null;
  const postIn =
    stick.kind === 'round' ? (stick.profile[0]?.diameterIn ?? 0) : Math.hypot(stick.breadthIn, stick.depthIn);
  const needIn = Math.max(postIn + (backfill === 'concrete' ? FILL_AROUND_IN : 0), pad?.acrossIn ?? 0);
  return reaches(holeIn, needIn) ? null : breaks(message('holeTooNarrow', { holeIn, needIn }));
}
