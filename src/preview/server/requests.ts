import type { Edit, Seat } from '../view.ts';

/** A request that cannot be answered: its status and one line for people. */
export class BadRequest extends Error {
  readonly status: number;
  constructor(status: number, message: string) {
    super(message);
    this.status = status;
  }
}

type Fields = Readonly<Record<string, unknown>>;

const shown = (value: unknown): string => {
  const text = value === undefined ? 'nothing' : (JSON.stringify(value) ?? String(value));
  return text.length > 60 ? `${text.slice(0, 60)}…` : text;
};
const expected = (what: string, received: unknown): BadRequest =>
  new BadRequest(400, `Expected ${what}, received ${shown(received)}.`);

export function readFields(body: string): Fields {
  let value: unknown;
  try {
    value = JSON.parse(body);
  } catch {
    throw expected('a JSON object', body);
  }
  if (typeof value !== 'object' || value === null || Array.isArray(value)) throw expected('a JSON object', value);
  return value as Fields;
}
export function readSeat(value: unknown): Seat {
  if (value === 'teacher' || value === 'student') return value;
  throw expected('seat to be teacher or student', value);
}
const longestWindow = 64;
/** The name that a window gave itself; a window without one shares what its seat did. */
export function readWindow(value: unknown, seat: Seat): string {
  if (value === undefined) return seat;
  if (typeof value === 'string' && value.length > 0 && value.length <= longestWindow) return `${seat} ${value}`;
  throw expected(`window to be a text of 1 to ${longestWindow} signs`, value);
}
/** A whole number of at least `least`: positions count from 1, versions and sheet ids from 0. */
export function readWhole(name: string, value: unknown, least: number): number {
  if (typeof value === 'number' && Number.isSafeInteger(value) && value >= least) return value;
  throw expected(`${name} to be a whole number of at least ${least}`, value);
}
export function readText(name: string, value: unknown): string {
  if (typeof value === 'string') return value;
  throw expected(`${name} to be text`, value);
}
export function readList(name: string, value: unknown): readonly unknown[] {
  if (Array.isArray(value)) return value;
  throw expected(`${name} to be a list`, value);
}
export function readEdits(value: unknown): readonly Edit[] {
  return readList('edits', value).map((edit) => {
    if (typeof edit !== 'object' || edit === null) throw expected('an edit', edit);
    const { sheet, row, column, text } = edit as Fields;
    return {
      sheet: readWhole('sheet', sheet, 0),
      row: readWhole('row', row, 1),
      column: readWhole('column', column, 1),
      text: readText('text', text),
    };
  });
}
export function readArea(value: unknown): { row: number; column: number; rows: number; columns: number } {
  if (typeof value !== 'object' || value === null) throw expected('an area', value);
  const { row, column, rows, columns } = value as Fields;
  return {
    row: readWhole('row', row, 1),
    column: readWhole('column', column, 1),
    rows: readWhole('rows', rows, 1),
    columns: readWhole('columns', columns, 1),
  };
}
