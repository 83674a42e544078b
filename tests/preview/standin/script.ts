import { openStandIn, type StandIn, type StandInOptions } from '../../../src/preview/standin/openStandIn.ts';

/** Functions of a small script of the tests' own. */
const functions = `
/** Doubles. @param {number} x a number @customfunction */
function TWICE(x) {
  if (Array.isArray(x)) return x.map((row) => row.map((cell) => (cell === '' ? '' : cell * 2)));
  if (typeof x !== 'number') throw new Error('Expected a number for x, received ' + x + '.');
  return x * 2;
}
/**
 * A table of so many rows and columns.
 * @param {number} rows how many rows
 * @param {number} columns how many columns (optional)
 * @customfunction
 */
function TABLE(rows, columns) {
  const made = [];
  for (let row = 1; row <= rows; row += 1) {
    const cells = [];
    for (let column = 1; column <= (columns || 1); column += 1) cells.push(row * 10 + column);
    made.push(cells);
  }
  return made;
}
/** What was handed over. @customfunction */
function SEEN(value) {
  const name = (one) => Object.prototype.toString.call(one).slice(8, -1) + ':' + (one instanceof Date ? one.toISOString() : String(one));
  return Array.isArray(value) ? value.map((row) => row.map(name).join(' ')).join(' / ') : name(value);
}
function onOpen(event) {
  SpreadsheetApp.getUi().createMenu('Bench').addItem('Open', 'openPanel').addSeparator().addItem('Fill', 'fill').addToUi();
}
function openPanel() {
  SpreadsheetApp.getUi().showSidebar(HtmlService.createHtmlOutputFromFile('Sidebar').setTitle('Bench'));
}
function hidden_() { return 1; }
`;

/** Opens the stand-in on the tests' script and more of their own. */
export const open = (more = '', options: Partial<StandInOptions> = {}): StandIn =>
  openStandIn({ code: `${functions}\n${more}`, sidebarHtml: '<p>bench</p>', ...options });

/** What a cell of the first sheet shows. */
export const text = (host: StandIn, cell: string): string => cellView(host, cell)?.text ?? '';

export function cellView(host: StandIn, cell: string, seat: 'teacher' | 'student' = 'teacher') {
  const [, letter = 'A', row = '1'] = /^([A-Z])(\d+)$/.exec(cell) ?? [];
  return host.view(seat).sheets[0]?.cells[`${row},${letter.charCodeAt(0) - 64}`];
}

/** Types into the first sheet as the teacher, `A1: text` pairs one after another. */
export function typeIn(
  host: StandIn,
  cells: Readonly<Record<string, string>>,
  seat: 'teacher' | 'student' = 'teacher',
) {
  const sheet = host.view(seat).sheets[0]?.id ?? 0;
  return Object.entries(cells).map(([cell, typed]) => {
    const [, letter = 'A', row = '1'] = /^([A-Z])(\d+)$/.exec(cell) ?? [];
    return host.type(seat, [{ sheet, row: Number(row), column: letter.charCodeAt(0) - 64, text: typed }]);
  });
}
