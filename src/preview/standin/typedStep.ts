import type { PlaceView } from '../view.ts';
import { columnOf, rowOf } from './address.ts';
import type { Book } from './book.ts';
import type { CellState, SheetState } from './sheetState.ts';
import type { CellStates } from './typing.ts';
import { type StepDone, stepped, type Undoable } from './undoList.ts';

interface CellStep {
  readonly sheet: SheetState;
  readonly key: number;
  readonly before: CellState | undefined;
  readonly after: CellState | undefined;
}

const same = (one: unknown, other: unknown): boolean => JSON.stringify(one) === JSON.stringify(other);
const looksOf = (cell: CellState | undefined): Omit<CellState, 'content'> => {
  const { content: _, ...looks } = cell ?? {};
  return looks;
};
const holdsFormula = ({ before, after }: CellStep): boolean =>
  before?.content?.kind === 'formula' || after?.content?.kind === 'formula';

/** What was typed at once, taken back cell by cell where nobody typed anything else there since. */
export function typedStep(book: Book, { before, after }: { before: CellStates; after: CellStates }): Undoable {
  return stepOver(
    book,
    [...before].flatMap(([sheet, cells]) =>
      [...cells].map(([key, state]) => ({ sheet, key, before: state, after: after.get(sheet)?.get(key) })),
    ),
  );
}

function stepOver(book: Book, all: readonly CellStep[]): Undoable {
  let cells = all;
  const go = (from: 'before' | 'after', to: 'before' | 'after') => (): StepDone => {
    const changed: CellStep[] = [];
    const left: CellStep[] = [];
    for (const cell of cells) {
      const now = cell.sheet.cells.get(cell.key);
      const stands = book.sheets.includes(cell.sheet) && same(now?.content, cell[from]?.content);
      (stands ? changed : left).push(cell);
      if (!stands) continue;
      const looks = same(looksOf(now), looksOf(cell[from])) ? looksOf(cell[to]) : looksOf(now);
      const content = cell[to]?.content;
      book.restoreCells(cell.sheet, new Map([[cell.key, { ...looks, ...(content ? { content } : {}) }]]));
    }
    cells = changed;
    return stepped(changed.map(placeOf), left.filter(({ sheet }) => book.sheets.includes(sheet)).map(placeOf));
  };
  return {
    undo: go('after', 'before'),
    redo: go('before', 'after'),
    follow(moved) {
      const followed = cells.flatMap((cell): CellStep[] => {
        if (cell.sheet !== moved.sheet) return [cell];
        const key = moved.key(cell.key);
        return key === undefined ? [] : [{ ...cell, key }];
      });
      // References of a formula that is put back would point where its cells stood before.
      return followed.some(holdsFormula) ? undefined : stepOver(book, followed);
    },
  };
}

const placeOf = ({ sheet, key }: CellStep): PlaceView => ({ sheet: sheet.id, row: rowOf(key), column: columnOf(key) });
