import type { ScannedNumber } from './scanNumber.ts';

/** What follows the number in a text, without the spaces around it; spaces of no width, which nobody sees, go too. */
export const restAfter = (text: string, { end }: Pick<ScannedNumber, 'end'>): string =>
  text
    .slice(end)
    .replace(/[\u200b\u2060]/g, '')
    .trim();
