import { acidOrBase } from '../../chemistry/acidOrBase.ts';
import { readFormula } from '../../chemistry/readFormula.ts';
import type { CellValue } from '../../measurement/cellValue.ts';
import type { QuestionOption } from './questions/question.ts';

/** What the team reads once it has chosen an option, in the words for its solute. */
export function optionReply({ reply }: Pick<QuestionOption, 'reply'>, solute: CellValue): string {
  if (typeof reply === 'string') return reply;
  const formula = readFormula(solute);
  return reply[formula.ok ? acidOrBase(formula.value) : 'neither'];
}
