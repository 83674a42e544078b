import { quoted } from '../errors/quoted.ts';
import { type ChemError, failure, type Result, success } from '../errors/result.ts';

/** A percentage that is a share of a whole, as an error unless it is above 0 and at most 100. */
export function notAShare(value: number, argument: string): ChemError | undefined {
  if (value > 0 && value <= 100) return undefined;
  return {
    code: 'purity-out-of-range',
    argument,
    expected: 'above 0 % and at most 100 %',
    received: `${quoted(value)} %`,
    advice: 'Check the label of the bottle.',
  };
}

/** Share of the solid that is the substance itself; 1 where nothing is said. Fails with `purity-out-of-range`. */
export function pureShare(purity: number | undefined): Result<number> {
  if (purity === undefined) return success(1);
  const error = notAShare(purity, 'purity_percent');
  return error === undefined ? success(purity / 100) : failure(error);
}
