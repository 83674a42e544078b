import type { CellValue } from '../../measurement/cellValue.ts';
import { isExitStep } from '../exit/exitStep.ts';
import type { CalculatedStep } from '../lesson/activity.ts';
import { rowBehind } from './activitySlips.ts';
import { carriedRows } from './carriedRows.ts';
import { feedbackText } from './feedbackText.ts';
import { isFact, isSound, type JudgedRow, type Surroundings } from './judgedRow.ts';
import { type CarriedRows, judgeEntry } from './judgeEntry.ts';
import { readEntry } from './readEntry.ts';
import { sourceSets } from './sourceSets.ts';
import { teamStep } from './teamStep.ts';
import { withActivitySlips } from './withActivitySlips.ts';
import { spanOver } from './worked.ts';

/** Whether a dilution goes on from another one and not from the stock. */
export function isFromFlaskBefore(step: CalculatedStep, around: Pick<Surroundings, 'stepOf'>): boolean {
  const before = rowBehind(step, 'stock molarity', around);
  return before?.kind === 'calculated' && before.quantity === 'diluted molarity';
}

/** Judges what a team worked out, from its givens and from its own entries in the rows that the step rests on. */
export function judgeCalculated(step: CalculatedStep, cell: CellValue, around: Surroundings): Partial<JudgedRow> {
  const { settings } = around;
  const { bad, ready, from, waitsFor } = teamStep(step, around);
  if (bad !== '' || !ready) return { status: 'unreadable', isUnusable: true, lookAt: bad };
  const entry = readEntry(cell, ready.quantity.entryKind, settings);
  if (entry.kind === 'number' && waitsFor !== '') {
    return { status: 'not yet', lookAt: waitsFor, value: entry.entry.value };
  }
  const sets = sourceSets(step, around);
  const carried = carriedRows(step, around);
  const rows = [
    ...carried,
    ...sets
      .slice(1)
      .flatMap((set): readonly CarriedRows[] => [
        { carried: set, sound: true, lookAt: '' },
        ...carried.map((row) => ({ ...row, carried: { ...set, ...row.carried } })),
      ]),
  ];
  const own = judgeEntry(ready, entry, {
    rows,
    judgeFigures: settings.judgeFigures,
    shortTable: settings.shortTable,
  });
  const judgement = withActivitySlips({ judgement: own, step, ready, entry }, around);
  const value = entry.kind === 'number' ? { value: entry.entry.value } : {};
  const spans = entry.kind === 'number' ? sets.map((set) => spanOver(ready, ready.quantity.relation, set)) : [];
  const unsound = from.find((row) => !isSound(row) && !isFact(row));
  // What rests on a row that needs another look is nobody's right value.
  const unrounded = unsound ? [] : [...new Set(spans.flatMap(({ low, middle, high }) => [middle, low, high]))];
  const final = isSound(judgement) && unsound ? { status: 'follows' as const, lookAt: unsound.root } : judgement;
  return {
    ...value,
    unrounded,
    status: final.status,
    lookAt: feedbackText(final, ready.quantity, {
      special: isFromFlaskBefore(step, around) ? ['flask before'] : [],
      asks: step.asks,
      isBrief: isExitStep(step.id),
    }),
    slips: final.status === 'not yet' ? final.slips : [],
    ...(final.status === 'follows' ? { root: final.lookAt } : {}),
  };
}
