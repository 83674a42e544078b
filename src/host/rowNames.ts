import type { CellValue } from '../measurement/cellValue.ts';
import { cellText } from '../workbook/cellText.ts';
import { classColumns as at } from '../workbook/layout.ts';

/** Team and step of a row of a class sheet, in today's columns. */
export const nameOf = (line: readonly CellValue[]): string =>
  `${cellText(line[at.key - 1])} ${cellText(line[at.step - 1])}`;

/** Whether it is a row of ours at all. */
export const isNamed = (line: readonly CellValue[]): boolean => cellText(line[at.key - 1]) !== '';

/** Rows can be moved by people between reading and writing; after so many rounds the rest waits for the next build. */
export const mostRounds = 3;
