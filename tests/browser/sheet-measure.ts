/** What is wrong on the page, each in words; the least type on it. */
export interface Measured {
  readonly problems: readonly string[];
  readonly leastTypePt: number;
  readonly texts: number;
}

/**
 * Runs in the page. Every text must lie within its own cell or block and within the page, no block may reach into the
 * next, nothing may be cut off by a box. Half a pixel is the browser's own rounding.
 */
export function measureSheet(): Measured {
  const SLACK = 0.5;
  const sheet = document.querySelector<HTMLElement>('.sheet')!;
  const page = sheet.getBoundingClientRect();
  const problems: string[] = [];
  let leastTypePt = Infinity;
  let texts = 0;

  const inside = (inner: DOMRect, outer: DOMRect, what: string, rightAir = 0): void => {
    const over = Math.max(
      inner.right - (outer.right - rightAir),
      outer.left - inner.left,
      inner.bottom - outer.bottom,
      outer.top - inner.top,
    );
    if (over > SLACK) problems.push(`${what} reaches ${over.toFixed(1)} px out of its place`);
  };

  const walker = document.createTreeWalker(sheet, NodeFilter.SHOW_TEXT);
  for (let node = walker.nextNode(); node; node = walker.nextNode()) {
    const words = node.textContent?.trim() ?? '';
    const element = node.parentElement!;
    if (words === '' || element.closest('.unseen, title, desc, .for-screen')) continue;
    texts++;
    const range = document.createRange();
    range.selectNodeContents(node);
    const place = range.getBoundingClientRect();
    const svg = element.closest('svg');
    const scale = svg ? svg.getBoundingClientRect().width / svg.viewBox.baseVal.width : 1;
    const typePt = svg
      ? Number.parseFloat(getComputedStyle(element).fontSize) * scale
      : Number.parseFloat(getComputedStyle(element).fontSize);
    leastTypePt = Math.min(leastTypePt, typePt * 0.75);
    const shown = `“${words.slice(0, 40)}”`;
    inside(place, page, `${shown} on the page`);
    // a letter's own box is higher than its ink: a drawing keeps room for the ink, a block for its lines
    const holder = svg ?? element.closest('td, th, li, p, h2, h3, caption, figcaption, .stamp, .sheet-foot')!;
    const box = holder.getBoundingClientRect();
    const air = holder.matches('td, th') ? Number.parseFloat(getComputedStyle(holder).paddingRight) : 0;
    const runsUp = svg !== null && element.hasAttribute('transform');
    const ink = runsUp
      ? new DOMRect(place.left + place.width * 0.15, place.top, place.width * 0.7, place.height)
      : new DOMRect(place.left, place.top + place.height * 0.15, place.width, place.height * 0.7);
    inside(svg ? ink : new DOMRect(place.left, box.top, place.width, 0), box, shown, air);
  }

  const blocks = [...sheet.children];
  blocks.forEach((block, i) => {
    const next =
      blocks[i + 1]?.getBoundingClientRect().top ??
      page.bottom - Number.parseFloat(getComputedStyle(sheet).paddingBottom);
    for (const part of [block, ...block.querySelectorAll('table, .text-block, figure, .note, ol, .more')]) {
      if (part.closest('.for-screen')) continue;
      const { bottom } = part.getBoundingClientRect();
      if (bottom > next + SLACK)
        problems.push(`${part.className || part.tagName} reaches ${(bottom - next).toFixed(1)} px into what follows`);
    }
  });
  const feet = [...sheet.querySelectorAll('.sheet-foot span')].map((span) => span.getBoundingClientRect());
  feet.slice(1).forEach((foot, i) => {
    if (foot.left < feet[i]!.right) problems.push('the words at the foot of the page touch');
  });
  for (const box of [sheet, ...sheet.querySelectorAll<HTMLElement>('td, th, p, .line, div, section')]) {
    if (box.closest('.unseen, .for-screen') || getComputedStyle(box).display === 'inline') continue;
    if (box.scrollHeight > box.clientHeight + 1 && box.clientHeight > 0)
      problems.push(`${box.className || box.tagName} is ${box.scrollHeight} px high in a box of ${box.clientHeight}`);
    if (box.scrollWidth > box.clientWidth + 1 && box.clientWidth > 0)
      problems.push(`${box.className || box.tagName} is ${box.scrollWidth} px wide in a box of ${box.clientWidth}`);
  }
  return { problems, leastTypePt, texts };
}
