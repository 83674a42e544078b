import type { FirstEntriesSent } from '../../host/calls.ts';
import { sampleLesson } from '../../lab/lesson/sampleLesson.ts';
import type { TeamPlan } from '../../lab/lesson/setup.ts';
import { membersText } from '../../lab/members/membersText.ts';
import { shareRoles } from '../../lab/members/shareRoles.ts';
import { classColumns as at } from '../../workbook/layout.ts';
import type { SheetPlan } from '../../workbook/workbook.ts';
import type { Book } from '../file/book.ts';

const minuteMs = 60_000;

/** The invented entries of a class of the sample, by block of its planned sheet. */
export function sampleEntries({
  plan,
  className,
  teams,
  book: { today, now },
}: {
  plan: SheetPlan;
  className: string;
  teams: readonly TeamPlan[];
  /** Roles of the invented people are for its day, and times of their entries before its moment. */
  book: Pick<Book, 'today' | 'now'>;
}): readonly FirstEntriesSent[] {
  const sample = sampleLesson(teams);
  const entries = sample.entries.filter((entry) => entry.className === className);
  const { rows, firstRow } = plan.identity;
  const runs: FirstEntriesSent[] = [];
  for (const { key, team } of teams) {
    const people = sample.members.find((one) => one.className === className && one.team === team)?.people ?? [];
    const heading = rows.findIndex(([rowKey]) => rowKey === key);
    if (people.length > 0 && heading >= 0) {
      const before = { members: [], day: '' };
      const text = membersText(shareRoles({ before, members: people, day: today, passOn: false }));
      runs.push({ row: firstRow + heading, column: at.who, texts: [text] });
    }
    const ofTeam = entries.filter((entry) => entry.team === team);
    const first = rows.findIndex(([rowKey, step]) => rowKey === key && step !== '');
    if (ofTeam.length === 0 || first < 0) continue;
    const steps = rows.slice(first).filter(([rowKey, step]) => rowKey === key && step !== '');
    const found = steps.map(([, step]) => ofTeam.find((entry) => entry.step === step));
    runs.push({
      row: firstRow + first,
      column: at.entry,
      texts: found.map((entry) => entry?.entry ?? ''),
      counts: {
        column: at.tries,
        rows: found.map((entry) => (entry === undefined ? null : [entry.tries, now - entry.minutesAgo * minuteMs])),
      },
    });
  }
  return runs;
}
