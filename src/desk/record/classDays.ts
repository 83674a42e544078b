import { isExitStep } from '../../lab/exit/exitStep.ts';
import { activityWanted } from '../../lab/lesson/activityWanted.ts';
import { lessonActivity } from '../../lab/lesson/lessonActivity.ts';
import { decimalMarkOf } from '../../lab/lesson/lessonSettings.ts';
import { isTeam } from '../../lab/lesson/practice.ts';
import { membersOn } from '../../lab/members/membersOn.ts';
import { readMembers } from '../../lab/members/readMembers.ts';
import type { ClassDay } from '../../lab/record/classFacts.ts';
import { workedWith } from '../../lab/record/workedWith.ts';
import { readClassSheet } from '../../workbook/readClassSheet.ts';
import { classesInFile } from '../classes/classesInFile.ts';
import { exitCounts } from '../classes/exitCounts.ts';
import type { Book } from '../file/book.ts';
import { dayIn } from '../file/dayIn.ts';
import { cellsOf, sheetToRead } from '../file/sheets.ts';
import { planInFile } from '../lesson/planInFile.ts';
import { pollLine } from '../poll/pollLine.ts';
import { absentKeys } from '../teams/absentKeys.ts';

export interface ClassDayFound extends ClassDay {
  /** Of its teams, as its sheet has them. */
  readonly keys: readonly string[];
  /** Id of the activity that its rows were built for; unknown for sheets of earlier versions. */
  readonly builtFor?: string;
  readonly hasEntriesToday: boolean;
  /** Milliseconds since 1970 of the latest entry of today; minus infinity where there is none, or none has a time. */
  readonly lastEntryToday: number;
}

/**
 * The day of every class that has a sheet, in the order of the tabs. While a sheet is being made anew the one that it
 * replaces tells the day: what was typed there has not come over yet.
 */
export function classDays(book: Book): readonly ClassDayFound[] {
  const day = book.today;
  const inFile = planInFile(book);
  const plan = inFile.state === 'there' ? inFile.reading : undefined;
  const planned = plan && lessonActivity(plan.setup.settings);
  const activity = plan && planned && activityWanted(planned, plan);
  const absent = absentKeys(plan, day);
  const begunBefore = book.begun !== undefined && book.begun !== '' && book.begun < day;
  const isToday = (moment: number | undefined) => moment !== undefined && dayIn(book, moment) === day;
  return classesInFile(book).flatMap((found): readonly ClassDayFound[] => {
    const { name: className } = found;
    const source = sheetToRead(book, { kind: 'class', className: found.id });
    if (source?.tag?.state !== 'built' && source?.tag?.state !== 'leaving') return [];
    const reading = source === found.sheet ? found.reading : readClassSheet(cellsOf(source));
    if (reading === undefined) return [];
    const blocks = reading.blocks.filter(isTeam);
    const keys = blocks.map(({ key }) => key);
    const ownTeams = plan?.teams.filter(({ key }) => keys.includes(key)) ?? [];
    const steps = blocks.flatMap((block) => block.steps);
    // Where no time was ever noted, what is typed there is all that is known. Times that were cleared have left the counts.
    const hasTimes = steps.some(({ lastEntry, tries }) => lastEntry !== undefined || tries > 0);
    const goesOn =
      begunBefore || steps.some(({ lastEntry }) => lastEntry !== undefined && dayIn(book, lastEntry) < day);
    // On the first day of a lesson an entry without a time can only be of that day.
    const isOfDay = (lastEntry: number | undefined): boolean =>
      lastEntry === undefined ? !goesOn || !hasTimes : isToday(lastEntry);
    const exit =
      activity &&
      plan &&
      exitCounts(reading, {
        plan,
        activity,
        formulas: new Set(source.formulaEntries),
        // Answers of the days before stand in the records of those days.
        isOfDay,
      });
    const entriesToday = steps.flatMap(({ lastEntry }) =>
      lastEntry !== undefined && isToday(lastEntry) ? [lastEntry] : [],
    );
    // Where no trigger runs for those who type, nothing has a time: on the day a lesson was begun it can only be of today.
    const hasUntimed = !hasTimes && book.begun === day && steps.some(({ entry }) => entry !== '');
    return [
      {
        day,
        className,
        activity: activity?.title ?? plan?.setup.activity ?? '',
        aim: activity?.aim ?? '',
        ...(activity === undefined
          ? { substance: '', concentrations: '' }
          : workedWith({
              activity,
              teams: ownTeams,
              decimalMark: decimalMarkOf(plan?.setup.settings ?? {}),
            })),
        keys,
        ...(source.tag.activity === undefined ? {} : { builtFor: source.tag.activity }),
        goesOn,
        hasEntriesToday: entriesToday.length > 0 || hasUntimed,
        lastEntryToday: Math.max(...entriesToday),
        ...(exit === undefined || exit.answered === 0 ? {} : { exit: { answered: exit.answered, right: exit.right } }),
        teams: blocks.map((block) => ({
          team: block.team,
          absent: absent.includes(block.key),
          absentMembers: membersOn(readMembers(block.who), day)
            .members.filter((member) => member.absent)
            .map(({ name }) => name),
          here: block.steps.some(({ entry, lastEntry }) => (hasTimes ? isToday(lastEntry) : entry !== '')),
          steps: block.steps.flatMap(({ step, check, entry, lookAt, tries, helpWanted, lastEntry }) => {
            if (isExitStep(step)) return [];
            const ours = activity?.steps.find(({ id }) => id === step);
            return {
              title: ours?.title ?? step,
              ...(ours?.kind === 'ticked' ? { ofCautions: true } : {}),
              scored: ours !== undefined && ours.kind !== 'told',
              ofDay: isOfDay(lastEntry),
              check,
              entry,
              lookAt,
              tries,
              helpWanted,
            };
          }),
        })),
        poll: pollLine(book, className),
      },
    ];
  });
}
