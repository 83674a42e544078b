/** What one cell hands over: text, a number, a Boolean, a date, or nothing. */
export type CellValue = string | number | boolean | Date | null | undefined;

/** A blank cell reaches a script as an empty string, a left-out argument as undefined; both mean nothing was typed. */
export const isBlank = (value: CellValue): boolean =>
  value === undefined || value === null || (typeof value === 'string' && value.trim() === '');
