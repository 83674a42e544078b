import { classColumns as at } from '../../src/workbook/layout.ts';
import { setup } from '../host/setup.ts';
import { copyOf, type PaperFile, type PaperState, paperFile } from './paperFile.ts';

/** The classes of the small invented lesson: Otter and Heron in the first, Newt in the second. */
export const [fern, moss] = ['Fern class', 'Moss class'] as const;
export { setup };

let built: PaperFile | undefined;

/** The small invented lesson built in an empty file, once for all tests: to look at, with every call that it took. */
export function firstBuild(): PaperFile {
  if (built === undefined) {
    built = paperFile();
    built.finish(built.call('startBuild', setup));
  }
  return built;
}

/** A file on paper in which the small invented lesson stands, its own for each test. */
export const builtLesson = (given: Partial<PaperState> = {}): PaperFile => copyOf(firstBuild(), given);

interface Row {
  readonly entry?: string;
  readonly check?: string;
  readonly lookAt?: string;
  readonly tries?: number;
  readonly time?: string;
  readonly help?: string;
  readonly who?: string;
}

/** A row as it looks once somebody has typed and the functions have answered. */
export function fillRow(
  file: PaperFile,
  { sheet = fern, key = 'c1-t1', step }: { readonly sheet?: string; readonly key?: string; readonly step: string },
  { entry = '', check = '', lookAt = '', tries, time, help = '', who = '' }: Row,
): void {
  const row = file.rowOf(sheet, key, step);
  const texts = { [at.entry]: entry, [at.check]: check, [at.lookAt]: lookAt, [at.help]: help, [at.who]: who };
  for (const [column, text] of Object.entries(texts)) file.put(sheet, row, Number(column), text);
  if (tries !== undefined) file.put(sheet, row, at.tries, tries);
  if (time !== undefined) file.put(sheet, row, at.lastEntry, { date: Date.parse(time) });
}
