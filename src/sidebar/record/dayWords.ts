/** The day in words, such as Monday 2 March 2026; a day is a date without a time, so no zone may shift it. */
export function dayWords(day: string): string {
  const date = new Date(`${day}T12:00:00Z`);
  if (Number.isNaN(date.getTime())) return day;
  const part = (options: Intl.DateTimeFormatOptions) =>
    new Intl.DateTimeFormat('en-GB', { ...options, timeZone: 'UTC' }).format(date);
  // Part by part: browsers do not agree on the comma.
  return `${part({ weekday: 'long' })} ${part({ day: 'numeric', month: 'long', year: 'numeric' })}`;
}
