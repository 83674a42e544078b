import { cellText } from '../workbook/cellText.ts';
import { classShift, columnIn } from '../workbook/classCells.ts';
import { native, withSeparator } from '../workbook/formula.ts';
import { classColumns, classRows } from '../workbook/layout.ts';
import { readClassSheet } from '../workbook/readClassSheet.ts';
import { literal } from '../workbook/reference.ts';
import { takesComma } from '../workbook/takesComma.ts';
import { writtenColumn, writtenSums } from '../workbook/typedOver.ts';
import type { FileInRun } from './fileInRun.ts';
import { type OwnSheet, ownSheets, sheetInUse, writeTag } from './ownSheets.ts';
import { separatorIn } from './separatorIn.ts';
import { valuesOf } from './valuesOf.ts';
import { hostWords } from './words.ts';
import { writeTexts } from './writeTexts.ts';

type Cells = ReturnType<typeof valuesOf>;

/**
 * A sheet that is kept says so at its top, with a link to the one in use, and checks nothing any more: whoever has it in
 * view still must not take it for alive. Only what we have written there changes. It may be done twice.
 */
export function setToRest(
  file: FileInRun,
  old: OwnSheet,
  {
    instead = sheetInUse(ownSheets(file), old.tag)?.id,
    say = hostWords.kept,
  }: { readonly instead?: number | undefined; readonly say?: Record<'alone' | 'withLink', string> } = {},
): void {
  const { kind } = old.tag;
  if (kind !== 'class' && kind !== 'plan' && kind !== 'poll') return;
  const cells = kind === 'class' ? valuesOf(old.sheet) : undefined;
  if (cells !== undefined) restChecks(file, old, cells);
  const top = topOf(old, cells);
  if (instead === undefined) {
    writeTexts(top, [[say.alone]]);
    return;
  }
  // No words that people typed become part of a formula: the name of the class stands on the tab.
  const link = `=${native('HYPERLINK', literal(`#gid=${instead}`), literal(say.withLink))}`;
  const separator = takesComma(file.locale()) ? ',' : separatorIn(old.sheet.getDataRange().getFormulas());
  top.setNumberFormat('General');
  top.setValue(withSeparator(link, separator ?? ','));
}

/** Where whoever looks at the sheet sees it, however far down: in the frozen row of a class sheet, else in the title. */
const topOf = ({ sheet }: OwnSheet, cells: Cells | undefined) =>
  cells !== undefined && classShift(cells) === 0
    ? sheet.getRange(classRows.headings, classColumns.task)
    : sheet.getRange(1, 1);

/** The words of the checks are taken out again: what belongs there is written when the sheet is next planned. */
export function wakeUp(one: OwnSheet): void {
  const found = one.tag.kind === 'class' ? checksOf(one, valuesOf(one.sheet)) : undefined;
  found?.range.setNumberFormat('General');
  found?.range.setValue('');
}

/** All blocks of a class sheet, and the columns that their checks fill. */
function checksOf({ sheet }: OwnSheet, cells: Cells) {
  const blocks = readClassSheet(cells)?.blocks ?? [];
  const first = blocks[0];
  const last = blocks[blocks.length - 1];
  if (first === undefined || last === undefined) return undefined;
  const [check, hint] = [columnIn(cells, classColumns.check), columnIn(cells, classColumns.hint)];
  const range = sheet.getRange(first.headingRow, check, last.closingRow - first.headingRow + 1, hint - check + 1);
  return { blocks, first, last, check, hint, range };
}

/** The words that stood there stay as words of that time; the formula of the first block stays in the tag. */
function restChecks(file: FileInRun, old: OwnSheet, cells: Cells): void {
  const found = checksOf(old, cells);
  if (found === undefined) return;
  const { blocks, first, last, check, hint, range } = found;
  const formulas = range.getFormulas();
  const formulaOf = ({ headingRow }: { readonly headingRow: number }): string =>
    formulas[headingRow - first.headingRow]?.[0] ?? '';
  const formula = blocks.map(formulaOf).find((words) => words !== '');
  if (formula === undefined) return;
  const words = cells.slice(first.headingRow - 1, last.closingRow).map((line) => line.slice(check - 1, hint));
  for (const block of blocks.filter((one) => formulaOf(one) !== '')) {
    const heading = words[block.headingRow - first.headingRow];
    if (heading !== undefined) heading[0] = hostWords.kept.checks;
    for (const { row, check: word } of block.known ? block.steps : []) {
      const line = words[row - first.headingRow];
      if (line !== undefined && word !== '') line[0] = hostWords.kept.before(word);
    }
  }
  // Sheets of earlier layouts have no place for sums.
  const sums = classShift(cells) === 0;
  writeTag(file, old, { ...old.tag, check: formula, sums });
  // Before the words: where it stops in between, the formulas are still there, and it is done again. In the heading of a
  // block stands a number of the team there.
  for (const { headingRow, closingRow } of sums ? blocks : []) {
    const lines = words.slice(headingRow + 1 - first.headingRow, closingRow - first.headingRow);
    // Somebody may have taken all rows of a team out but its heading.
    if (lines.length === 0) continue;
    writeTexts(
      old.sheet.getRange(headingRow + 1, writtenColumn, lines.length, 1),
      lines.map((line) => [writtenSums(line.map(cellText))]),
    );
  }
  range.setNumberFormat('@');
  writeTexts(range, words);
}
