import { atomsKey } from '../../chemistry/atomsKey.ts';
import { readFormula } from '../../chemistry/readFormula.ts';
import { type CellValue, isBlank } from '../../measurement/cellValue.ts';
import type { TickedStep } from '../lesson/activity.ts';
import { cautionWords } from '../lesson/cautionWords.ts';
import { tickTexts } from '../texts/ticks.ts';
import type { Surroundings } from './judgedRow.ts';
import type { RowCheck } from './rowCheck.ts';

/** A word or sign for “read”, at the start of an entry, with what parts it from the substance. */
const tick = /^(?:yes|y|x|ok|read|done|[✓✔☑])(?:[\s,:;–-]+|$)/i;

/**
 * Whether the cautions of this very substance are ticked: the entry names it, so that a tick given for one substance is
 * none for another that the plan has now. The cautions stay beside the row, since they are needed at the bench too.
 */
export function judgeTick(
  entry: CellValue,
  { substance, cautionLines }: { readonly substance: CellValue; readonly cautionLines: string },
): RowCheck {
  const formula = String(substance ?? '').trim();
  const answer = tickTexts.answer(formula);
  const withLines = (status: RowCheck['status'], said: string): RowCheck => ({
    status,
    lookAt: `${said}\n${cautionLines}`,
  });
  if (isBlank(entry)) return withLines('blank', tickTexts.readFirst(answer));
  const typed = entry === true ? tickTexts.answer('') : String(entry).trim();
  const isTicked = tick.test(typed);
  const named = typed.replace(tick, '').trim();
  const known = readFormula(substance);
  // A substance that nobody can read cannot be named either.
  if (isTicked && (named === formula || !known.ok)) return { status: 'on target', lookAt: cautionLines };
  if (isTicked && named === '') return withLines('not yet', tickTexts.nameIt(answer));
  const other = readFormula(named);
  if (!known.ok || !other.ok) return withLines('unreadable', tickTexts.notYes(answer));
  return atomsKey(other.value) === atomsKey(known.value)
    ? { status: 'on target', lookAt: cautionLines }
    : withLines('not yet', tickTexts.anotherSubstance(answer));
}

/** Judges whether the cautions of what the team handles are ticked as read. */
export function judgeTicked(
  { substance }: TickedStep,
  cell: CellValue,
  { givens, settings: { decimalMark, studentsDilute } }: Pick<Surroundings, 'givens' | 'settings'>,
): RowCheck {
  return judgeTick(cell, {
    substance: givens[substance.formula],
    cautionLines: cautionWords({ substance, givens, decimalMark, studentsDilute }),
  });
}
