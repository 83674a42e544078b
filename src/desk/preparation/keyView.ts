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
      lines: teamKey({ activity, team, settings }).map(({ title, unit, answer, note }) => ({
        title,
        unit,
        answer,
        note,
      })),
    })),
  });
}
