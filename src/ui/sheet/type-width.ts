/**
 * Widths of the sheet's two cuts of the typeface as shipped with the program, in hundredths of the type size, rounded up:
 * the condensed regular of its tables and texts, the semibold of its title; the condensed semibold of captions by its ratio to the regular. So the page can be planned without a browser.
 */
export type Cut = 'narrow' | 'caption' | 'title';

/** The condensed semibold is nowhere wider than this against the regular. */
const CAPTION_RATIO = 1.12;

const WIDTHS: Readonly<Record<'narrow' | 'title', readonly (readonly [width: number, characters: string])[]>> = {
  narrow: [
    [22, " '"],
    [24, 'ij'],
    [26, '!,.:;l‘’'],
    [30, '[]f|·'],
    [32, '()t{}²³'],
    [34, 'r'],
    [36, '-/\\'],
    [38, 'I'],
    [40, '"'],
    [44, '?sz“”°'],
    [46, '*Lcvxy'],
    [48, 'Jgk'],
    [50, 'ae†é'],
    [52, 'FT_hnouü'],
    [54, '$+0123456789<=>ESYZ^`bdpq~–×−§±'],
    [56, 'PVX'],
    [58, 'ACKRß'],
    [60, 'B'],
    [62, 'DU'],
    [64, '#&GHNOQ'],
    [70, 'w'],
    [72, '—'],
    [74, 'M…¼¾'],
    [76, '½'],
    [80, 'm'],
    [82, '@W'],
    [84, '%'],
  ],
  title: [
    [24, ' '],
    [26, "'"],
    [28, 'ij'],
    [30, ',.l‘’'],
    [32, '!:;'],
    [34, '()[]'],
    [36, 'f·'],
    [38, 't{|}'],
    [40, 'r'],
    [42, '-'],
    [44, '/I\\'],
    [48, '"'],
    [50, '?s'],
    [52, 'cz“”'],
    [54, 'Lvy'],
    [56, '*J_aegxé'],
    [58, 'FTko'],
    [60, '$+0123456789<=>EZ^`bdhnpqu~–×−ü'],
    [62, 'S'],
    [64, 'VY'],
    [66, '#CPX'],
    [68, 'ABKRß'],
    [70, 'DU'],
    [72, '&GHNOQ'],
    [78, '—'],
    [82, 'Mw'],
    [88, '…'],
    [90, '@m'],
    [96, '%W'],
  ],
};

const tableOf = (cut: 'narrow' | 'title'): ReadonlyMap<string, number> =>
  new Map(WIDTHS[cut].flatMap(([width, characters]) => [...characters].map((c) => [c, width / 100])));
const WIDTH_OF: Readonly<Record<'narrow' | 'title', ReadonlyMap<string, number>>> = {
  narrow: tableOf('narrow'),
  title: tableOf('title'),
};

/** Rarer Latin letters are no wider than this; other scripts come from another typeface, whose characters may be square. */
const UNNAMED = 1;
const OTHER_SCRIPT = 1.5;
const LAST_LATIN = 0x24f;

/** Room that a line takes at most, in the unit of its size. */
export function lineWidth(text: string, size: number, cut: Cut = 'narrow'): number {
  const known = WIDTH_OF[cut === 'title' ? 'title' : 'narrow'];
  let width = 0;
  for (const character of text) {
    width += known.get(character) ?? ((character.codePointAt(0) ?? 0) > LAST_LATIN ? OTHER_SCRIPT : UNNAMED);
  }
  return width * size * (cut === 'caption' ? CAPTION_RATIO : 1);
}
