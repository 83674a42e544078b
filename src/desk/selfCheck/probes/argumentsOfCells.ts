import type { Work } from '../../file/ask.ts';
import type { Finding, Trial } from '../finding.ts';
import { shownCell } from '../shownCell.ts';
import { awaitCells, take, write } from '../take.ts';
import { selfCheckWords } from '../words.ts';

const { saw, cells: say } = selfCheckWords;

/** What cells of each kind are when they arrive in a function: as the function says itself, in the host's own words. */
const kinds: readonly { readonly about: string; readonly mayBe: RegExp }[] = [
  { about: say.blank, mayBe: /^(String|Null|Undefined)$/ },
  { about: say.leftOut, mayBe: /^(String|Null|Undefined)$/ },
  { about: say.tick, mayBe: /^Boolean true$/ },
  { about: say.date, mayBe: /^Date$/ },
  { about: say.percent, mayBe: /^Number 0\.05$/ },
  { about: say.error, mayBe: /^String #/ },
  { about: say.text, mayBe: /^String 0\.400$/ },
  { about: say.number, mayBe: /^Number 7$/ },
  { about: say.range, mayBe: /^2 x 2 of (String|Null|Undefined)$/ },
];

export function* argumentsOfCells(trial: Trial): Work<Finding> {
  const name = 'arguments';
  if (!trial.functionsAnswer) return { name, verdict: 'not tried', saw: selfCheckWords.needsFunctions };
  yield* take(
    write(trial, { at: 'B10', format: 'General', cells: [[true]] }),
    write(trial, { at: 'C10', format: 'yyyy-mm-dd', cells: [['=DATE(2026,3,2)']] }),
    write(trial, { at: 'D10', format: '0%', cells: [[0.05]] }),
    write(trial, { at: 'E10', format: 'General', cells: [['=1/0']] }),
    write(trial, { at: 'F10', format: '@', cells: [['0.400']] }),
    write(trial, { at: 'G10', format: 'General', cells: [[7]] }),
    write(trial, {
      at: 'A14',
      format: 'General',
      cells: [['=TRYHOST("kinds",A10,,B10,C10,D10,E10,F10,G10,A11:B12)']],
    }),
  );
  const { cells, seconds, isDone, refused } = yield* awaitCells('A14');
  if (refused !== undefined) return { name, verdict: 'not tried', saw: selfCheckWords.refused(refused) };
  if (!isDone) return { name, verdict: 'different', saw: selfCheckWords.noAnswer(seconds) };
  const told = String(cells[0]?.[0] ?? '');
  const given = told.split(' | ').map((kind) => kind.trim());
  if (given.length !== kinds.length) return { name, verdict: 'different', saw: saw.argumentsWrong([shownCell(told)]) };
  const wrong = kinds.flatMap(({ about, mayBe }, index) =>
    mayBe.test(given[index] ?? '') ? [] : [saw.oneArgument(about, shownCell(given[index]))],
  );
  return wrong.length === 0
    ? { name, verdict: 'expected', saw: saw.argumentsRight(kinds.length) }
    : { name, verdict: 'different', saw: saw.argumentsWrong(wrong) };
}
