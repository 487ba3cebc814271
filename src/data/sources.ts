import type { SOURCES } from './source-list.ts';

/** How a source was read; a test counts `memory`. */
export type Seen = 'printed' | 'public copy' | 'memory' | 'own';

export type SourceKey = keyof typeof SOURCES;

/** Points into a source: clause, table, figure or equation number as printed there. */
export interface ClauseRef {
  readonly source: SourceKey;
  readonly clause: string;
  /** the figure was not compared with the printed edition */
  readonly memory?: true;
}

export const clause = (source: SourceKey, where: string): ClauseRef => ({ source, clause: where });
/** A clause or figure that is known from memory only; marked on screen and sheet and counted by `npm run proof`. */
export const remembered = (source: SourceKey, where: string): ClauseRef => ({ source, clause: where, memory: true });
