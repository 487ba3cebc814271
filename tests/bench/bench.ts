import { closeBrowser, launchBrowser } from '../browser/support/browser.ts';
import { firstLoad, noteFirstRatio } from '../browser/support/first-load.ts';
import { serveBuilt } from '../browser/support/serve.ts';
import { evaluationTime } from './evaluation-time.ts';
import { keyToPaint } from './key-to-paint.ts';
import type { Spread } from './spread.ts';

/** What the workbench wants to keep to: demo in Node, key press to paint, first load. */
const TARGETS = { demoMedianMs: 10, keyToPaintP95Ms: 50, firstLoadKiB: 200 };
const EXAMPLES = ['firewood-shed', 'lean-to', 'snow-lean-to', 'gable', 'undersized-shed'];

const evaluation = Object.fromEntries(
  EXAMPLES.map((name) => [name, evaluationTime(`public/examples/${name}.shelter.json`)]),
);
const { painted, loadedKiB } = await inBrowser();
const report = { evaluation, keyToPaint: painted, firstLoadKiB: loadedKiB, targets: TARGETS };

async function inBrowser() {
  const { address, close } = await serveBuilt();
  const page = await (await launchBrowser()).newPage({ locale: 'en-US', viewport: { width: 1440, height: 900 } });
  try {
    await noteFirstRatio(page);
    await page.goto(address);
    await page.locator('.cord .counts').waitFor();
    await page.waitForLoadState('networkidle');
    const { bytes } = await firstLoad(page);
    return { painted: await keyToPaint(page), loadedKiB: bytes / 1024 };
  } finally {
    await closeBrowser();
    await close();
  }
}

const ms = (n: number): string => `${n.toFixed(1).padStart(6)} ms`;
const line = (what: string, { medianMs, p95Ms, count }: Spread, target: string): string =>
  `${what.padEnd(36)} median ${ms(medianMs)}   95th percentile ${ms(p95Ms)}   of ${count}   ${target}`.trimEnd();

if (process.argv.includes('--json')) console.log(JSON.stringify(report));
else
  console.log(
    [
      ...EXAMPLES.map((name, i) =>
        line(`evaluation of ${name}`, evaluation[name]!, i === 0 ? `target: median ${TARGETS.demoMedianMs} ms` : ''),
      ),
      line('key press to repainted ratios', painted, `target: 95th percentile ${TARGETS.keyToPaintP95Ms} ms`),
      `${'first load, gzip'.padEnd(36)} ${loadedKiB.toFixed(1)} KiB   target: ${TARGETS.firstLoadKiB} KiB`,
    ].join('\n'),
  );
