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

/** By name, each made when it is asked for: a block needs few of them, and its first answer waits for what is made. */
const questions: Readonly<Record<string, () => Question>> = {
  'dilution particles': dilutionParticles,
  'portion strength': portionStrength,
  'crystal water': crystalWater,
  'impure solid': impureSolidQuestion,
  'last flask': lastFlask,
  'dilute acid': diluteAcid,
  'separate ions': separateIons,
  'ion share': ionShare,
  'whole molecules': wholeMolecules,
  'over night': overNight,
};

/** Every question: those that a step asks, and those that go with the picture of particles. */
export const allQuestions = (): readonly Question[] => Object.values(questions).map((made) => made());

/** The question of that name; a step that names one that is not there is a mistake in the program. */
export function questionByName(name: string): Question {
  const found = questions[name];
  if (found === undefined) throw new Error(`No question is called “${name}”.`);
  return found();
}
