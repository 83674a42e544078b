import type { Edit, SheetView } from '../view.ts';
import { cellName } from './cellName.ts';
import { element } from './element.ts';
import { texts } from './texts.ts';
import { cellAt, rowMark } from './workbookModel.ts';

/** A text that is not in the workbook yet, and why. */
export interface KeptEdit {
  readonly edit: Edit;
  readonly reason: string;
  /** What the cell held and what its row said when it was typed; with these it is sent again by itself. */
  readonly typedOver?: { readonly input: string; readonly row: string };
}

/** Notes, before an edit goes out, what it is typed over. */
export const typedOver = (sheet: SheetView, edit: Edit): NonNullable<KeptEdit['typedOver']> => ({
  input: cellAt(sheet, edit)?.input ?? '',
  row: rowMark(sheet, edit),
});

/** May a kept text go to its cell by itself? It may where nobody changed the cell or moved its row meanwhile. */
export function stillFits(
  { edit, typedOver }: KeptEdit,
  sheet: SheetView | undefined,
): { readonly fits: boolean; readonly reason?: string } {
  if (!typedOver) return { fits: false };
  if (!sheet) return { fits: false, reason: texts.sheetGone };
  if (rowMark(sheet, edit) !== typedOver.row) return { fits: false, reason: texts.rowChangedMeanwhile };
  const input = cellAt(sheet, edit)?.input ?? '';
  // The server may have taken it before its answer was lost.
  if (input === typedOver.input || input === edit.text) return { fits: true };
  return { fits: false, reason: texts.takenMeanwhile(input) };
}

/** Texts that wait to be saved, shown in a strip above the grid with what can be done about each. */
export function createKeptEdits(options: {
  readonly strip: HTMLElement;
  /** Lines that stand above the texts, such as that the connection is lost. */
  readonly lines: () => readonly string[];
  readonly sheet: (id: number) => SheetView | undefined;
  /** Sends again; gives back what was not taken. */
  readonly send: (edits: readonly Edit[]) => void;
  readonly putBack: (kept: KeptEdit) => void;
}) {
  let kept: readonly KeptEdit[] = [];

  function show(): void {
    const lines: Node[] = options.lines().map((line) => element('p', {}, line));
    for (const one of kept) {
      const cell = `${options.sheet(one.edit.sheet)?.name ?? ''} ${cellName(one.edit)}`.trim();
      const again = element('button', { type: 'button', class: 'act small' }, texts.tryAgain);
      const back = element('button', { type: 'button', class: 'act small quiet' }, texts.putBack);
      again.addEventListener('click', () => {
        forget(one);
        options.send([one.edit]);
      });
      back.addEventListener('click', () => options.putBack(one));
      lines.push(element('p', {}, `${texts.keptEdit(cell, one.edit.text)}. ${one.reason} `, again, ' ', back));
    }
    options.strip.replaceChildren(...lines);
    options.strip.hidden = lines.length === 0;
  }
  function forget(one: KeptEdit): void {
    kept = kept.filter((other) => other !== one);
    show();
  }

  return {
    show,
    forget,
    get any(): boolean {
      return kept.length > 0;
    },
    /** Keeps texts; a newer one for the same cell takes the place of an older. */
    add(news: readonly KeptEdit[]): void {
      const same = (one: Edit, other: Edit): boolean =>
        one.sheet === other.sheet && one.row === other.row && one.column === other.column;
      kept = [...kept.filter(({ edit }) => !news.some((newer) => same(newer.edit, edit))), ...news];
      show();
    },
    /** The connection is back: what still fits goes out by itself, the rest says what is in its way. */
    sendAgain(): void {
      const going: Edit[] = [];
      kept = kept.flatMap((one): readonly KeptEdit[] => {
        const { fits, reason } = stillFits(one, options.sheet(one.edit.sheet));
        if (fits) going.push(one.edit);
        return fits ? [] : [{ edit: one.edit, reason: reason ?? one.reason }];
      });
      show();
      if (going.length > 0) options.send(going);
    },
  };
}
