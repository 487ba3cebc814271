/** What the calculation is made of, before it is known on which page each part falls. Plain data: no unit, no browser. */

/** One line of a cell. `pageOf` names the heading whose page is written there. */
export interface Line {
  readonly text: string;
  readonly tone?: 'quiet' | 'strong' | 'formula' | 'under';
  readonly pageOf?: string;
}
export type Cell = readonly Line[];

export interface Row {
  readonly cells: readonly Cell[];
  /** number of the step that the row tells */
  readonly step?: number;
  /** the check whose ratio the row prints */
  readonly checkKey?: string;
}

export interface Column {
  readonly head: string;
  /** part of the page's width */
  readonly share: number;
  readonly align?: 'right';
}

export interface Table {
  readonly kind: 'table';
  /** what it shows; heard with it, and read again where it goes on over a page */
  readonly label: string;
  readonly columns: readonly Column[];
  readonly rows: readonly Row[];
}

/** The document, a section, a part of it, one check. */
export interface Heading {
  readonly kind: 'heading';
  readonly id: string;
  readonly level: 2 | 3 | 4 | 5;
  readonly words: string;
}

export interface Text {
  readonly kind: 'text';
  readonly words: string;
  readonly tone?: 'quiet' | 'strong';
  /** stays on the page of what follows */
  readonly leads?: true;
  readonly checkKey?: string;
}

export type Block = Heading | Text | Table;

export const line = (text: string, tone?: Line['tone']): Cell => [tone ? { text, tone } : { text }];
export const text = (words: string, more: Omit<Text, 'kind' | 'words'> = {}): Text => ({
  kind: 'text',
  words,
  ...more,
});
