import type { BrowserContextOptions, Page } from 'playwright';
import { inject } from 'vitest';
import { launchBrowser } from './browser.ts';

export interface OpenedWorkbench {
  readonly page: Page;
  /** everything the page complained about so far: console errors, uncaught errors, refused and missing files */
  readonly complaints: readonly string[];
  readonly close: () => Promise<void>;
}

/** Writes down whatever the page complains about, from before its first request on. */
function collectComplaints(page: Page): readonly string[] {
  const complaints: string[] = [];
  page.on('console', (said) => {
    if (said.type() === 'error' || said.type() === 'warning') complaints.push(`${said.type()}: ${said.text()}`);
  });
  page.on('pageerror', (error) => complaints.push(`uncaught: ${error.message}`));
  page.on('requestfailed', (request) => complaints.push(`request failed: ${new URL(request.url()).pathname}`));
  page.on('response', (answer) => {
    if (answer.status() >= 400) complaints.push(`${answer.status()}: ${new URL(answer.url()).pathname}`);
  });
  return complaints;
}

/**
 * Opens the built workbench in a fresh, empty profile and waits until its main part is there.
 * The language is fixed so that numbers and dates read the same on every machine.
 */
export async function openWorkbench(options: BrowserContextOptions = {}): Promise<OpenedWorkbench> {
  const context = await (
    await launchBrowser()
  ).newContext({ locale: 'en-US', viewport: { width: 1440, height: 900 }, ...options });
  const page = await context.newPage();
  const complaints = collectComplaints(page);
  await page.goto(inject('workbenchAddress'));
  await page.getByRole('main').waitFor();
  return { page, complaints, close: () => context.close() };
}
