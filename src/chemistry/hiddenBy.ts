/** Codes that hide weaker ones on a label: CLP Annex I and Article 26, from memory. */
const hides: readonly (readonly [string, readonly string[]])[] = [
  ['H225', ['H226']],
  ['H314', ['H318', 'H315', 'H319']],
  ['H318', ['H319']],
  ['H410', ['H400', 'H411', 'H412']],
  ['H411', ['H412']],
  ['H271', ['H272', 'H272/3']],
  ['H272', ['H272/3']],
  ['H300', ['H301', 'H302']],
  ['H301', ['H302']],
  ['H310', ['H311', 'H312']],
  ['H311', ['H312']],
  ['H330', ['H331', 'H332']],
  ['H331', ['H332']],
  ['H340', ['H341']],
  ['H350', ['H350i', 'H351']],
  ['H350i', ['H351']],
  ['H360FD', ['H360', 'H360D', 'H360Df', 'H360F', 'H361', 'H361d', 'H361f']],
  ['H360Df', ['H360D', 'H361f']],
  ['H360D', ['H361d']],
  ['H360F', ['H361f']],
  ['H370', ['H371']],
  ['H372', ['H373']],
];

/** The weaker codes that need no mention beside these: a stricter one of them says as much. */
export function hiddenBy(codes: ReadonlySet<string>): ReadonlySet<string> {
  const hidden = new Set<string>();
  for (const [strict, weaker] of hides) {
    if (codes.has(strict) && !hidden.has(strict)) for (const code of weaker) hidden.add(code);
  }
  return hidden;
}
