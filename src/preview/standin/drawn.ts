/** Numbers from 0 up to 1 that look like chance and are the same for the same seed. */
export function drawn(seed: number): () => number {
  let state = seed >>> 0;
  return () => {
    state = (state + 0x9e3779b9) >>> 0;
    let mixed = Math.imul(state ^ (state >>> 16), 0x21f0aaad);
    mixed = Math.imul(mixed ^ (mixed >>> 15), 0x735a2d97);
    return ((mixed ^ (mixed >>> 15)) >>> 0) / 4294967296;
  };
}

/** A span of milliseconds, from the least to the most. */
export type Span = readonly [least: number, most: number];
export const within = ([least, most]: Span, share: number): number => least + (most - least) * share;
