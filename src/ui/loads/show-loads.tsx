import { lookAtLoads, type LoadWish } from './loads-view.ts';

interface ShowLoadsProps {
  readonly wish: LoadWish;
  readonly words: string;
  /** the check whose governing combination is told beside the picture */
  readonly checkKey?: string;
}

/** A word that puts the loads on section and plan. */
export function ShowLoads({ wish, words, checkKey }: ShowLoadsProps) {
  return (
    <button type="button" className="tool show-loads" onClick={() => lookAtLoads(wish, checkKey ?? null)}>
      {words}
    </button>
  );
}
