import type { Work } from '../../file/ask.ts';
import type { Finding } from '../finding.ts';
import { shownCell } from '../shownCell.ts';
import { inApp, inSheet, take } from '../take.ts';
import { selfCheckWords } from '../words.ts';
import { count } from './copyOfFile.ts';

const { saw } = selfCheckWords;

/** A list that offers and does not refuse, and a tint for a text that begins with a word: as a class sheet has them. */
export function* listsAndTints(): Work<Finding> {
  const name = 'rules';
  const at = 'A28';
  const list = inApp(
    ['newDataValidation'],
    ['requireValueInList', ['one', 'two'], true],
    ['setAllowInvalid', true],
    ['build'],
  );
  const tint = inApp(
    ['newConditionalFormatRule'],
    ['whenTextStartsWith', 'thr'],
    ['setBackground', '#ece6f8'],
    ['setRanges', inSheet(['getRangeList', [at]], ['getRanges'])],
    ['build'],
  );
  const [set, kept, , tints] = yield* take(
    inSheet(['getRange', at], ['setDataValidation', list], ['setValue', 'three']),
    inSheet(['getRange', at], ['getValue']),
    inSheet(['setConditionalFormatRules', inSheet(['getConditionalFormatRules'], ['concat', tint])]),
    inSheet(['getConditionalFormatRules']),
  );
  if (set?.refused !== undefined) return { name, verdict: 'not tried', saw: selfCheckWords.refused(set.refused) };
  return kept?.value === 'three' && count(tints?.value) === 1
    ? { name, verdict: 'expected', saw: saw.rulesRight }
    : { name, verdict: 'different', saw: saw.rulesWrong(shownCell(kept?.value), count(tints?.value)) };
}
