import type { ReactNode } from 'react';

interface ShownProps {
  /** shapes within 96 by 72 */
  readonly picture: ReactNode;
  readonly children: ReactNode;
}

/** A small picture beside the words that it makes plain. */
export function Shown({ picture, children }: ShownProps) {
  return (
    <figure>
      <svg viewBox="0 0 96 72" aria-hidden="true">
        {picture}
      </svg>
      <figcaption>{children}</figcaption>
    </figure>
  );
}
