import type { Locator, Page } from 'playwright';

const heads = (page: Page): Locator => page.locator('.link-head');
export const linkHead = (page: Page, name: string): Locator =>
  heads(page).filter({ has: page.locator('.link-name').getByText(name, { exact: true }) });

export const linkNames = (page: Page): Promise<string[]> => page.locator('.link-name').allTextContents();

/** Opens a link of the cord, if it is not open yet. */
export async function openLink(page: Page, name: string): Promise<void> {
  const head = linkHead(page, name);
  if ((await head.getAttribute('aria-expanded')) === 'false') await head.click();
  await page.locator('.link.open .link-body').waitFor();
}

export const field = (page: Page, label: string): Locator => page.getByRole('textbox', { name: label, exact: true });

/** Puts other text into a field as a person at the keyboard does: the field takes the focus, the keys follow. */
export async function type(page: Page, label: string, text: string): Promise<void> {
  await field(page, label).focus();
  await page.keyboard.press('Control+a');
  await page.keyboard.type(text);
}

/** Shows the rows that stand behind the worst of their kind. */
async function unfold(page: Page): Promise<void> {
  const folded = page.locator('.gives th .opens[aria-expanded="false"]');
  while ((await folded.count()) > 0)
    await folded.evaluateAll((buttons) => buttons.forEach((each) => each instanceof HTMLElement && each.click()));
}

/** Every row of the open link: check key and ratio as they read. */
export async function rowsOfOpenLink(page: Page): Promise<ReadonlyMap<string, string>> {
  await unfold(page);
  const rows = await page.locator('.gives tr.check').evaluateAll((lines) =>
    lines.map((line) => {
      const ratio = line.querySelector('.ratio')?.firstChild?.textContent ?? '';
      return [line.getAttribute('data-check') ?? '', ratio] as const;
    }),
  );
  return new Map(rows);
}

/** Every row of the whole cord, link by link. */
export async function allRows(page: Page): Promise<ReadonlyMap<string, string>> {
  const all: [string, string][] = [];
  for (const name of await linkNames(page)) {
    await openLink(page, name);
    all.push(...(await rowsOfOpenLink(page)));
  }
  return new Map(all);
}
