import { decimalMarkOf } from '../../lab/lesson/lessonSettings.ts';
import { isTeam } from '../../lab/lesson/practice.ts';
import { dayPreparation } from '../../lab/preparation/dayPreparation.ts';
import { preparationRows } from '../../lab/preparation/preparationRows.ts';
import { classCautions } from '../../workbook/cautionLine.ts';
import { classesInFile } from '../classes/classesInFile.ts';
import { classView } from '../classes/classView.ts';
import type { Book } from '../file/book.ts';
import { lessonNow } from '../lesson/lessonNow.ts';
import { done, type Outcome } from '../outcome.ts';
import type { ClassView, CoverClassView, CoverView } from '../views.ts';

/** A page for somebody else to run the lesson by: no longer than one sheet, so each class is told in one line. */
const most = { open: 3, talk: 3 } as const;

/** What a colleague needs who takes the lesson, from the Plan and the class sheets as they were read just now. */
export function coverView(book: Book): Outcome<CoverView> {
  const lesson = lessonNow(book);
  if (!lesson.ok) return lesson;
  const { plan, activity } = lesson.value;
  const { setup, teams } = plan;
  const told = activity.steps.filter(({ kind }) => kind === 'told').map(({ id }) => id);
  const classes: CoverClassView[] = [];
  for (const { name, keys, reading } of classesInFile(book)) {
    const now = reading === undefined ? undefined : classView(book, name);
    if (now !== undefined && !now.ok) return now;
    classes.push(now === undefined ? notBuilt(name, keys.length) : classOf(now.value, told));
  }
  const day = dayPreparation({ activity, teams: teams.filter(isTeam), shelf: setup.shelf, settings: setup.settings });
  const rows = preparationRows(day, decimalMarkOf(setup.settings));
  const { blocks, last } = classCautions({ activity, setup }, teams);
  return done({
    date: book.today,
    clock: book.clock,
    decimalMark: decimalMarkOf(setup.settings),
    activity: activity.title,
    aim: activity.aim,
    classes,
    cautions: blocks.map(({ head, effects, advice }) => ({ head, advice: [...effects, ...advice] })),
    safety: last,
    ready: rows
      .filter(({ section }) => ['solids', 'make', 'lay', 'balance', 'water'].includes(section))
      .map(({ what, amount, withSpare, unit }) => ({ what, amount: withSpare ?? amount ?? null, unit })),
    waste: rows.filter(({ section }) => section === 'disposal').map(({ what, note }) => ({ what, note })),
  });
}

const notBuilt = (className: string, teams: number): CoverClassView => ({
  className,
  teams,
  rowsDone: 0,
  rows: 0,
  open: [],
  talkFirst: [],
  talkMore: 0,
});

function classOf({ className, teams: all, stepCount, talkFirst }: ClassView, told: readonly string[]): CoverClassView {
  const teams = all.filter(({ practice }) => practice !== true);
  const at = new Map<string, number>();
  for (const { steps, absent } of teams) {
    const first = absent ? undefined : steps.find(({ id, check }) => !told.includes(id) && check !== 'on target');
    if (first !== undefined) at.set(first.title, (at.get(first.title) ?? 0) + 1);
  }
  const needed = talkFirst.filter(({ ready }) => ready !== true);
  return {
    className,
    teams: teams.length,
    rowsDone: teams.reduce((sum, team) => sum + team.done, 0),
    rows: teams.length * stepCount,
    open: [...at]
      .sort(([, one], [, other]) => other - one)
      .slice(0, most.open)
      .map(([title, count]) => ({ title, teams: count })),
    talkFirst: needed.slice(0, most.talk).map(({ team, reason }) => ({ team, reason })),
    talkMore: Math.max(0, needed.length - most.talk),
  };
}
