import { restAfter } from './restAfter.ts';
import { scanNumber } from './scanNumber.ts';

/** Whether a text is a number without a unit behind it, so that one may be written there. */
export function isBareNumber(text: string): boolean {
  const scanned = scanNumber(text);
  return scanned !== undefined && restAfter(text, scanned) === '';
}
