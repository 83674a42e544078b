const dayMs = 86_400_000;
const origin = Date.UTC(1899, 11, 30);

/** Days since the end of 1899 on the wall clock of the process's time zone, which is the script's and the sheet's here. */
export const serialOf = (date: Date): number =>
  (Date.UTC(
    date.getFullYear(),
    date.getMonth(),
    date.getDate(),
    date.getHours(),
    date.getMinutes(),
    date.getSeconds(),
    date.getMilliseconds(),
  ) -
    origin) /
  dayMs;

export function dateOf(serial: number): Date {
  const days = Math.floor(serial);
  return new Date(1899, 11, 30 + days, 0, 0, 0, Math.round((serial - days) * dayMs));
}
