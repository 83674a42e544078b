import type { SheetState } from '../sheetState.ts';
import type { Engine } from './engine.ts';

/** Every formula as the engine words it, so that those it rewrites can be told from the others. */
export type FormulaTexts = ReadonlyMap<SheetState, ReadonlyMap<number, string | undefined>>;

export function formulaTexts(engine: Engine, sheets: readonly SheetState[]): FormulaTexts {
  const texts = new Map<SheetState, Map<number, string | undefined>>();
  for (const sheet of sheets) {
    const cells = new Map<number, string | undefined>();
    for (const [key, { content }] of sheet.cells) {
      if (content?.kind === 'formula') cells.set(key, engine.formulaAt(sheet, key));
    }
    texts.set(sheet, cells);
  }
  return texts;
}

/** Formulas that the engine rewrote since, with their new text; `moved` says where the cells of one sheet went. */
export function rewrittenFormulas(
  engine: Engine,
  sheets: readonly SheetState[],
  before: FormulaTexts,
  moved?: { readonly sheet: SheetState; readonly key: (key: number) => number | undefined },
): { readonly sheet: SheetState; readonly key: number; readonly text: string }[] {
  const rewritten: { sheet: SheetState; key: number; text: string }[] = [];
  for (const [sheet, cells] of before) {
    if (!sheets.includes(sheet)) continue;
    for (const [key, text] of cells) {
      const to = sheet === moved?.sheet ? moved.key(key) : key;
      if (to === undefined) continue;
      const after = engine.formulaAt(sheet, to);
      if (after !== undefined && after !== text) rewritten.push({ sheet, key: to, text: after });
    }
  }
  return rewritten;
}
