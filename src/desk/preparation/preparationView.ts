import { cautionLanguageOf } from '../../lab/lesson/cautionPiecesIn.ts';
import { decimalMarkOf } from '../../lab/lesson/lessonSettings.ts';
import { periodPlans } from '../../lab/lesson/periodPlan.ts';
import { isPractice, isTeam } from '../../lab/lesson/practice.ts';
import type { TeamPlan } from '../../lab/lesson/setup.ts';
import { dayPreparation } from '../../lab/preparation/dayPreparation.ts';
import { hazardSourceRows } from '../../lab/preparation/hazardSourceRows.ts';
import { labels } from '../../lab/preparation/labels.ts';
import { type PreparationRow, preparationRows } from '../../lab/preparation/preparationRows.ts';
import { preparationTexts } from '../../lab/texts/preparation.ts';
import { cellText } from '../../workbook/cellText.ts';
import { prepareCells } from '../../workbook/layout.ts';
import type { Book } from '../file/book.ts';
import { cellsOf, sheetInUse } from '../file/sheets.ts';
import { lessonNow } from '../lesson/lessonNow.ts';
import { done, type Outcome } from '../outcome.ts';
import type { PreparationView } from '../views.ts';

/** What the day takes, labels and the period in minutes, from the Plan as it is. */
export function preparationView(book: Book): Outcome<PreparationView> {
  const lesson = lessonNow(book);
  if (!lesson.ok) return lesson;
  const { plan, activity } = lesson.value;
  const { settings, shelf } = plan.setup;
  const dayOf = (teams: readonly TeamPlan[]) => dayPreparation({ activity, teams, shelf, settings });
  const day = dayOf(plan.teams.filter(isTeam));
  const mark = decimalMarkOf(settings);
  const practice = plan.teams.filter(isPractice);
  const rows = [
    ...preparationRows(day, mark),
    ...hazardSourceRows(day, book.today),
    ...(practice.length === 0 ? [] : practiceRows(preparationRows(dayOf(practice), mark), practice)),
  ];
  const names = Object.keys(preparationTexts.sections) as (keyof typeof preparationTexts.sections)[];
  return done({
    date: book.today,
    decimalMark: mark,
    activity: activity.title,
    aim: activity.aim,
    sections: names
      .map((name) => ({
        name,
        title: preparationTexts.sections[name],
        rows: rows
          .filter(({ section }) => section === name)
          .map(({ what, amount, withSpare, unit, note, byClass, pictograms }) => ({
            what,
            unit,
            note,
            amount: amount ?? null,
            withSpare: withSpare ?? null,
            ...(byClass === undefined ? {} : { byClass }),
            ...(pictograms === undefined ? {} : { pictograms }),
          })),
      }))
      .filter((section) => section.rows.length > 0),
    sheet: freshness(book),
    labels: labels(day, mark, cautionLanguageOf(settings)),
    periods: periodPlans(activity, Number(settings.periods)),
  });
}

/** What practice takes if it is done at the bench: marked as practice, and in no amount of the day. */
const practiceRows = (rows: readonly PreparationRow[], practice: readonly TeamPlan[]): readonly PreparationRow[] =>
  rows
    .filter(({ section }) => section === 'solids' || section === 'stocks' || section === 'make')
    .map(({ what, amount, withSpare, unit, note }) => ({
      section: 'practice',
      what,
      amount,
      withSpare,
      unit,
      note: `${preparationTexts.practiceNote(practice.map(({ className, team }) => `${team} (${className})`))} ${note}`,
    }));

/** Whether the Prepare sheet says that the Plan is another by now. */
function freshness(book: Book): PreparationView['sheet'] {
  const sheet = sheetInUse(book, { kind: 'prepare' });
  if (sheet === undefined) return 'none';
  const { row, column } = prepareCells.freshness;
  return cellText(cellsOf(sheet)[row - 1]?.[column - 1]).startsWith('⚠') ? 'out of date' : 'up to date';
}
