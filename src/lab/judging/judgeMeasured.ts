import type { CellValue } from '../../measurement/cellValue.ts';
import type { MeasuredStep } from '../lesson/activity.ts';
import { badGiven } from '../texts/feedback.ts';
import type { ReadingOf } from '../texts/readings.ts';
import { expectedReading } from './expectedReading.ts';
import type { JudgedRow, Surroundings } from './judgedRow.ts';
import { judgeReading } from './judgeReading.ts';
import { judgeDifference } from './judgeWeighing.ts';
import { readEntry } from './readEntry.ts';
import { toolsOfReading } from './toolsOfReading.ts';
import { unitKind } from './unitKind.ts';

/** What is read: a balance shows a solid, a dried residue, or a portion of a solution. */
export const readingOf = ({ instrument, hints, tools = [] }: MeasuredStep): ReadingOf =>
  hints ?? (instrument === 'balance' && tools.some(({ tool }) => tool === 'pipette') ? 'residue' : instrument);

/** Judges what a team read from a tool, by what the tools and the allowance for technique permit. */
export function judgeMeasured(step: MeasuredStep, cell: CellValue, around: Surroundings): Partial<JudgedRow> {
  const { bad, expected, waitsFor } = expectedReading(step, around);
  if (bad !== '' || expected === undefined) return { status: 'unreadable', isUnusable: true, lookAt: bad };
  const { unit, techniqueShare } = step;
  const { settings } = around;
  const entry = readEntry(cell, unitKind(unit), settings);
  const value = entry.kind === 'number' ? { value: entry.entry.value } : {};
  if (entry.kind === 'number' && waitsFor !== '') return { ...value, status: 'not yet', lookAt: waitsFor };
  const amiss =
    entry.kind === 'number' && entry.unit !== 'other kind' ? judgeDifference(step, entry.entry, around) : undefined;
  if (amiss) return { ...value, ...amiss };
  const tools = toolsOfReading({ ...step, expected }, around);
  if (!tools.ok) return { status: 'unreadable', isUnusable: true, lookAt: badGiven(tools.error.argument) };
  const reading = {
    expected,
    unit,
    of: readingOf(step),
    tools: tools.value,
    ...(techniqueShare === undefined ? {} : { techniqueShare }),
    settings: settings.cells,
    decimalMark: settings.decimalMark,
  };
  return { ...value, ...judgeReading(cell, reading) };
}
