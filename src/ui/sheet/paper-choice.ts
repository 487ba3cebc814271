import { create } from 'zustand';
import { useWorkbench } from '../state/use-workbench.ts';
import type { PaperName } from './page-format.ts';

/** How the sheet is looked at, not part of the project: kept while the page is open. */
const useChoice = create<{ readonly chosen: PaperName | null }>(() => ({ chosen: null }));

export const choosePaper = (chosen: PaperName): void => useChoice.setState({ chosen });

/** The chosen paper; until one is chosen, what is usual where feet or metres are. */
export function usePaper(): PaperName {
  const system = useWorkbench((state) => state.system);
  const chosen = useChoice((state) => state.chosen);
  return chosen ?? (system === 'metric' ? 'a4' : 'letter');
}
