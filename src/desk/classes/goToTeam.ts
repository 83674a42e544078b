import { ask, type Work } from '../file/ask.ts';
import type { File } from '../file/look.ts';
import { attempt } from '../file/writing.ts';
import type { Outcome } from '../outcome.ts';
import { teamBlock } from './teamBlock.ts';

/** Shows a team's block in its class sheet, to whoever pressed the button. */
export const goToTeam = (file: File, className: unknown, key: unknown): Work<Outcome<null>> =>
  attempt(file, ['plan', 'class'], function* (book) {
    const found = teamBlock(book, { className, key });
    if (!found.ok) return found;
    const { sheet, block } = found.value;
    return yield* ask('show', { sheetId: sheet.id, cell: { row: block.headingRow, column: 1 } });
  });
