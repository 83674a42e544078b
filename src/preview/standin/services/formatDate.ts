import { HostException } from '../hostError.ts';

/** A date by the letters of Java's date patterns that are in everyday use; refuses the others. */
export function formatDate(date: Date, timeZone: string, pattern: string): string {
  const zone = /^(GMT|UTC)$/.test(timeZone) ? 'UTC' : timeZone;
  const parts = (options: Intl.DateTimeFormatOptions): Record<string, string> => {
    try {
      const format = new Intl.DateTimeFormat('en-GB', { ...options, timeZone: zone, hourCycle: 'h23' });
      return Object.fromEntries(format.formatToParts(date).map(({ type, value }) => [type, value]));
    } catch {
      throw new HostException(`Invalid argument: timeZone (${timeZone})`);
    }
  };
  const numbers = parts({
    year: 'numeric',
    month: 'numeric',
    day: 'numeric',
    hour: 'numeric',
    minute: 'numeric',
    second: 'numeric',
  });
  const padded = (name: string, length: number): string =>
    (numbers[name] ?? '').replace(/^0+(?=\d)/, '').padStart(length, '0');
  return pattern.replace(
    /'((?:[^']|'')*)'|([A-Za-z])\2*/g,
    (run: string, quoted: string | undefined, letter: string) => {
      if (quoted !== undefined) return quoted === '' ? "'" : quoted.replaceAll("''", "'");
      const { length } = run;
      const hour = Number(numbers.hour);
      switch (letter) {
        case 'y':
          return length === 2 ? padded('year', 4).slice(-2) : padded('year', 4);
        case 'M':
          if (length === 3) return parts({ month: 'short' }).month ?? '';
          return length > 3 ? (parts({ month: 'long' }).month ?? '') : padded('month', length);
        case 'd':
          return padded('day', length);
        case 'E':
          return parts({ weekday: length > 3 ? 'long' : 'short' }).weekday ?? '';
        case 'H':
          return padded('hour', length);
        case 'h':
          return String(hour % 12 || 12).padStart(length, '0');
        case 'a':
          return hour < 12 ? 'AM' : 'PM';
        case 'm':
          return padded('minute', length);
        case 's':
          return padded('second', length);
        case 'S':
          return String(date.getMilliseconds()).padStart(length, '0');
        default:
          throw new HostException(`The stand-in does not cover the date pattern "${run}".`);
      }
    },
  );
}
