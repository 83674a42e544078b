import { type Area, areaName } from '../address.ts';
import type { SheetState } from '../sheetState.ts';
import type { Engine } from './engine.ts';

interface NamedArea {
  readonly name: string;
  sheet: number;
  area: Area;
}

/** Names for areas, which formulas may use. */
export class NamedAreas {
  readonly all: NamedArea[] = [];
  readonly #engine: Engine;

  constructor(engine: Engine) {
    this.#engine = engine;
  }

  set(name: string, sheet: SheetState, area: Area): void {
    this.remove(name);
    this.all.push({ name, sheet: sheet.id, area });
    this.#engine.hold();
    const absolute = areaName(area).replace(/([A-Z]+)(\d+)/g, '$$$1$$$2');
    this.#engine.formulas.addNamedExpression(name, `='${sheet.name.replaceAll("'", "''")}'!${absolute}`);
  }
  remove(name: string): void {
    const index = this.all.findIndex((named) => named.name.toLowerCase() === name.toLowerCase());
    if (index < 0) return;
    this.all.splice(index, 1);
    this.#engine.hold();
    this.#engine.formulas.removeNamedExpression(name);
  }
  removeSheet(sheet: SheetState): void {
    this.moved(sheet, () => undefined);
  }
  moved(sheet: SheetState, movedArea: (area: Area) => Area | undefined): void {
    for (let index = this.all.length - 1; index >= 0; index -= 1) {
      const named = this.all[index];
      if (!named || named.sheet !== sheet.id) continue;
      const area = movedArea(named.area);
      if (area) named.area = area;
      else this.all.splice(index, 1);
    }
  }
}
