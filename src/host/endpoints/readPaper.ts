import { teamKey } from '../../lab/key/teamKey.ts';
import { shownWords } from '../../lab/shownWords.ts';
import { wholeCautions } from '../../lab/wholeCautions.ts';
import type { Outcome, PaperView } from '../calls.ts';
import { lessonNow, markOf, todayText } from '../lessonNow.ts';
import { done } from '../outcome.ts';

/** Every team's table for paper: what to find with its own numbers, and check figures, never an answer. */
export function readPaper(): Outcome<PaperView> {
  const lesson = lessonNow();
  if (!lesson.ok) return lesson;
  const { plan, activity } = lesson.value;
  const { settings } = plan.setup;
  return done({
    date: todayText(),
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
                  decimalMark: markOf(plan),
                  studentsDilute: settings['concentrated reagents'] === 'students',
                })
              : shownWords(step, { values: team.givens, givens: activity.givens }),
          unit: step.unit,
          kind: step.kind,
          checkFigures: key[index]?.checkFigures ?? [],
        })),
      };
    }),
  });
}
