import { type Result, success } from '../../errors/result.ts';
import { grams, millilitres } from '../../measurement/quantity.ts';
import { readQuantity } from '../../measurement/readQuantity.ts';
import type { MeasuredStep } from '../lesson/activity.ts';
import type { Surroundings } from './judgedRow.ts';
import type { ToolUsed } from './readingTolerance.ts';

/**
 * The tools that a reading depends on, each with what it holds.
 *
 * @returns Fails as `readQuantity` does where a given that names the size of a vessel cannot be read; `argument` is its name.
 */
export function toolsOfReading(
  { tools, instrument, expected }: Pick<MeasuredStep, 'tools' | 'instrument'> & { readonly expected: number },
  { givens, settings }: Pick<Surroundings, 'givens' | 'settings'>,
): Result<readonly ToolUsed[]> {
  const used: ToolUsed[] = [];
  for (const one of tools ?? (instrument === 'bench' ? [] : [{ tool: instrument }])) {
    if (one.tool === 'balance') {
      used.push({ tool: one.tool, mass: grams(expected) });
      continue;
    }
    // A vessel that a given names has that size; the one that is read holds what is expected.
    const name = 'volume' in one ? one.volume : undefined;
    const size = name === undefined ? undefined : readQuantity(givens[name], 'volume', name, settings);
    if (size?.ok === false) return size;
    used.push({ tool: one.tool, volume: millilitres(size?.value.value ?? expected) });
  }
  return success(used);
}
