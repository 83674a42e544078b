import { type ClassReading, readClassSheet } from '../../workbook/readClassSheet.ts';
import type { Book, BookSheet } from '../file/book.ts';
import { cellsOf, sheetsInUse } from '../file/sheets.ts';
import { planInFile } from '../lesson/planInFile.ts';

/** A class of the file. Its teams' keys say which it is; its name is the one that the Plan has now. */
export interface ClassInFile {
  /** What its sheet is found by, whatever it is called: the name that it was first built with. */
  readonly id: string;
  readonly name: string;
  /** Keys of its teams, as the Plan has them or, where it knows none of them, as its sheet has. */
  readonly keys: readonly string[];
  /** Left out where it has not been built yet. */
  readonly sheet?: BookSheet;
  /** Left out where the sheet's marks cannot be read. */
  readonly reading?: ClassReading;
}

/**
 * Every class that has a sheet, in the order of the tabs, then those that only the Plan knows. The one place that says
 * what a class is called: everything else asks here.
 */
export function classesInFile(book: Book): readonly ClassInFile[] {
  const plan = planInFile(book);
  const lines = plan.state === 'there' ? plan.reading.teams : [];
  const keysOf = (name: string) => lines.filter(({ className }) => className === name).map(({ key }) => key);
  const named = new Set<string>();
  const built: ClassInFile[] = [];
  for (const sheet of sheetsInUse(book)) {
    if (sheet.tag.kind !== 'class') continue;
    const reading = readClassSheet(cellsOf(sheet));
    const inSheet = reading?.blocks.map(({ key }) => key) ?? [];
    const id = sheet.tag.className ?? '';
    // A sheet that is still empty is known by the name it is being built with.
    const now = lines.find(({ key }) => inSheet.includes(key))?.className ?? id;
    // Two sheets never count as one class: the first keeps the name.
    const name = named.has(now) ? id : now;
    named.add(name);
    const keys = keysOf(name);
    built.push({
      id,
      name,
      keys: keys.length > 0 ? keys : inSheet,
      sheet,
      ...(reading === undefined ? {} : { reading }),
    });
  }
  const others = [...new Set(lines.map(({ className }) => className))].filter((name) => !named.has(name));
  return [...built, ...others.map((name) => ({ id: freeId(name, built), name, keys: keysOf(name) }))];
}

/** A class may be called as another one was when its sheet was made. */
function freeId(name: string, taken: readonly ClassInFile[]): string {
  for (let number = 1; ; number += 1) {
    const id = number === 1 ? name : `${name} ${number}`;
    if (!taken.some((one) => one.id === id)) return id;
  }
}
