import { freeName } from '../../workbook/freeName.ts';
import { planKeySheet } from '../../workbook/planKeySheet.ts';
import { words } from '../../workbook/words.ts';
import { ask, type Work } from '../file/ask.ts';
import type { Book } from '../file/book.ts';
import { type File, noted } from '../file/look.ts';
import { sheetsInUse } from '../file/sheets.ts';
import { attempt, seenOf } from '../file/writing.ts';
import { lessonNow } from '../lesson/lessonNow.ts';
import { bookShown } from '../lesson/lessonsInFile.ts';
import { done, type Outcome, problem } from '../outcome.ts';
import { deskWords } from '../words.ts';
import { keyView } from './keyView.ts';

/**
 * Writes the key to a new sheet, only where the teacher has said yes to the warning: everyone who can edit the file can
 * read it. Once finished it is never written again and never read; one that stopped half-way is finished.
 */
export function* writeKeySheet(file: File, confirmed: unknown): Work<Outcome<{ readonly name: string }>> {
  if (confirmed !== true) return problem({ ...deskWords.keyUnconfirmed, received: 'none' });
  return yield* attempt(file, ['plan'], function* (whole): Work<Outcome<{ readonly name: string }>> {
    const book = bookShown(whole, file.lesson);
    const lesson = lessonNow(book);
    if (!lesson.ok) return lesson;
    const key = keyView(book);
    if (!key.ok) return key;
    const orders = key.value.orders.map(({ title, inWords }) => [words.keySheet.allTeams, '', title, '', '', inWords]);
    const rows = key.value.teams.flatMap(({ className, team, lines }) =>
      lines.map(({ title, answer, unit, note }) => [className, team, title, answer, unit, note]),
    );
    const name = unfinishedKey(book) ?? freeName(words.keySheet.name(book.today), keyNames(whole));
    const answer = yield* ask('applySheet', {
      plan: planKeySheet({ name, rows: [...orders, ...rows] }),
      keptName: deskWords.keptName(name, book.today),
      seen: seenOf(lesson.value.sheet),
      read: { kinds: [] },
      show: true,
    });
    if (!answer.ok) return answer;
    const { reading, sheetId } = answer.value;
    noted(file, reading, []);
    return done({ name: reading.sheets.find(({ id }) => id === sheetId)?.name ?? name });
  });
}

/**
 * Names that no new key may have. A sheet that is none of ours may be an empty one that a press has left when it stopped:
 * the script takes that, or else another name for the tab.
 */
const keyNames = ({ sheets }: Book): readonly string[] =>
  sheets.flatMap(({ name, tag }) => {
    if (tag === null) return [];
    return tag.kind === 'key' ? [name, tag.className ?? ''] : [name];
  });

const unfinishedKey = (book: Book): string | undefined =>
  sheetsInUse(book).find(({ tag }) => tag.kind === 'key' && tag.state === 'building')?.tag.className;
