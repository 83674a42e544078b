import { withLessonMark } from '../../workbook/lessonMark.ts';
import { planPrepareSheet } from '../../workbook/planPrepareSheet.ts';
import { words } from '../../workbook/words.ts';
import { ask, type Work } from '../file/ask.ts';
import { stampOf } from '../file/dayIn.ts';
import { type File, noted } from '../file/look.ts';
import { sheetInUse } from '../file/sheets.ts';
import { attempt, seenOf } from '../file/writing.ts';
import { lessonNow } from '../lesson/lessonNow.ts';
import { lessonShown, ofLesson } from '../lesson/lessonsInFile.ts';
import { done, type Outcome } from '../outcome.ts';
import { deskWords } from '../words.ts';

/** Brings the Prepare sheet to the Plan as it is now, and shows it unless what is in view is to stay. */
export const writePrepareSheet = (file: File, stay?: unknown): Work<Outcome<null>> =>
  attempt(file, ['plan', 'prepare'], function* (whole) {
    const shown = lessonShown(whole, file.lesson);
    const book = shown?.book ?? whole;
    const lesson = lessonNow(book);
    if (!lesson.ok) return lesson;
    const { plan, activity, sheet } = lesson.value;
    const { setup, teams, givenNames, invented } = plan;
    const name = sheetInUse(book, { kind: 'prepare' })?.name ?? words.prepare.sheet;
    const answer = yield* ask('applySheet', {
      plan: withLessonMark({
        ...planPrepareSheet(
          { setup, activity, teams, givenNames, invented },
          { prepare: name, plan: sheet.name },
          plan.places,
        ),
        role: ofLesson({ kind: 'prepare' }, shown?.id ?? ''),
      }),
      keptName: deskWords.keptName(name, stampOf(book)),
      seen: seenOf(sheet),
      read: { kinds: ['plan', 'prepare'] },
      show: stay !== true,
    });
    if (!answer.ok) return answer;
    noted(file, answer.value.reading, ['plan', 'prepare']);
    return done(null);
  });
