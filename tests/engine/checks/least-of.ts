import type { AskedSection } from '../../../src/engine/checks/asked-section.ts';

/** The least diameters that would do, place by place; NaN where nothing is asked [in]. */
export const leastOf = (sections: readonly (AskedSection | null)[] | null): readonly number[] =>
  sections!.map((section) => section?.leastIn() ?? NaN);
