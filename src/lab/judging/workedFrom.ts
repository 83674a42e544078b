import { isSound, type JudgedRow } from './judgedRow.ts';

/** What later rows may honestly be worked from: the entry, and where it is right also what it was rounded from. */
export const workedFrom = (row: JudgedRow): readonly number[] =>
  row.value === undefined ? [] : isSound(row) ? [...new Set([row.value, ...row.unrounded])] : [row.value];
