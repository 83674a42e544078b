import { readFormula } from '../../chemistry/readFormula.ts';
import { withEvidenceSteps } from './activities/evidenceSteps.ts';
import { withSafetySteps } from './activities/safetySteps.ts';
import type { Activity } from './activity.ts';
import { handledForms } from './handledForms.ts';
import { decimalMarkOf } from './lessonSettings.ts';
import type { Setup, TeamPlan } from './setup.ts';

interface ForLesson {
  readonly setup: Pick<Setup, 'settings' | 'givens'>;
  readonly teams: readonly Pick<TeamPlan, 'givens'>[];
}

/** The activity with the rows that this lesson asks for beside its own: the same in all its classes. */
export function activityWanted(activity: Activity, lesson: ForLesson): Activity {
  const safe = asksSafety(activity, lesson) ? withSafetySteps(activity) : activity;
  return lesson.setup.settings.evidence === 'yes' ? withEvidenceSteps(safe) : safe;
}

function asksSafety(activity: Activity, { setup, teams }: ForLesson): boolean {
  const when = setup.settings['safety questions'];
  if (when === 'always' || when === 'never') return when === 'always';
  // With what the teacher typed, which no team's solution is stronger than: so a late team changes nothing.
  return [setup, ...teams].some(({ givens }) => isDangerous(activity, { givens, settings: setup.settings }));
}

/** Whether the substance carries the signal word Danger in some form that is handled, or nobody here knows it. */
function isDangerous(
  { steps }: Activity,
  { givens, settings }: { readonly givens: TeamPlan['givens']; readonly settings: Setup['settings'] },
): boolean {
  const decimalMark = decimalMarkOf(settings);
  return steps.some((step) => {
    const formula = step.kind === 'ticked' ? readFormula(givens[step.substance.formula]) : undefined;
    if (step.kind !== 'ticked' || !formula?.ok) return false;
    return handledForms({ substance: step.substance, formula: formula.value, givens, decimalMark }).some(
      ({ cautions }) => cautions.signalWord === 'Danger' || cautions.listing === 'unlisted',
    );
  });
}
