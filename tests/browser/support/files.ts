import { readFile } from 'node:fs/promises';
import type { Page } from 'playwright';
import { eventually } from './eventually.ts';
import { figuresShown, saved } from './workbench.ts';

const openMenu = (page: Page): Promise<void> => page.getByRole('button', { name: 'file', exact: true }).click();

/** Saves the open project to a file, as a person does, and reads that file. */
export async function saveToFile(page: Page): Promise<{ readonly name: string; readonly text: string }> {
  await openMenu(page);
  const [download] = await Promise.all([
    page.waitForEvent('download'),
    page.getByRole('button', { name: 'Save to a file' }).click(),
  ]);
  return { name: download.suggestedFilename(), text: await readFile(await download.path(), 'utf8') };
}

export async function openFile(page: Page, name: string, text: string): Promise<void> {
  await page
    .getByLabel('Open a project file')
    .setInputFiles({ name, mimeType: 'application/json', buffer: Buffer.from(text) });
}

/** A file let go over the page. */
export const dropFile = (page: Page, name: string, text: string): Promise<void> =>
  page.evaluate(
    ([fileName, content]) => {
      const dataTransfer = new DataTransfer();
      dataTransfer.items.add(new File([content], fileName, { type: 'application/json' }));
      const over = new DragEvent('dragover', { dataTransfer, bubbles: true, cancelable: true });
      document.body.dispatchEvent(over);
      if (!over.defaultPrevented) throw new Error('the page does not take files');
      document.body.dispatchEvent(new DragEvent('drop', { dataTransfer, bubbles: true, cancelable: true }));
    },
    [name, text] as const,
  );

/** Opens an example from the menu and waits for its figures. */
export async function openExample(page: Page, menuWords: string, projectName: string): Promise<void> {
  await openMenu(page);
  await page.locator('.menu').getByRole('button', { name: menuWords, exact: true }).click();
  await eventually(() => page.getByRole('textbox', { name: 'Name of the project' }).inputValue()).toBe(projectName);
  await figuresShown(page);
  await saved(page);
}
