import type { CellValue } from '../../measurement/cellValue.ts';
import type { MeasuredStep, WeighingStep } from '../lesson/activity.ts';
import { remarks } from '../texts/feedback.ts';
import { readingTexts } from '../texts/readings.ts';
import { differenceTexts, weighingTexts } from '../texts/weighing.ts';
import { expectedReading } from './expectedReading.ts';
import { filled } from './feedbackText.ts';
import type { JudgedRow, Surroundings } from './judgedRow.ts';
import { showsEveryFigure } from './judgeReading.ts';
import { readEntry } from './readEntry.ts';
import type { RowCheck } from './rowCheck.ts';
import { tenTo } from './span.ts';
import type { TypedEntry } from './typedEntry.ts';

/** A team's word that it did see this number. */
const shown = /[\s,;:.–—-]*\(?\bshown\)?[\s.!]*$/i;

/** Whether a number is another one rounded to as many decimals as it has. */
const isRounded = ({ value, lastPlace }: TypedEntry, exact: number | undefined): boolean =>
  exact !== undefined && Math.abs(value - exact) <= tenTo(lastPlace) * (0.5 + 1e-9);

/** Whether a mass is that of the plan to all its digits: worked exactly, or as the team rounded it. */
const isOfPlan = (entry: TypedEntry, step: MeasuredStep, around: Surroundings): boolean =>
  isRounded(entry, expectedReading(step, around).expected) ||
  (typeof step.expects === 'string' && around.rowOf(step.expects)?.value === entry.value);

/** Judges what a balance shows: no number is right or wrong, but one of the plan is asked about. */
export function judgeWeighing({ of, when }: WeighingStep, cell: CellValue, around: Surroundings): Partial<JudgedRow> {
  const said = typeof cell === 'string' && shown.test(cell);
  const read = readEntry(said ? cell.replace(shown, '') : cell, 'mass', around.settings);
  if (read.kind === 'blank') return { status: 'blank' };
  if (read.kind === 'unreadable' || read.unit === 'other kind')
    return { status: read.kind === 'number' ? 'not yet' : 'unreadable', lookAt: weighingTexts.unreadable };
  const { value } = read.entry;
  const row = (status: RowCheck['status'], lookAt: string) => ({ status, lookAt, value });
  const empty = when === 'loaded' ? around.rowOf(`${of} empty`)?.value : undefined;
  if (value < 0 || (empty !== undefined && value <= empty)) return row('not yet', weighingTexts.lighter);
  if (value !== 0 && !showsEveryFigure(read.entry, around.settings.cells)) return row('close', readingTexts.decimals);
  const measured = around.stepOf(of);
  const isCopied = when === 'loaded' && measured?.kind === 'measured' && isOfPlan(read.entry, measured, around);
  return isCopied && !said ? row('close', weighingTexts.copied) : row('on target', weighingTexts.noted);
}

/**
 * Judges a mass by the two readings that it is worked from; one that needs another look holds it back like any row of the
 * bench. Where it is their difference, what else is to be said of it is
 * for others: undefined then, and where the block has no such rows.
 */
export function judgeDifference(
  step: MeasuredStep,
  entry: TypedEntry,
  around: Surroundings,
): Pick<JudgedRow, 'status' | 'lookAt'> | undefined {
  const emptyRow = around.rowOf(`${step.id} empty`);
  const loadedRow = around.rowOf(`${step.id} loaded`);
  if (!step.from || !emptyRow || !loadedRow) return undefined;
  const [empty, loaded] = [emptyRow.value, loadedRow.value];
  const about = (text: string, row: JudgedRow) => filled(text, { row: row.root });
  if (empty === undefined || loaded === undefined)
    return { status: 'not yet', lookAt: about(remarks.needsRow, empty === undefined ? emptyRow : loadedRow) };
  if (isRounded(entry, loaded - empty)) {
    return loadedRow.lookAt === weighingTexts.copied
      ? { status: 'close', lookAt: about(remarks.lookFirst, loadedRow) }
      : undefined;
  }
  const { emptyLeftIn, added, fromPlan, other } = differenceTexts;
  const matching = isRounded(entry, loaded) ? emptyLeftIn : isRounded(entry, loaded + empty) ? added : undefined;
  return { status: 'not yet', lookAt: matching ?? (isOfPlan(entry, step, around) ? fromPlan : other) };
}
