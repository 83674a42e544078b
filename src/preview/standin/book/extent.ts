import { cellKey } from '../address.ts';
import type { SheetState } from '../sheetState.ts';
import type { Engine } from './engine.ts';

/** The last row, or column, that holds a value; `place` says which of the two a key stands in. */
export function lastLine(sheet: SheetState, place: (key: number) => number): number {
  let last = 0;
  for (const [key, cell] of sheet.cells) if (cell.content) last = Math.max(last, place(key));
  for (const [key, { value }] of sheet.spilled) if (value !== '') last = Math.max(last, place(key));
  return last;
}

/** Every cell that holds or shows anything, those filled by the engine's own array formulas included. */
export function occupiedKeys(engine: Engine, sheet: SheetState): number[] {
  const keys = new Set([...sheet.cells.keys(), ...sheet.spilled.keys()]);
  const anyNative = [...sheet.cells.values()].some(
    ({ content }) =>
      content?.kind === 'formula' &&
      /\b(ARRAYFORMULA|FILTER|SORT|UNIQUE|TRANSPOSE|SEQUENCE)\s*\(/i.test(content.formula),
  );
  if (!anyNative && !engine.hasInnerCalls) return [...keys];
  const { width, height } = engine.formulas.getSheetDimensions(sheet.engine);
  for (let row = 1; row <= height; row += 1) {
    for (let column = 1; column <= width; column += 1) {
      const key = cellKey(row, column);
      if (!keys.has(key) && engine.isNativeSpill(sheet, key)) keys.add(key);
    }
  }
  return [...keys];
}
