import { teamKey } from '../../lab/key/teamKey.ts';
import { freeName } from '../../workbook/sheetNames.ts';
import type { Outcome } from '../calls.ts';
import { withDocumentLock } from '../documentLock.ts';
import { lessonNow, todayText } from '../lessonNow.ts';
import { done, problem } from '../outcome.ts';
import { openSpreadsheet } from '../spreadsheet.ts';
import { hostWords } from '../words.ts';
import { writeTexts } from '../writeTexts.ts';

/**
 * Writes the key to a new sheet, only where the teacher has said yes to the warning: everyone who can edit the file can
 * read it. The sheet is the teacher's from then on; it is never written again and never read.
 */
export function writeKeySheet(confirmed: unknown): Outcome<{ readonly name: string }> {
  if (confirmed !== true) return problem({ ...hostWords.keyUnconfirmed, received: 'none' });
  const lesson = lessonNow();
  if (!lesson.ok) return lesson;
  const { plan, activity } = lesson.value;
  const { keySheet } = hostWords;
  const rows = plan.teams.flatMap((team) =>
    teamKey({ activity, team, settings: plan.setup.settings }).map(({ title, unit, answer, note }) => [
      team.className,
      team.team,
      title,
      answer,
      unit,
      note,
    ]),
  );
  const locked = withDocumentLock(2000, () => {
    const spreadsheet = openSpreadsheet();
    const taken = spreadsheet.getSheets().map((sheet) => sheet.getName());
    const name = freeName(keySheet.name(todayText()), taken);
    const sheet = spreadsheet.insertSheet(name, spreadsheet.getSheets().length);
    const width = keySheet.headings.length;
    const lines = [[keySheet.warning, ...Array.from({ length: width - 1 }, () => '')], [...keySheet.headings], ...rows];
    const room = sheet.getMaxRows();
    if (room < lines.length) sheet.insertRowsAfter(room, lines.length - room);
    const range = sheet.getRange(1, 1, lines.length, width);
    range.setNumberFormats(lines.map((line) => line.map(() => '@')));
    writeTexts(range, lines);
    sheet.setFrozenRows(2);
    return name;
  });
  return locked.ran ? done({ name: locked.value }) : problem({ ...hostWords.fileBusy, where: 'the key' });
}
