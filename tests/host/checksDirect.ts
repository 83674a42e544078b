import { classesInFile } from '../../src/desk/classes/classesInFile.ts';
import { besideBlocks, blockChecks } from '../../src/desk/classes/workedOut.ts';
import type { Book } from '../../src/desk/file/book.ts';
import { look } from '../../src/desk/file/look.ts';
import { cellsOf } from '../../src/desk/file/sheets.ts';
import { lessonsInUse } from '../../src/desk/lesson/lessonsInFile.ts';
import { lessonInFile } from '../../src/desk/lesson/planInFile.ts';
import type { StandIn } from '../../src/preview/standin/openStandIn.ts';
import { cellText } from '../../src/workbook/cellText.ts';
import { classColumns as at } from '../../src/workbook/layout.ts';
import { checksAreWritten } from '../../src/workbook/writtenChecks.ts';
import { answerOf, call, run } from './bench.ts';

/** How many blocks were compared, and rows of them that show another word than the judge gives when it is asked itself. */
export interface Compared {
  readonly blocks: number;
  readonly odd: readonly string[];
}

/** Asks the judge about the cells of every class in use, and compares each row with what its sheet shows. */
export function checksDirect(host: StandIn): Compared {
  const book = answerOf(run(host, look({ book: undefined }, ['plan', 'help', 'class'])));
  const sheets = lessonsInUse(book).flatMap((lesson) => classesInFile(lesson.book));
  if (!sheets.some(({ sheet }) => sheet !== undefined && checksAreWritten(cellsOf(sheet)))) return compare(book);
  // Where the page works them out, it does so every few seconds.
  answerOf(call(host, 'workOutChecks'));
  return compare(answerOf(run(host, look({ book: undefined }, ['plan', 'help', 'class']))));
}

function compare(whole: Book): Compared {
  const odd: string[] = [];
  let blocks = 0;
  for (const { book } of lessonsInUse(whole)) {
    const beside = besideBlocks(book, answerOf(lessonInFile(book)));
    for (const { sheet, reading } of classesInFile(book)) {
      if (sheet?.tag?.state !== 'built' || reading === undefined) continue;
      const cells = cellsOf(sheet);
      for (const { key, headingRow, closingRow } of reading.blocks) {
        blocks += 1;
        const rows = blockChecks({ block: { headingRow, closingRow }, cells, ...beside });
        rows.forEach(({ check, lookAt, hint }, down) => {
          const shown = [0, 1, 2].map((right) => cellText(cells[headingRow - 1 + down]?.[at.check - 1 + right]));
          const wanted = [check, lookAt, hint];
          if (shown.join('|') !== wanted.join('|'))
            odd.push(`${key}, row ${headingRow + down}: shows ${shown.join(' | ')}, wants ${wanted.join(' | ')}`);
        });
      }
    }
  }
  return { blocks, odd };
}
