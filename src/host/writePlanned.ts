import type { CellValue } from '../measurement/cellValue.ts';
import { withSeparator } from '../workbook/formula.ts';
import { areaName } from '../workbook/reference.ts';
import type { Area, Block, CellContent, SheetPlan } from '../workbook/workbook.ts';
import type { Sheet } from './spreadsheet.ts';
import { writeFormats } from './writeFormats.ts';
import { writeTexts } from './writeTexts.ts';

interface Present {
  readonly values: readonly (readonly CellValue[])[];
  readonly formulas: readonly (readonly string[])[];
}

interface WriteInput {
  readonly sheet: Sheet;
  readonly plan: SheetPlan;
  readonly blocks: readonly Block[];
  /** What stands there; left out for a sheet that this run made, in which nobody has written. */
  readonly present: Present | undefined;
  readonly separator: ',' | ';';
  /** From which row on the run has set the formats already; left out where it has not. */
  readonly formattedFrom?: number;
}

/**
 * Writes planned contents in as few calls as the cells of people allow: into an empty sheet one block for each run of
 * columns in which nobody writes; elsewhere of each block the rows that differ. A text that stands in many single cells
 * goes into all of them in one call. Cells that people write in are never part of a block. False where nothing differs.
 */
export function writePlanned({
  sheet,
  plan,
  blocks,
  present,
  separator,
  formattedFrom = Infinity,
}: WriteInput): boolean {
  const sheetId = sheet.getSheetId();
  const input = (content: CellContent) => inputOf({ content, sheetId, separator });
  const wanted = present === undefined ? blocks : blocks.flatMap((block) => differing({ block, present, input }));
  if (wanted.length === 0) return false;
  const { single, wide } = parted(present === undefined ? merged(wanted, plan) : wanted);
  const write = (block: Block): void => {
    const area = { ...block, rows: block.cells.length, columns: block.cells[0]?.length ?? 1 };
    // A formula in a cell that was text until now would stay its own words.
    if (block.row < formattedFrom && hasFormula(block)) writeFormats(sheet, plan, area);
    const range = sheet.getRange(area.row, area.column, area.rows, area.columns);
    writeTexts(
      range,
      block.cells.map((row) => row.map(input)),
      (down, right) => block.cells[down]?.[right]?.kind === 'formula',
    );
  };
  // What names the rows comes first, the last rows before the others: a sheet in which the run stops behind that is known
  // for what it is to be.
  const naming = wide.filter((block) => namesRows(block, plan)).sort((one, other) => other.row - one.row);
  naming.forEach(write);
  for (const [words, places] of single) sheet.getRangeList(places.map(areaName)).setValue(words);
  wide.filter((block) => !naming.includes(block)).forEach(write);
  return true;
}

const namesRows = ({ column, cells }: Block, { identity }: SheetPlan): boolean =>
  identity.columns.some((one) => one >= column && one < column + (cells[0]?.length ?? 0));

export const hasFormula = ({ cells }: Block): boolean =>
  cells.some((row) => row.some(({ kind }) => kind === 'formula'));

function inputOf({
  content,
  sheetId,
  separator,
}: {
  content: CellContent;
  sheetId: number;
  separator: ',' | ';';
}): string | number {
  switch (content.kind) {
    case 'text':
      return content.text;
    case 'number':
      return content.value;
    case 'formula':
      return withSeparator(content.formula, separator);
    case 'sheet id':
      return sheetId;
    default:
      return '';
  }
}

/** The rows of a block from the first that differs from what stands there to the last. */
function differing({
  block,
  present: { values, formulas },
  input,
}: {
  block: Block;
  present: Present;
  input: (content: CellContent) => string | number;
}): readonly Block[] {
  const stands = (content: CellContent, row: number, column: number): boolean => {
    const formula = formulas[row - 1]?.[column - 1] ?? '';
    if (content.kind === 'formula') return formula === input(content);
    return formula === '' && (values[row - 1]?.[column - 1] ?? '') === input(content);
  };
  const changed = block.cells.flatMap((contents, down) =>
    contents.every((content, right) => stands(content, block.row + down, block.column + right)) ? [] : [down],
  );
  const [first] = changed;
  const last = changed[changed.length - 1];
  if (first === undefined || last === undefined) return [];
  return [{ ...block, row: block.row + first, cells: block.cells.slice(first, last + 1) }];
}

const blank: CellContent = { kind: 'blank' };

/**
 * Blocks joined to one for all rows above the cells of people and, from there, for each run of columns in which nobody
 * writes to one from its first planned cell to its last; or, where that makes fewer, to one again for all rows below them.
 * What stands between the cells of people stays a block of its own.
 */
function merged(blocks: readonly Block[], { columnCount, writable }: SheetPlan): readonly Block[] {
  const firstOpen = Math.min(...writable.map(({ row }) => row));
  const lastOpen = Math.max(...writable.map(({ row, rows }) => row + rows - 1));
  const whole = ([top, bottom]: FirstAndLast) => {
    const within = blocks.flatMap((block) => partOf(block, [top, bottom], [1, columnCount]));
    return within.length > 0 ? [oneBlock(within)] : [];
  };
  const byColumns = (bottom: number) => columnsJoined(blocks, { rows: [firstOpen, bottom], columnCount, writable });
  const [once, twice] = [byColumns(Infinity), [...byColumns(lastOpen), ...whole([lastOpen + 1, Infinity])]];
  return [...whole([1, firstOpen - 1]), ...(twice.length < once.length ? twice : once)];
}

function columnsJoined(
  blocks: readonly Block[],
  { rows, columnCount, writable }: { readonly rows: FirstAndLast } & Pick<SheetPlan, 'columnCount' | 'writable'>,
): readonly Block[] {
  const joined: Block[] = [];
  const isWritable = (column: number) =>
    writable.some((area) => column >= area.column && column < area.column + area.columns);
  for (let first = 1; first <= columnCount; first += 1) {
    const open = !isWritable(first);
    let last = first;
    while (last < columnCount && isWritable(last + 1) !== open) last += 1;
    const within = blocks.flatMap((block) => partOf(block, rows, [first, last]));
    if (open && within.length > 0) joined.push(oneBlock(within));
    else joined.push(...within);
    first = last;
  }
  return joined;
}

type FirstAndLast = readonly [first: number, last: number];

/** The part of a block that lies in these rows and columns. */
function partOf(block: Block, [top, bottom]: FirstAndLast, [left, right]: FirstAndLast): readonly Block[] {
  const cells = block.cells
    .filter((_, down) => block.row + down >= top && block.row + down <= bottom)
    .map((line) => line.filter((_, across) => block.column + across >= left && block.column + across <= right));
  const isNone = (cells[0]?.length ?? 0) === 0;
  return isNone ? [] : [{ row: Math.max(top, block.row), column: Math.max(left, block.column), cells }];
}

function oneBlock(blocks: readonly Block[]): Block {
  const width = (block: Block) => block.cells[0]?.length ?? 0;
  const row = Math.min(...blocks.map((block) => block.row));
  const column = Math.min(...blocks.map((block) => block.column));
  const bottom = Math.max(...blocks.map((block) => block.row + block.cells.length));
  const right = Math.max(...blocks.map((block) => block.column + width(block)));
  const cells = Array.from({ length: bottom - row }, () => Array.from({ length: right - column }, () => blank));
  for (const block of blocks) {
    block.cells.forEach((contents, down) => {
      contents.forEach((content, across) => {
        const line = cells[block.row - row + down];
        if (line !== undefined) line[block.column - column + across] = content;
      });
    });
  }
  return { row, column, cells };
}

/** Texts that stand in several single cells, by their words; and all other blocks. */
function parted(blocks: readonly Block[]): {
  readonly single: ReadonlyMap<string, readonly Area[]>;
  readonly wide: readonly Block[];
} {
  const byWords = new Map<string, { areas: Area[]; blocks: Block[] }>();
  for (const block of blocks) {
    const [content] = block.cells[0] ?? [];
    // A text that the host might read as a formula or a mark goes the careful way.
    if (block.cells.length !== 1 || block.cells[0]?.length !== 1 || content?.kind !== 'text') continue;
    if (!/^\w/.test(content.text)) continue;
    const found = byWords.get(content.text) ?? { areas: [], blocks: [] };
    found.areas.push({ row: block.row, column: block.column, rows: 1, columns: 1 });
    found.blocks.push(block);
    byWords.set(content.text, found);
  }
  const single = new Map(
    [...byWords].filter(([, { areas }]) => areas.length > 1).map(([words, { areas }]) => [words, areas]),
  );
  const taken = new Set([...byWords].filter(([words]) => single.has(words)).flatMap(([, found]) => found.blocks));
  return { single, wide: blocks.filter((block) => !taken.has(block)) };
}
