import type { ChangeView, PlaceView, StepView } from '../view.ts';
import { announce } from './announce.ts';
import { cellName } from './cellName.ts';
import type { Connection } from './connection.ts';
import type { SheetInView } from './sheetInView.ts';
import { texts } from './texts.ts';
import type { Toasts } from './toasts.ts';
import { cellAt } from './workbookModel.ts';

/** Takes back, or does again, what this window did; goes to the cell that it changes and names it. */
export async function takeBack(
  action: 'undo' | 'redo',
  {
    connection,
    view,
    toasts,
    apply,
  }: {
    readonly connection: Connection;
    readonly view: SheetInView;
    readonly toasts: Toasts;
    readonly apply: (change: ChangeView) => void;
  },
): Promise<void> {
  try {
    const { change, changed, left } = await connection.ask<StepView>(action, {});
    apply(change);
    const [first] = changed;
    const leftAlone = left.length > 0 ? texts.leftAlone(namesOf(left)) : '';
    if (!first) {
      toasts.show('', leftAlone || (action === 'undo' ? texts.nothingToUndo : texts.nothingToRedo));
      return;
    }
    view.open(first.sheet, first);
    const sheet = view.model?.sheets.get(first.sheet);
    const now = changed.length === 1 && sheet ? texts.nowHolds(cellAt(sheet, first)?.text ?? '') : '';
    const said = (action === 'undo' ? texts.undone : texts.redone)(namesOf(changed), now);
    if (leftAlone) toasts.show('', `${said} ${leftAlone}`);
    else announce(said);
  } catch (error) {
    toasts.complain(error);
  }
}

const mostNamed = 3;

const namesOf = (places: readonly PlaceView[]): string => {
  const names = places.slice(0, mostNamed).map((place) => cellName(place));
  return [...names, ...(places.length > mostNamed ? [texts.moreCells(places.length - mostNamed)] : [])].join(', ');
};
