import type { Activity, CalculatedStep } from '../lesson/activity.ts';
import { decimalMarkOf } from '../lesson/lessonSettings.ts';
import type { Settings, TeamPlan } from '../lesson/setup.ts';
import { readySteps, type StepReady } from '../numbers/confusions.ts';

export interface ExitLesson {
  readonly activity: Activity;
  readonly settings: Settings;
}

/** A question with a team's numbers in place; undefined where it cannot be worked with them. */
export function readyExit(
  step: CalculatedStep,
  givens: TeamPlan['givens'],
  { activity, settings }: ExitLesson,
): StepReady | undefined {
  const [ready] = readySteps({ ...activity, steps: [step] }, givens, {
    figures: Number(settings.figures) || 3,
    decimals: Number(settings['atomic-weight decimals']) || 2,
    decimalMark: decimalMarkOf(settings),
  });
  return ready;
}
