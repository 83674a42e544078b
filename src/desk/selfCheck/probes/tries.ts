import { classColumns, classMarker, layoutVersion } from '../../../workbook/layout.ts';
import { columnLetters } from '../../../workbook/reference.ts';
import type { Work } from '../../file/ask.ts';
import type { Finding, Trial } from '../finding.ts';
import { cellsOf, inSheet, settled, take, write } from '../take.ts';
import { selfCheckWords } from '../words.ts';

const { saw } = selfCheckWords;
const rows = 10;
const first = 60;
const last = first + rows - 1;
const column = (number: number, from = first, to = last) =>
  `${columnLetters(number)}${from}:${columnLetters(number)}${to}`;
/** The ten cells that the person is asked to type into. */
export const tenCells = column(classColumns.entry);
const tint = '#eef8f9';

/** Makes ten rows that the trigger takes for rows of a class, and goes to the first. */
export function* prepareTenCells(trial: Trial): Work<void> {
  const marks = Array.from({ length: rows }, (_, index) => ['t1', `step ${index + 1}`]);
  const keys = `${columnLetters(classColumns.key)}${first}:${columnLetters(classColumns.step)}${last}`;
  const corner = `${columnLetters(classColumns.key)}1:${columnLetters(classColumns.step)}1`;
  yield* take(
    write(trial, { at: corner, format: '@', cells: [[classMarker, String(layoutVersion)]] }),
    write(trial, { at: keys, format: '@', cells: marks }),
    inSheet(['getRange', tenCells], ['setNumberFormat', '@'], ['setBackground', tint], ['activate']),
    settled,
  );
}

/** How many of the entries that stand there by now were counted; the last counts may come a little later. */
export function* countTries(): Work<Finding> {
  const name = 'trigger';
  for (let look = 0; ; look += 1) {
    const [, entries, counts] = yield* take(
      { on: 'tools', calls: [['sleep', look === 0 ? 0 : 1500]] },
      inSheet(['getRange', tenCells], ['getValues']),
      inSheet(['getRange', column(classColumns.tries)], ['getValues']),
    );
    if (entries?.refused !== undefined) {
      return { name, verdict: 'not tried', saw: selfCheckWords.refused(entries.refused) };
    }
    const typed = cellsOf(entries).filter(([entry]) => entry !== '').length;
    const counted = cellsOf(counts).filter(([tries]) => typeof tries === 'number' && tries >= 1).length;
    if (typed === 0) return { name, verdict: 'not tried', saw: saw.triggerNone };
    if (counted >= typed) return { name, verdict: 'expected', saw: saw.triggerRight(typed) };
    if (look >= 3) return { name, verdict: 'different', saw: saw.triggerWrong(counted, typed) };
  }
}
