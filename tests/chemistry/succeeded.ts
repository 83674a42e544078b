import { errorText } from '../../src/errors/errorText.ts';
import type { Result } from '../../src/errors/result.ts';

/** The value of a result that is expected to be one; a test fails with the message where it is not. */
export function succeeded<T>(result: Result<T>): T {
  if (!result.ok) throw new Error(errorText(result.error));
  return result.value;
}
