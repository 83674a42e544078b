import { codeTexts } from './cautionTexts.ts';

const irritation = ['H315', 'H319'];
/** The exclamation mark says the same more weakly, or of something else that a graver symbol already warns of. */
const precedence: readonly { readonly where: readonly string[]; readonly drops: readonly string[] }[] = [
  { where: ['H314', 'H318'], drops: irritation },
  { where: ['H334'], drops: ['H317', ...irritation] },
];

/**
 * Pictograms for what holds, in the order of their codes.
 *
 * @param codes - Hazard statements of one substance or mixture, such as H314; `H272/3` is the weaker category.
 * @returns GHS01 to GHS09, each once; a code without a pictogram adds none.
 * Source: CLP Article 26(1), read in a public transcription; it follows UN GHS, Rev. 10, 1.4.10.5.3.1, from memory. The
 * skull removes the exclamation mark; corrosion removes it for skin and eyes, though not where it only stands for metals,
 * which is the stricter reading; the health hazard removes it for skin and eyes where it stands for the airways.
 */
export function pictogramsOf(codes: readonly string[]): readonly string[] {
  const texts = codeTexts();
  const dropped = precedence.filter(({ where }) => where.some((code) => codes.includes(code)));
  const digits = new Set(
    codes
      .filter((code) => !dropped.some(({ drops }) => drops.includes(code)))
      .map((code) => texts[code]?.pictogram ?? '')
      .filter((pictogram) => pictogram !== ''),
  );
  if (digits.has('06')) digits.delete('07');
  return [...digits].sort().map((pictogram) => `GHS${pictogram}`);
}
