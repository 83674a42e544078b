import { functionsIn } from '../formulaText.ts';
import type { SheetState } from '../sheetState.ts';
import type { Engine } from './engine.ts';
import { addressKey, engineAddress } from './places.ts';

/** Places of script calls that depend, over any number of cells, on NOW, RAND and their like. */
export function stuckCalls(engine: Engine, sheets: readonly SheetState[], names: readonly string[]): Set<string> {
  const queue: unknown[] = [];
  for (const sheet of sheets) {
    for (const [key, { content }] of sheet.cells) {
      if (content?.kind !== 'formula' || !/\b(NOW|TODAY|RAND\w*)\s*\(/i.test(content.formula)) continue;
      queue.push(engineAddress(sheet, key));
    }
  }
  const reached = new Set<string>();
  const stuck = new Set<string>();
  const own = new Set(names.map((name) => name.toUpperCase()));
  while (queue.length) {
    for (const dependent of engine.formulas.getCellDependents(queue.pop() as never)) {
      if ('start' in dependent) {
        const { start, end } = dependent;
        const label = `${start.sheet}/${start.row}/${start.col}/${end.row}/${end.col}`;
        if (!reached.has(label)) {
          reached.add(label);
          queue.push(dependent);
        }
        continue;
      }
      const key = addressKey(dependent);
      if (reached.has(key)) continue;
      reached.add(key);
      queue.push(dependent);
      const place = engine.place(key);
      const content = place?.sheet.cells.get(place.key)?.content;
      if (content?.kind === 'formula' && functionsIn(content.formula).some((name) => own.has(name))) stuck.add(key);
    }
  }
  return stuck;
}
