import { type CellValue, isBlank } from '../../measurement/cellValue.ts';

export interface OwnHint {
  /** The teacher's wording, or empty where ours stands. */
  readonly words: string;
  /** A web address that goes with the hint, or empty. */
  readonly link: string;
}

const textOf = (cell: CellValue): string =>
  typeof cell === 'string' ? cell.trim() : typeof cell === 'number' ? String(cell) : '';

/** Kept only where it is a web address; nothing else that a cell may hold is passed on as a link. */
const linkOf = (cell: CellValue): string => {
  const typed = textOf(cell);
  return /^https?:\/\/[^\s"'<>]+$/i.test(typed) ? typed : '';
};

/**
 * What the teacher wrote for a step and level: the first line of both that holds anything.
 *
 * @param rows - Columns: step, level, wording, link, as the Help sheet has them.
 */
export function ownHint(
  rows: readonly (readonly CellValue[])[],
  { stepId, level }: { readonly stepId: string; readonly level: number },
): OwnHint {
  const wanted = stepId.trim().toLowerCase();
  const line = rows.find(
    ([step, at, words, link]) =>
      wanted !== '' &&
      textOf(step).toLowerCase() === wanted &&
      textOf(at) === String(level) &&
      !(isBlank(words) && isBlank(link)),
  );
  return line === undefined ? { words: '', link: '' } : { words: textOf(line[2]), link: linkOf(line[3]) };
}
