import { isExitStep } from '../../lab/exit/exitStep.ts';
import { lessonActivity } from '../../lab/lesson/lessonActivity.ts';
import { isTeam } from '../../lab/lesson/practice.ts';
import { membersOn } from '../../lab/members/membersOn.ts';
import { readMembers } from '../../lab/members/readMembers.ts';
import type { ClassDay } from '../../lab/record/classFacts.ts';
import { classesInFile } from '../classes/classesInFile.ts';
import { exitCounts } from '../classes/exitCounts.ts';
import type { Book } from '../file/book.ts';
import { dayIn } from '../file/dayIn.ts';
import { planInFile } from '../lesson/planInFile.ts';
import { pollLine } from '../poll/pollLine.ts';
import { absentKeys } from '../teams/absentKeys.ts';

interface ClassDayFound extends ClassDay {
  readonly hasEntriesToday: boolean;
  /** Milliseconds since 1970 of the latest entry of today; left out where there is none. */
  readonly lastEntryToday?: number;
}

/** The day of every class that has a sheet, in the order of the tabs. */
export function classDays(book: Book): readonly ClassDayFound[] {
  const day = book.today;
  const inFile = planInFile(book);
  const plan = inFile.state === 'there' ? inFile.reading : undefined;
  const activity = plan && lessonActivity(plan.setup.settings);
  const absent = absentKeys(plan, day);
  const isToday = (moment: number | undefined) => moment !== undefined && dayIn(book, moment) === day;
  return classesInFile(book).flatMap(({ name: className, sheet, reading }): readonly ClassDayFound[] => {
    if (sheet?.tag?.state !== 'built' || reading === undefined) return [];
    const blocks = reading.blocks.filter(isTeam);
    const steps = blocks.flatMap((block) => block.steps);
    const exit = activity && plan && exitCounts(reading, { plan, activity, formulas: new Set(sheet.formulaEntries) });
    // Where no time was ever noted, what is typed there is all that is known.
    const hasTimes = steps.some(({ lastEntry }) => lastEntry !== undefined);
    const entriesToday = steps.flatMap(({ lastEntry }) =>
      lastEntry !== undefined && isToday(lastEntry) ? [lastEntry] : [],
    );
    return [
      {
        day,
        className,
        activity: activity?.title ?? plan?.setup.activity ?? '',
        aim: activity?.aim ?? '',
        hasEntriesToday: entriesToday.length > 0,
        ...(entriesToday.length === 0 ? {} : { lastEntryToday: Math.max(...entriesToday) }),
        ...(exit === undefined ? {} : { exit: { answered: exit.answered, right: exit.right } }),
        teams: blocks.map((block) => ({
          team: block.team,
          absent: absent.includes(block.key),
          absentMembers: membersOn(readMembers(block.who), day)
            .members.filter((member) => member.absent)
            .map(({ name }) => name),
          here: block.steps.some(({ entry, lastEntry }) => (hasTimes ? isToday(lastEntry) : entry !== '')),
          steps: block.steps.flatMap(({ step, check, entry, lookAt, tries }) => {
            if (isExitStep(step)) return [];
            const planned = activity?.steps.find(({ id }) => id === step);
            return {
              title: planned?.title ?? step,
              scored: planned !== undefined && planned.kind !== 'told',
              check,
              entry,
              lookAt,
              tries,
            };
          }),
        })),
        poll: pollLine(book, className),
      },
    ];
  });
}
