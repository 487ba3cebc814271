import type { Page } from 'playwright';
import type { Project } from '../../src/engine/project/model.ts';
import { hasPdfText, openSheetOf, pdfText } from './sheet-page.ts';

/** As long as the slowest machine may take to tell all steps. */
export const TELLING_MS = 400_000;

/** Opens a project, then one of the prints at the check sheet. */
export async function openPrintOf(
  page: Page,
  project: Project,
  print: 'The calculation' | 'Before you start',
): Promise<void> {
  await openSheetOf(page, project);
  await page.getByRole('navigation', { name: 'What to print' }).getByRole('link', { name: print }).click();
}

/** What stands on the pages, as the document has it. */
export interface PaperRows {
  readonly pages: number;
  /** of the table of contents and of the list of checks: what is named and on which page it is said to stand */
  readonly named: readonly { readonly words: string; readonly page: number; readonly id: string }[];
  readonly index: readonly {
    readonly key: string;
    readonly demand: string;
    readonly capacity: string;
    readonly ratio: string;
  }[];
  readonly steps: readonly {
    readonly number: number;
    readonly what: string;
    readonly puts: readonly string[];
    readonly result: string;
  }[];
  readonly checks: readonly { readonly key: string; readonly said: string }[];
  readonly heads: { readonly all: number; readonly scoped: number };
}

/** Runs in the page. */
export function readPaper(): PaperRows {
  const all = <E extends Element>(within: ParentNode, what: string): readonly E[] => [
    ...within.querySelectorAll<E>(what),
  ];
  const lines = (cell: Element | undefined): readonly string[] =>
    cell ? all(cell, '.cell-line').map((each) => each.textContent.trim()) : [];
  const paper = document.querySelector('.paper')!;
  const cellOf = (row: Element, head: string): string =>
    row.querySelector(`[data-head="${head}"]`)?.textContent.trim() ?? '';
  return {
    pages: all(paper, '.paper-page').length,
    named: all<HTMLAnchorElement>(paper, 'td a').map((link) => ({
      words: link.closest('tr')?.firstElementChild?.textContent.trim() ?? '',
      page: Number(link.textContent),
      id: decodeURIComponent(link.hash.slice(1)),
    })),
    index: all<HTMLElement>(paper, 'tr[data-check]').map((row) => ({
      key: row.dataset['check'] ?? '',
      demand: cellOf(row, 'demand'),
      capacity: cellOf(row, 'capacity'),
      ratio: cellOf(row, 'ratio'),
    })),
    steps: all<HTMLElement>(paper, 'tr[data-step]').map((row) => ({
      number: Number(row.dataset['step']),
      what: lines(row.children[1]).join(' | '),
      puts: lines(row.children[2]),
      result: lines(row.children[3]).join(''),
    })),
    checks: all<HTMLElement>(paper, 'p[data-check]').map((p) => ({
      key: p.dataset['check'] ?? '',
      said: p.textContent.trim(),
    })),
    heads: { all: all(paper, 'th').length, scoped: all(paper, 'th[scope]').length },
  };
}

/** Runs in the page: what is cut off or lies over something else, each in words. */
export function clippedOnPaper(): readonly string[] {
  const problems: string[] = [];
  for (const [i, page] of [...document.querySelectorAll<HTMLElement>('.paper-page')].entries()) {
    const at = `page ${i + 1}`;
    const foot = page.querySelector('.paper-foot')!.getBoundingClientRect();
    const body = page.querySelector('.paper-body')!.getBoundingClientRect();
    if (body.bottom > foot.top + 0.5) problems.push(`${at}: ${(body.bottom - foot.top).toFixed(1)} px into its foot`);
    if (page.scrollHeight > page.clientHeight + 1) problems.push(`${at} is higher than its paper`);
    for (const box of page.querySelectorAll<HTMLElement>('td, th, p, h2, h3, h4, h5, .paper-foot')) {
      if (box.scrollWidth > box.clientWidth + 1) problems.push(`${at}: “${box.textContent.slice(0, 40)}” is too wide`);
    }
    const feet = [...page.querySelectorAll('.paper-foot span')].map((span) => span.getBoundingClientRect());
    if (feet.some((each, j) => j > 0 && each.left < feet[j - 1]!.right)) problems.push(`${at}: its foot runs together`);
  }
  return problems;
}

/** The printed file page by page, as another program reads it. */
export const pagesOfPdf = (pdf: Buffer): readonly string[] => pdfText(pdf, '-layout').split('\f').slice(0, -1);

/** Words that lie outside of their page, where another program is there to read the file. */
export function wordsOutside(pdf: Buffer): readonly string[] {
  if (!hasPdfText) return [];
  const outside: string[] = [];
  let [width, height] = [0, 0];
  for (const line of pdfText(pdf, '-bbox').split('\n')) {
    const page = /<page width="([\d.]+)" height="([\d.]+)"/.exec(line);
    if (page) [width, height] = [Number(page[1]), Number(page[2])];
    const word = /<word xMin="([-\d.]+)" yMin="([-\d.]+)" xMax="([-\d.]+)" yMax="([-\d.]+)">(.*)<\/word>/.exec(line);
    if (!word) continue;
    const [xMin = 0, yMin = 0, xMax = 0, yMax = 0] = word.slice(1, 5).map(Number);
    if (xMin < 0 || yMin < 0 || xMax > width || yMax > height) outside.push(word[5] ?? '');
  }
  return outside;
}
