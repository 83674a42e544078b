import { lessonActivity } from '../lab/lessonActivity.ts';
import { membersOn } from '../lab/members/membersOn.ts';
import { readMembers } from '../lab/members/readMembers.ts';
import type { ClassDay } from '../lab/record/classFacts.ts';
import { type ClassReading, readClassSheet } from '../workbook/readClassSheet.ts';
import { absentKeys } from './absentKeys.ts';
import { valuesOf } from './applyWorkbook.ts';
import { planInUse } from './build.ts';
import { dayOf } from './dayOf.ts';
import { ownSheets } from './ownSheets.ts';
import { pollLine } from './pollLine.ts';
import type { Spreadsheet } from './spreadsheet.ts';

interface ClassDayFound extends ClassDay {
  readonly hasEntriesToday: boolean;
}

/** The day of every class that has a sheet, in the order of the tabs. */
export function classDays(spreadsheet: Spreadsheet, day: string): readonly ClassDayFound[] {
  const plan = planInUse(spreadsheet);
  const activity = plan && lessonActivity(plan.setup.settings);
  const absent = absentKeys(plan, day);
  const found: ClassDayFound[] = [];
  for (const { sheet, tag } of ownSheets(spreadsheet)) {
    if (tag.kind !== 'class' || tag.state !== 'built') continue;
    const reading = readClassSheet(valuesOf(sheet));
    if (reading === undefined) continue;
    const className = classNameNow(plan?.teams ?? [], reading) ?? tag.className ?? '';
    const isToday = (moment: number | undefined) => moment !== undefined && dayOf(spreadsheet, moment) === day;
    const steps = reading.blocks.flatMap((block) => block.steps);
    // Where no time was ever noted, what is typed there is all that is known.
    const hasTimes = steps.some(({ lastEntry }) => lastEntry !== undefined);
    found.push({
      day,
      className,
      activity: activity?.title ?? plan?.setup.activity ?? '',
      aim: activity?.aim ?? '',
      hasEntriesToday: steps.some(({ lastEntry }) => isToday(lastEntry)),
      teams: reading.blocks.map((block) => ({
        team: block.team,
        absent: absent.includes(block.key),
        absentMembers: membersOn(readMembers(block.who), day)
          .members.filter((member) => member.absent)
          .map(({ name }) => name),
        here: block.steps.some(({ entry, lastEntry }) => (hasTimes ? isToday(lastEntry) : entry !== '')),
        steps: block.steps.map(({ step, check, entry, lookAt, tries }) => {
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
      poll: pollLine(spreadsheet, className),
    });
  }
  return found;
}

/** A class may have another name in the Plan by now than when its sheet was built. */
function classNameNow(
  teams: readonly { readonly key: string; readonly className: string }[],
  { blocks }: ClassReading,
): string | undefined {
  const keys = blocks.map(({ key }) => key);
  return teams.find(({ key }) => keys.includes(key))?.className;
}
