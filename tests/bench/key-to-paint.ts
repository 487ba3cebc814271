import type { Page } from 'playwright';
import { openLink, type } from '../browser/support/cord.ts';
import { spreadOf, type Spread } from './spread.ts';

const KEYS = 60;
const WARM_UP = 10;

/**
 * Time from a key going down in a field to the paint that shows other ratios. The ground snow goes from 55 to 555 psf and
 * back, one key each: every link of the cord changes.
 */
export async function keyToPaint(page: Page): Promise<Spread> {
  await openLink(page, 'site');
  await type(page, 'Ground snow', '55');
  await watchPaints(page);
  const times: number[] = [];
  for (let i = 0; i < KEYS + WARM_UP; i++) {
    await page.keyboard.press(i % 2 === 0 ? '5' : 'Backspace');
    const time = await page.waitForFunction(() => window.keyToPaintMs ?? null).then((found) => found.jsonValue());
    if (i >= WARM_UP && time !== null) times.push(time);
    await page.waitForTimeout(50);
  }
  return spreadOf(times);
}

declare global {
  interface Window {
    /** time of the last key, once what it changed was painted; undefined while it is not */
    keyToPaintMs: number | undefined;
  }
}

/** Notes when a key goes down, when the cord's figures change after it, and when the frame that shows them is out. */
const watchPaints = (page: Page): Promise<void> =>
  page.evaluate(() => {
    let downAt: number | null = null;
    document.addEventListener(
      'keydown',
      (event) => {
        window.keyToPaintMs = undefined;
        downAt = event.timeStamp;
      },
      { capture: true },
    );
    const painted = new MessageChannel();
    painted.port1.addEventListener('message', () => {
      if (downAt !== null) window.keyToPaintMs = performance.now() - downAt;
      downAt = null;
    });
    painted.port1.start();
    new MutationObserver(() => {
      // a message sent from inside a frame is answered once that frame is painted
      if (downAt !== null) requestAnimationFrame(() => painted.port2.postMessage(null));
    }).observe(document.querySelector('.cord')!, { subtree: true, childList: true, characterData: true });
  });
