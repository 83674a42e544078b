import { extensionGiven, ownHelpGiven } from '../../lab/lesson/teamColumns.ts';
import { closingHeight } from '../../workbook/classHeights.ts';
import { settingOptions } from '../../workbook/settingOptions.ts';
import { classesInFile } from '../classes/classesInFile.ts';
import type { Work } from '../file/ask.ts';
import type { Book } from '../file/book.ts';
import type { File } from '../file/look.ts';
import { attempt, seenOf, writeCells } from '../file/writing.ts';
import { lessonOfTeam } from '../lesson/lessonOfTeam.ts';
import { planOf } from '../lesson/planInFile.ts';
import { done, type Outcome, problem } from '../outcome.ts';
import type { OwnHelpView } from '../views.ts';
import { deskWords } from '../words.ts';
import { ownCell } from './ownCell.ts';

const longestTask = 120;
const kinds = ['plan', 'class'] as const;

/**
 * Gives one team help of its own: how far its hints go, and a task for when all its rows are right. Both are cells of the
 * team's line in the Plan; what is left out of the wish stays. An empty level is the lesson's own.
 */
export const setOwnHelp = (file: File, key: unknown, wish: unknown): Work<Outcome<OwnHelpView>> =>
  attempt(file, kinds, function* (book) {
    const { ownHelp: say } = deskWords;
    const own = lessonOfTeam(book, key);
    const plan = planOf(own, deskWords.teams.noLesson);
    if (!plan.ok) return plan;
    const { reading, sheet } = plan.value;
    const line = reading.teams.find((one) => one.key === key);
    if (line === undefined) return problem({ ...deskWords.teams.unknown, received: `“${String(key)}”` });
    if (reading.places.teamColumns[ownHelpGiven] === undefined) return problem(say.noColumns);
    const wanted = typeof wish === 'object' && wish !== null ? (wish as Record<string, unknown>) : {};
    const level = String(wanted.level ?? line.givens[ownHelpGiven] ?? '').trim();
    if (wanted.level !== undefined && level !== '' && !settingOptions[ownHelpGiven]?.includes(level))
      return problem({ ...say.level, received: `“${level}”` }, 'level');
    const extension = String(wanted.extension ?? line.givens[extensionGiven] ?? '')
      .replace(/\s+/g, ' ')
      .trim();
    if (wanted.extension !== undefined && extension.length > longestTask)
      return problem(
        { ...say.tooLong(longestTask), where: line.team, received: String(extension.length) },
        'extension',
      );
    const cells = [
      ...ownCell(plan.value, { key, name: ownHelpGiven, now: level }),
      ...ownCell(plan.value, { key, name: extensionGiven, now: extension }),
    ];
    if (cells.length === 0) return done({ level, extension });
    const row = closingRow(own, line.key);
    const written = yield* writeCells(file, {
      cells,
      seen: seenOf(sheet, row?.sheet),
      kinds,
      // The closing row was made as high as it had to be when the sheet was built.
      ...(row === undefined || wanted.extension === undefined
        ? {}
        : {
            heights: [
              {
                sheetId: row.sheet.id,
                row: row.row,
                height: closingHeight({ givens: { [extensionGiven]: extension } }),
              },
            ],
          }),
    });
    return written.ok ? done({ level, extension }) : written;
  });

/** Where the task is shown: the last row of the team's block, which has one unless it was taken out. */
function closingRow(book: Book, key: string) {
  for (const { sheet, reading } of classesInFile(book)) {
    const block = reading?.blocks.find((one) => one.key === key);
    const isThere = block?.steps.every(({ row }) => row !== block.closingRow);
    if (sheet && block && isThere) return { sheet, row: block.closingRow };
  }
  return undefined;
}
