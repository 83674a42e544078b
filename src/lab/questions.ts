import { crystalWater } from './questions/crystalWater.ts';
import { diluteAcid } from './questions/diluteAcid.ts';
import { dilutionParticles } from './questions/dilutionParticles.ts';
import { impureSolidQuestion } from './questions/impureSolidQuestion.ts';
import { lastFlask } from './questions/lastFlask.ts';
import { portionStrength } from './questions/portionStrength.ts';
import type { Question } from './questions/question.ts';

/** Every question that a step can ask. */
export const allQuestions = (): readonly Question[] => [
  dilutionParticles,
  portionStrength,
  crystalWater,
  impureSolidQuestion,
  lastFlask,
  diluteAcid,
];

/** The question of that name; a step that names one that is not there is a mistake in the program. */
export function questionByName(name: string): Question {
  const found = allQuestions().find((question) => question.name === name);
  if (found === undefined) throw new Error(`No question is called “${name}”.`);
  return found;
}
