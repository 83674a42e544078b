import type { Work } from '../../file/ask.ts';
import type { Finding, Trial } from '../finding.ts';
import { shownCell } from '../shownCell.ts';
import { awaitCells, take, write } from '../take.ts';
import { selfCheckWords } from '../words.ts';

const { saw } = selfCheckWords;

/** Whether one of our functions answers in a cell, and how long that takes. */
export function* functionsInCells(trial: Trial): Work<Finding> {
  const name = 'functions';
  yield* take(write(trial, { at: 'H5:H6', format: 'General', cells: [['=MOLARMASS("KBr")'], ['=MOLARMASS("kbr")']] }));
  const { cells, seconds, isDone, refused } = yield* awaitCells('H5:H6');
  const [answer, error] = [cells[0]?.[0], cells[1]?.[0]];
  const isRight = typeof answer === 'number' && Math.abs(answer - 119.002) < 0.01;
  trial.functionsAnswer = isRight;
  if (refused !== undefined) return { name, verdict: 'not tried', saw: selfCheckWords.refused(refused) };
  if (!isDone) return { name, verdict: 'different', saw: selfCheckWords.noAnswer(seconds) };
  const isError = typeof error === 'string' && error.startsWith('#');
  return isRight && isError
    ? { name, verdict: 'expected', saw: saw.functionAnswered(seconds) }
    : { name, verdict: 'different', saw: saw.functionGave(shownCell(answer), shownCell(error)) };
}
