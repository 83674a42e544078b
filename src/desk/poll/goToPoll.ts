import { ask, type Work } from '../file/ask.ts';
import type { File } from '../file/look.ts';
import { sheetInUse } from '../file/sheets.ts';
import { attempt } from '../file/writing.ts';
import { type Outcome, problem } from '../outcome.ts';
import { deskWords } from '../words.ts';

/** Shows the Poll sheet to whoever pressed the button. */
export const goToPoll = (file: File): Work<Outcome<null>> =>
  attempt(file, ['poll'], function* (book) {
    const sheet = sheetInUse(book, { kind: 'poll' });
    return sheet === undefined ? problem(deskWords.noPoll) : yield* ask('show', { sheetId: sheet.id });
  });
