import type { Work } from '../../file/ask.ts';
import type { Finding, Trial } from '../finding.ts';
import { nativeAt, nativeCases, nativeCells } from '../nativeCases.ts';
import { shownCell } from '../shownCell.ts';
import { awaitCells, inSheet, take, write } from '../take.ts';
import { selfCheckWords } from '../words.ts';

const { saw } = selfCheckWords;

/** Each shape of formula that a build writes, against the answer that it must give. */
export function* nativeFunctions(trial: Trial, sheet: string): Work<Finding> {
  const name = 'native';
  const cases = nativeCases(sheet);
  const last = 39 + cases.length;
  yield* take(
    write(trial, { at: nativeAt.cells, format: '@', cells: nativeCells }),
    write(trial, { at: nativeAt.date, format: 'yyyy-mm-dd', cells: [[nativeAt.day]] }),
    inSheet(['getRange', `F40:F${last}`], ['setNumberFormat', 'General']),
    write(trial, { at: `F40:F${last}`, format: 'General', cells: cases.map(({ formula }) => [`=${formula}`]) }),
  );
  const { cells, refused } = yield* awaitCells(`F40:F${last}`);
  if (refused !== undefined) return { name, verdict: 'not tried', saw: selfCheckWords.refused(refused) };
  const wrong = cases.flatMap(({ about, gives }, index) => {
    const gave = cells[index]?.[0] ?? '';
    return gave === gives ? [] : [saw.oneNative(about, shownCell(gives), shownCell(gave))];
  });
  return wrong.length === 0
    ? { name, verdict: 'expected', saw: saw.nativeRight(cases.length) }
    : { name, verdict: 'different', saw: saw.nativeWrong(cases.length, wrong) };
}
