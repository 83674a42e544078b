import { orderInWords } from '../../lab/key/orderInWords.ts';
import { teamKey } from '../../lab/key/teamKey.ts';
import type { Book } from '../file/book.ts';
import { lessonNow } from '../lesson/lessonNow.ts';
import { done, type Outcome } from '../outcome.ts';
import type { KeyView } from '../views.ts';

/** The key of every team, worked out now. What only the teacher should see is in no sheet. */
export function keyView(book: Book): Outcome<KeyView> {
  const lesson = lessonNow(book);
  if (!lesson.ok) return lesson;
  const { plan, activity } = lesson.value;
  const { settings } = plan.setup;
  return done({
    date: book.today,
    activity: activity.title,
    teams: plan.teams.map((team) => ({
      className: team.className,
      team: team.team,
      key: team.key,
      lines: teamKey({ activity, team, settings }).map(({ step, title, unit, answer, note }) => ({
        title,
        unit,
        answer,
        note,
        kind: activity.steps.find(({ id }) => id === step)?.kind ?? 'told',
      })),
    })),
    orders: activity.steps.flatMap((step) =>
      step.kind === 'ordered'
        ? [{ title: step.title, inWords: orderInWords(step.procedure, plan.teams[0]?.givens ?? {}) }]
        : [],
    ),
  });
}
