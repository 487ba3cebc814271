import type { BrowserContext, BrowserContextOptions, Page } from 'playwright';
import { inject } from 'vitest';
import { launchBrowser } from './browser.ts';

export interface OpenedWorkbench {
  readonly page: Page;
  /** everything the page complained about so far: console errors, uncaught errors, refused and missing files */
  readonly complaints: readonly string[];
  readonly context: BrowserContext;
  readonly close: () => Promise<void>;
}

/** A desk, and a telephone whose screen is touched. */
export const DESK: BrowserContextOptions = { viewport: { width: 1440, height: 900 } };
export const PHONE: BrowserContextOptions = {
  viewport: { width: 390, height: 844 },
  hasTouch: true,
  isMobile: true,
  deviceScaleFactor: 2,
};

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
  const context = await (await launchBrowser()).newContext({ locale: 'en-US', ...DESK, ...options });
  const page = await context.newPage();
  const complaints = collectComplaints(page);
  await page.goto(inject('workbenchAddress'));
  await page.getByRole('main').waitFor();
  return { page, complaints, context, close: () => context.close() };
}

/** The same, with the demo's figures on the screen and the demo kept on the device. */
export async function openDemo(options: BrowserContextOptions = {}): Promise<OpenedWorkbench> {
  const opened = await openWorkbench(options);
  await figuresShown(opened.page);
  await saved(opened.page);
  return opened;
}

export const figuresShown = (page: Page): Promise<void> => page.locator('.cord .counts').waitFor();

/** Waits until what is on the screen lies on the device. */
export const saved = (page: Page): Promise<void> =>
  page.locator('.top .title').getByText('saved on this device', { exact: true }).waitFor();

/** Another tab of the same profile, with its figures. */
export async function openAnotherTab(context: BrowserContext): Promise<Page> {
  const page = await context.newPage();
  await page.goto(inject('workbenchAddress'));
  await figuresShown(page);
  return page;
}
