/** Two sums of 32 bits over the characters (FNV-1a, and one that begins elsewhere), and how many there are. */
export function digest(text: string): string {
  // Kept as whole numbers with a sign until the end: others are slow, and a Plan has ten thousand characters. `Math` is
  // looked up once, and a shift is 31 times without a call.
  const { imul } = Math;
  const { length } = text;
  let one = 0x811c9dc5 | 0;
  let other = 0x01000193;
  for (let at = 0; at < length; at += 1) {
    const code = text.charCodeAt(at);
    one = imul(one ^ code, 0x01000193);
    other = ((other << 5) - other + code) | 0;
  }
  return `${(one >>> 0).toString(36)}-${(other >>> 0).toString(36)}-${length}`;
}
