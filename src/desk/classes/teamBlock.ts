import type { BlockReading } from '../../workbook/readClassSheet.ts';
import type { Book } from '../file/book.ts';
import { done, type Outcome, problem } from '../outcome.ts';
import { deskWords } from '../words.ts';
import { type BuiltClass, classCalled } from './classCalled.ts';

/** The block of a team in the sheet of its class. */
export function teamBlock(
  book: Book,
  { className, key }: { readonly className: unknown; readonly key: unknown },
): Outcome<BuiltClass & { readonly block: BlockReading }> {
  const found = classCalled(book, className);
  if (!found.ok) return found;
  const block = found.value.reading.blocks.find((candidate) => candidate.key === key);
  if (block === undefined) return problem({ ...deskWords.teamUnknown, received: `“${String(key)}”` });
  return done({ ...found.value, block });
}
