import { useEffect } from 'react';
import { late } from '../late.tsx';
import { useWorkbench } from '../state/use-workbench.ts';
import { OneSheet } from './one-sheet.tsx';
import { addressOf, PRINTS, usePrint, type PrintId } from './which-print.ts';
import './sheet-place.css';

const CalculationPlace = late(async () => (await import('../calculation/calculation-place.tsx')).CalculationPlace);
const StartPlace = late(async () => (await import('../start/start-place.tsx')).StartPlace);

/** What is handed in and what is asked before: one page, the calculation behind it, the questions for the office. */
export function SheetPlace() {
  const shown = usePrint();
  usePageTitle(PRINTS.find(({ id }) => id === shown)?.title ?? '');
  return (
    <>
      <nav aria-label="What to print" className="prints">
        {PRINTS.map(({ id, words }) => (
          <a key={id} href={addressOf(id)} aria-current={id === shown ? 'page' : undefined}>
            {words}
          </a>
        ))}
      </nav>
      <Print id={shown} />
    </>
  );
}

function Print({ id }: { readonly id: PrintId }) {
  switch (id) {
    case 'one-page':
      return <OneSheet />;
    case 'calculation':
      return <CalculationPlace />;
    case 'before-you-start':
      return <StartPlace />;
  }
}

/** The page is called what it prints: a browser gives this name to the file that it prints to. */
function usePageTitle(print: string): void {
  const name = useWorkbench(({ project }) => project?.title.name.trim() ?? '');
  useEffect(() => {
    const before = document.title;
    document.title = name === '' ? print : `${name}, ${print}`;
    return () => {
      document.title = before;
    };
  }, [name, print]);
}
