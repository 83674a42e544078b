import type { Book } from './book.ts';

let formats: Map<string, Intl.DateTimeFormat> | undefined;

function formatIn(timeZone: string): Intl.DateTimeFormat {
  formats ??= new Map();
  const known = formats.get(timeZone);
  if (known !== undefined) return known;
  const parts = { year: 'numeric', month: '2-digit', day: '2-digit' } as const;
  let made: Intl.DateTimeFormat;
  try {
    made = new Intl.DateTimeFormat('en-CA', { ...parts, timeZone });
  } catch {
    // A zone that this browser does not know: its own is the nearest thing.
    made = new Intl.DateTimeFormat('en-CA', parts);
  }
  formats.set(timeZone, made);
  return made;
}

/** The day of a moment as year-month-day, in the file's own time zone. */
export function dayIn({ timeZone }: Pick<Book, 'timeZone'>, moment: number): string {
  const parts = formatIn(timeZone).formatToParts(new Date(moment));
  const part = (type: string) => parts.find((one) => one.type === type)?.value ?? '';
  return `${part('year')}-${part('month')}-${part('day')}`;
}

/** Day and time for names of sheets that are kept. */
export const stampOf = ({ today, clock }: Pick<Book, 'today' | 'clock'>): string =>
  `${today} ${clock.replace(':', '.')}`;
