import type { Link } from '../../data/rules.ts';
import type { LoadPicture } from '../../engine/load-pictures/picture.ts';
import type { LoadWish } from './loads-view.ts';

/** Place of the picture that a wish asks for; the first of all where nothing answers it. */
export function placeOf(pictures: readonly LoadPicture[], wish: LoadWish): number {
  const answers =
    wish.by === 'link'
      ? [pictures.findIndex(ON_LINK[wish.link] ?? isSnow)]
      : [
          pictures.findIndex((p) => p.id === wish.id && p.forLine === wish.forLine && p.actsOn === wish.actsOn),
          pictures.findIndex((p) => p.id === wish.id && p.actsOn === wish.actsOn),
          pictures.findIndex((p) => p.id === wish.id || p.alsoFor.includes(wish.id)),
          pictures.findIndex((p) => kindOfId(p.id) === kindOfId(wish.id)),
        ];
  return answers.find((at) => at >= 0) ?? 0;
}

/** A person stands in many places, drawn in some: `person-span`. */
const kindOfId = (id: string): string => id.split('-')[0] ?? id;

const isSnow = ({ kind }: LoadPicture): boolean => kind === 'snow';
const isOn =
  (actsOn: LoadPicture['actsOn']) =>
  (picture: LoadPicture): boolean =>
    picture.actsOn === actsOn;

/** What is looked at first from a link of the load path; balanced snow from all others. */
const ON_LINK: Readonly<Partial<Record<Link, (picture: LoadPicture) => boolean>>> = {
  sheet: isOn('sheet'),
  purlin: isOn('purlins'),
  rafter: isOn('rafters'),
  swayAlong: ({ pushes }) => pushes.length > 0,
  swayAcross: ({ across }) => across !== null,
};
