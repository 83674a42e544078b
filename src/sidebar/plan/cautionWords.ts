import { readFormula } from '../../chemistry/readFormula.ts';
import { shortCautions } from '../../chemistry/shortCautions.ts';
import { plannerCaution } from '../../lab/lesson/plannerCaution.ts';
import { texts } from '../texts.ts';

/** What to know before planning with a substance, part by part; empty parts are left out of the page. */
export interface CautionWords {
  /** Why it is not proposed. */
  readonly planner: string;
  readonly signalWord: string;
  /** Where only another form is listed, that first; then hazards with their codes and how sure each is. */
  readonly statements: readonly string[];
  /** What to do about the gravest, and where leftovers go. */
  readonly advice: string;
}

/** Cautions for a formula that stands in a field; undefined while it cannot be read as one. */
export function cautionWords(formula: string): CautionWords | undefined {
  const read = readFormula(formula);
  if (!read.ok) return undefined;
  const planner = plannerCaution(formula);
  const { listing, signalWord, statements, advice, waste, use, otherForm } = shortCautions(read.value);
  if (listing === 'unlisted') return { planner, signalWord: '', statements: [texts.plan.unlisted], advice: waste };
  return {
    planner,
    signalWord,
    statements: [otherForm, ...statements, use].filter((words) => words !== ''),
    advice: [advice, waste].filter((words) => words !== '').join(' '),
  };
}
