import type { DecimalMark } from './pointNumbers.ts';
import { readField } from './readField.ts';

/** Reads a list of volumes such as `100, 200, 250` or `5 mL; 1/2 L`, in mL. */
export function readSizes(
  typed: string,
  mark: DecimalMark,
): { readonly sizes: readonly number[] } | { readonly message: string } {
  // A comma parts two sizes unless it is the decimal mark and stands inside a number.
  const parting = mark === 'comma' ? /[;\n]|,(?!\d)|(?<=[\w%])\s+(?=\d)/ : /[;\n,]|(?<=[\w%])\s+(?=\d)/;
  const sizes: number[] = [];
  for (const part of typed.split(parting)) {
    const reading = readField({ typed: part, unit: 'mL', mark });
    if (reading.kind === 'problem') return { message: reading.message };
    if (reading.kind === 'value' && !sizes.includes(reading.value)) sizes.push(reading.value);
  }
  return { sizes: sizes.sort((a, b) => a - b) };
}
