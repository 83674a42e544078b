import type { Seat } from '../view.ts';

const number = (count: number): string => count.toLocaleString('en');
/** Basalt, Quartz and 3 more. */
const listed = (names: readonly string[], most: number): string => {
  const shown = names.slice(0, names.length > most ? most - 1 : most);
  const rest = names.length - shown.length;
  const last = rest > 0 ? `${rest} more` : shown.pop();
  return shown.length > 0 ? `${shown.join(', ')} and ${last}` : `${last}`;
};

/** Every text of the page, in one place. */
export const texts = {
  seatLine: {
    teacher: 'Teacher’s window. Everything here stays on this computer.',
    student: 'Student’s window. Everything here stays on this computer.',
  } satisfies Record<Seat, string>,
  /** Beside the menus while no sidebar is open: the one thing to do first. */
  startIn: (menu: string) => `The teacher’s side is in the ${menu} menu:`,
  unreachable: 'The preview is not answering. It may have been stopped.',
  refusedWithoutReason: 'That was not done, and no reason was given.',
  linkLost: 'The preview is not answering. What you type is kept here, and saved when it answers again.',
  slowAnswers: 'The preview is busy and slow to answer. What you typed is on its way: keep this window open.',
  linkBack: 'Connected again. The sheet shows the latest state.',
  savedAfterAll: (cells: string) => `Saved now: ${cells}.`,
  takenMeanwhile: (text: string) =>
    text === '' ? 'Somebody cleared this cell meanwhile.' : `Somebody else typed “${text}” here meanwhile.`,
  rowChangedMeanwhile: 'The rows changed meanwhile, so this may be another row now.',
  noSheet: 'There is no sheet to show yet.',
  keptEdit: (cell: string, text: string) => `Not saved yet, ${cell}: “${text}”`,
  tryAgain: 'Save it now',
  putBack: 'Put it back in its cell',
  cornerLabel: 'Whole sheet',
  rowLabel: (row: number) => `Row ${row}`,
  lockedCell: 'This cell is locked in this window.',
  boxName: (what: string, text: string) => `${what}: ${text === '' ? 'empty' : text}`,
  guardedCell: 'Part of the table: you are asked before it changes.',
  spilledCell: 'Filled by a formula in another cell: you are asked before you type over it.',
  lockedRefused: 'This cell is locked in this window, so it takes no typing. Your text is still here to copy.',
  guardQuestion: {
    cells: {
      title: (count: number) => (count === 1 ? 'Change a cell of the table?' : `Change ${number(count)} cells?`),
      yes: 'Change it',
      no: 'Leave it',
    },
    rows: {
      title: (count: number) => `Change rows with ${number(count)} cells of the table?`,
      yes: 'Change them',
      no: 'Leave them',
    },
  },
  belongTo: (count: number, whose: readonly string[]) =>
    `${count === 1 ? 'It belongs' : 'They belong'} to ${listed(whose, 4)}.`,
  holdsTogether: (count: number) =>
    count === 1 ? 'It holds the table together.' : `${number(count)} of them hold the table together.`,
  fillsStop: (count: number) =>
    count === 1
      ? 'A formula fills it. While your text stands there, all that this formula fills goes blank.'
      : `A formula fills ${number(count)} of them. While your text stands there, all that it fills goes blank.`,
  undoBrings: (count: number) => (count === 1 ? 'Undo brings it back.' : 'Undo brings them back.'),
  askedOnce: 'You are asked once in this window.',
  inTheWay: (cell: string) =>
    `What you typed in ${cell} stands where a formula puts its results, so they are gone. Undo, or clear ${cell}, to have them back.`,
  undo: 'Undo',
  redo: 'Redo',
  nothingToUndo: 'There is nothing to undo.',
  nothingToRedo: 'There is nothing to redo.',
  undone: (cells: string, now: string) => `Undone in ${cells}${now}.`,
  redone: (cells: string, now: string) => `Done again in ${cells}${now}.`,
  nowHolds: (text: string) => (text === '' ? ', which is empty now' : `, which is “${text}” now`),
  leftAlone: (cells: string) => `Left as it is, since it was changed meanwhile: ${cells}.`,
  moreCells: (count: number) => `${number(count)} more`,
  filledDown: (block: string) => `Filled down ${block}.`,
  nothingAbove: 'There is no row above to fill from.',
  wider: (column: string) => `Make column ${column} wider`,
  narrower: (column: string) => `Make column ${column} narrower`,
  clearedElsewhere: (count: number) =>
    `Another window cleared ${number(count)} cells here. Undo in that window brings them back.`,
  working: 'working',
  gripLabel: 'Drag to change the width',
  rowMenu: 'Rows',
  keys: 'Keys',
  addRowAbove: (count: number) => (count === 1 ? 'Add a row above' : `Add ${count} rows above`),
  addRowBelow: (count: number) => (count === 1 ? 'Add a row below' : `Add ${count} rows below`),
  removeRows: (first: number, last: number) =>
    first === last ? `Remove row ${first}` : `Remove rows ${first} to ${last}`,
  sortUp: (column: string) => `Order rows by ${column}, smallest first`,
  sortDown: (column: string) => `Order rows by ${column}, largest first`,
  copyBlock: 'Copy',
  clearBlock: 'Clear',
  rowsAdded: (count: number) => (count === 1 ? 'One row added.' : `${count} rows added.`),
  rowsRemoved: (count: number) =>
    count === 1 ? 'One row removed. Undo brings it back.' : `${count} rows removed. Undo brings them back.`,
  rowsOrdered: (block: string) => `Rows of ${block} ordered.`,
  nothingToSort: 'There are no rows to order here.',
  copied: (block: string) => `Copied ${block}.`,
  pasted: (block: string) => `Pasted into ${block}.`,
  pasteTooLarge: (rows: number, columns: number) =>
    `That is ${rows} rows by ${columns} columns, more than fits below and beside this cell. Start higher up, or copy less.`,
  someRefused: (refused: number, all: number, reason: string) =>
    `${refused} of ${all} cells were left as they were. ${reason}`,
  changedMeanwhile: (text: string) =>
    text === ''
      ? 'Someone cleared this cell while you were typing. Enter keeps your text, Escape leaves it empty.'
      : `Someone else typed “${text}” here meanwhile. Enter keeps your text, Escape keeps theirs.`,
  rowMoved: (cell: string) => `Rows moved while you were typing. Your text now belongs to ${cell}.`,
  rowLost:
    'Rows moved while you were typing and this row cannot be found again. Check that this is your row, then press Enter.',
  sheetGone: 'The sheet you were typing in was removed. Your text is kept here to copy.',
  choose: 'Choose',
  choices: (cell: string) => `Choices for ${cell}`,
  functionsList: 'Functions',
  completeHint: 'Tab completes the name.',
  optionalMark: 'optional',
  followLink: 'Go there',
  followOutside: 'Open in a new tab',
  linkBroken: 'That link leads to a place that is not in this workbook.',
  editing: (cell: string) => `Editing ${cell}`,
  closePanel: 'Close',
  panelFailed: 'The panel could not be opened.',
  dismiss: 'Dismiss',
  selected: (block: string, rows: number, columns: number) => `${block}, ${rows} by ${columns} cells`,
  keysTitle: 'Keys in the grid',
  keyList: [
    ['Arrow keys, Page up, Page down', 'move'],
    ['Home, End', 'first and last cell of the row'],
    ['Ctrl + Home, Ctrl + End', 'first and last cell of the sheet'],
    ['Shift with any of these', 'select a block'],
    ['Any letter, digit or sign', 'replace what is in the cell'],
    ['Enter or F2', 'change what is in the cell; on a link, Enter goes there'],
    ['Enter, Tab, with Shift the other way', 'keep it and move on'],
    ['Escape', 'leave the cell as it was'],
    ['Delete', 'clear'],
    ['Ctrl + D', 'fill down: the block takes what its first row holds'],
    ['Shift + Space, Ctrl + Space', 'select the row, the column'],
    ['Alt + arrow down', 'open the choices of a cell'],
    ['Ctrl + C, X, V', 'copy, cut, paste'],
    ['Ctrl + Z, Ctrl + Y', 'undo, redo'],
    ['Shift + F10', 'the menu of the row'],
    ['F6', 'leave the grid for the menus; Tab goes on from there'],
  ],
} as const;
