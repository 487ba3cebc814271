import { useEffect } from 'react';
import { look, useFrameView } from '../frame/frame-view.ts';

/** A field that was asked for from afar takes the focus once its link is open. */
export function useSoughtField(): void {
  const sought = useFrameView((state) => state.sought);
  useEffect(() => {
    if (sought === null) return;
    const field = document.querySelector<HTMLElement>(`[data-path="${sought}"]`);
    field?.focus({ preventScroll: true });
    field?.scrollIntoView({ block: 'center' });
    look({ sought: null });
  }, [sought]);
}
