import type { Work } from '../../file/ask.ts';
import type { Finding } from '../finding.ts';
import { inFile, inSheet, take } from '../take.ts';
import { selfCheckWords } from '../words.ts';
import { count, documentWide, markKey } from './copyOfFile.ts';

const { saw } = selfCheckWords;

/** A mark on a sheet after it was renamed, and on one that is made by duplicating it. The twin goes with the scratch sheet. */
export function* sheetMarks(sheet: string): Work<Finding> {
  const name = 'tags';
  const [, , renamed, , twin] = yield* take(
    inSheet(['addDeveloperMetadata', markKey, 'on trial', documentWide]),
    inSheet(['setName', `${sheet} renamed`]),
    inSheet(['getDeveloperMetadata']),
    inSheet(['setName', sheet]),
    inSheet(['copyTo', inFile()], ['getDeveloperMetadata']),
  );
  if (renamed?.refused !== undefined)
    return { name, verdict: 'not tried', saw: selfCheckWords.refused(renamed.refused) };
  const after = count(renamed?.value);
  return after === 1
    ? { name, verdict: 'expected', saw: saw.tagsRight(count(twin?.value) > 0) }
    : { name, verdict: 'different', saw: saw.tagsWrong(after) };
}
