import { type CellValue, isBlank } from '../../measurement/cellValue.ts';
import { patternOnUse } from '../../measurement/patternOnUse.ts';
import type { Lettered } from '../bench/lettered.ts';
import { choiceTexts } from '../texts/choosing.ts';
import type { RowCheck } from './rowCheck.ts';

/** One letter, with nothing behind it, or a reason that a mark or “because” begins. */
const letterFirst = patternOnUse(
  String.raw`^[\s([{"'“‘]*(\p{L})[\s)\]}.:;,"'”’–—-]*(?:$|(?<=[).:;,–—-]\s*)\S.{2,}|because\b.*)`,
  'su',
);

/** The letter of an entry such as “b”, “(B)” or “b, because …”; undefined where it is not one letter. */
function chosenLetter(entry: CellValue): string | undefined {
  if (typeof entry !== 'string') return undefined;
  const read = letterFirst().exec(entry.normalize('NFKC').toLowerCase());
  return read?.[1];
}

/** Judges an entry that names one of some lettered options; blank and unreadable ones are told alike everywhere. */
export function judgeLetter<T>(
  entry: CellValue,
  options: readonly Lettered<T>[],
  judge: (item: T) => RowCheck,
): RowCheck {
  if (isBlank(entry)) return { status: 'blank', lookAt: '' };
  const letter = chosenLetter(entry);
  const chosen = options.find((option) => option.letter === letter);
  return chosen === undefined
    ? { status: 'unreadable', lookAt: choiceTexts.oneLetter(options.map((option) => option.letter)) }
    : judge(chosen.item);
}
