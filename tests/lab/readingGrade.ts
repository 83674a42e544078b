/**
 * Syllables of an English word by its vowel groups, with the silent endings taken off and the common endings that make
 * two syllables of one group put back. Good to about one word in twenty.
 */
export function syllables(word: string): number {
  const letters = word.toLowerCase().replace(/[^a-z]/g, '');
  if (letters === '') return 0;
  if (letters.length <= 3) return 1;
  const trimmed = letters
    .replace(/(?:[^laeiouy]es|(?<![td])ed|[^laeiouy]e)$/, (end) => (end.endsWith('ed') ? '' : end.charAt(0)))
    .replace(/^y/, '');
  const groups = trimmed.match(/[aeiouy]+/g)?.length ?? 0;
  const split = trimmed.match(/(?:i[ao](?!u)(?<!tio|sio|cia|tia|gio)|eo|ua(?!l$)|uo)/g)?.length ?? 0;
  return Math.max(1, groups + split);
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
