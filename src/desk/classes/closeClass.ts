import type { CellWish } from '../../host/calls.ts';
import { closedText } from '../../lab/judging/isClosed.ts';
import { rowFor } from '../../workbook/readRecordSheet.ts';
import { words } from '../../workbook/words.ts';
import type { Work } from '../file/ask.ts';
import { cellWish } from '../file/cellWish.ts';
import type { File } from '../file/look.ts';
import { attempt, seenOf, writeCells } from '../file/writing.ts';
import { planOf } from '../lesson/planInFile.ts';
import { done, type Outcome } from '../outcome.ts';
import { classDays } from '../record/classDays.ts';
import { recordInFile } from '../record/recordInFile.ts';
import { noteDays } from '../record/saveRecord.ts';
import { deskWords } from '../words.ts';
import { classCalled } from './classCalled.ts';

const kinds = ['plan', 'class', 'poll', 'record'] as const;

/**
 * At the bell: the rows of a class that are still open stop asking, and what is open is noted in its row of the Record.
 * Or the other way round: they ask again. One line of the Plan says it, which every check reads; no entry is touched.
 */
export const closeClass = (
  file: File,
  className: unknown,
  close: unknown,
): Work<Outcome<{ readonly noted: boolean }>> =>
  attempt(file, kinds, function* (book): Work<Outcome<{ readonly noted: boolean }>> {
    const found = classCalled(book, className);
    if (!found.ok) return found;
    const own = found.value.lesson.book;
    const plan = planOf(own, deskWords.teams.noLesson);
    if (!plan.ok) return plan;
    const { sheet, reading } = plan.value;
    const keys = [...new Set([...found.value.keys, ...found.value.reading.blocks.map(({ key }) => key)])];
    const others = reading.closed.filter((key) => !keys.includes(key));
    const closed = close === true ? [...others, ...keys] : others;
    const lineCells = ({ row, column }: { row: number; column: number }, texts: readonly string[]): CellWish[] =>
      texts.map((now, at) => cellWish(sheet, { row, column: column + at }, now));
    const line = lineCells(
      reading.places.closed,
      closed.length > 0 ? [words.settings.closed, closedText(closed)] : ['', ''],
    ).filter(({ was, now }) => was !== now);
    const days = classDays(own).filter(
      (day) =>
        close === true &&
        day.className === found.value.name &&
        (day.hasEntriesToday || rowFor(recordInFile(book)?.reading ?? none, day) !== undefined),
    );
    // A row that was already closed says less: what was noted at the bell stays.
    const first = keys.some((key) => !reading.closed.includes(key));
    const noted = first && days.length > 0 ? yield* noteDays(file, book, days) : undefined;
    if (noted?.ok === false) return noted;
    const rows = noted?.value.cells ?? [];
    // The line of the Plan last: while it does not stand there, the next press notes the rest of the row.
    const cells = [...rows, ...line];
    if (cells.length > 0) {
      const seen = seenOf(sheet, ...(rows.length > 0 ? [noted?.value.sheet] : []));
      const written = yield* writeCells(file, {
        cells,
        seen,
        kinds: rows.length > 0 ? ['plan', 'record'] : ['plan'],
        ids: [found.value.sheet.id],
      });
      if (!written.ok) return written;
    }
    return done({ noted: noted !== undefined });
  });

const none = { rows: [] };
