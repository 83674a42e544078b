import { sampleLesson } from '../lab/sampleLesson.ts';
import type { TeamPlan } from '../lab/setup.ts';
import { classColumns as at } from '../workbook/layout.ts';
import type { SheetPlan } from '../workbook/workbook.ts';
import type { FirstEntries } from './applyWorkbook.ts';

/** The invented entries of a class of the sample, by block of its planned sheet. */
export function sampleEntries({
  plan,
  className,
  teams,
}: {
  plan: SheetPlan;
  className: string;
  teams: readonly TeamPlan[];
}): readonly FirstEntries[] {
  const entries = sampleLesson().entries.filter((entry) => entry.className === className);
  const { rows, firstRow } = plan.identity;
  const runs: FirstEntries[] = [];
  for (const { key, team } of teams) {
    const ofTeam = entries.filter((entry) => entry.team === team);
    const first = rows.findIndex(([rowKey, step]) => rowKey === key && step !== '');
    if (ofTeam.length === 0 || first < 0) continue;
    const steps = rows.slice(first).filter(([rowKey, step]) => rowKey === key && step !== '');
    runs.push({
      row: firstRow + first,
      column: at.entry,
      texts: steps.map(([, step]) => ofTeam.find((entry) => entry.step === step)?.entry ?? ''),
    });
  }
  return runs;
}
