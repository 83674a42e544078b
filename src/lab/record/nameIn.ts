/** A single letter stands in too many words to be told from one. */
const shortest = 2;
const wordCharacter = /[\p{L}\p{N}]/u;

/** The first of these names that stands in the words as a word of its own, spelled the same; undefined where none does. */
export function nameIn(words: string, names: readonly string[]): string | undefined {
  return names.find((name) => name.length >= shortest && standsIn(words, name));
}

function standsIn(words: string, name: string): boolean {
  for (let from = words.indexOf(name); from >= 0; from = words.indexOf(name, from + 1)) {
    const before = words[from - 1] ?? '';
    const after = words[from + name.length] ?? '';
    if (!wordCharacter.test(before) && !wordCharacter.test(after)) return true;
  }
  return false;
}
