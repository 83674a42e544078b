import { areaName, columnLetters } from '../../src/workbook/reference.ts';
import type { Block, CellContent, SheetPlan, WorkbookPlan } from '../../src/workbook/workbook.ts';
import { sizesOf } from './sizesOf.ts';

const shown = (content: CellContent): string => {
  switch (content.kind) {
    case 'text':
      return JSON.stringify(content.text);
    case 'number':
      return String(content.value);
    case 'formula':
      return content.formula;
    case 'sheet id':
      return '(number of the sheet)';
    default:
      return '';
  }
};

const blockLines = ({ row, column, cells }: Block): string[] =>
  cells.flatMap((contents, down) =>
    contents.flatMap((content, right) =>
      content.kind === 'blank' ? [] : [`  ${columnLetters(column + right)}${row + down}  ${shown(content)}`],
    ),
  );

const areas = (list: readonly Parameters<typeof areaName>[0][]): string => list.map(areaName).join(' ') || 'none';

function sheetLines(sheet: SheetPlan): string[] {
  const { role, frozenRows, frozenColumns, hiddenColumns } = sheet;
  return [
    `sheet “${sheet.name}”: ${role.kind}${role.className === undefined ? '' : ` of ${role.className}`}`,
    `  ${sheet.rowCount} rows, widths ${sizesOf(sheet.columnWidths, sheet.columnCount).join(' ')}, frozen ${frozenRows} rows ${frozenColumns} columns, hidden ${
      hiddenColumns === undefined ? 'none' : `${hiddenColumns.count} from ${columnLetters(hiddenColumns.column)}`
    }`,
    `  people write in ${areas(sheet.writable)}`,
    `  also unprotected ${areas(sheet.unprotected)}`,
    `  spill ${areas(sheet.spill)}`,
    ...sheet.choices.map(({ area, options }) => `  choice ${areaName(area)}: ${options.join(' | ')}`),
    ...sheet.formats.map((area) => `  format ${areaName(area)}: ${area.format}`),
    ...sheet.states.map(
      ({ areas: where, startsWith, state }) => `  “${startsWith}…” looks ${state} in ${areas(where)}`,
    ),
    ...sheet.looks.map((area) => `  look ${areaName(area)}: ${area.look}`),
    ...sheet.blocks.flatMap(blockLines),
    ...sheet.checks.flatMap(blockLines),
  ];
}

/** A planned workbook as lines that can be read and compared. */
export const planText = ({ layoutVersion, sheets }: WorkbookPlan): string =>
  [`layout ${layoutVersion}`, ...sheets.flatMap((sheet) => ['', ...sheetLines(sheet)]), ''].join('\n');
