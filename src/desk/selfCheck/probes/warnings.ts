import type { Work } from '../../file/ask.ts';
import type { Finding } from '../finding.ts';
import { inSheet, take } from '../take.ts';
import { selfCheckWords } from '../words.ts';
import { count } from './copyOfFile.ts';

const { saw } = selfCheckWords;
const places = Array.from({ length: 60 }, (_, index) => `B${71 + index}`);

/** A protection as a class sheet has it: it warns, and leaves the cells of a large class open. */
export function* warnings(): Work<Finding> {
  const name = 'protection';
  const [set, isWarning, open] = yield* take(
    inSheet(
      ['protect'],
      ['setWarningOnly', true],
      ['setUnprotectedRanges', inSheet(['getRangeList', places], ['getRanges'])],
    ),
    inSheet(['protect'], ['isWarningOnly']),
    inSheet(['protect'], ['getUnprotectedRanges']),
    inSheet(['protect'], ['remove']),
  );
  if (set?.refused !== undefined) return { name, verdict: 'not tried', saw: selfCheckWords.refused(set.refused) };
  const isRight = isWarning?.value === true && count(open?.value) === places.length;
  return isRight
    ? { name, verdict: 'expected', saw: saw.protectionRight(places.length) }
    : { name, verdict: 'different', saw: saw.protectionWrong(count(open?.value), isWarning?.value === true) };
}
