import type { Work } from '../../file/ask.ts';
import type { Finding, Trial } from '../finding.ts';
import { settled, take, write } from '../take.ts';
import { selfCheckWords } from '../words.ts';

const { saw } = selfCheckWords;
const inSeconds = (ms: number | undefined) => Math.round((ms ?? 0) / 100) / 10;

/** How long the file's lock and a written cell take. The host gives the lock back when the run ends. */
export function* waitingForOthers(trial: Trial): Work<Finding> {
  const name = 'waiting';
  const [, flush, lock] = yield* take(write(trial, { at: 'A30', format: '@', cells: [['written']] }), settled, {
    on: 'lock',
    calls: [['getDocumentLock'], ['tryLock', 300]],
  });
  if (lock?.refused !== undefined) return { name, verdict: 'not tried', saw: selfCheckWords.refused(lock.refused) };
  return lock?.value === true
    ? { name, verdict: 'expected', saw: saw.lockRight(inSeconds(lock.ms), inSeconds(flush?.ms)) }
    : { name, verdict: 'different', saw: saw.lockWrong };
}
