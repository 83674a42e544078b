import type { SheetView } from '../view.ts';
import { announce } from './announce.ts';
import { cellName, type Place } from './cellName.ts';
import type { CellTips } from './cellTips.ts';
import { earlierEntry } from './earlierEntry.ts';
import type { Editor, Session } from './editor.ts';
import type { Grid } from './grid.ts';
import type { Permission } from './permission.ts';
import type { Sending } from './sending.ts';
import type { SheetInView } from './sheetInView.ts';
import { texts } from './texts.ts';
import type { Toasts } from './toasts.ts';
import { typingRefused } from './typingRefused.ts';
import { cellAt, nextPlace, ownerOf } from './workbookModel.ts';

type Step = { readonly rows: number; readonly columns: number };

/** Typing in a cell: opened, kept or left. */
export interface Typing {
  /** The row in which something was typed last; 0 before that. */
  readonly lastRow: number;
  openCell(place: Place, text?: string, message?: string): void;
  /** Opens an empty field for the key that is on its way: it lands there, accents and input methods included. */
  typeOver(text?: string): void;
  /** Opens the selected cell for typing in the line above the grid. */
  openLine(): void;
  keep(text: string, move: Step | undefined, then?: () => void): Promise<void>;
  /** Keeps what is being typed, if anything is, then goes on; stays where it was refused. */
  leave(then: () => void): Promise<void>;
  /** Somebody moved by something else than Tab. */
  endTabs(): void;
}

export function createTyping({
  view,
  grid,
  editor,
  tips,
  toasts,
  permission,
  sending,
  showCell,
  offersEarlier,
}: {
  readonly view: SheetInView;
  readonly grid: Grid;
  readonly editor: Editor;
  readonly tips: CellTips;
  readonly toasts: Toasts;
  readonly permission: Permission;
  readonly sending: Sending;
  readonly showCell: () => void;
  readonly offersEarlier: boolean;
}): Typing {
  let lastRow = 0;
  /** Column where a run of Tab began: Enter goes back under it. */
  let tabColumn: number | undefined;

  const sessionAt = (sheet: SheetView, at: Place, quick: boolean): Session => {
    const place = ownerOf(sheet, at);
    const cell = cellAt(sheet, place);
    return {
      sheet: sheet.id,
      place,
      before: cell?.input ?? '',
      quick,
      choices: cell?.options,
      offers: offersEarlier ? (typed) => earlierEntry(view.sheet ?? sheet, place, typed) : undefined,
    };
  };
  async function keep(text: string, move: Step | undefined, then?: () => void): Promise<void> {
    const session = editor.session;
    const sheet = view.model?.sheets.get(session?.sheet ?? -1);
    if (!session) return;
    if (!sheet) {
      editor.message(texts.sheetGone);
      return;
    }
    const { place } = session;
    const refused = typingRefused(sheet, place);
    const untouched = text === session.before;
    if (refused && !untouched) {
      editor.message(refused);
      announce(refused, 'urgent');
      return;
    }
    if (!untouched && !(await permission.allowed([place]))) {
      editor.focus();
      return;
    }
    editor.close();
    if (then) then();
    else {
      if (move?.columns) tabColumn ??= place.column;
      const under = move?.rows && tabColumn !== undefined ? { row: place.row, column: tabColumn } : place;
      if (!move?.columns) tabColumn = undefined;
      grid.select(move ? nextPlace(sheet, under, move) : place);
    }
    showCell();
    if (untouched) return;
    lastRow = place.row;
    const covered = cellAt(sheet, place)?.spilled === true && text !== '';
    if ((await sending.send([{ sheet: sheet.id, ...place, text }])) && covered)
      toasts.show('', texts.inTheWay(cellName(place)), true);
  }

  return {
    get lastRow() {
      return lastRow;
    },
    openCell(place, text, message) {
      const { sheet } = view;
      if (!sheet) return;
      const refused = typingRefused(sheet, place);
      if (refused && text === undefined) {
        toasts.warn(refused);
        return;
      }
      const session = sessionAt(sheet, place, false);
      editor.open(session, { text: text ?? session.before, where: 'cell', ...(message ? { message } : {}) });
      tips.hide();
      if (message) announce(message, 'urgent');
    },
    typeOver(text = '') {
      const { sheet } = view;
      if (!sheet) return;
      const { active } = grid.selection;
      const refused = typingRefused(sheet, active);
      if (refused) {
        toasts.warn(refused);
        return;
      }
      editor.open(sessionAt(sheet, active, true), { text, where: 'cell' });
      tips.hide();
    },
    openLine() {
      const { sheet } = view;
      const { active } = grid.selection;
      if (!sheet || typingRefused(sheet, active)) return;
      editor.open(sessionAt(sheet, active, false), { text: editor.text, where: 'line', list: false });
    },
    keep,
    async leave(then) {
      if (editor.session) await keep(editor.text, undefined, then);
      else then();
    },
    endTabs() {
      tabColumn = undefined;
    },
  };
}
