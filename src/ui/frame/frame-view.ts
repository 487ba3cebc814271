import { useStore } from 'zustand';
import { createStore } from 'zustand/vanilla';
import type { ForceOverlay } from '../drawing/force-diagram.ts';

export type SheetView = 'front' | 'section' | 'plan';
/** What is drawn on the logs of a front view: a force or the sag, or how the line would buckle. */
export type Hatched = 'none' | ForceOverlay['kind'] | 'buckling';

/** What of the shelter is looked at; not part of the project. Ids that are gone count as nothing chosen. */
interface FrameView {
  readonly large: SheetView;
  readonly lineId: string | null;
  readonly hatched: Hatched;
  /** id of the open link of the cord */
  readonly openLink: string | null;
  readonly memberId: string | null;
  /** piece whose log is looked at by itself, in place of the views */
  readonly logOf: string | null;
  /** the thinnest log that would do, drawn in the logs; null until somebody says: then not on a telephone */
  readonly silhouette: boolean | null;
  /** path of a field that was asked for and gets the focus as soon as it is there */
  readonly sought: string | null;
}

const view = createStore<FrameView>(() => ({
  large: 'front',
  lineId: null,
  hatched: 'none',
  openLink: null,
  memberId: null,
  logOf: null,
  silhouette: null,
  sought: null,
}));

export const useFrameView = <T>(select: (state: FrameView) => T): T => useStore(view, select);
export const look = (change: Partial<FrameView>): void => view.setState(change);
