import type { CellValue } from '../measurement/cellValue.ts';
import { cellText } from '../workbook/cellText.ts';
import { classColumns as at } from '../workbook/layout.ts';

/** Team and step of a line of a class sheet, by which a row is found again in another sheet. */
export const nameOf = (line: readonly CellValue[]): string =>
  `${cellText(line[at.key - 1])} ${cellText(line[at.step - 1])}`;
export const isNamed = (line: readonly CellValue[]): boolean => cellText(line[at.key - 1]) !== '';
