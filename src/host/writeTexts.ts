import type { CellValue } from '../measurement/cellValue.ts';

type Range = GoogleAppsScript.Spreadsheet.Range;

/** What the host might read as a formula or as a mark of its own, were it typed. */
const risky = /^[=+\-@']/;

const isRisky = (value: CellValue): value is string => typeof value === 'string' && risky.test(value);

/** A text with the apostrophe that says it is text. */
const marked = (value: string): string => `'${value}`;

/**
 * Writes values whose texts must stay texts, in one call, into cells that are plain text already.
 * Whether such a cell keeps the apostrophe of a marked text is told by reading it back; where it does, the text goes in
 * unmarked, and is marked again should it compute after all.
 */
export function writeTexts(
  range: Range,
  values: readonly (readonly CellValue[])[],
  isFormula: (row: number, column: number) => boolean = () => false,
): void {
  const isText = (value: CellValue, row: number, column: number): value is string =>
    isRisky(value) && !isFormula(row, column);
  const guarded = values.map((cells, row) =>
    cells.map((value, column) => (isText(value, row, column) ? marked(value) : (value ?? ''))),
  );
  range.setValues(guarded);
  const places: { row: number; column: number; value: string }[] = [];
  values.forEach((cells, row) => {
    cells.forEach((value, column) => {
      if (isText(value, row, column)) places.push({ row, column, value });
    });
  });
  if (places.length === 0) return;
  const written = range.getValues();
  for (const { row, column, value } of places) {
    if (written[row]?.[column] !== marked(value)) continue;
    const cell = range.getCell(row + 1, column + 1);
    cell.setValue(value);
    if (cell.getFormula() !== '') cell.setValue(marked(value));
  }
}
