import { quoted } from '../errors/quoted.ts';
import { failure, type Result, success } from '../errors/result.ts';
import type { CellValue } from '../measurement/cellValue.ts';
import { readNumber } from '../measurement/readNumber.ts';

/** Twelve digits, which drops the tail of a division in binary. */
const shown = (value: number): string => String(Number(value.toPrecision(12)));

/**
 * How many times a volume grows, as a number. A ratio such as 1:10 is used for one part in ten and for one part with ten,
 * so neither is guessed.
 *
 * @returns Fails with `ratio-two-readings`, or like `readNumber`.
 */
export function readFactor(cell: CellValue, argument: string): Result<number> {
  const read = readNumber(cell, argument);
  if (read.ok) return success(read.value.value);
  if (read.error.code !== 'number-expected') return read;
  const [, first, second] = (typeof cell === 'string' && /^([^:]{1,20})(?::| to )([^:]{1,20})$/.exec(cell)) || [];
  const part = readNumber(first, argument);
  const parts = readNumber(second, argument);
  if (part.ok && parts.ok && part.value.value > 0 && parts.value.value > 0) {
    const inAll = shown(parts.value.value / part.value.value);
    const besides = shown(parts.value.value / part.value.value + 1);
    return failure({
      code: 'ratio-two-readings',
      argument,
      expected: `${inAll} or ${besides}`,
      received: quoted(cell),
      advice: `Type ${inAll} for ${parts.value.typed.trim()} parts in all, or ${besides} if that many are added.`,
      brief: `${inAll} or ${besides}`,
    });
  }
  return failure({
    ...read.error,
    advice: 'Type how many times the volume grows at each stage, such as 10.',
  });
}
