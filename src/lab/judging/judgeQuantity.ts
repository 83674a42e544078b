import { shortErrorText } from '../../errors/errorText.ts';
import { quoted } from '../../errors/quoted.ts';
import { type ChemError, failure, type Result, success } from '../../errors/result.ts';
import type { CellValue } from '../../measurement/cellValue.ts';
import { plainName, readGivenCells } from '../lesson/givenCells.ts';
import { isQuantityName, type QuantityName, quantities } from '../quantities.ts';
import { feedbackText } from './feedbackText.ts';
import type { FilledQuantity } from './filledQuantity.ts';
import { fillQuantity } from './fillQuantity.ts';
import { judgeEntry } from './judgeEntry.ts';
import { readEntry } from './readEntry.ts';
import type { Status } from './rowCheck.ts';

export interface QuantityCheck {
  readonly status: Status;
  readonly feedback: string;
  /** Ids of slips that give the entry, joined with ` or `; empty where none does. */
  readonly slip: string;
  /** Set where the quantity or its givens cannot be used; then nothing is said about the entry. */
  readonly error?: ChemError;
}

/** The name of a quantity as typed; case and spacing do not matter. */
export function readQuantityName(cell: CellValue): Result<QuantityName> {
  const name = plainName(cell);
  if (isQuantityName(name)) return success(name);
  return failure({
    code: 'quantity-unknown',
    argument: 'quantity',
    received: quoted(cell),
    advice: `Use one of ${Object.keys(quantities).join(', ')}.`,
  });
}

/** A quantity and its `given` table, read once for any number of entries. Fails as its parts do. */
export function readFilledQuantity(
  quantity: CellValue,
  given: readonly (readonly CellValue[])[],
  options: { readonly figures?: number | undefined; readonly decimals?: number | undefined } = {},
): Result<FilledQuantity> {
  const name = readQuantityName(quantity);
  if (!name.ok) return name;
  const cells = readGivenCells(quantities[name.value], given);
  return cells.ok ? fillQuantity(quantities[name.value], cells.value, options) : cells;
}

/** Judges one entry of a step that stands ready. Never fails. */
export function judgeFilledQuantity(step: FilledQuantity, entry: CellValue): QuantityCheck {
  const judgement = judgeEntry(step, readEntry(entry, step.quantity.entryKind));
  return {
    status: judgement.status,
    feedback: feedbackText(judgement, step.quantity),
    slip: judgement.status === 'not yet' ? judgement.slips.join(' or ') : '',
  };
}

/**
 * Judges an entry of a quantity for given numbers.
 *
 * @param given - Two columns, name and value, with the names that the quantity takes.
 * @param figures - Significant figures asked; left out, the quantity's own.
 * @param decimals - To how many decimals atomic weights may be rounded at the coarsest; 2 where left out.
 * @returns Status, feedback and slip. An entry never fails; a quantity or givens that cannot be used come as `error`.
 */
export function judgeQuantity(
  quantity: CellValue,
  given: readonly (readonly CellValue[])[],
  entry: CellValue,
  figures?: number,
  decimals?: number,
): QuantityCheck {
  const step = readFilledQuantity(quantity, given, { figures, decimals });
  if (step.ok) return judgeFilledQuantity(step.value, entry);
  return { status: 'unreadable', feedback: shortErrorText(step.error), slip: '', error: step.error };
}
