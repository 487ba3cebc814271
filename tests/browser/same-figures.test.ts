import { execFile } from 'node:child_process';
import { promisify } from 'node:util';
import { afterAll, describe, expect, it } from 'vitest';
import { EXAMPLES, exampleText, soundProject, type Example } from '../support/files.ts';
import { EXAMPLES as IN_THE_MENU } from '../../src/ui/places/examples.ts';
import { closeBrowser } from './support/browser.ts';
import { allRows } from './support/cord.ts';
import { figuresOf, roundedUp } from './support/figures.ts';
import { openExample, saveToFile } from './support/files.ts';
import { openDemo } from './support/workbench.ts';

afterAll(closeBrowser);

interface TerminalCheck {
  readonly key: string;
  readonly status: string;
  readonly ratio: number | null;
  readonly ratios: Readonly<Record<string, number | null>>;
}
interface TerminalReport {
  readonly fingerprint: string;
  readonly counts: Readonly<Record<string, number>>;
  readonly checks: readonly TerminalCheck[];
}

/** What the terminal prints for an example; it ends with 1 or 3 where not every check passes. */
async function inTheTerminal(name: Example): Promise<TerminalReport> {
  const words = ['scripts/evaluate.mjs', `public/examples/${name}.shelter.json`, '--json'];
  const run = promisify(execFile)(process.execPath, words, { maxBuffer: 2 ** 28 });
  const { stdout } = await run.catch((ended: { readonly code: number; readonly stdout: string }) => {
    if (ended.code !== 1 && ended.code !== 3) throw ended;
    return ended;
  });
  return JSON.parse(stdout);
}

const isSame = (a: number | null | undefined, b: number | null | undefined): boolean =>
  a === b || (typeof a === 'number' && typeof b === 'number' && Math.abs(a - b) <= 1e-12 * Math.abs(b));

const menuWords = (name: Example): string =>
  IN_THE_MENU.find(({ file }) => file === `${name}.shelter.json`)?.words ?? `no ${name} in the menu`;

describe('an example has the same ratios', () => {
  for (const name of EXAMPLES) {
    it(`by terminal and by screen, every row as printed: ${name}`, async () => {
      const report = await inTheTerminal(name);
      const { page, complaints, close } = await openDemo();
      await openExample(page, menuWords(name), soundProject(exampleText(name)).title.name);
      const shown = await allRows(page);
      expect(shown).toEqual(new Map(report.checks.map(({ key, ratio }) => [key, roundedUp(ratio)])));
      const { pass, fail, notGiven, outside } = report.counts;
      expect(await page.locator('.cord .counts').innerText()).toBe(
        `${report.checks.length} checks: ${pass} pass, ${fail} fail, ${notGiven} not given, ${outside} outside the method.`,
      );

      // the project that the screen computed from, evaluated anew, against the terminal's own figures
      const figures = figuresOf(soundProject((await saveToFile(page)).text));
      expect(figures.fingerprint).toBe(report.fingerprint);
      const byKey = new Map(report.checks.map((check) => [check.key, check]));
      const unlike = figures.checks.flatMap(({ key, status, ratio, ratios }) => {
        const other = byKey.get(key);
        if (other?.status !== status || !isSame(ratio, other.ratio)) return [key];
        return ratios.labels
          .filter((label, i) => {
            const value = ratios.values[i];
            return !isSame(Number.isFinite(value) ? value : null, other.ratios[label]);
          })
          .map((label) => `${key} ${label}`);
      });
      expect(unlike).toEqual([]);
      expect(figures.checks.length).toBe(report.checks.length);
      expect(complaints).toEqual([]);
      await close();
    });
  }
});
