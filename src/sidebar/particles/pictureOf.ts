import type { NumbersView } from '../../desk/views.ts';
import { errorText } from '../../errors/errorText.ts';
import { activityById } from '../../lab/lesson/activities.ts';
import { particlePicture } from '../../lab/particles/particlePicture.ts';
import { pictureQuestions } from '../../lab/particles/pictureQuestions.ts';
import { readSolutions } from '../../lab/particles/solutions.ts';
import { element } from '../page/element.ts';
import { texts } from '../texts.ts';
import { pictureSections } from './pictureSections.ts';
import { questionSection } from './questionSection.ts';

/** Picture and questions for one team's numbers, or the reason why there is no picture. */
export function pictureOf(
  { activity: id, decimalMark }: Pick<NumbersView, 'activity' | 'decimalMark'>,
  { givens, step }: { readonly givens: Readonly<Record<string, string>>; readonly step: number },
): readonly HTMLElement[] {
  const activity = activityById(id);
  if (activity === undefined) return [reason(texts.particles.noActivity)];
  const solutions = readSolutions({ activity, givens, decimalMark, step });
  if (!solutions.ok) return [reason(errorText(solutions.error))];
  const picture = particlePicture(solutions.value);
  if (!picture.ok) return [reason(errorText(picture.error))];
  return [
    ...pictureSections({ solutions: solutions.value, picture: picture.value, decimalMark }),
    questionSection(pictureQuestions(activity, picture.value), givens),
  ];
}

const reason = (message: string): HTMLElement =>
  element(
    'div',
    { class: 'notice' },
    element('p', {}, element('b', {}, texts.particles.noPicture)),
    element('p', {}, message),
  );
