import { isInvitation } from '../lab/members/readMembers.ts';
import { checkHeadings } from '../lab/texts/feedback.ts';
import type { CellValue } from '../measurement/cellValue.ts';
import { cellText } from './cellText.ts';
import { classShift, columnIn, inTodaysColumns } from './classCells.ts';
import { classColumns as at, cautionRows, classRows } from './layout.ts';
import { restWords } from './restWords.ts';
import { stateWords } from './stateWords.ts';

/** One step of one team, as the class sheet shows it. */
export interface StepReading {
  /** Row of the sheet, from 1. */
  readonly row: number;
  readonly key: string;
  readonly step: string;
  readonly entry: string;
  /** A word of the contract, blank for a told step, or `not yet known` while the host is at work or has failed. */
  readonly check: string;
  readonly lookAt: string;
  readonly hint: string;
  /** 0 to 3. */
  readonly helpWanted: number;
  readonly who: string;
  readonly tries: number;
  /** Milliseconds since 1970, if the trigger has noted one. */
  readonly lastEntry: number | undefined;
}

export interface BlockReading {
  readonly key: string;
  readonly team: string;
  /** The cell that says who is in the team, as it stands there; empty while nobody has written there. */
  readonly who: string;
  /** Column of that cell, and of the formula that checks the block: those of an older sheet are others. */
  readonly whoColumn: number;
  readonly checkColumn: number;
  readonly headingRow: number;
  /** Last row of the block. */
  readonly closingRow: number;
  /** False while the block's check is loading, failed or blocked. */
  readonly known: boolean;
  readonly steps: readonly StepReading[];
}

export interface ClassReading {
  readonly blocks: readonly BlockReading[];
  /** Rows between the heading of the links and what follows them. */
  readonly linkRows: number;
}

type Cells = readonly (readonly CellValue[])[];

export const notYetKnown = 'not yet known';

const checkWords = stateWords.map(({ word }) => word);

/**
 * A class sheet's cells from A1 on, values only, read back by team and step, whatever layout it has. Undefined where it is
 * not one of ours.
 */
export function readClassSheet(found: Cells): ClassReading | undefined {
  const shift = classShift(found);
  if (shift === undefined) return undefined;
  const cells = inTodaysColumns(found);
  const whoColumn = columnIn(found, at.who);
  const checkColumn = columnIn(found, at.check);
  const blocks: BlockReading[] = [];
  // In older sheets the first link stood one row higher; no team's key stands above the blocks in either.
  let row = classRows.firstLink;
  while (row <= cells.length) {
    const key = textAt(cells, row, at.key);
    if (key === '' || textAt(cells, row, at.step) !== '') {
      row += 1;
      continue;
    }
    const block = readBlock({ cells, headingRow: row, key });
    blocks.push({ ...block, whoColumn, checkColumn });
    row = block.closingRow + 1;
  }
  const firstBlock = blocks[0]?.headingRow ?? cells.length + 1;
  const between = shift === 0 ? cautionRows + 1 : 0;
  return { blocks, linkRows: Math.max(0, firstBlock - 1 - between - classRows.firstLink) };
}

const textAt = (cells: Cells, row: number, column: number): string => cellText(cells[row - 1]?.[column - 1]);

/** Rows that people added inside a block have no key: they belong to it and count for nothing. */
function readBlock({
  cells,
  headingRow,
  key,
}: {
  cells: Cells;
  headingRow: number;
  key: string;
}): Omit<BlockReading, 'whoColumn' | 'checkColumn'> {
  const heading = textAt(cells, headingRow, at.check);
  // A sheet at rest says what its checks said when they were last worked out.
  const known = heading === checkHeadings.check || heading === restWords.checks;
  const steps: StepReading[] = [];
  let closingRow = headingRow;
  for (let row = headingRow + 1; row <= cells.length; row += 1) {
    const rowKey = textAt(cells, row, at.key);
    if (rowKey === '') continue;
    if (rowKey !== key) break;
    closingRow = row;
    const step = textAt(cells, row, at.step);
    if (step === '') break;
    steps.push(readStep({ cells, row, key, step, known }));
  }
  const who = textAt(cells, headingRow, at.who);
  return {
    key,
    team: textAt(cells, headingRow, at.title),
    who: isInvitation(who) ? '' : who,
    headingRow,
    closingRow,
    known,
    steps,
  };
}

function readStep({
  cells,
  row,
  key,
  step,
  known,
}: {
  cells: Cells;
  row: number;
  key: string;
  step: string;
  known: boolean;
}): StepReading {
  const shown = textAt(cells, row, at.check);
  const check = shown.startsWith(restWords.before) ? shown.slice(restWords.before.length) : shown;
  const tries = cells[row - 1]?.[at.tries - 1];
  const lastEntry = cells[row - 1]?.[at.lastEntry - 1];
  const help = Number(textAt(cells, row, at.help));
  return {
    row,
    key,
    step,
    entry: textAt(cells, row, at.entry),
    check: known && (check === '' || checkWords.includes(check)) ? check : notYetKnown,
    lookAt: known ? textAt(cells, row, at.lookAt) : '',
    hint: known ? textAt(cells, row, at.hint) : '',
    helpWanted: Number.isInteger(help) && help >= 0 && help <= 3 ? help : 0,
    who: textAt(cells, row, at.who),
    tries: typeof tries === 'number' && Number.isFinite(tries) ? tries : 0,
    lastEntry: isDate(lastEntry) ? lastEntry.getTime() : undefined,
  };
}

/** By its kind and not by `instanceof`: a date that the host hands over may come from another realm. */
const isDate = (cell: CellValue): cell is Date => Object.prototype.toString.call(cell) === '[object Date]';
