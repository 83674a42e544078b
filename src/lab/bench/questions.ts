import { crystalWater } from './questions/crystalWater.ts';
import { diluteAcid } from './questions/diluteAcid.ts';
import { dilutionParticles } from './questions/dilutionParticles.ts';
import { impureSolidQuestion } from './questions/impureSolidQuestion.ts';
import { ionShare } from './questions/ionShare.ts';
import { lastFlask } from './questions/lastFlask.ts';
import { overNight } from './questions/overNight.ts';
import { portionStrength } from './questions/portionStrength.ts';
import type { Question } from './questions/question.ts';
import { separateIons } from './questions/separateIons.ts';
import { wholeMolecules } from './questions/wholeMolecules.ts';

/** Every question: those that a step asks, and those that go with the picture of particles. */
export const allQuestions = (): readonly Question[] => [
  dilutionParticles,
  portionStrength,
  crystalWater,
  impureSolidQuestion,
  lastFlask,
  diluteAcid,
  separateIons,
  ionShare,
  wholeMolecules,
  overNight,
];

/** The question of that name; a step that names one that is not there is a mistake in the program. */
export function questionByName(name: string): Question {
  const found = allQuestions().find((question) => question.name === name);
  if (found === undefined) throw new Error(`No question is called “${name}”.`);
  return found;
}
