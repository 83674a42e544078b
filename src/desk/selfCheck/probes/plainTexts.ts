import type { Work } from '../../file/ask.ts';
import type { Finding, Trial } from '../finding.ts';
import { shownCell } from '../shownCell.ts';
import { cellsOf, inSheet, take, valuesAt, write } from '../take.ts';
import { selfCheckWords } from '../words.ts';

const { saw } = selfCheckWords;

/** Texts for plain-text cells as the script writes them, and what they may read as afterwards. */
const texts = [
  { wrote: '0.400', mayBe: ['0.400'] },
  { wrote: '1,20', mayBe: ['1,20'] },
  { wrote: "'=1+1", mayBe: ['=1+1', "'=1+1"] },
  { wrote: "'-2", mayBe: ['-2', "'-2"] },
  { wrote: '3-4', mayBe: ['3-4'] },
  { wrote: '2E5', mayBe: ['2E5'] },
  // Read back as the number or as its text: both are read alike.
  { wrote: 0.4, mayBe: [0.4, '0.4'] },
] as const;

/** Plain-text cells: what people and the script write there must neither lose zeros nor compute. */
export function* plainTexts(trial: Trial): Work<Finding> {
  const name = 'texts';
  const at = 'A20:A26';
  const [, read] = yield* take(
    write(trial, { at, format: '@', cells: texts.map(({ wrote }) => [wrote]) }),
    valuesAt(at),
    inSheet(['getRange', at], ['getFormulas']),
  );
  if (read?.refused !== undefined) return { name, verdict: 'not tried', saw: selfCheckWords.refused(read.refused) };
  const cells = cellsOf(read);
  const wrong = texts.flatMap(({ wrote, mayBe }, index) => {
    const gave = cells[index]?.[0];
    return mayBe.some((cell) => cell === gave) ? [] : [saw.oneText(shownCell(wrote), shownCell(gave))];
  });
  return wrong.length === 0
    ? { name, verdict: 'expected', saw: saw.textsRight }
    : { name, verdict: 'different', saw: wrong.join(' ') };
}
