/** Works something out when it is first asked for; whoever asks again gets the same. */
export function once<T extends object>(work: () => T): () => T {
  let known: T | null = null;
  return () => (known ??= work());
}
