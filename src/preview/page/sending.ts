import type { ChangeView, Edit, SheetView } from '../view.ts';
import { announce } from './announce.ts';
import { asTyped } from './asTyped.ts';
import { cellKey, cellName, type Place } from './cellName.ts';
import { type Connection, Unreachable } from './connection.ts';
import { byId } from './element.ts';
import type { Grid } from './grid.ts';
import { createKeptEdits, type KeptEdit, typedOver } from './keptEdits.ts';
import { rowNews } from './rowNews.ts';
import type { SheetInView } from './sheetInView.ts';
import { slowAnswers } from './slowAnswers.ts';
import { texts } from './texts.ts';
import type { Toasts } from './toasts.ts';

interface TypeAnswer {
  readonly refused: readonly { readonly edit: Edit; readonly reason: string }[];
}

/** Texts on their way to the server, and those that it has not taken. */
export interface Sending {
  /** Shows what was typed at once, sends it, and brings it back with the reason where it was not taken. */
  send(edits: readonly Edit[]): Promise<boolean>;
  /** The sheet in view with what this window has typed there and not yet heard of. */
  readonly sheetAsTyped: SheetView | undefined;
  readonly isSending: boolean;
  /** Whether a text is nowhere but here. */
  readonly holdsText: boolean;
  /** The news of a row were told, since the last text went out. */
  hasTold(row: number): void;
  /** What the connection is like now. */
  linkIs(link: 'open' | 'lost'): void;
  /** The line that the server wants shown, as when the workbook cannot be saved. */
  noticeIs(notice: string | null): void;
}

export function createSending({
  connection,
  view,
  grid,
  toasts,
  doings,
  isBusy,
  apply,
  goBackTo,
  putBack,
}: {
  readonly connection: () => Connection;
  readonly view: SheetInView;
  readonly grid: Grid;
  readonly toasts: Toasts;
  /** Counts what the reader did: what comes back must not take the focus from somebody busy. */
  readonly doings: () => number;
  readonly isBusy: () => boolean;
  readonly apply: (change: ChangeView) => void;
  /** Opens a cell for a text that was not taken. */
  readonly goBackTo: (edit: Edit, reason: string) => void;
  /** The same where the reader asked for it, who may be typing elsewhere by now. */
  readonly putBack: (one: KeptEdit, forget: () => void) => void;
}): Sending {
  const latestEcho = new Map<string, { readonly send: number; readonly edit: Edit }>();
  let sends = 0;
  let sending = 0;
  let link: 'open' | 'lost' = 'open';
  let notice: string | null = null;
  /** Rows whose news were told since the last entry went out. */
  const told = new Set<number>();
  const slow = slowAnswers(() => {
    kept.show();
    if (slow.any) announce(texts.slowAnswers);
  });
  const kept = createKeptEdits({
    strip: byId('strip'),
    lines: () => [
      ...(notice === null ? [] : [notice]),
      ...(link === 'lost' ? [texts.linkLost] : slow.any ? [texts.slowAnswers] : []),
    ],
    sheet: (id) => view.model?.sheets.get(id),
    send: (edits) => void sendAgain(edits),
    putBack: (one) => putBack(one, () => kept.forget(one)),
  });

  async function sendAgain(edits: readonly Edit[]): Promise<void> {
    if (await send(edits)) announce(texts.savedAfterAll(edits.map((edit) => cellName(edit)).join(', ')));
  }
  async function send(edits: readonly Edit[]): Promise<boolean> {
    if (edits.length === 0) return true;
    sends += 1;
    const mine = sends;
    const done = doings();
    const before = new Map<Edit, KeptEdit['typedOver']>();
    for (const edit of edits) {
      const sheet = view.model?.sheets.get(edit.sheet);
      if (sheet) before.set(edit, typedOver(sheet, edit));
      latestEcho.set(`${edit.sheet}:${cellKey(edit)}`, { send: mine, edit });
      const formula = edit.text.startsWith('=');
      grid.echo(edit.sheet, edit, formula ? '…' : edit.text.replace(/^'/, ''));
    }
    const working = workingRows(edits);
    for (const [sheet, rows] of working) grid.working(sheet, rows, true);
    told.clear();
    sending += 1;
    let refused: TypeAnswer['refused'] = [];
    let failed: unknown;
    try {
      const answer = await slow.wait(connection().ask<TypeAnswer>('type', { edits }));
      refused = answer.refused;
      apply(answer.change);
    } catch (error) {
      failed = error;
      refused = edits.map((edit) => ({ edit, reason: error instanceof Error ? error.message : String(error) }));
    }
    sending -= 1;
    for (const [sheet, rows] of working) grid.working(sheet, rows, false);
    for (const edit of edits) {
      const key = `${edit.sheet}:${cellKey(edit)}`;
      if (latestEcho.get(key)?.send !== mine) continue;
      latestEcho.delete(key);
      grid.echo(edit.sheet, edit, undefined);
    }
    const [first] = refused;
    if (!first) {
      sayUnchanged(edits);
      return true;
    }
    if (failed instanceof Unreachable) {
      kept.add(refused.map((one) => ({ ...one, typedOver: before.get(one.edit) }) as KeptEdit));
      announce(first.reason, 'urgent');
    } else if (edits.length === 1) giveBack(first, done === doings());
    else toasts.warn(texts.someRefused(refused.length, edits.length, first.reason));
    return false;
  }
  /** An entry whose check stays as it was changes no cell; who listens wants to hear the check all the same. */
  function sayUnchanged(edits: readonly Edit[]): void {
    const { sheet } = view;
    const [edit] = edits;
    if (!sheet || !edit || edits.length > 1 || edit.sheet !== sheet.id || edit.text === '' || told.has(edit.row))
      return;
    announce(rowNews(sheet, edit.row) ?? '');
  }
  /** A text that was not taken goes back into its cell only while nobody does anything else. */
  function giveBack(one: KeptEdit, idle: boolean): void {
    if (!idle || isBusy()) {
      kept.add([{ edit: one.edit, reason: one.reason }]);
      announce(one.reason, 'urgent');
      return;
    }
    goBackTo(one.edit, one.reason);
  }

  return {
    send,
    get sheetAsTyped() {
      const { sheet } = view;
      const going = [...latestEcho.values()].filter(({ edit }) => edit.sheet === view.id);
      return sheet && asTyped(sheet, new Map(going.map(({ edit }) => [cellKey(edit), edit.text])));
    },
    get isSending() {
      return sending > 0;
    },
    get holdsText() {
      return kept.any || sending > 0;
    },
    hasTold(row) {
      told.add(row);
    },
    linkIs(next) {
      const was = link;
      link = next;
      kept.show();
      if (next === 'lost' && was !== 'lost') announce(texts.linkLost, 'urgent');
      if (next === 'open' && was === 'lost') {
        announce(texts.linkBack);
        kept.sendAgain();
      }
    },
    noticeIs(next) {
      if (next !== null && next !== notice) announce(next, 'urgent');
      notice = next;
      kept.show();
    },
  };
}

/** Rows whose checks an entry sets to work, by sheet. */
function workingRows(edits: readonly (Place & { readonly sheet: number })[]): Map<number, number[]> {
  const rows = new Map<number, number[]>();
  for (const { sheet, row } of edits) {
    const known = rows.get(sheet) ?? [];
    rows.set(sheet, known.includes(row) ? known : [...known, row]);
  }
  return rows;
}
