import { teamKey } from '../../lab/key/teamKey.ts';
import type { KeyView, Outcome } from '../calls.ts';
import { lessonNow, todayText } from '../lessonNow.ts';
import { done } from '../outcome.ts';

/** The key of every team, worked out now. Nothing is written: what only the teacher should see is in no sheet. */
export function readKey(): Outcome<KeyView> {
  const lesson = lessonNow();
  if (!lesson.ok) return lesson;
  const { plan, activity } = lesson.value;
  const { settings } = plan.setup;
  return done({
    date: todayText(),
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
