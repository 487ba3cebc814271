/** Load cases of a row across have ids of their own: a push in one way of holding it, and what the lines press on the posts. */
const PRESSED = 'pressed ';
const IN_PLACE = 'in-place ';
const WAY = /^(.+)@\d+[+-]?$/;

/** @param comesWith  the load case that it comes with */
export const pushId = (comesWith: string, way: number, toward: '+' | '-' | ''): string =>
  `${comesWith}@${way}${toward}`;

export const pressedId = (combinationId: string): string => `${PRESSED}${combinationId}`;

/** Of the level wind on the rafter of a row, moved to where it blows from where a push has it. */
export const inPlaceId = (pushCaseId: string): string => `${IN_PLACE}${pushCaseId}`;

/**
 * What a case of a row is, by its id: the push that comes with a load case, that on its rafter in its place, or what the lines
 * press; null for any other.
 */
export function readRowCase(
  id: string,
): { readonly kind: 'push' | 'inPlace'; readonly comesWith: string } | { readonly kind: 'pressed' } | null {
  if (id.startsWith(PRESSED)) return { kind: 'pressed' };
  const isInPlace = id.startsWith(IN_PLACE);
  const comesWith = WAY.exec(isInPlace ? id.slice(IN_PLACE.length) : id)?.[1];
  return comesWith === undefined ? null : { kind: isInPlace ? 'inPlace' : 'push', comesWith };
}
