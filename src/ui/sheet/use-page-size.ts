import { useEffect } from 'react';

/**
 * Tells the browser's print which paper, as long as the sheet is shown. A style sheet made by script: the page's policy
 * forbids style elements, and the size of a page cannot be set on an element. No margin: the sheet has its own, and the
 * browser then prints no line of its own above it.
 */
export function usePageSize(pageSize: string): void {
  useEffect(() => {
    const style = new CSSStyleSheet();
    style.replaceSync(`@page { size: ${pageSize}; margin: 0; }`);
    document.adoptedStyleSheets = [...document.adoptedStyleSheets, style];
    return () => {
      document.adoptedStyleSheets = document.adoptedStyleSheets.filter((each) => each !== style);
    };
  }, [pageSize]);
}
