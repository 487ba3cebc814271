import { useWorkbench } from '../state/use-workbench.ts';

/** Why nothing can be handed in now, neither the sheet nor the calculation; null when it can. */
export function useUnfinished(): string | null {
  const entries = useWorkbench(({ drafts }) =>
    Object.values(drafts)
      .map((d) => d.name)
      .join(', '),
  );
  const stale = useWorkbench((state) => state.stale);
  const hasFigures = useWorkbench(({ evaluation }) => evaluation !== null);
  if (!hasFigures) return 'There are no figures yet: nothing to print.';
  if (entries !== '')
    return `Not for printing: these entries are not in the figures yet: ${entries}. Finish or drop them first.`;
  return stale ? 'Not for printing: the figures are from your last valid entry.' : null;
}
