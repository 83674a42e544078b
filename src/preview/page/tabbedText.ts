/** Cells as other programs exchange them: a tab between cells, a line for each row, quotes where a cell holds either. */
export const writeTabbed = (rows: readonly (readonly string[])[]): string =>
  rows
    .map((cells) => cells.map((cell) => (/[\t\n\r"]/.test(cell) ? `"${cell.replace(/"/g, '""')}"` : cell)).join('\t'))
    .join('\n');

/** The reverse. A quote inside a cell that does not begin with one is an ordinary character. */
export function readTabbed(text: string): string[][] {
  const rows: string[][] = [];
  let cells: string[] = [];
  let at = 0;
  while (at <= text.length) {
    let cell = '';
    if (text[at] === '"') {
      const closing = /^"((?:[^"]|"")*)"(?=[\t\r\n]|$)/.exec(text.slice(at));
      if (closing?.[1] !== undefined) {
        cell = closing[1].replace(/""/g, '"');
        at += closing[0].length;
      } else {
        const end = endOfCell(text, at);
        cell = text.slice(at, end);
        at = end;
      }
    } else {
      const end = endOfCell(text, at);
      cell = text.slice(at, end);
      at = end;
    }
    cells.push(cell);
    if (text[at] === '\t') {
      at += 1;
      continue;
    }
    rows.push(cells);
    cells = [];
    if (at >= text.length) break;
    at += text[at] === '\r' && text[at + 1] === '\n' ? 2 : 1;
    // A line break at the very end closes the last row and opens none.
    if (at >= text.length) break;
  }
  return rows;
}

function endOfCell(text: string, from: number): number {
  const found = text.slice(from).search(/[\t\r\n]/);
  return found < 0 ? text.length : from + found;
}
