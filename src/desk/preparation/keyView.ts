import { withExitSteps } from '../../lab/exit/withExitSteps.ts';
import { orderInWords } from '../../lab/key/orderInWords.ts';
import { teamKey } from '../../lab/key/teamKey.ts';
import type { Step } from '../../lab/lesson/activity.ts';
import type { Book } from '../file/book.ts';
import { lessonNow, lettersByTeam } from '../lesson/lessonNow.ts';
import { done, type Outcome } from '../outcome.ts';
import type { KeyView } from '../views.ts';

/** The key of every team, worked out now. What only the teacher should see is in no sheet. */
export function keyView(book: Book): Outcome<KeyView> {
  const lesson = lessonNow(book);
  if (!lesson.ok) return lesson;
  const { plan, activity: planned } = lesson.value;
  const activity = withExitSteps(planned, plan.setup.settings);
  const { settings } = plan.setup;
  const byTeam = lettersByTeam(plan);
  return done({
    date: book.today,
    activity: activity.title,
    teams: plan.teams.map((team) => ({
      className: team.className,
      team: team.team,
      key: team.key,
      lines: teamKey({ activity, team, settings, lettersByTeam: byTeam }).map(
        ({ step, title, unit, answer, note }) => ({
          title,
          unit,
          answer,
          note,
          kind: activity.steps.find(({ id }) => id === step)?.kind ?? 'told',
        }),
      ),
    })),
    orders: ordersOf(activity.steps, plan.teams[0]?.givens ?? {}),
  });
}

/** Letters differ from team to team, so an order is said once in words. */
const ordersOf = (steps: readonly Step[], givens: Readonly<Record<string, string>>): KeyView['orders'] =>
  steps.flatMap((step) =>
    step.kind === 'ordered' ? [{ title: step.title, inWords: orderInWords(step.procedure, givens) }] : [],
  );
