import { failure, type Result, success } from '../errors/result.ts';

/** A result that is a number, or the error that no number can hold it. Fails with `result-not-finite`. */
export function finite<T extends number>(value: T, argument: string): Result<T> {
  if (Number.isFinite(value)) return success(value);
  return failure({
    code: 'result-not-finite',
    argument,
    advice: 'Check the powers of ten and the units.',
  });
}
