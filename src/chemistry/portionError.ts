import { quoted } from '../errors/quoted.ts';
import type { ChemError } from '../errors/result.ts';

/** Why a portion of stock cannot have been filled up to a volume. */
export function portionError({
  stockVolume,
  finalVolume,
}: {
  readonly stockVolume: number;
  readonly finalVolume: number;
}): ChemError | undefined {
  if (stockVolume <= finalVolume) return undefined;
  return {
    code: 'final-below-stock-volume',
    argument: 'final_volume',
    expected: `${quoted(stockVolume)} mL`,
    received: `${quoted(finalVolume)} mL`,
    advice: 'Filling up only adds volume: swap the two cells, or check their units.',
  };
}
