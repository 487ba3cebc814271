import type { Link } from '../../data/rules.ts';
import type { LoadPicture } from '../../engine/load-pictures/picture.ts';
import type { LoadWish } from './loads-view.ts';

/** Place of the picture that a wish asks for; the first of all where nothing answers it. */
export function placeOf(pictures: readonly LoadPicture[], wish: LoadWish): number {
  const answers =
    wish.by === 'link'
      ? [pictures.findIndex(ON_LINK[wish.link] ?? isSnow)]
      : [
          pictures.findIndex((p) => p.id === wish.id && p.forLine === wish.forLine),
          pictures.findIndex((p) => p.id === wish.id || p.alsoFor.includes(wish.id)),
        ];
  return answers.find((at) => at >= 0) ?? 0;
}

const isSnow = ({ kind }: LoadPicture): boolean => kind === 'snow';
const isOnComponents = ({ actsOn }: LoadPicture): boolean => actsOn === 'components';

/** What is looked at first from a link of the load path; balanced snow from all others. */
const ON_LINK: Readonly<Partial<Record<Link, (picture: LoadPicture) => boolean>>> = {
  sheet: isOnComponents,
  purlin: isOnComponents,
  rafter: isOnComponents,
  swayAlong: ({ pushes }) => pushes.length > 0,
  swayAcross: ({ across }) => across !== null,
};
