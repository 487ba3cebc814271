import { look } from '../frame/frame-view.ts';
import { lookAtLoads, type LoadWish } from './loads-view.ts';

interface ShowLoadsProps {
  readonly wish: LoadWish;
  readonly words: string;
  /** the check whose governing combination is told beside the picture */
  readonly checkKey?: string;
}

/** A word that puts the loads on section and plan. */
export function ShowLoads({ wish, words, checkKey }: ShowLoadsProps) {
  const show = (): void => {
    look({ logOf: null });
    lookAtLoads(wish, checkKey ?? null);
  };
  return (
    <button type="button" className="tool show-loads" onClick={show}>
      {words}
    </button>
  );
}
