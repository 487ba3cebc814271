import { useCallback, useMemo, useState, useSyncExternalStore } from 'react';
import { onScreen, type Paper } from '../drawing/paper.ts';

const PHONE = '(width < 48rem)';
const listenToPhone = (changed: () => void): (() => void) => {
  const query = matchMedia(PHONE);
  query.addEventListener('change', changed);
  return () => query.removeEventListener('change', changed);
};

/** One column with the views side by side under the thumb. */
export const useIsPhone = (): boolean => useSyncExternalStore(listenToPhone, () => matchMedia(PHONE).matches);

const listenToHeight = (changed: () => void): (() => void) => {
  addEventListener('resize', changed);
  return () => removeEventListener('resize', changed);
};
export const useWindowHeight = (): number => useSyncExternalStore(listenToHeight, () => innerHeight);

/** Width of an element in whole pixels, followed as it changes. */
export function useWidth(): readonly [width: number, ref: (element: HTMLElement | null) => (() => void) | undefined] {
  const [width, setWidth] = useState(0);
  const ref = useCallback((element: HTMLElement | null) => {
    if (!element) return undefined;
    const measure = (): void => setWidth(Math.floor(element.clientWidth));
    measure();
    const observer = new ResizeObserver(measure);
    observer.observe(element);
    return () => observer.disconnect();
  }, []);
  return [width, ref];
}

/** The same paper as long as its size is the same, so that nothing is drawn anew for nothing. */
export const usePaper = (width: number, maxHeight: number): Paper =>
  useMemo(() => onScreen(Math.max(width, 1), Math.max(maxHeight, 120)), [width, maxHeight]);
