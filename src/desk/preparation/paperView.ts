import { shownTo } from '../../lab/bench/shownTo.ts';
import { exitGivens } from '../../lab/exit/exitStep.ts';
import { withExitSteps } from '../../lab/exit/withExitSteps.ts';
import { teamKey } from '../../lab/key/teamKey.ts';
import { decimalMarkOf } from '../../lab/lesson/lessonSettings.ts';
import { shownWords } from '../../lab/lesson/shownWords.ts';
import { wholeCautions } from '../../lab/lesson/wholeCautions.ts';
import { stepUnit } from '../../workbook/stepUnit.ts';
import type { Book } from '../file/book.ts';
import { lessonNow, lettersByTeam } from '../lesson/lessonNow.ts';
import { done, type Outcome } from '../outcome.ts';
import type { PaperView } from '../views.ts';

/** Every team's table for paper: what to find with its own numbers, and check figures, never an answer. */
export function paperView(book: Book): Outcome<PaperView> {
  const lesson = lessonNow(book);
  if (!lesson.ok) return lesson;
  const { plan, activity: planned } = lesson.value;
  const activity = withExitSteps(planned, plan.setup.settings);
  const { settings } = plan.setup;
  const byTeam = lettersByTeam(plan);
  return done({
    date: book.today,
    decimalMark: decimalMarkOf(settings),
    activity: activity.title,
    aim: activity.aim,
    teams: plan.teams.map((team) => {
      const key = teamKey({ activity, team, settings });
      return {
        className: team.className,
        team: team.team,
        key: team.key,
        steps: activity.steps.map((step, index) => ({
          title: step.title,
          // On paper nothing stands beside the row, so the cautions stand in it.
          shown:
            step.kind === 'ticked'
              ? wholeCautions({
                  substance: step.substance,
                  givens: team.givens,
                  decimalMark: decimalMarkOf(settings),
                  studentsDilute: settings['concentrated reagents'] === 'students',
                })
              : shownWords(
                  { shown: shownTo(step, byTeam ? team.key : '') },
                  { values: team.givens, givens: [...activity.givens, ...exitGivens(step.id)] },
                ),
          unit: stepUnit(step),
          kind: step.kind,
          checkFigures: key[index]?.checkFigures ?? [],
        })),
      };
    }),
  });
}
