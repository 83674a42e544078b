import type { Question } from '../bench/questions/question.ts';
import { questionByName } from '../bench/questions.ts';
import type { Activity } from '../lesson/activity.ts';
import type { ParticlePicture } from './particlePicture.ts';

/** Questions to ask beside a picture: those of the activity's own steps, then those that fit what is drawn. */
export function pictureQuestions(
  { steps }: Pick<Activity, 'steps'>,
  { kinds, sample }: Pick<ParticlePicture, 'kinds' | 'sample'>,
): readonly Question[] {
  const isMolecular = kinds.every(({ charge }) => charge === 0);
  const isDiluted = sample.boxes.length > 1;
  const asked = steps.flatMap((step) => (step.kind === 'chosen' ? [step.question] : []));
  const fitting = isMolecular ? ['whole molecules'] : ['separate ions', ...(isDiluted ? ['ion share'] : [])];
  return [...new Set([...asked, ...fitting, 'over night'])].map(questionByName);
}
