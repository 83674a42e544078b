import { covers } from './address.ts';
import { loading } from './book/engine.ts';
import type { Book } from './book.ts';
import { engineFormula, shiftedFormula } from './formulaText.ts';
import { HostError } from './hostError.ts';
import type { Condition, Rule, SheetState } from './sheetState.ts';

/** The first rule that holds for a cell, as the host applies them in order. */
export function ruleAt(book: Book, sheet: SheetState, row: number, column: number): Rule | undefined {
  return sheet.rules.find((rule) => {
    const area = rule.areas.find((candidate) => covers(candidate, row, column));
    const corner = rule.areas[0];
    if (!area || !corner) return false;
    if (rule.condition.kind === 'formula') {
      // Written for the first cell of the rule; every other cell reads it as if it had been copied there.
      const by = { rows: row - corner.row, columns: column - corner.column };
      const formula = engineFormula(shiftedFormula(rule.condition.text ?? '', by), book.openEnd);
      return book.engine.calculateFormula(formula, sheet.engine) === true;
    }
    return holds(book, rule.condition, sheet, row, column);
  });
}

function holds(book: Book, condition: Condition, sheet: SheetState, row: number, column: number): boolean {
  const value = book.value(sheet, row, column);
  const text = value === loading || value instanceof HostError ? '' : book.display(sheet, row, column).toLowerCase();
  const wanted = (condition.text ?? '').toLowerCase();
  const number = typeof value === 'number' ? value : Number.NaN;
  const low = condition.low ?? Number.NaN;
  const high = condition.high ?? Number.NaN;
  switch (condition.kind) {
    case 'text-starts-with':
      return text.startsWith(wanted);
    case 'text-ends-with':
      return text.endsWith(wanted);
    case 'text-equal':
      return text === wanted;
    case 'text-contains':
      return text.includes(wanted);
    case 'text-does-not-contain':
      return !text.includes(wanted);
    case 'empty':
      return value === '';
    case 'not-empty':
      return value !== '';
    case 'number-between':
      return number >= low && number <= high;
    case 'number-equal':
      return number === low;
    case 'number-greater':
      return number > low;
    case 'number-less':
      return number < low;
    default:
      return false;
  }
}
