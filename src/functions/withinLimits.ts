import { failure, type Result, success } from '../errors/result.ts';

/** A whole number between two limits, or none. Fails with `out-of-limits`. */
export function withinLimits(
  value: number | undefined,
  { argument, least, most }: { readonly argument: string; readonly least: number; readonly most: number },
): Result<number | undefined> {
  if (value === undefined || (value >= least && value <= most)) return success(value);
  return failure({
    code: 'out-of-limits',
    argument,
    expected: `${least} to ${most}`,
    received: String(value),
    advice: `Type a whole number from ${least} to ${most}.`,
  });
}
