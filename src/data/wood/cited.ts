import type { Seen, SourceKey } from '../sources.ts';

/** Where a table was read and how. */
export interface Cited {
  readonly source: SourceKey;
  readonly where: string;
  readonly seen: Seen;
}
