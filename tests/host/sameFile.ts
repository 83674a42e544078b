import type { DeskCall } from '../../src/desk/acts.ts';
import type { StandIn } from '../../src/preview/standin/openStandIn.ts';
import { type SavedFile, savedFile, textOf } from './cells.ts';

/** Sheets by their places in the file: which number the host gives a sheet hangs on those that were there before. */
function byPlaces({ sheets }: SavedFile, text: string): string {
  const ids = sheets.map(({ id }) => String(id)).filter((id) => id.length > 3);
  const places = new Map(ids.map((id, index) => [id, `sheet ${index}`]));
  return ids.length === 0
    ? text
    : text.replace(new RegExp(`\\b(${ids.join('|')})\\b`, 'g'), (id) => places.get(id) ?? id);
}
/**
 * Apart from what is in view, so that a Record which was just made stays in sight, from the moment in dated names, and from
 * the colour of a line that was kept free for a late team.
 */
const alike = (file: SavedFile): string =>
  hiddenOrNot(byPlaces(file, textOf(file)), 'Record')
    .replace(/kept \d{4}-\d\d-\d\d \d\d\.\d\d/g, 'kept')
    .replace(/"color":"#[0-9a-f]{6}",/g, '');

/** The text of a file without whether a sheet is hidden: one that is in view stays in sight. */
const hiddenOrNot = (text: string, sheet: string): string =>
  text.replace(new RegExp(`"hidden":(true|false),(?=.*"name":${literally(JSON.stringify(sheet))})`, 'g'), '');
const literally = (text: string): string => text.replace(/[.*+?^${}()|[\]\\]/g, '\\$&');

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
export const alikeBehind = (name: DeskCall, host: StandIn): string => textBehind(name, savedFile(host));

const textBehind = (name: DeskCall, file: SavedFile): string =>
  name === 'emptyCopy' ? alike(file).replace(/(\d{4}-\d\d-\d\d)\.\d+/g, '$1') : alike(file);

/** The first difference behind an action, apart from whether the sheet that a stop left in view is hidden. */
export function differenceBehind(name: DeskCall, host: StandIn, expected: string): string | undefined {
  const file = savedFile(host);
  const inView = file.sheets.find(({ id }) => id === file.active.teacher)?.name ?? '';
  const [found, wanted] = [hiddenOrNot(textBehind(name, file), inView), hiddenOrNot(expected, inView)];
  return found === wanted ? undefined : firstDifference(found, wanted);
}

/** Whoever has not heard that a practice, a second lesson of the day or a key is there gets another by pressing again. */
export const makesAnother = (name: DeskCall): boolean => /addPractice|nextLesson|writeKeySheet/.test(name);
