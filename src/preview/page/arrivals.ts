import type { ChangeView, SheetView } from '../view.ts';
import { announce } from './announce.ts';
import { cellName } from './cellName.ts';
import type { Editor } from './editor.ts';
import { followedRow } from './followedRow.ts';
import type { Grid } from './grid.ts';
import { rowNews } from './rowNews.ts';
import type { Sending } from './sending.ts';
import type { SheetInView } from './sheetInView.ts';
import { texts } from './texts.ts';
import type { Toasts } from './toasts.ts';
import type { Typing } from './typing.ts';
import { cellAt } from './workbookModel.ts';

/** So many cells emptied at once by another window are worth a word. */
const manyCleared = 10;

/** What comes from the server: shown, told to who listens, and minded by the cell that is being typed in. */
interface Arrivals {
  apply(change: ChangeView): void;
  /** The whole sheet in view was read anew while a cell was being typed in. */
  readAnew(before: SheetView | undefined, sheet: SheetView): void;
}

export function createArrivals({
  view,
  grid,
  editor,
  toasts,
  typing,
  sending,
  showCell,
}: {
  readonly view: SheetInView;
  readonly grid: Grid;
  readonly editor: Editor;
  readonly toasts: Toasts;
  readonly typing: Typing;
  readonly sending: Sending;
  readonly showCell: () => void;
}): Arrivals {
  function apply(change: ChangeView): void {
    const { model, sheet: before } = view;
    const touched = model?.apply(change);
    if (!model || !touched) return;
    if (!model.sheets.has(view.id) || model.sheets.get(view.id)?.hidden) {
      const [first] = view.visible;
      if (first) view.open(first.id);
    }
    const { sheet } = view;
    if (!sheet) return;
    if (touched.tabs) view.showTabs();
    const keys = touched.cells.get(sheet.id) ?? [];
    let found = true;
    if (touched.sheets.has(sheet.id)) {
      grid.show(sheet);
      if (before && editor.session?.sheet === sheet.id) found = followRow(before, sheet);
    } else if (keys.length > 0) grid.patch(sheet, keys);
    if (editor.session) {
      if (found) noticeOthers();
      editor.reposition();
    } else showCell();
    if (!before || before.id !== sheet.id) return;
    sayRowNews(before, sheet, keys);
    sayCleared(before, sheet, keys);
  }
  /** Rows moved under the cell being typed in: goes along with its row, or says that it cannot. */
  function followRow(before: SheetView, sheet: SheetView): boolean {
    const { session } = editor;
    if (!session) return true;
    const row = followedRow(before, sheet, session.place);
    if (row === session.place.row) return true;
    if (row === undefined) {
      session.before = cellAt(sheet, session.place)?.input ?? '';
      editor.message(texts.rowLost);
      announce(texts.rowLost, 'urgent');
      return false;
    }
    session.place = { row, column: session.place.column };
    grid.mark(session.place);
    const said = texts.rowMoved(cellName(session.place));
    editor.message(said);
    announce(said);
    return true;
  }
  /** Somebody else wrote into the cell that is being typed in. */
  function noticeOthers(): void {
    const { session } = editor;
    const sheet = session && view.model?.sheets.get(session.sheet);
    if (!session || !sheet) return;
    const input = cellAt(sheet, session.place)?.input ?? '';
    if (input === session.before) return;
    session.before = input;
    const said = texts.changedMeanwhile(input);
    editor.message(said);
    announce(said);
  }
  /** Says what formulas now tell about the row in hand: its check, and what to look at. */
  function sayRowNews(before: SheetView, sheet: SheetView, keys: readonly string[]): void {
    const changed = new Set(keys.map((key) => Number.parseInt(key, 10)));
    const rows = [...new Set([typing.lastRow, grid.selection.active.row])].filter((row) => changed.has(row));
    const news = rows.flatMap((row) => {
      const said = rowNews(sheet, row, before);
      if (said !== undefined) sending.hasTold(row);
      return said === undefined ? [] : [said];
    });
    announce(news.join(' '));
  }
  /** Says when another window emptied many cells of the sheet in view. */
  function sayCleared(before: SheetView, sheet: SheetView, keys: readonly string[]): void {
    if (sending.isSending) return;
    const cleared = keys.filter((key) => {
      const was = before.cells[key];
      return was && was.input !== '' && !was.spilled && (sheet.cells[key]?.input ?? '') === '';
    }).length;
    if (cleared >= manyCleared) toasts.show('', texts.clearedElsewhere(cleared));
  }
  return {
    apply,
    readAnew(before, sheet) {
      if (!before || before.id !== sheet.id || followRow(before, sheet)) noticeOthers();
    },
  };
}
