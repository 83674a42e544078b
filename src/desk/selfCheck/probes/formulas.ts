import { withSeparator } from '../../../workbook/formula.ts';
import { literal } from '../../../workbook/reference.ts';
import { takesComma } from '../../../workbook/takesComma.ts';
import type { Work } from '../../file/ask.ts';
import type { Finding, Trial } from '../finding.ts';
import { shownCell } from '../shownCell.ts';
import { awaitCells, inFile, inSheet, take, write } from '../take.ts';
import { selfCheckWords } from '../words.ts';

const { saw } = selfCheckWords;

/** Which separator a formula takes that a script sets, and whether it reads back as it was written. */
export function* formulas(trial: Trial, sheet: string): Work<Finding> {
  const name = 'formulas';
  const plain = (at: string) => inSheet(['getRange', at], ['setNumberFormat', 'General']);
  yield* take(
    plain('J5:J7'),
    inSheet(['getRange', 'J5'], ['setValue', '=SUM(1,2)']),
    inSheet(['getRange', 'J6'], ['setValue', '=SUM(1;2)']),
  );
  const { cells } = yield* awaitCells('J5:J6');
  const [comma, semicolon] = [cells[0]?.[0], cells[1]?.[0]];
  if (comma !== 3 && semicolon !== 3) {
    return { name, verdict: 'different', saw: saw.noSeparator(shownCell(comma), shownCell(semicolon)) };
  }
  trial.separator = comma === 3 ? ',' : ';';
  const wrote = withSeparator(`=IF(COUNTIF('${sheet}'!$A$40:$A$43,"a, b")=0,"Not, here","there")`, trial.separator);
  const [locale, , read, sheetId] = yield* take(
    inFile(['getSpreadsheetLocale']),
    inSheet(['getRange', 'J7'], ['setValue', wrote]),
    inSheet(['getRange', 'J7'], ['getFormula']),
    inSheet(['getSheetId']),
  );
  // For the person to press.
  const link = `=HYPERLINK("#gid="&${Number(sheetId?.value ?? 0)}&"&range=A90",${literal(selfCheckWords.linkText)})`;
  yield* take(write(trial, { at: 'B5', format: 'General', cells: [[link]] }));
  const isSame = read?.value === wrote;
  const said = String(locale?.value ?? '');
  // A build asks by trying, but not where the language leaves no doubt.
  const isMissed = comma !== 3 && takesComma(said);
  return {
    name,
    verdict: isSame && !isMissed ? 'expected' : 'different',
    saw: [
      isMissed ? saw.separatorMissed(trial.separator, said) : saw.separator(trial.separator, said),
      isSame ? saw.readsBack : saw.readsBackOtherwise(shownCell(wrote), shownCell(read?.value)),
    ].join(' '),
  };
}
