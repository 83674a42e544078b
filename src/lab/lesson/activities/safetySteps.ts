import type { Activity, SafetyStep, Step, TickedStep } from '../activity.ts';

const safetyStep = (
  { substance, period }: TickedStep,
  { topic, title }: Pick<SafetyStep, 'topic' | 'title'>,
): SafetyStep => ({ kind: 'safety', id: topic, topic, title, unit: '', shown: [], period, bench: false, substance });

/** The activity with the two questions about safety behind the cautions that are ticked. */
export const withSafetySteps = (activity: Activity): Activity => ({
  ...activity,
  steps: activity.steps.flatMap((step): readonly Step[] =>
    step.kind === 'ticked'
      ? [
          step,
          safetyStep(step, { topic: 'splash', title: 'If it splashes' }),
          safetyStep(step, { topic: 'waste', title: 'Where it goes' }),
        ]
      : [step],
  ),
});
