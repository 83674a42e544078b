import type { CellValue } from '../measurement/cellValue.ts';
import { scratchSheet } from '../workbook/scratchSheet.ts';
import type { Outcome, TrialAct, TrialChain, TrialFact, TrialWish } from './calls.ts';
import { cellSent } from './cellSent.ts';
import { fileInRun, sheetById } from './fileInRun.ts';
import { done } from './outcome.ts';
import { openSpreadsheet, type Sheet, type Spreadsheet } from './spreadsheet.ts';

/**
 * Hands of the self-check: it calls the host as it is told, in a sheet of its own, and says what came of each call. The
 * questions and what an answer means stand in the page, so that no cell function waits for them.
 */
export function tryHost({ steps }: TrialWish): Outcome<readonly TrialFact[]> {
  const spreadsheet = openSpreadsheet();
  return done(
    steps.map((step) => {
      const start = Date.now();
      try {
        const value = plain('calls' in step ? endOf(spreadsheet, step) : act(spreadsheet, step));
        return { ms: Date.now() - start, value };
      } catch (error) {
        // What the host refuses is a fact as well, and the next step is taken all the same.
        return { ms: Date.now() - start, refused: String((error as Error).message) };
      }
    }),
  );
}

const scratchSheets = (spreadsheet: Spreadsheet): Sheet[] =>
  spreadsheet.getSheets().filter((sheet) => sheet.getRange(1, 1).getValue() === scratchSheet.mark);

/**
 * `begin` makes a fresh sheet, in place of what an earlier run has left, and hands back which sheet was in view; `end`
 * shows that one again, takes the sheet away, and hands back how many are left.
 */
function act(spreadsheet: Spreadsheet, { do: what, sheetId }: TrialAct): number {
  const shown = spreadsheet.getActiveSheet().getSheetId();
  const old = scratchSheets(spreadsheet);
  if (what === 'begin') spreadsheet.insertSheet().getRange(1, 1).setValue(scratchSheet.mark);
  else sheetById(fileInRun(spreadsheet), sheetId)?.sheet.activate();
  for (const sheet of old) spreadsheet.deleteSheet(sheet);
  return what === 'begin' ? shown : scratchSheets(spreadsheet).length;
}

/** What a chain of calls begins at; of sheets there is the one to try things out in. */
const startOf = (spreadsheet: Spreadsheet, on: TrialChain['on']): unknown =>
  on === 'sheet'
    ? scratchSheets(spreadsheet)[0]
    : {
        file: spreadsheet,
        app: SpreadsheetApp,
        lock: LockService,
        store: PropertiesService,
        session: Session,
        tools: Utilities,
      }[on];

/** What may be asked of the file as a whole, and what would lead out of the scratch sheet. */
const ofFile = /^(getId|getSpreadsheet(Locale|TimeZone)|[gs]etRecalculationInterval)$/;
const elsewhere = /Parent|Active|open/;

/** What a chain of calls comes to. Each may be handed what another chain comes to, such as a range. */
function endOf(spreadsheet: Spreadsheet, { on, calls }: TrialChain): unknown {
  return calls.reduce<unknown>(
    (at, [name, ...given]) => {
      if (at === spreadsheet ? !ofFile.test(name) : elsewhere.test(name)) throw new Error(name);
      const member = (at as Readonly<Record<string, unknown>>)[name];
      if (typeof member !== 'function') return member;
      const handed = given.map((one) => (isChain(one) ? endOf(spreadsheet, one) : one));
      return member.apply(at, handed);
    },
    startOf(spreadsheet, on),
  );
}

const isChain = (given: unknown): given is TrialChain =>
  typeof given === 'object' && given !== null && !Array.isArray(given);

/** Plain values as they are; of a list of the host’s own objects how many there are, of one alone nothing. */
function plain(value: unknown): unknown {
  if (Array.isArray(value)) {
    const items = value.map(plain);
    return items.includes(null) ? items.length : items;
  }
  const sent = cellSent(value as CellValue);
  return typeof sent !== 'object' || 'date' in sent ? sent : null;
}

/**
 * Called from a cell, where the first argument says what is wanted: a block of 17 rows and 3 columns that spills, or what
 * each of the other arguments was when it arrived.
 */
export function inCell(wanted: string, given: readonly unknown[]): unknown {
  if (wanted !== 'spill') return given.map(kindOf).join(' | ');
  return Array.from({ length: 17 }, (_, row) => [row, 'spilled', row % 2 === 0]);
}

function kindOf(given: unknown): string {
  if (Array.isArray(given)) return `${given.length} x ${(given[0] as unknown[]).length} of ${kindOf(given[0][0])}`;
  const kind = Object.prototype.toString.call(given).slice(8, -1);
  return kind === 'Date' || given === null || given === undefined ? kind : `${kind} ${String(given)}`;
}
