import type { Work } from '../../file/ask.ts';
import type { Finding, Trial } from '../finding.ts';
import { shownCell } from '../shownCell.ts';
import { awaitCells, take, write } from '../take.ts';
import { selfCheckWords } from '../words.ts';

const { saw } = selfCheckWords;
/** As many as the host runs at once for one person. */
const many = 30;

/** Thirty checks at once, as when a class is built: each another alkane, so that no answer stands in for another. */
export function* crowd(trial: Trial): Work<Finding> {
  const name = 'crowd';
  if (!trial.functionsAnswer) return { name, verdict: 'not tried', saw: selfCheckWords.needsFunctions };
  const carbons = Array.from({ length: many }, (_, index) => index + 1);
  const at = `W5:W${4 + many}`;
  yield* take(write(trial, { at, format: 'General', cells: carbons.map((n) => [`=MOLARMASS("C${n}H${2 * n + 2}")`]) }));
  const { cells, seconds, refused } = yield* awaitCells(at);
  if (refused !== undefined) return { name, verdict: 'not tried', saw: selfCheckWords.refused(refused) };
  const others = carbons.flatMap((n, index) => {
    const gave = cells[index]?.[0];
    const wanted = n * 12.011 + (2 * n + 2) * 1.008;
    return typeof gave === 'number' && Math.abs(gave - wanted) < 0.01 ? [] : [gave];
  });
  return others.length === 0
    ? { name, verdict: 'expected', saw: saw.crowdRight(many, seconds) }
    : { name, verdict: 'different', saw: saw.crowdWrong(many - others.length, many, seconds, shownCell(others[0])) };
}
