import { execFileSync } from 'node:child_process';
import { mkdtempSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import type { Page } from 'playwright';
import type { Project } from '../../src/engine/project/model.ts';
import { saveText } from '../../src/engine/project/save-text.ts';
import { measureSheet, type Measured } from './sheet-measure.ts';

export type PaperWords = 'Letter' | 'A4';

/** Opens a project the way a person does: as a file, then the place of the sheet. */
export async function openSheetOf(page: Page, project: Project): Promise<void> {
  // the page opens its first project by itself; a file that came before it would be displaced
  await page.getByRole('textbox', { name: 'Name of the project' }).waitFor();
  const buffer = Buffer.from(saveText(project));
  await page
    .getByLabel('Open a project file')
    .setInputFiles({ name: 'random.shelter.json', mimeType: 'application/json', buffer });
  await page.waitForFunction(
    (name) => document.querySelector<HTMLInputElement>('.top .title input')?.value === name,
    project.title.name,
  );
  await page.evaluate(() => {
    location.hash = '#check-sheet';
  });
  await page.locator('.sheet').waitFor();
}

/** By key: a name of the longest kind may lie over the switch. */
export async function chooseUnits(page: Page, units: 'ft in' | 'm'): Promise<void> {
  await page.getByRole('radio', { name: new RegExp(`^${units}\\s*:`) }).press('Space');
}

export async function choosePaper(page: Page, paper: PaperWords): Promise<void> {
  await page.getByRole('group', { name: 'Paper' }).getByText(paper, { exact: true }).click();
  await page.evaluate(() => document.fonts.ready);
}

/** As the browser would print it: what stands where, and the file itself. */
export async function printed(page: Page): Promise<{ readonly measured: Measured; readonly pdf: Buffer }> {
  await page.emulateMedia({ media: 'print' });
  const measured = await page.evaluate(measureSheet);
  const pdf = await page.pdf({ preferCSSPageSize: true });
  await page.emulateMedia({ media: null });
  return { measured, pdf };
}

/** Page objects of a printed file; the browser writes them uncompressed. */
export const pageCount = (pdf: Buffer): number => pdf.toString('latin1').match(/\/Type\s*\/Page\b(?!s)/g)?.length ?? 0;

export const hasPdfText = ((): boolean => {
  try {
    execFileSync('pdftotext', ['-v'], { stdio: 'ignore' });
    return true;
  } catch {
    return false;
  }
})();

/** The printed file read back by another program. */
export function pdfText(pdf: Buffer, ...options: readonly string[]): string {
  const folder = mkdtempSync(join(tmpdir(), 'sheet-'));
  try {
    const file = join(folder, 'sheet.pdf');
    writeFileSync(file, pdf);
    return execFileSync('pdftotext', [...options, file, '-'], { encoding: 'utf8', maxBuffer: 2 ** 27 });
  } finally {
    rmSync(folder, { recursive: true });
  }
}
