/** Longest text that is shown whole, in characters; beyond it the middle is left out, so that a message stays readable. */
const shownWhole = 60;
const shownAtStart = 40;
const shownAtEnd = 15;

/** A text that is too long for a message, with its middle left out; counted in whole characters, never half of one. */
function shortened(text: string): string {
  const characters = Array.from(text);
  if (characters.length <= shownWhole) return text;
  return `${characters.slice(0, shownAtStart).join('')} … ${characters.slice(-shownAtEnd).join('')}`;
}

/**
 * What a cell held, as a message shows it: text unchanged in curly quotes, numbers and Booleans as the sheet shows them.
 * Only text of more than 60 characters is shortened.
 */
export function quoted(cell: unknown): string {
  if (typeof cell === 'string') return cell.trim() === '' ? 'a blank cell' : `“${shortened(cell)}”`;
  if (cell === undefined || cell === null) return 'a blank cell';
  if (typeof cell === 'boolean') return cell ? 'TRUE' : 'FALSE';
  if (typeof cell === 'number') return String(cell);
  // A date from the host comes from another world of objects, so its class is asked by name.
  if (Object.prototype.toString.call(cell) === '[object Date]') {
    const time = (cell as Date).getTime();
    return Number.isFinite(time) ? `the date ${new Date(time).toISOString().slice(0, 10)}` : 'a date';
  }
  return 'something that is neither text nor a number';
}
