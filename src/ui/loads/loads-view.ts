import { useStore } from 'zustand';
import { createStore } from 'zustand/vanilla';
import type { Link } from '../../data/rules.ts';
import type { LoadPicture } from '../../engine/load-pictures/picture.ts';

/** What a person wants to see: one case by its id, or what acts on a link of the load path. */
export type LoadWish =
  | {
      readonly by: 'case';
      readonly id: string;
      readonly forLine: string | null;
      readonly actsOn: LoadPicture['actsOn'];
    }
  | { readonly by: 'link'; readonly link: Link };

/** What the checks of a link of the load path take their loads on: the frame, or a part of the roof by its own area. */
export const actsOnOf = (link: Link): LoadPicture['actsOn'] =>
  link === 'sheet' ? 'sheet' : link === 'purlin' ? 'purlins' : link === 'rafter' ? 'rafters' : 'frame';

/** Which loads the section and the plan carry; none where nothing is wished. Not part of the project. */
interface LoadsView {
  readonly wish: LoadWish | null;
  /** key of the check whose governing combination is told */
  readonly checkKey: string | null;
}

const NOTHING: LoadsView = { wish: null, checkKey: null };
const view = createStore<LoadsView>(() => NOTHING);

export const useLoadsView = <T>(select: (state: LoadsView) => T): T => useStore(view, select);
export const lookAtLoads = (wish: LoadWish, checkKey?: string | null): void =>
  view.setState(checkKey === undefined ? { wish } : { wish, checkKey });
export const leaveLoads = (): void => view.setState(NOTHING);
