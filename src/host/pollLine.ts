import type { Spreadsheet } from './spreadsheet.ts';

export const pollLine = (_spreadsheet: Spreadsheet, _className: string): string => '';
