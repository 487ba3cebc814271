import type { Lateral, LateralBy } from './model.ts';

const FRAMES: ReadonlySet<LateralBy> = new Set<LateralBy>(['transverseFrame', 'kneeBraces', 'embeddedPosts']);

/** Posts and what stands with them hold the shelter across, not a building or a rated wall. */
export const isFrame = ({ by }: Lateral): boolean => by !== null && FRAMES.has(by);

/** True where something that holds the shelter across is a frame of its own. */
export const isHeldByFrames = (across: readonly Lateral[]): boolean => across.some(isFrame);
