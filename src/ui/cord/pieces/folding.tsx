import type { ReactNode } from 'react';
import { useNarrowScreen } from '../../sheet/use-narrow-screen.ts';

interface FoldingProps {
  readonly words: string;
  readonly children: ReactNode;
}

/** A part of a long link under its heading: open beside the drawing, folded where the screen is narrow. */
export function Folding({ words, children }: FoldingProps) {
  const isNarrow = useNarrowScreen();
  return (
    <details className="folding" open={!isNarrow}>
      <summary>{words}</summary>
      <div className="folding-body">{children}</div>
    </details>
  );
}
