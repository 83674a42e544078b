import type { CellView, SheetView } from '../view.ts';

const longestTitle = 60;

/** What a row is called: the first line of its first visible text. */
export function rowTitle(sheet: SheetView, row: number): string {
  for (let column = 1; column <= sheet.columns; column += 1) {
    const text = sheet.hiddenColumns.includes(column) ? '' : (sheet.cells[`${row},${column}`]?.text ?? '');
    const [first = ''] = text.trim().split('\n');
    if (first === '') continue;
    return first.length > longestTitle ? `${first.slice(0, longestTitle)}…` : first;
  }
  return '';
}

/** Cells of a row that a formula of another cell fills, left to right: its check, and what to look at. */
function filled(sheet: SheetView, row: number): readonly (CellView & { readonly key: string })[] {
  const found: (CellView & { key: string })[] = [];
  for (let column = 1; column <= sheet.columns; column += 1) {
    const key = `${row},${column}`;
    const cell = sheet.cells[key];
    if (cell?.spilled && cell.text.trim() !== '' && !sheet.hiddenColumns.includes(column)) found.push({ ...cell, key });
  }
  return found;
}

/** Texts one after another, each ended once. */
const sentences = (texts: readonly string[]): string =>
  texts
    .map((text) => text.trim().replace(/\s+/g, ' '))
    .map((text) => (/[.!?…:]$/.test(text) ? text : `${text}.`))
    .join(' ');

/**
 * What to say of a row after something was typed: its title, its check, and what else formulas say there that is new.
 * `before` left out, or the same, gives all that they say: who typed the same again wants to hear it again.
 * Undefined where formulas say nothing, or nothing new.
 */
export function rowNews(sheet: SheetView, row: number, before?: SheetView): string | undefined {
  const now = filled(sheet, row);
  const isNew = ({ key, text }: { readonly key: string; readonly text: string }): boolean =>
    text !== before?.cells[key]?.text;
  const [check, ...rest] = now;
  if (!check || check.text === 'Loading...' || !now.some(isNew)) return undefined;
  const title = rowTitle(sheet, row);
  const said = sentences([check, ...rest.filter(isNew)].map(({ text }) => text));
  return title === '' ? said : `${title}: ${said}`;
}
