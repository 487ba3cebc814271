/** What holds two pieces together by its shank, in the words of the project file. */
export type FastenerKind = 'lag' | 'screw' | 'nail' | 'spike' | 'bolt' | 'driftPin';

/** Kinds that are pulled out of the wood along their shank; a bolt has its nut, and for a drift pin nothing is printed. */
export type PulledKind = Exclude<FastenerKind, 'bolt' | 'driftPin'>;
