/** A cell of the scratch sheet, as a report shows it. */
export function shownCell(cell: unknown): string {
  if (cell === '' || cell === undefined || cell === null) return 'nothing';
  if (typeof cell === 'object') return 'a date';
  return withoutNames(`“${String(cell)}”`);
}

const longest = 120;

/** Words of the host may hold an address of somebody or the number of a file: a report is pasted as it is. */
export const withoutNames = (words: string): string =>
  words
    .replace(/\S+@\S+/g, '(an address)')
    .replace(/https?:\/\/\S+/g, '(a link)')
    .replace(/[\w-]{25,}/g, '(a number of the host)')
    .slice(0, longest);
