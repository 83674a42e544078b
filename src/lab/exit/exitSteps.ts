import type { Activity, CalculatedStep, Shown } from '../lesson/activity.ts';
import { exitShown } from '../texts/exitShown.ts';
import { exitStep, exitStepId } from './exitStep.ts';

/** The line of a question: words of its quantity around the numbers that it takes. */
const shownIn = ({ quantity, takes }: CalculatedStep): readonly Shown[] => {
  const words = exitShown[quantity as keyof typeof exitShown];
  return words.flatMap((piece): readonly Shown[] => {
    if (typeof piece === 'string') return [piece];
    const source = takes[piece.takes];
    if (!source || !('given' in source)) return [];
    const { takes: _, ...around } = piece;
    return [{ given: source.given, ...around }];
  });
};

/** The questions of an activity for so many seats, as rows of a class sheet. */
export const exitSteps = (activity: Activity, seats: number): readonly CalculatedStep[] =>
  Array.from({ length: seats }, (_, place) => exitStep(activity, exitStepId(place + 1))).flatMap((step) =>
    step === undefined ? [] : [{ ...step, shown: shownIn(step) }],
  );
