import type { Cautions } from '../../chemistry/cautions.ts';
import { cautionTexts } from '../../chemistry/cautionTexts.ts';
import { readFormula } from '../../chemistry/readFormula.ts';
import type { SafetyStep } from '../lesson/activity.ts';
import { type Handling, handledForms } from '../lesson/handledForms.ts';
import { type LettersOf, lettered, letterSeed } from './lettered.ts';
import type { SafetyQuestion } from './questions/safetyQuestion.ts';
import { splash } from './questions/splash.ts';
import { waste } from './questions/waste.ts';

export const safetyQuestion = ({ topic }: Pick<SafetyStep, 'topic'>): SafetyQuestion =>
  topic === 'splash' ? splash : waste;

/** Options in the mixed order in which the sheet letters them; the right one has no say in it. */
export function safetyLetters(step: Pick<SafetyStep, 'topic'>, whose: LettersOf = {}) {
  const { name, options } = safetyQuestion(step);
  return lettered(letterSeed(name, whose), options);
}

/**
 * What a splash can do at the most: a burn or lasting harm to an eye, harm by way of the skin, or less. Codes that nobody
 * has ruled out, a least class and an extreme pH are told in notes, so those are looked through as well.
 */
function splashOf({ verdict, statements }: Cautions): 'serious' | 'through skin' | 'mild' {
  const told = statements.map(({ code, text }) => `${code} ${text}`).join('\n');
  if (verdict === 'unsure' || /\bH31[48]/.test(told) || told.includes(cautionTexts.extremePh)) return 'serious';
  return /\bH31[0127]/.test(told) ? 'through skin' : 'mild';
}

/**
 * Id of the option that is right for what a team handles, the worst of its forms. Where nothing is known of a substance, of
 * its strength, or of a formula that cannot be read, it is the careful one.
 */
export function rightSafetyOption(
  { topic, substance }: Pick<SafetyStep, 'topic' | 'substance'>,
  handling: Pick<Handling, 'givens' | 'decimalMark'>,
): string {
  const formula = readFormula(handling.givens[substance.formula]);
  const forms = formula.ok ? handledForms({ ...handling, substance, formula: formula.value }) : [];
  if (topic === 'splash') {
    const found = forms.map(({ cautions }) => splashOf(cautions));
    return ['serious', 'through skin'].find((id) => !formula.ok || found.some((one) => one === id)) ?? 'mild';
  }
  const wastes = forms.map(({ cautions }) => cautions.waste);
  if (wastes.some(({ metal }) => metal !== '')) return 'metal';
  return formula.ok && wastes.every(({ goesTo }) => goesTo === 'drain') ? 'drain' : 'waste beaker';
}
