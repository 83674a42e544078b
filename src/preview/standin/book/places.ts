import { cellKey, columnOf, rowOf } from '../address.ts';
import type { EngineAddress } from '../enginePlugins.ts';
import type { SheetState } from '../sheetState.ts';

export interface CellPlace {
  readonly sheet: SheetState;
  readonly key: number;
}

export const engineAddress = (sheet: SheetState, key: number): EngineAddress => ({
  sheet: sheet.engine,
  row: rowOf(key) - 1,
  col: columnOf(key) - 1,
});
export const addressKey = (address: EngineAddress): string =>
  `${address.sheet}:${cellKey(address.row + 1, address.col + 1)}`;
/** One text for a cell of the whole workbook: the engine's number of its sheet, and its key there. */
export const placeKey = (sheet: SheetState, key: number): string => `${sheet.engine}:${key}`;

export function readPlaceKey(place: string): { readonly engine: number; readonly key: number } {
  const [engine = -1, key = 0] = place.split(':').map(Number);
  return { engine, key };
}

/** What is kept by place, under the places that the cells of one sheet moved to; what has no place any more goes. */
export function movePlaces(
  store: Map<string, unknown> | Set<string>,
  sheet: SheetState,
  movedKey: (key: number) => number | undefined,
): void {
  const moved = (place: string): string | undefined => {
    const { engine, key } = readPlaceKey(place);
    const to = engine === sheet.engine ? movedKey(key) : key;
    return to === undefined ? undefined : `${engine}:${to}`;
  };
  if (store instanceof Set) {
    const kept = [...store];
    store.clear();
    for (const place of kept) {
      const to = moved(place);
      if (to !== undefined) store.add(to);
    }
    return;
  }
  const kept = [...store];
  store.clear();
  for (const [place, value] of kept) {
    const to = moved(place);
    if (to !== undefined) store.set(to, value);
  }
}
