import { periodPlans } from '../../lab/periodPlan.ts';
import { dayPreparation } from '../../lab/preparation/dayPreparation.ts';
import { hazardSourceRows } from '../../lab/preparation/hazardSourceRows.ts';
import { labels } from '../../lab/preparation/labels.ts';
import { preparationRows } from '../../lab/preparation/preparationRows.ts';
import { preparationTexts } from '../../lab/texts/preparation.ts';
import type { Outcome, PreparationView } from '../calls.ts';
import { isPrepareOutOfDate } from '../isPrepareOutOfDate.ts';
import { lessonNow, markOf, todayText } from '../lessonNow.ts';
import { done } from '../outcome.ts';
import { ownSheets, sheetInUse } from '../ownSheets.ts';
import { openSpreadsheet } from '../spreadsheet.ts';

/** What the day takes, labels and the period in minutes, from the Plan as it is now. Nothing is written. */
export function readPreparation(): Outcome<PreparationView> {
  const lesson = lessonNow();
  if (!lesson.ok) return lesson;
  const { plan, activity } = lesson.value;
  const { settings, shelf } = plan.setup;
  const day = dayPreparation({ activity, teams: plan.teams, shelf, settings });
  const mark = markOf(plan);
  const sheet = sheetInUse(ownSheets(openSpreadsheet()), { kind: 'prepare' })?.sheet;
  const rows = [...preparationRows(day, mark), ...hazardSourceRows(day, todayText())];
  const names = Object.keys(preparationTexts.sections) as (keyof typeof preparationTexts.sections)[];
  return done({
    date: todayText(),
    decimalMark: mark,
    activity: activity.title,
    aim: activity.aim,
    sections: names
      .map((name) => ({
        name,
        title: preparationTexts.sections[name],
        rows: rows
          .filter(({ section }) => section === name)
          .map(({ what, amount, withSpare, unit, note, pictograms }) => ({
            what,
            unit,
            note,
            amount: amount ?? null,
            withSpare: withSpare ?? null,
            ...(pictograms === undefined ? {} : { pictograms }),
          })),
      }))
      .filter((section) => section.rows.length > 0),
    sheet: sheet === undefined ? 'none' : isPrepareOutOfDate(sheet) ? 'out of date' : 'up to date',
    labels: labels(day, mark),
    periods: periodPlans(activity, Number(settings.periods)),
  });
}
