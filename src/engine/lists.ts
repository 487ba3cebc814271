/** So many lists share a block. */
const PER_BLOCK = 32;

/**
 * Makes lists of one length, all zeros. They are cut out of larger blocks: with thousands of them, memory of its own for each
 * costs more than all that is written into it.
 */
export function listMaker(length: number): () => Float64Array {
  let block = new Float64Array(0);
  let at = 0;
  return () => {
    if (at === block.length) {
      block = new Float64Array(PER_BLOCK * length);
      at = 0;
    }
    at += length;
    return block.subarray(at - length, at);
  };
}
