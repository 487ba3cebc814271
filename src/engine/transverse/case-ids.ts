/** Load cases of a row across have ids of their own: a push in one way of holding it, and what the lines press on the posts. */
const PRESSED = 'pressed ';
const WAY = /^(.+)@\d+[+-]?$/;

/** @param comesWith  the load case that it comes with */
export const pushId = (comesWith: string, way: number, toward: '+' | '-' | ''): string =>
  `${comesWith}@${way}${toward}`;

export const pressedId = (combinationId: string): string => `${PRESSED}${combinationId}`;

/** What a case of a row is, by its id: the push that comes with a load case, or what the lines press; null for any other. */
export function readRowCase(
  id: string,
): { readonly kind: 'push'; readonly comesWith: string } | { readonly kind: 'pressed' } | null {
  if (id.startsWith(PRESSED)) return { kind: 'pressed' };
  const comesWith = WAY.exec(id)?.[1];
  return comesWith === undefined ? null : { kind: 'push', comesWith };
}
