/** Where the open project stands with this device's storage. */
export type SaveState =
  | { readonly kind: 'unsaved' }
  | { readonly kind: 'saving' }
  | { readonly kind: 'saved' }
  /** storage refused; the reason as the browser words it */
  | { readonly kind: 'failed'; readonly why: string }
  /** another tab saved this project in between; nothing is written until the person decides */
  | { readonly kind: 'elsewhere' };

/** As it reads beside the project's name. */
export function savingInWords(saving: SaveState): string {
  switch (saving.kind) {
    case 'unsaved':
      return 'not saved yet';
    case 'saving':
      return 'saving';
    case 'saved':
      return 'saved on this device';
    case 'failed':
      return 'not saved on this device: save it to a file';
    case 'elsewhere':
      return 'not saved: changed in another tab';
  }
}

/** Why something failed, as the browser words it. */
export const reasonOf = (error: unknown): string => (error instanceof Error ? error.message : String(error));

export const failed = (error: unknown): SaveState => ({ kind: 'failed', why: reasonOf(error) });
