import type { DeskCall } from '../../src/desk/acts.ts';
import type { StandIn } from '../../src/preview/standin/openStandIn.ts';
import { workbookText } from './cells.ts';

/** The whole workbook, apart from the moment that stands in names of sheets which were kept. */
export const undatedText = (host: StandIn): string =>
  workbookText(host).replace(/kept \d{4}-\d\d-\d\d \d\d\.\d\d/g, 'kept');

/** A line that was kept free for a late team has another colour than a line that is written anew. */
export const withoutColours = (text: string): string => text.replace(/"color":"#[0-9a-f]{6}",/g, '');

/** Sheets by their places in the file: which number the host gives a sheet hangs on those that were there before. */
function byPlaces(host: StandIn, text: string): string {
  const ids = host.book.sheets.map(({ id }) => String(id)).filter((id) => id.length > 3);
  const places = new Map(ids.map((id, index) => [id, `sheet ${index}`]));
  return ids.length === 0
    ? text
    : text.replace(new RegExp(`\\b(${ids.join('|')})\\b`, 'g'), (id) => places.get(id) ?? id);
}
/** Apart from what is in view as well, so that a Record which was just made stays in sight. */
const alike = (host: StandIn): string =>
  withoutColours(byPlaces(host, undatedText(host)).replace(/"hidden":(true|false),(?=.*"name":"Record")/g, ''));

/** The first line in which a file is another than wanted, from a little before the letter. */
export const firstDifference = (one: string, wanted: string): string => {
  const lines = wanted.split('\n');
  const found = one.split('\n');
  const index = lines.findIndex((line, place) => line !== found[place]);
  const [line = '', other = ''] = [found[index], lines[index]];
  let from = 0;
  while (from < line.length && line[from] === other[from]) from += 1;
  return [line, other].map((text) => `line ${index}: ${text.slice(Math.max(0, from - 60), from + 100)}`).join(' | ');
};

/** The same behind an action: a file that is emptied begins a lesson, whose number of that day hangs on how often. */
export const alikeBehind = (name: DeskCall, host: StandIn): string =>
  name === 'emptyCopy' ? alike(host).replace(/(\d{4}-\d\d-\d\d)\.\d+/g, '$1') : alike(host);

/** The first difference behind an action. */
export function differenceBehind(name: DeskCall, host: StandIn, expected: string): string | undefined {
  const found = alikeBehind(name, host);
  return found === expected ? undefined : firstDifference(found, expected);
}

/** Whoever has not heard that a practice, a second lesson of the day or a key is there gets another by pressing again. */
export const makesAnother = (name: DeskCall): boolean => /addPractice|nextLesson|writeKeySheet/.test(name);
