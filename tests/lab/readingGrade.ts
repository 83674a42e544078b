/** Words whose letters do not tell. */
const counted: Readonly<Record<string, number>> = {
  ion: 2,
  ions: 2,
  any: 2,
  people: 2,
  ratio: 3,
  being: 2,
  goes: 1,
  does: 1,
};

/**
 * Syllables of an English word by its vowel groups: silent endings are taken off, and two vowels that are spoken apart are
 * counted apart. Good to about one word in twenty.
 */
export function syllables(word: string): number {
  const letters = word.toLowerCase().replace(/[^a-z]/g, '');
  const known = counted[letters];
  if (known !== undefined || letters === '') return known ?? 0;
  const spoken = letters
    // The e of litre and bottle is spoken, that of volume and mole is not.
    .replace(/([^aeiouy][lr])e[sd]?$/, '$1@')
    .replace(/([td])ed$/, '$1@d')
    .replace(/((?:[sxzcg]|ch|sh))es$/, '$1@s')
    .replace(/([^aeiouy])e[sd]?$/, '$1');
  const groups = spoken.match(/[aeiouy@]+/g)?.length ?? 0;
  const apart = spoken.match(/i(?:a(?!l$)|o(?!n|us)|um)|eo|(?<!q)ua(?!l$)|[aeiou]ing$/g)?.length ?? 0;
  return Math.max(1, groups + apart);
}

/** Words that count: without numbers, units, formulas and signs. */
export const wordsOf = (text: string): string[] =>
  text
    .replace(/\b(?:mol\/L|g\/mol|g\/mL|mL|mol|pH)\b/g, ' ')
    .match(/[A-Za-z][a-z]*(?:['’-][a-z]+)*/g)
    ?.filter((word) => /^[A-Z]?[a-z]+/.test(word)) ?? [];

/** Grade by Kincaid et al. 1975: 0.39 words per sentence + 11.8 syllables per word − 15.59. */
export function fleschKincaidGrade(text: string): number {
  const sentences = text.split(/[.?!:]+(?:\s|$)/).filter((sentence) => wordsOf(sentence).length > 0).length;
  const words = wordsOf(text);
  const count = words.reduce((sum, word) => sum + syllables(word), 0);
  return 0.39 * (words.length / sentences) + 11.8 * (count / words.length) - 15.59;
}
