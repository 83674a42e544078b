import { type CellValue, isBlank } from '../measurement/cellValue.ts';

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
 * What the teacher wrote for a step and level.
 *
 * @param rows - Columns: step, level 1, level 2, level 3, link. The link goes with every level of its step.
 */
export function ownHint(
  rows: readonly (readonly CellValue[])[],
  { stepId, level }: { readonly stepId: string; readonly level: number },
): OwnHint {
  const wanted = stepId.trim().toLowerCase();
  const line = rows.find(([step]) => wanted !== '' && textOf(step).toLowerCase() === wanted);
  if (line === undefined || ![1, 2, 3].includes(level)) return { words: '', link: '' };
  return { words: isBlank(line[level]) ? '' : textOf(line[level]), link: linkOf(line[4]) };
}
