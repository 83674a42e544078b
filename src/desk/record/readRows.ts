import { firstRecordFields, type RecordEntry, type RecordField, recordFields } from '../../lab/record/recordEntry.ts';
import { done, type Outcome, problem } from '../outcome.ts';
import { deskWords } from '../words.ts';

const mostRows = 50;

export interface SentRow {
  readonly entry: RecordEntry;
  /** The row as it was read, or undefined where there was none. */
  readonly base: RecordEntry | undefined;
}

/** The rows that are to be kept, each whole and of a class and a day. */
export function readRows(given: unknown): Outcome<readonly SentRow[]> {
  const { record: say } = deskWords;
  if (!Array.isArray(given) || given.length === 0 || given.length > mostRows)
    return problem({ ...say.rows, received: Array.isArray(given) ? `${given.length} of them` : typeof given });
  const rows: SentRow[] = [];
  for (const sent of given) {
    const row = readRow(sent);
    if (row === undefined) return problem({ ...say.rows, received: 'one of another shape' });
    rows.push(row);
  }
  return done(rows);
}

function readRow(sent: unknown): SentRow | undefined {
  if (typeof sent !== 'object' || sent === null || !('entry' in sent)) return undefined;
  const entry = readEntry(sent.entry);
  if (entry === undefined || entry.className === '' || !/^\d{4}-\d{2}-\d{2}$/.test(entry.day)) return undefined;
  return { entry, base: 'base' in sent ? readEntry(sent.base) : undefined };
}

function readEntry(given: unknown): RecordEntry | undefined {
  if (typeof given !== 'object' || given === null) return undefined;
  const entry = {} as Record<RecordField, string>;
  for (const field of recordFields) {
    const sent = (given as Record<string, unknown>)[field];
    // A row that was begun before there was such a field says nothing of it.
    const words = sent === undefined && !firstRecordFields.some((first) => first === field) ? '' : sent;
    if (typeof words !== 'string') return undefined;
    entry[field] = words.trim();
  }
  return entry;
}
