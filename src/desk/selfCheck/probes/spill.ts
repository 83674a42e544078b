import type { Work } from '../../file/ask.ts';
import type { Finding, Trial } from '../finding.ts';
import { awaitCells, take, write } from '../take.ts';
import { selfCheckWords } from '../words.ts';

const { saw } = selfCheckWords;
const rows = 17;

/** A block that a function spills, as a check does for a team: free, with a text in the way, and free again. */
export function* spill(trial: Trial): Work<Finding> {
  const name = 'spill';
  if (!trial.functionsAnswer) return { name, verdict: 'not tried', saw: selfCheckWords.needsFunctions };
  const formula = [['=TRYHOST("spill")']];
  const inTheWay = (text: string) => write(trial, { at: 'T14', format: 'General', cells: [[text]] });
  yield* take(
    write(trial, { at: 'O10', format: 'General', cells: formula }),
    inTheWay('in the way'),
    write(trial, { at: 'S10', format: 'General', cells: formula }),
  );
  const free = yield* awaitCells('O10:Q26');
  if (free.refused !== undefined) return { name, verdict: 'not tried', saw: selfCheckWords.refused(free.refused) };
  if (!free.isDone) return { name, verdict: 'different', saw: selfCheckWords.noAnswer(free.seconds) };
  const filled = filledCells(free.cells);
  if (filled < 3 * rows) return { name, verdict: 'different', saw: saw.spillWrong(filled, 3 * rows) };
  const blocked = yield* awaitCells('S10:T14');
  const isRefused = String(blocked.cells[0]?.[0]).startsWith('#') && blocked.cells[4]?.[1] === 'in the way';
  if (!isRefused) return { name, verdict: 'different', saw: saw.blockedOver };
  yield* take(inTheWay(''));
  const again = yield* awaitCells('S10:U26');
  return filledCells(again.cells) === 3 * rows
    ? { name, verdict: 'expected', saw: saw.spillRight(free.seconds, free.wasLoading) }
    : { name, verdict: 'different', saw: saw.blockedStays };
}

/** Cells that hold what the function put there: the number of its row, a word, true or false. */
const filledCells = (cells: readonly (readonly unknown[])[]): number =>
  cells.reduce(
    (sum, line, row) =>
      sum + Number(line[0] === row) + Number(line[1] === 'spilled') + Number(line[2] === (row % 2 === 0)),
    0,
  );
