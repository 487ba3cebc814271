import { afterAll, expect, it } from 'vitest';
import { lineWidth, type Cut } from '../../src/ui/sheet/type-width.ts';
import { closeBrowser } from './support/browser.ts';
import { openWorkbench } from './support/workbench.ts';

/** The cuts as the style sheet names them, and what stands on the sheet in them. */
const FONTS: Readonly<Record<Cut, string>> = {
  narrow: "400 1000px 'IBM Plex Sans Condensed'",
  caption: "600 1000px 'IBM Plex Sans Condensed'",
  title: "600 1000px 'IBM Plex Sans'",
};
const PRINTABLE = Array.from({ length: 95 }, (_, i) => String.fromCharCode(32 + i)).filter((c) => c !== '|');
const OTHERS = [
  '–',
  '—',
  '‘',
  '’',
  '“',
  '”',
  '…',
  '·',
  '×',
  '−',
  '½',
  '¼',
  '¾',
  '²',
  '³',
  '°',
  '†',
  'é',
  'Ü',
  'Æ',
  '森',
  'Ж',
];

afterAll(closeBrowser);

it('the widths that the sheet is planned with are nowhere below those of the shipped typeface, and close to them', async () => {
  const { page, close } = await openWorkbench();
  // the captions' cut comes with the sheet
  await page.getByRole('link', { name: 'Check sheet' }).click();
  await page.locator('.sheet').first().waitFor();
  await page.evaluate((fonts) => Promise.all(fonts.map((font) => document.fonts.load(font))), Object.values(FONTS));
  for (const cut of Object.keys(FONTS) as Cut[]) {
    const measured = await page.evaluate(
      ([font, characters]) => {
        const pen = document.createElement('canvas').getContext('2d')!;
        pen.font = font as string;
        return (characters as string[]).map((c) => pen.measureText(c).width / 1000);
      },
      [FONTS[cut], [...PRINTABLE, ...OTHERS]] as const,
    );
    const narrower = [...PRINTABLE, ...OTHERS].filter((c, i) => lineWidth(c, 1, cut) < measured[i]! - 1e-9);
    expect([cut, narrower]).toEqual([cut, []]);
    const text = 'Bending at 11 ft 4 in: 1,255 psi asked, 1,163 psi there';
    const exact = [...text].reduce((sum, c) => sum + measured[PRINTABLE.indexOf(c)]!, 0);
    expect(lineWidth(text, 1, cut) / exact).toBeLessThan(1.12);
  }
  await close();
});
