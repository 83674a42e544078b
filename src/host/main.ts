/** What menu items and the sidebar call. Cell functions, the menu and the count of tries are compiled without it. */
import { layoutVersion } from '../workbook/layout.ts';
import { afterStep, applyCall } from './applyCall.ts';
import { putAside } from './applyWorkbook.ts';
import type { Calls, Outcome } from './calls.ts';
import { checkAgain } from './checkAgain.ts';
import { onDesk } from './deskSheet.ts';
import { emptyFile } from './emptyFile.ts';
import { openPage } from './openPage.ts';
import { changed, done, guarded, problem } from './outcome.ts';
import { readBook } from './readBook.ts';
import {
  readApplyWish,
  readAsideWish,
  readCellsWish,
  readEmptyFileWish,
  readPageWish,
  readReadWish,
  readShowWish,
  readTrialWish,
} from './readWish.ts';
import { show } from './show.ts';
import { inCell, tryHost } from './tryHost.ts';
import { hostWords } from './words.ts';
import { writeCells } from './writeCells.ts';
import { writing } from './writing.ts';

export { buildSampleFromMenu_, checkAgainFromMenu_, openSidebar_, selfCheckFromMenu_ } from './menu.ts';

/** Calls from the sidebar, each with its input checked and every refusal in words for people. */
export const endpoints_: Calls = {
  readBook: (version, wish) =>
    asked(version, readReadWish(wish), (read) => onDesk((file) => done(readBook(file, read)))),
  applySheet: (version, wish) =>
    asked(version, readApplyWish(wish), (read) => writing(read, (file) => applyCall(file, read))),
  writeCells: (version, wish) =>
    asked(version, readCellsWish(wish), (read) => readingOf(writing(read, (file) => writeCells(file, read)))),
  putAside: (version, wish) =>
    asked(version, readAsideWish(wish), (read) =>
      writing(read, (file) => {
        if (!putAside(file, read)) return changed(hostWords.theSheet(read.was));
        const late = afterStep(file, read);
        return done(late === undefined ? {} : { late });
      }),
    ),
  emptyFile: (version, wish) =>
    asked(version, readEmptyFileWish(wish), (read) => writing(read, (file) => emptyFile(file, read))),
  show: (version, wish) => asked(version, readShowWish(wish), show),
  openPage: (version, wish) => asked(version, readPageWish(wish), openPage),
  checkAgain: (version) => asked(version, {}, checkAgain),
  tryHost: ((first: unknown, ...rest: readonly unknown[]) =>
    // Every name that the page may call is one that a cell may call: this one tells a cell what it was given.
    typeof first === 'string'
      ? inCell(first, rest)
      : asked(first, readTrialWish(rest[0]), tryHost)) as Calls['tryHost'],
};

/** A page of another version would plan sheets that this script no longer has. */
function asked<Wish, T>(version: unknown, wish: Wish | undefined, work: (wish: Wish) => Outcome<T>): Outcome<T> {
  return guarded(() => {
    if (version !== layoutVersion) return problem(hostWords.olderPage, { reason: 'older' });
    return wish === undefined ? problem(hostWords.oddWish) : work(wish);
  });
}

const readingOf = <T extends { readonly reading: unknown }>(outcome: Outcome<T>): Outcome<T['reading']> =>
  outcome.ok ? done(outcome.value.reading) : outcome;
