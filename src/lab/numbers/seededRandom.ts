/** Numbers from 0 up to 1 that are the same for the same seed on every machine. */
export type Random = () => number;

const hashOf = (text: string): number => {
  let hash = 2166136261;
  for (let at = 0; at < text.length; at += 1) hash = Math.imul(hash ^ text.charCodeAt(at), 16777619);
  return hash >>> 0;
};

/** A 32-bit counter scrambled twice: short, and good enough to deal numbers and letters fairly. */
export function seededRandom(seed: string): Random {
  let state = hashOf(seed);
  return () => {
    state = (state + 0x9e3779b9) | 0;
    let bits = Math.imul(state ^ (state >>> 16), 0x85ebca6b);
    bits = Math.imul(bits ^ (bits >>> 13), 0xc2b2ae35);
    return ((bits ^ (bits >>> 16)) >>> 0) / 4294967296;
  };
}

/** A copy in an order drawn by `random` (every order equally likely). */
export function shuffled<T>(items: readonly T[], random: Random): T[] {
  const dealt = items.slice();
  for (let last = dealt.length - 1; last > 0; last -= 1) {
    const drawn = Math.floor(random() * (last + 1));
    const moved = dealt[last] as T;
    dealt[last] = dealt[drawn] as T;
    dealt[drawn] = moved;
  }
  return dealt;
}
