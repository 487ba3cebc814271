import { useEffect, useRef, type RefObject } from 'react';

/** Escape inside an opened part leads out of it; what lies around it does not hear of it. */
export function useEscape<E extends HTMLElement>(out: () => void): RefObject<E | null> {
  const inside = useRef<E>(null);
  useEffect(() => {
    const element = inside.current;
    const onKeyDown = (event: KeyboardEvent): void => {
      if (event.key !== 'Escape' || event.defaultPrevented || isField(event.target)) return;
      event.preventDefault();
      out();
    };
    element?.addEventListener('keydown', onKeyDown);
    return () => element?.removeEventListener('keydown', onKeyDown);
  }, [out]);
  return inside;
}

/** In a field Escape takes back what was typed. */
const isField = (target: EventTarget | null): boolean =>
  target instanceof HTMLInputElement || target instanceof HTMLSelectElement;
